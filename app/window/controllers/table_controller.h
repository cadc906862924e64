#pragma once

#include <QObject>
#include <QPointer>

#include "ui/document/document.h"

class QAction;
class QMenu;

namespace zyga::ui {

class MeasurementDialog;

/// The measurement table of the project in a window of its own, and its files.
class TableController : public QObject {
  Q_OBJECT
 public:
  TableController(Document& document, QWidget& window);

  QAction* addTo(QMenu& menu);
  /// At the chosen bone, if there is one.
  void show();

 private:
  void chooseTable();
  void chooseWhereToSave();
  void chooseWhereToSaveBlank();
  /// A CSV file in the place of the project's table, as one step.
  void takeTable(const QString& file);
  void write(const QString& file, const std::string& text);
  QString folder() const;

  Document& document_;
  QWidget& window_;
  QPointer<MeasurementDialog> dialog_;
};

}  // namespace zyga::ui
