#pragma once

#include <QDialog>
#include <QStringList>

namespace zyga::ui {

/// Sentences that are too many for a message, a line each, to be read and copied.
class SentencesDialog : public QDialog {
  Q_OBJECT
 public:
  SentencesDialog(const QString& title, const QStringList& sentences, QWidget* parent = nullptr);
};

}  // namespace zyga::ui
