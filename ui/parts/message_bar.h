#pragma once

#include <QWidget>
#include <functional>
#include <vector>

class QVBoxLayout;

namespace zyga::ui {

/// Messages over the animal that wait to be read and block nothing: what happened, why, and what to do, with buttons
/// for the usual answers. Saying the same again replaces the earlier message.
class MessageBar : public QWidget {
  Q_OBJECT
 public:
  struct Answer {
    QString text;
    std::function<void()> act;
  };

  explicit MessageBar(QWidget* parent = nullptr);

  /// Something went wrong.
  void warn(const QString& text, std::vector<Answer> answers = {});
  /// Something is worth knowing.
  void tell(const QString& text, std::vector<Answer> answers = {});
  /// The texts on show, newest last.
  QStringList texts() const;
  /// Takes away what waits for no answer.
  void clearPassing();

 private:
  void add(const QString& text, bool warning, const std::vector<Answer>& answers);
  void remove(const QString& text);

  QVBoxLayout* rows_;
};

}  // namespace zyga::ui
