#pragma once

#include <QDialog>
#include <vector>

#include "core/anatomy/tables/measurement_table.h"

namespace zyga::ui {

/// Everything a measurement table has against it, one row a message: line, column, cause and mend.
class TableFaultsDialog : public QDialog {
  Q_OBJECT
 public:
  TableFaultsDialog(const QString& fileName, const std::vector<anatomy::TableMessage>& messages,
                    QWidget* parent = nullptr);

 private:
  void copyAll() const;

  std::vector<anatomy::TableMessage> messages_;
};

}  // namespace zyga::ui
