#pragma once

#include <QDialog>

class QLineEdit;
class QListWidget;
class QTextBrowser;

namespace zyga::ui {

/// Explains by what criteria, formulas and sources joints are judged: pages with figures, on the left their titles and
/// a search through all of them.
class HelpWindow : public QDialog {
  Q_OBJECT
 public:
  explicit HelpWindow(QWidget* parent = nullptr);

  /// "judged", "overlap"...: the names of the pages, in reading order.
  static const QStringList& pages();
  /// The page that the focus asks for: the dynamic property `helpPage` of a widget or of what holds it; else the first.
  static QString pageFor(const QWidget* widget);

  void showPage(const QString& page);
  QString page() const;

 private:
  void fillList();
  void find();
  void markHits();

  QLineEdit* search_ = nullptr;
  QListWidget* list_ = nullptr;
  QTextBrowser* browser_ = nullptr;
};

}  // namespace zyga::ui
