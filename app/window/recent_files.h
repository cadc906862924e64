#pragma once

#include <QObject>
#include <QStringList>

class QMenu;

namespace zyga::ui {

/// The files opened and saved last, newest first, kept in the settings.
class RecentFiles : public QObject {
  Q_OBJECT
 public:
  explicit RecentFiles(QObject* parent = nullptr);

  QStringList files() const;
  void add(const QString& file);
  void remove(const QString& file);
  void clear();
  /// Keeps the menu filled; choosing a file emits `chosen`.
  void fill(QMenu& menu);

 signals:
  void chosen(const QString& file);
  void changed();

 private:
  void keep(const QStringList& files);
};

}  // namespace zyga::ui
