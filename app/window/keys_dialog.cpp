#include "app/window/keys_dialog.h"

#include <QAction>
#include <QCoreApplication>
#include <QDialogButtonBox>
#include <QGridLayout>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

#include "ui/panels/panel_parts.h"
#include "ui/theme/figures.h"

namespace zyga::ui {
namespace {

struct Gesture {
  const char* what;
  const char* how;
};

constexpr Gesture kAnimal[] = {{"Bend the neck, the tail or a limb", "drag a bone"},
                               {"Bend to the side", "Shift while dragging a bone"},
                               {"Twist", "Ctrl or Alt while dragging a bone"},
                               {"Move a foot", "drag it; with Shift straight up and down"},
                               {"Lift or plant a foot", "right click on it"},
                               {"Move the trunk over planted feet", "drag the pelvis; with Shift it tilts"},
                               {"Raise or lower the chest", "drag a rib"},
                               {"Choose a bone and its joint", "click"},
                               {"Bend only from this joint on", "double-click"},
                               {"Turn the view", "drag with the right button, or beside the animal"},
                               {"Move the view", "drag with the middle button, or Shift and the right button"},
                               {"Magnify", "wheel, + and −"},
                               {"Turn the chosen joint", "arrow keys, with Ctrl to twist; with Shift in larger steps"},
                               {"Take a drag back", "Esc while dragging"}};

constexpr Gesture kStrip[] = {{"Bend one joint", "drag its mark up or down"},
                              {"Choose a span of joints", "drag sideways"},
                              {"Bend the whole span", "drag any mark in it"},
                              {"Go along the column, turn the joint", "arrow keys"}};

constexpr Gesture kPanels[] = {
    {"Turn the chosen joint on its map", "drag the mark, or arrow keys; with Shift in larger steps"},
    {"Try an assumption", "drag its slider; letting go keeps it"},
    {"Take a drag back", "Esc while dragging"}};

void addHeading(QGridLayout& grid, const QString& text) {
  auto* heading = new QLabel(text);
  heading->setProperty("role", "title");
  heading->setContentsMargins(0, grid.rowCount() > 1 ? kWideGap : 0, 0, 0);
  grid.addWidget(heading, grid.rowCount(), 0, 1, 2);
}

void addRow(QGridLayout& grid, const QString& what, const QString& how) {
  const int row = grid.rowCount();
  grid.addWidget(new QLabel(what), row, 0, Qt::AlignTop);
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
  resize(620, 560);
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
  constexpr int kWidth = 440;
  setFixedSize(kWidth, layout->heightForWidth(kWidth));
}

}  // namespace zyga::ui
