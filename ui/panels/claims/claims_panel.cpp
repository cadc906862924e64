#include "ui/panels/claims/claims_panel.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QScrollArea>
#include <QToolButton>

#include "ui/commands/project_edits.h"
#include "ui/panels/claims/answer_view.h"
#include "ui/panels/claims/claim_editor.h"
#include "ui/panels/claims/claims_model.h"
#include "ui/panels/findings_panel.h"
#include "ui/parts/panel_parts.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"
#include "ui/words/claim_words.h"
#include "ui/words/numbers.h"

namespace zyga::ui {
namespace {

constexpr int kClaimMergeKey = 2500;  // and the editor's field added
constexpr int kMostRows = 5;          // on show before the list scrolls

QFrame* hairline() {
  auto* line = new QFrame;
  line->setProperty("role", "hairline");
  line->setFixedHeight(1);
  return line;
}

/// As high as its rows need, up to a few.
class RowsView : public QListView {
 public:
  QSize sizeHint() const override {
    int height = 2 * frameWidth();
    const int rows = model() ? model()->rowCount() : 0;
    for (int row = 0; row < rows && row < kMostRows; ++row) height += sizeHintForRow(row);
    return {QListView::sizeHint().width(), height};
  }
  QSize minimumSizeHint() const override { return {0, sizeHint().height()}; }
};

}  // namespace

ClaimsPanel::ClaimsPanel(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      answers_(new ClaimAnswers(document, this)),
      model_(new ClaimsModel(document, *answers_, this)),
      list_(new RowsView),
      add_(iconButton("add-pose", tr("Add a claim"))),
      remove_(iconButton("delete", tr("Remove the chosen claim"))),
      stop_(new QPushButton(tr("Stop"))),
      state_(mutedLabel()),
      empty_(createEmpty()),
      full_(new QWidget),
      editor_(new ClaimEditor),
      answer_(new AnswerView) {
  setObjectName("claimsPanel");
  setProperty("helpPage", "claims");
  createList();
  auto* full = new QVBoxLayout(full_);
  full->setContentsMargins(0, 0, 0, 0);
  full->setSpacing(kGap);
  full->addWidget(list_);
  full->addWidget(hairline());
  full->addWidget(editor_);
  full->addWidget(hairline());
  full->addWidget(answer_);
  auto* content = new QWidget;
  auto* column = new QVBoxLayout(content);
  setPanelMargins(*column);
  column->addLayout(createHead());
  column->addWidget(empty_);
  column->addWidget(full_);
  column->addStretch(1);
  auto* whole = new QVBoxLayout(this);
  whole->setContentsMargins(0, 0, 0, 0);
  whole->addWidget(scrolling(content));
  connect(editor_, &ClaimEditor::edited, this, [this](const study::Claim& claim, int field) {
    if (const auto row = chosen()) changeClaim(document_, *row, claim, kClaimMergeKey + field);
  });
  connect(answer_, &AnswerView::poseAsked, this, &ClaimsPanel::showPose);
  connect(answers_, &ClaimAnswers::changed, this, &ClaimsPanel::refresh);
  connect(answers_, &ClaimAnswers::busyChanged, this, [this] { tellProgress(0, 0); });
  connect(answers_, &ClaimAnswers::progress, this,
          [this](double share) { tellProgress(static_cast<int>(100 * share), 100); });
  connect(answers_, &ClaimAnswers::failed, this, &ClaimsPanel::warned);
  connect(&document_, &Document::changed, this, &ClaimsPanel::follow);
  follow(Change::Everything);
}

QLayout* ClaimsPanel::createHead() {
  add_->setObjectName("addClaim");
  remove_->setObjectName("removeClaim");
  stop_->setObjectName("stopClaims");
  stop_->setToolTip(tr("Stop testing; the next change tests again"));
  state_->setObjectName("claimsState");
  state_->setWordWrap(false);
  connect(add_, &QToolButton::clicked, this, &ClaimsPanel::add);
  connect(remove_, &QToolButton::clicked, this, &ClaimsPanel::remove);
  connect(stop_, &QPushButton::clicked, this, [this] {
    const bool asking = answers_->busy();
    asking ? answers_->cancel() : answers_->ask();
  });
  auto* row = new QHBoxLayout;
  row->setSpacing(kGridStep);
  row->setContentsMargins(-kGridStep, 0, 0, 0);
  row->addWidget(add_);
  row->addWidget(remove_);
  row->addStretch(1);
  row->addWidget(state_);
  row->addWidget(stop_);
  return row;
}

void ClaimsPanel::createList() {
  list_->setObjectName("claimList");
  list_->setModel(model_);
  list_->setItemDelegate(new FindingDelegate(list_));
  list_->setResizeMode(QListView::Adjust);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  list_->setMouseTracking(true);
  list_->setAccessibleName(tr("Claims"));
  connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this, &ClaimsPanel::refreshChosen);
  connect(list_, &QListView::activated, this, [this] { editor_->editValue(); });
  connect(&ThemeSwitch::instance(), &ThemeSwitch::changed, list_->viewport(), qOverload<>(&QWidget::update));
}

QWidget* ClaimsPanel::createEmpty() {
  auto* empty = new QWidget;
  auto* layout = new QVBoxLayout(empty);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(kGap);
  auto* words = mutedLabel(
      tr("A claim says what the animal could do, such as “minimum head height 8.50 m”. It is tested whether that is "
         "within the ranges of the joints, in which pose, which joints stop it, and which overlap or cartilage it "
         "would take, and how probable it is."));
  words->setObjectName("noClaims");
  auto* first = new QPushButton(tr("Add a claim"));
  first->setObjectName("firstClaim");
  connect(first, &QPushButton::clicked, this, &ClaimsPanel::add);
  layout->addWidget(words);
  layout->addWidget(first, 0, Qt::AlignLeft);
  return empty;
}

bool ClaimsPanel::busy() const { return answers_->busy(); }
bool ClaimsPanel::answering() const { return answers_->answering(); }

std::optional<std::size_t> ClaimsPanel::chosen() const {
  const int row = list_->currentIndex().row();
  if (!document_.hasProject() || row < 0 || row >= static_cast<int>(document_.project().claims.size()))
    return std::nullopt;
  return static_cast<std::size_t>(row);
}

void ClaimsPanel::add() {
  if (!document_.hasProject()) return;
  addClaim(document_, study::usualClaim(study::ClaimKind::HeadHeight));
  list_->setCurrentIndex(model_->index(model_->rowCount() - 1));
  editor_->editValue();
}

void ClaimsPanel::remove() {
  if (const auto row = chosen()) removeClaim(document_, *row);
}

void ClaimsPanel::showPose() {
  const auto row = chosen();
  const ClaimAnswers::Known* known = row ? answers_->find(*row) : nullptr;
  if (!known || !known->current || !known->answered()) return;
  const QString name = claimName(document_.project().claims[*row]);
  document_.changePose(known->answer->pose,
                       known->answer->supported ? tr("Show “%1”").arg(name) : tr("Show the nearest to “%1”").arg(name));
}

void ClaimsPanel::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Delete && list_->hasFocus()) return remove();
  if (event->key() == Qt::Key_Insert) return add();
  QWidget::keyPressEvent(event);
}

