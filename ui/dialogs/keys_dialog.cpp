#include "ui/dialogs/keys_dialog.h"

#include <QAction>
#include <QCoreApplication>
#include <QDialogButtonBox>
#include <QGridLayout>
#include <QLabel>
#include <QScreen>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/parts/panel_parts.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"

namespace zyga::ui {
namespace {

struct Gesture {
  const char* what;
  const char* how;
};

constexpr Gesture kAnimal[] = {
    {QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Bend the neck, the tail or a limb"),
     QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "drag a bone")},
    {QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Bend to the side"),
     QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Shift while dragging a bone")},
    {QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Twist"),
     QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Ctrl or Alt while dragging a bone")},
    {QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Move a foot"),
     QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "drag it; with Shift straight up and down")},
    {QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Lift or plant a foot"),
     QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "right click on it")},
    {QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Move the trunk over planted feet"),
     QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "drag the pelvis; with Shift it tilts")},
    {QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Raise or lower the chest"),
     QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "drag a rib")},
    {QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Choose a bone and its joint"),
     QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "click")},
    {QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Bend only from this joint on"),
     QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "double-click")},
    {QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Turn the view"),
     QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "drag with the right button, or beside the animal")},
    {QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Move the view"),
     QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "drag with the middle button, or Shift and the right button")},
    {QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Magnify"), QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "wheel, + and −")},
    {QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Turn the chosen joint"),
     QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "arrow keys, with Ctrl to twist; with Shift in larger steps")},
    {QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Take a drag back"),
     QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Esc while dragging")}};

constexpr Gesture kStrip[] = {{QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Bend one joint"),
                               QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "drag its mark up or down")},
                              {QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Choose a span of joints"),
                               QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "drag sideways")},
                              {QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Bend the whole span"),
                               QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "drag any mark in it")},
                              {QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Go along the column, turn the joint"),
                               QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "arrow keys")}};

constexpr Gesture kPanels[] = {
    {QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Turn the chosen joint on its map"),
     QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "drag the mark, or arrow keys; with Shift in larger steps")},
    {QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Try an assumption"),
     QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "drag its slider; letting go keeps it")},
    {QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Take a drag back"),
     QT_TRANSLATE_NOOP("zyga::ui::KeysDialog", "Esc while dragging")}};

void addHeading(QGridLayout& grid, const QString& text) {
  auto* heading = new QLabel(text);
  heading->setProperty("role", "title");
  heading->setContentsMargins(0, grid.rowCount() > 1 ? kWideGap : 0, 0, 0);
  grid.addWidget(heading, grid.rowCount(), 0, 1, 2);
}

void addRow(QGridLayout& grid, const QString& what, const QString& how) {
  const int row = grid.rowCount();
  auto* left = new QLabel(what);
  left->setWordWrap(true);
  grid.addWidget(left, row, 0, Qt::AlignTop);
  auto* right = mutedLabel(how);
  grid.addWidget(right, row, 1, Qt::AlignTop);
}

QString plain(QString text) { return text.remove('&').remove(QString::fromUtf8("…")); }

QVBoxLayout* dialogLayout(QDialog& dialog) {
  auto* layout = new QVBoxLayout(&dialog);
  layout->setContentsMargins(kWideGap, kWideGap, kWideGap, kWideGap);
  layout->setSpacing(kWideGap);
  return layout;
}

void addClose(QDialog& dialog, QVBoxLayout& layout) {
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
  QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
  layout.addWidget(buttons);
}

}  // namespace

KeysDialog::KeysDialog(const QList<QAction*>& actions, QWidget* parent) : QDialog(parent) {
  setObjectName("keysDialog");
  setWindowTitle(tr("Keys and gestures"));
  auto* content = new QWidget;
  auto* grid = new QGridLayout(content);
  grid->setContentsMargins(0, 0, kWideGap, 0);
  grid->setHorizontalSpacing(2 * kWideGap);
  grid->setVerticalSpacing(kGridStep);
  grid->setColumnStretch(1, 1);
  addHeading(*grid, tr("On the animal"));
  for (const Gesture& gesture : kAnimal) addRow(*grid, tr(gesture.what), tr(gesture.how));
  addHeading(*grid, tr("On the range strip"));
  for (const Gesture& gesture : kStrip) addRow(*grid, tr(gesture.what), tr(gesture.how));
  addHeading(*grid, tr("In the panels"));
  for (const Gesture& gesture : kPanels) addRow(*grid, tr(gesture.what), tr(gesture.how));
  addHeading(*grid, tr("Keys"));
  for (const QAction* action : actions)
    if (!action->shortcut().isEmpty())
      addRow(*grid, plain(action->text()), action->shortcut().toString(QKeySequence::NativeText));
  auto* scroll = new QScrollArea;
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidget(content);
  QVBoxLayout* layout = dialogLayout(*this);
  layout->addWidget(scroll, 1);
  addClose(*this, *layout);
  const QSize room = screen()->availableSize();
  resize(std::min(scaledWithText(620), room.width() - 40), std::min(scaledWithText(560), room.height() - 80));
}

AboutDialog::AboutDialog(QWidget* parent) : QDialog(parent) {
  setObjectName("aboutDialog");
  setWindowTitle(tr("About Zygapose"));
  auto* name = new QLabel(tr("Zygapose %1").arg(QCoreApplication::applicationVersion()));
  name->setFont(titleFont(font()));
  auto* what =
      new QLabel(tr("Poses a sauropod skeleton and says, joint by joint, whether its bones support the pose."));
  what->setWordWrap(true);
  auto* caution = mutedLabel(tr(
      "Bare bones give a range; cartilage, muscle and skin made it narrower or wider, and nobody has measured them. "
      "A supported pose is possible, not proven; the sample animals are invented.\n\nFor mounts and models that carry "
      "weight or stand over people this is not an engineering document; local codes and licensed practice decide."));
  QVBoxLayout* layout = dialogLayout(*this);
  layout->addWidget(name);
  layout->addWidget(what);
  layout->addWidget(caution);
  layout->addStretch(1);
  addClose(*this, *layout);
  const int width = scaledWithText(440);
  setFixedSize(width, layout->heightForWidth(width));
}

}  // namespace zyga::ui
