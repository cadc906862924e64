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

  /// How long a message stays, unless it is answered or closed.
  enum class Stays { UntilAnswered, WithProject };

  /// Something went wrong.
  void warn(const QString& text, std::vector<Answer> answers = {}, Stays stays = Stays::UntilAnswered);
  /// Something is worth knowing.
  void tell(const QString& text, std::vector<Answer> answers = {}, Stays stays = Stays::UntilAnswered);
  /// The texts on show, newest last.
  QStringList texts() const;
  /// Another project is opened: takes away what waits for no answer and what speaks of the project that was open.
  void clearPassing();

 private:
  void add(const QString& text, bool warning, const std::vector<Answer>& answers, Stays stays);
  void remove(const QString& text);

  QVBoxLayout* rows_;
};

}  // namespace zyga::ui
