#include "ui/dialogs/picture/picture_dialog.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "ui/dialogs/picture/pass_fields.h"
#include "ui/dialogs/picture/picture_fields.h"
#include "ui/dialogs/picture/picture_preview.h"
#include "ui/parts/panel_parts.h"
#include "ui/parts/verdict_mark.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"

namespace zyga::ui {

PictureDialog::PictureDialog(std::shared_ptr<const PictureScene> scene, QWidget* parent)
    : QDialog(parent),
      scene_(std::move(scene)),
      fields_(new PictureFields(scene_->screenTurn)),
      passes_(new PassFields),
      preview_(new PicturePreview(scene_)),
      told_(mutedLabel()),
      warning_(new QLabel),
      mark_(new VerdictMark) {
  setObjectName("pictureDialog");
  setWindowTitle(tr("Save picture"));
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
  go_ = buttons->addButton(tr("Choose a file…"), QDialogButtonBox::AcceptRole);
  go_->setDefault(true);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(kWideGap, kWideGap, kWideGap, kWideGap);
  layout->setSpacing(kWideGap);
  layout->addWidget(scrolling(createContent()), 1);
  layout->addWidget(buttons);
  const PictureChoice kept = PictureChoice::read();
  fields_->setValue(kept);
  passes_->setValue(kept.finished, kept.passes);
  connect(fields_, &PictureFields::changed, this, &PictureDialog::follow);
  connect(passes_, &PassFields::changed, this, &PictureDialog::follow);
  follow();
  const QSize room = parent ? parent->window()->size() : QSize(1280, 800);
  resize(std::min(scaledWithText(900), room.width() - kWideGap),
         std::min(scaledWithText(720), room.height() - kWideGap));
}

QWidget* PictureDialog::createContent() {
  auto* left = new QVBoxLayout;
  left->setSpacing(kGap);
  left->addWidget(preview_, 1);
  left->addWidget(createWords());
  auto* top = new QHBoxLayout;
  top->setSpacing(kWideGap);
  top->addLayout(left, 1);
  top->addWidget(fields_);
  auto* title = new QLabel(tr("What is written"));
  title->setProperty("role", "title");
  auto* content = new QWidget;
  auto* all = new QVBoxLayout(content);
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(kGap);
  all->addLayout(top, 1);
  all->addSpacing(kGap);
  all->addWidget(title);
  all->addWidget(passes_);
  all->addWidget(
      mutedLabel(tr("Each is a file of its own; all lie exactly over each other. They are traced beside the "
                    "window; you can go on posing meanwhile.")));
  return content;
}

QWidget* PictureDialog::createWords() {
  told_->setObjectName("pictureTold");
  warning_->setObjectName("pictureWarning");
  warning_->setWordWrap(true);
  mark_->setLevel(range::Level::Beyond);
  auto* words = new QWidget;
  auto* warned = new QHBoxLayout;
  warned->setSpacing(kGap);
  warned->addWidget(mark_, 0, Qt::AlignTop);
  warned->addWidget(warning_, 1);
  auto* column = new QVBoxLayout(words);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(kGridStep);
  column->addWidget(told_);
  column->addLayout(warned);
  return words;
}

PictureChoice PictureDialog::choice() const {
  PictureChoice choice;
  fields_->addTo(choice);
  choice.finished = passes_->finished();
  choice.passes = passes_->passes();
  return choice;
}

void PictureDialog::accept() {
  choice().write();
  QDialog::accept();
}

void PictureDialog::follow() {
  const PictureChoice chosen = choice();
  const Framing framing = framingOf(*scene_, chosen);
  fields_->showFraming(framing);
  preview_->setChoice(chosen);
  told_->setText(told(chosen, framing));
  const QString warned = warning(chosen, framing);
  warning_->setText(warned);
  warning_->setVisible(!warned.isEmpty());
  mark_->setVisible(!warned.isEmpty());
  go_->setEnabled(chosen.anything());
}

QString PictureDialog::told(const PictureChoice& choice, const Framing& framing) const {
  if (choice.lens && choice.view && !choice.throughLens())
    return tr(
        "Straight from above there is no eye height, so this picture stays parallel. Choose another side to look "
        "through a lens.");
  QStringList sentences;
  const QLocale locale;
  if (!choice.view) sentences += tr("Angle, crop and projection are those of the view on screen.");
  if (framing.distance)
    sentences += tr("The eye is %1 m from the middle of the animal.").arg(locale.toString(*framing.distance, 'f', 2));
  if (framing.horizon && inPicture(*framing.horizon)) {
    const int height = picture::heightOf(choice.width, framing.aspect);
    sentences += tr("The horizon is at row %1 of %2.")
                     .arg(locale.toString(qRound(*framing.horizon * height)), locale.toString(height));
  } else if (framing.horizon && !choice.horizon) {
    sentences += tr("The horizon is outside the picture.");
  }
  if (!framing.camera.perspective) sentences += tr("Without perspective there is no horizon.");
  return sentences.join(' ');
}

QString PictureDialog::warning(const PictureChoice& choice, const Framing& framing) const {
  if (!choice.anything()) return tr("Choose the finished picture or at least one pass.");
  QStringList sentences;
  if (framing.cropped)
    sentences += choice.view ? tr("Part of the animal is outside the picture. A greater distance or a shorter lens "
                                  "shows more.")
                             : tr("Part of the animal is outside the picture, as on screen. Move the view back to show "
                                  "more.");
  if (choice.horizon && framing.horizon && !inPicture(*framing.horizon))
    sentences += tr("The horizon is outside the picture.");
  return sentences.join(' ');
}

}  // namespace zyga::ui
