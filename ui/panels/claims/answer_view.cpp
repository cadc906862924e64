#include "ui/panels/claims/answer_view.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include "core/study/claims/claim_words.h"
#include "ui/parts/panel_parts.h"
#include "ui/parts/verdict_mark.h"
#include "ui/theme/figures.h"
#include "ui/theme/words.h"

namespace zyga::ui {
namespace {

constexpr std::size_t kMostStops = 4;

QLabel* paragraph(const char* name, bool muted) {
  QLabel* label = muted ? mutedLabel() : new QLabel;
  label->setObjectName(name);
  label->setWordWrap(true);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return label;
}

QString joined(const std::vector<std::string>& sentences) {
  QStringList lines;
  for (const std::string& sentence : sentences) lines += text(sentence);
  return lines.join('\n');
}

QString stopsText(const std::vector<std::string>& stops) {
  QStringList lines;
  for (std::size_t i = 0; i < stops.size() && i < kMostStops; ++i) lines += text(stops[i]);
  if (stops.size() > kMostStops) lines += AnswerView::tr("and %1 joints more").arg(stops.size() - kMostStops);
  return lines.isEmpty() ? QString() : AnswerView::tr("Stopped by %1").arg(lines.join(",\n"));
}

}  // namespace

AnswerView::AnswerView(QWidget* parent)
    : QWidget(parent),
      mark_(new VerdictMark),
      verdict_(paragraph("claimVerdict", false)),
      stops_(paragraph("claimStops", true)),
      needs_(paragraph("claimNeeds", false)),
      notes_(paragraph("claimNotes", true)),
      basis_(paragraph("claimBasis", true)),
      pose_(new QPushButton(tr("Show the pose"))) {
  pose_->setObjectName("claimPose");
  basis_->setFont(smallFont(font()));
  basis_->setText(text(study::claimBasis()));
  auto* verdict = new QHBoxLayout;
  verdict->setSpacing(kGap);
  verdict->addWidget(mark_, 0, Qt::AlignTop);
  verdict->addWidget(verdict_, 1);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(kGap);
  layout->addLayout(verdict);
  layout->addWidget(pose_);
  layout->addWidget(stops_);
  layout->addWidget(needs_);
  layout->addWidget(notes_);
  layout->addWidget(basis_);
  connect(pose_, &QPushButton::clicked, this, &AnswerView::poseAsked);
}

void AnswerView::setAnswer(const Document& document, const study::Claim& claim, const study::ClaimAnswer* answer,
                           bool current) {
  const bool answered = answer && answer->unanswerable.empty();
  auto level = range::Level::NotJudged;
  if (answered) level = answer->supported ? range::Level::Supported : range::Level::Beyond;
  mark_->setLevel(level);
  study::ClaimWords words;
  if (answer) words = study::claimWords(document.specimen(), document.assumptions(), claim, *answer);
  verdict_->setText(answer ? text(words.verdict) : tr("The bones are being asked."));
  stops_->setText(stopsText(words.stops));
  needs_->setText(joined(words.needs));
  notes_->setText(joined(words.notes));
  for (QLabel* label : {stops_, needs_, notes_}) label->setVisible(!label->text().isEmpty());
  pose_->setText(answered && !answer->supported ? tr("Show the nearest pose") : tr("Show the pose"));
  pose_->setEnabled(answered && current && !(answer->pose == document.pose()));
  pose_->setVisible(answered || !answer);
}

}  // namespace zyga::ui