void ClaimsPanel::follow(Changes what) {
  if (!(what & (Changes(Change::Claims) | Change::Pose | Change::Assumptions))) return;
  if ((what & Change::Claims) && model_->rowCount() > 0 && !chosen())
    list_->setCurrentIndex(model_->index(model_->rowCount() - 1));
  refresh();
}

void ClaimsPanel::refresh() {
  const bool any = document_.hasProject() && !document_.project().claims.empty();
  add_->setEnabled(document_.hasProject());
  empty_->setVisible(!any);
  empty_->setEnabled(document_.hasProject());
  full_->setVisible(any);
  list_->updateGeometry();
  refreshChosen();
  emit shortChanged(inShort());
}

void ClaimsPanel::refreshChosen() {
  const auto row = chosen();
  remove_->setEnabled(row.has_value());
  editor_->setVisible(row.has_value());
  answer_->setVisible(row.has_value());
  tellProgress(0, 0);
  if (!row) return;
  const study::Claim& claim = document_.project().claims[*row];
  editor_->setClaim(claim);
  answer_->setAnswer(claim, answers_->find(*row), document_.pose());
}

/// The head's line tells what goes on; a button stops it, or asks again what was stopped.
void ClaimsPanel::tellProgress(int done, int total) {
  const bool asking = answers_->busy();
  const auto row = chosen();
  const bool old = row && !asking && !answers_->complete(*row);
  state_->setText(!asking     ? (old ? tr("stopped") : QString())
                  : total > 0 ? tr("testing, %1").arg(percent(double(done) / total))
                              : tr("testing"));
  stop_->setText(old ? tr("Test again") : tr("Stop"));
  stop_->setVisible(asking || old);
}

QString ClaimsPanel::inShort() const {
  if (!document_.hasProject() || document_.project().claims.empty()) return {};
  const std::size_t all = document_.project().claims.size();
  std::size_t supported = 0, answered = 0;
  for (std::size_t i = 0; i < all; ++i) {
    const ClaimAnswers::Known* known = answers_->find(i);
    if (!known || !known->answered()) continue;
    ++answered;
    supported += known->answer->supported;
  }
  if (answered < all) return tr("claims: %1").arg(all);
  return tr("%1 of %2 within range").arg(supported).arg(all);
}

}  // namespace zyga::ui
