#include "ui/panels/claims/answer_view.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include "ui/parts/panel_parts.h"
#include "ui/parts/verdict_mark.h"
#include "ui/theme/typography.h"
#include "ui/words/claim_words.h"

namespace zyga::ui {
namespace {

constexpr qsizetype kMostStops = 4;

QLabel* paragraph(const char* name, bool muted) {
  QLabel* label = muted ? mutedLabel() : new QLabel;
  label->setObjectName(name);
  label->setWordWrap(true);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return label;
}

QString stopsText(const QStringList& stops) {
  QStringList lines = stops.mid(0, kMostStops);
  if (stops.size() > kMostStops) lines += AnswerView::tr("further joints: %1").arg(stops.size() - kMostStops);
  return lines.isEmpty() ? QString() : AnswerView::tr("Stopped by %1").arg(lines.join(",\n"));
}

}  // namespace

AnswerView::AnswerView(QWidget* parent)
    : QWidget(parent),
      mark_(new VerdictMark),
      probability_(paragraph("claimProbability", false)),
      verdict_(paragraph("claimVerdict", false)),
      tally_(paragraph("claimTally", true)),
      stops_(paragraph("claimStops", true)),
      needs_(paragraph("claimNeeds", false)),
      beside_(paragraph("claimBeside", true)),
      notes_(paragraph("claimNotes", true)),
      basis_(paragraph("claimBasis", true)),
      pose_(new QPushButton(tr("Show the pose"))) {
  pose_->setObjectName("claimPose");
  basis_->setFont(smallFont(font()));
  QFont strong = font();
  strong.setWeight(QFont::DemiBold);
  probability_->setFont(strong);
  auto* verdict = new QHBoxLayout;
  verdict->setSpacing(kGap);
  verdict->addWidget(mark_, 0, Qt::AlignTop);
  verdict->addWidget(verdict_, 1);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(kGap);
  layout->addWidget(probability_);
  layout->addLayout(verdict);
  layout->addWidget(tally_);
  layout->addWidget(pose_);
  layout->addWidget(stops_);
  layout->addWidget(needs_);
  layout->addWidget(beside_);
  layout->addWidget(notes_);
  layout->addWidget(basis_);
  connect(pose_, &QPushButton::clicked, this, &AnswerView::poseAsked);
}

void AnswerView::setAnswer(const study::Claim& claim, const ClaimAnswers::Known* known,
                           const kinematics::Pose& present) {
  const bool answered = known && known->answered();
  const bool supported = answered && known->answer->supported;
  mark_->setLevel(!answered ? range::Level::NotJudged : supported ? range::Level::Supported : range::Level::Beyond);
  ClaimWords words;
  words.verdict = tr("Testing…");
  if (known)
    words = known->answer ? claimWords(known->scenario, claim, *known->answer)
                          : ClaimWords{{}, tr("Could not be tested: %1.").arg(known->failure), {}, {}, {}};
  const study::ClaimProbability* probability = known ? known->probability.get() : nullptr;
  // Its line stands from the beginning, so that nothing jumps when the samples are ready.
  probability_->setText(probability ? probabilityWords(*probability) : tr("Probability: being worked out…"));
  probability_->setVisible(answered);
  probability_->setEnabled(probability && known->current);
  verdict_->setText(words.verdict);
  tally_->setText(words.tally);
  stops_->setText(stopsText(words.stops));
  needs_->setText(words.needs.join('\n'));
  beside_->setText(words.beside.join('\n'));
  notes_->setText((words.notes + (probability ? probabilityNotes(*probability) : QStringList())).join('\n'));
  QStringList basis{claimBasis()};
  if (answered && known->answer->habit) basis << habitBasis();
  if (probability) basis << probabilityBasis(*probability);
  basis_->setText(basis.join(' '));
  for (QLabel* label : {tally_, stops_, needs_, beside_, notes_}) label->setVisible(!label->text().isEmpty());
  pose_->setText(answered && !supported ? tr("Show the nearest pose") : tr("Show the pose"));
  pose_->setEnabled(answered && known->current && !(known->answer->pose == present));
  pose_->setVisible(answered || !known);
}

}  // namespace zyga::ui
