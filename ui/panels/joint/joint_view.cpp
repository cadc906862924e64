#include "ui/panels/joint/joint_view.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QScrollArea>
#include <QStackedWidget>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "core/kinematics/following.h"
#include "core/range/neutral.h"
#include "ui/panels/joint/angle_field.h"
#include "ui/panels/joint/facet_drawing.h"
#include "ui/panels/joint/joint_words.h"
#include "ui/panels/joint/supported_map_view.h"
#include "ui/theme/icons.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"
#include "ui/theme/unit_spin_box.h"
#include "ui/words/assumption_words.h"
#include "ui/words/numbers.h"
#include "ui/words/range_words.h"
#include "ui/words/say.h"

namespace zyga::ui {

namespace {

/// Steps of one field of one joint that follow each other are one undo step.
constexpr int kTurnKey = 0x5B0000, kMapKey = 0x5C0000;

QLabel* wrapped(const char* role, const char* name, QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setWordWrap(true);
  label->setProperty("role", role);
  label->setObjectName(QLatin1String(name));
  return label;
}

void showWords(QLabel* label, const QString& words) {
  label->setText(words);
  label->setVisible(!words.isEmpty());
}

/// A scroll area asks its page for a height by its width alone and would scroll as soon as the drawings are less high
/// than they like; here they give way first, down to the least they need.
class JointPage : public QWidget {
 public:
  using QWidget::QWidget;
  int heightForWidth(int width) const override { return layout()->minimumHeightForWidth(width); }
};

/// Typed limits are judged motion by motion, facets by all three angles together.
range::Level levelOfMotion(const anatomy::Joint& joint, const range::JointVerdict* verdict, int motion) {
  if (!verdict) return range::Level::NotJudged;
  if (joint.hasFacets() || verdict->level == range::Level::NotJudged) return verdict->level;
  range::Level level = range::Level::Supported;
  for (const range::Finding& finding : verdict->findings)
    if (finding.motion == motion || finding.kind == range::FindingKind::BoneContact)
      level = std::max(level, finding.level);
  return level;
}

}  // namespace

JointView::JointView(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), pages_(new QStackedWidget(this)) {
  setAccessibleName(tr("Joint view"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(pages_);
  pages_->addWidget(makeEmptyPage());
  pages_->addWidget(makeJointPage());
  connect(&document_, &Document::changed, this, &JointView::documentChanged);
  connect(&ThemeSwitch::instance(), &ThemeSwitch::changed, this, qOverload<>(&QWidget::update));
  refresh();
}

QSize JointView::minimumSizeHint() const {
  constexpr int kFiguresAcross = 40, kLinesDown = 10;
  return {fontMetrics().horizontalAdvance(QLatin1Char('0')) * kFiguresAcross, fontMetrics().height() * kLinesDown};
}

QSize JointView::sizeHint() const { return {minimumSizeHint().width(), fontMetrics().height() * 36}; }

QWidget* JointView::makeEmptyPage() {
  auto* words = wrapped("muted", "empty", pages_);
  words->setText(tr("Choose a joint on the animal or on the strip"));
  words->setAlignment(Qt::AlignCenter);
  words->setContentsMargins(kWideGap, kWideGap, kWideGap, kWideGap);
  return words;
}

QHBoxLayout* JointView::makeHead(QWidget* page) {
  title_ = wrapped("title", "title", page);
  title_->setFont(titleFont(font()));
  title_->setWordWrap(false);
  badge_ = new VerdictBadge(page);
  neutral_ = new QToolButton(page);
  neutral_->setIcon(icon(QStringLiteral("neutral")));
  neutral_->setIconSize({20, 20});
  neutral_->setToolTip(tr("Put this joint back to neutral"));
  neutral_->setAccessibleName(neutral_->toolTip());
  connect(neutral_, &QToolButton::clicked, this, &JointView::toNeutral);
  auto* head = new QHBoxLayout;
  head->addWidget(title_);
  head->addWidget(badge_, 1);
  head->addStretch();
  head->addWidget(neutral_);
  return head;
}

QHBoxLayout* JointView::makeDrawings(QWidget* page) {
  drawing_ = new FacetDrawing(page);
  mapView_ = new SupportedMapView(page);
  connect(mapView_, &SupportedMapView::dragged, this, &JointView::turnTo);
  connect(mapView_, &SupportedMapView::released, this, [this] { document_.commitPreview(turnText()); });
  connect(mapView_, &SupportedMapView::cancelled, &document_, &Document::cancelPreview);
  connect(mapView_, &SupportedMapView::stepped, this, &JointView::turnBy);
  auto* drawings = new QHBoxLayout;
  drawings->setSpacing(kGap);
  drawings->addWidget(drawing_, 1);
  drawings->addWidget(mapView_, 1);
  return drawings;
}

/// What neutral means here and how well the bones meet there, and the caution that belongs beside every limit.
QHBoxLayout* JointView::makeFoot(QWidget* page) {
  neutralBy_ = wrapped("muted", "neutralBy", page);
  caution_ = wrapped("muted", "caution", page);
  caution_->setText(tr("\u00B1 5° a joint"));
  caution_->setToolTip(bareBoneSources());
  for (QLabel* label : {neutralBy_, caution_}) label->setFont(smallFont(font()));
  caution_->setWordWrap(false);
  auto* foot = new QHBoxLayout;
  foot->setSpacing(kGap);
  foot->addWidget(neutralBy_, 1);
  foot->addWidget(caution_, 0, Qt::AlignTop);
  return foot;
}

QWidget* JointView::makeJointPage() {
  auto* page = new JointPage(pages_);
  auto* column = new QVBoxLayout(page);
  column->setContentsMargins(kWideGap, 0, kWideGap, kGridStep);
  column->setSpacing(kGridStep);
  column->addLayout(makeHead(page));
  column->addWidget(complaint_ = wrapped("", "complaint", page));
  column->addWidget(grounds_ = wrapped("", "grounds", page));
  column->addWidget(articulation_ = wrapped("", "articulation", page));
  column->addLayout(makeDrawings(page), 1);
  column->addWidget(numbers_ = new MeetingNumbers(page));
  for (int motion = 0; motion < 3; ++motion) {
    auto* field = angles_[static_cast<std::size_t>(motion)] = new AngleField(motion, page);
    connect(field, &AngleField::edited, this, [this, motion](double angle) { turn(motion, angle); });
    column->addWidget(field);
  }
  axial_ = new QCheckBox(tr("Axial rotation follows the facets"), page);
  axial_->setObjectName("axialFollows");
  axial_->setToolTip(
      tr("Bending sideways over facets that stand forward of the joint turns the bone about its long axis as well. "
         "Switched off, the axial rotation stays as typed."));
  connect(axial_, &QCheckBox::clicked, this, &JointView::letAxialFollow);
  column->addWidget(axial_);
  column->addLayout(makeFoot(page));
  column->addStretch();
  auto* scroll = new QScrollArea(pages_);
  scroll->setWidget(page);
  scroll->setWidgetResizable(true);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  page->setAutoFillBackground(false);
  scroll->viewport()->setAutoFillBackground(false);
  return scroll;
}

void JointView::documentChanged(Changes what) {
  if (what & (Changes(Change::Pose) | Change::Assumptions | Change::Contact | Change::Selection)) refresh();
}

void JointView::refresh() {
  const auto joint = document_.hasProject() ? document_.selectedJoint() : std::nullopt;
  if (joint) showJoint(*joint);
  pages_->setCurrentIndex(joint ? 1 : 0);
}

void JointView::showJoint(JointIndex joint) {
  const anatomy::Joint& bones = document_.specimen()[joint];
  const range::JointVerdict* verdict = document_.assessment().find(joint);
  const range::Level level = verdict ? verdict->level : range::Level::NotJudged;
  title_->setText(QString::fromStdString(bones.id));
  title_->setToolTip(bonesOf(document_.specimen(), joint));
  title_->setAccessibleDescription(title_->toolTip());
  if (verdict) badge_->show(*verdict);
  badge_->setVisible(verdict != nullptr);
  // Without the joint's name and state, which title and badge say already.
  const bool complains = verdict && !verdict->findings.empty();
  showWords(complaint_, complains ? capital(reasonWords(document_.scenario(), *verdict)) : QString());
  showWords(grounds_, groundsWords(bones, verdict));
  const bool facets = verdict && (verdict->left || verdict->right);
  drawing_->setVisible(facets);
  numbers_->setVisible(facets);
  if (facets) {
    drawing_->show(*verdict);
    numbers_->show(*verdict, document_.assumptions());
  }
  showMap(joint, level);
  showNeutral(joint);
  neutral_->setEnabled(!document_.pose()[joint].isZero(0));
  const bool fixed = bones.kind == anatomy::JointKind::Fixed;
  axial_->setVisible(document_.articulation()[joint].settling.hasFacets && !bones.typed);
  axial_->setChecked(!document_.pose().isAxialTyped(joint));
  for (int motion = 0; motion < 3; ++motion) {
    AngleField* field = angles_[static_cast<std::size_t>(motion)];
    field->setVisible(!fixed);
    if (fixed) continue;
    field->show(document_.specimen(), joint, document_.motionRange(joint, motion), document_.pose()[joint][motion],
                levelOfMotion(bones, verdict, motion));
  }
}

/// The map hangs on neither of the angles it shows, so that dragging its mark costs no new one.
void JointView::showMap(JointIndex joint, range::Level level) {
  const Eigen::Vector3d& angles = document_.pose()[joint];
  constexpr int kCells = 48;
  const double torsion = kinematics::toOwn(document_.specimen()[joint], document_.articulation()[joint], angles).z();
  const MapOf wanted{joint, torsion, document_.articulation()[joint], document_.assumptions(), document_.contact()};
  if (mapOf_ != wanted)
    map_ = range::supportedMap(document_.specimen(), document_.articulation(), document_.assumptions(), joint, angles,
                               kCells, document_.contact());
  mapOf_ = wanted;
  mapView_->setVisible(map_.size > 0);
  if (map_.size > 0) mapView_->show(map_, angles.x(), angles.y(), level);
}

void JointView::showNeutral(JointIndex joint) {
  const auto& rest = document_.articulation()[joint];
  const anatomy::Joint& bones = document_.specimen()[joint];
  const bool judged = bones.hasFacets() && bones.kind != anatomy::JointKind::Fixed;
  showWords(articulation_,
            articulationWords(document_.specimen(), joint, range::articulationNote(document_.specimen(), joint, rest)));
  const range::NeutralBy by = document_.assumptions().neutralBy;
  constexpr double kTogether = 0.5e-3;  // m: no bone is known better
  const bool together = rest.residual < kTogether;
  const QString form = together ? tr("Neutral: %1") : tr("Neutral: %1 (facet centres %2 apart)");
  showWords(neutralBy_, judged ? filled(form, {neutralName(by), millimetres(rest.residual)}) : QString());
  neutralBy_->setToolTip(neutralSources(by));
  caution_->setVisible(judged);
}

/// The axial rotation goes along.
kinematics::Pose JointView::bent(kinematics::Pose pose, JointIndex joint, double dorsiflexion, double lateral) const {
  const anatomy::Joint& bones = document_.specimen()[joint];
  const kinematics::Articulation::Rest& rest = document_.articulation()[joint];
  pose[joint] = kinematics::withMotion(bones, rest, pose[joint], 0, dorsiflexion);
  pose[joint] = kinematics::withMotion(bones, rest, pose[joint], 1, lateral);
  return pose;
}

void JointView::turnTo(double dorsiflexion, double lateral) {
  const auto joint = document_.selectedJoint();
  if (!joint) return;
  document_.previewPose(bent(document_.project().pose, *joint, dorsiflexion, lateral));
}

void JointView::turnBy(double dorsiflexion, double lateral) {
  const auto joint = document_.selectedJoint();
  if (!joint) return;
  const Eigen::Vector3d& now = document_.pose()[*joint];
  document_.changePose(bent(document_.pose(), *joint, now[0] + dorsiflexion, now[1] + lateral), turnText(),
                       kMapKey + static_cast<int>(joint->value));
}

QString JointView::turnText() const { return tr("Turn %1").arg(title_->text()); }

void JointView::turn(int motion, double angle) {
  const auto joint = document_.selectedJoint();
  if (!joint) return;
  kinematics::Pose pose = document_.pose();
  const anatomy::Joint& bones = document_.specimen()[*joint];
  pose[*joint] = kinematics::withMotion(bones, document_.articulation()[*joint], pose[*joint], motion, angle);
  if (motion == 2) pose.setAxialTyped(*joint, bones.hasFacets());
  const int key = kTurnKey + static_cast<int>(joint->value) * 3 + motion;
  document_.changePose(pose, turnText(), key);
}

void JointView::letAxialFollow(bool follow) {
  const auto joint = document_.selectedJoint();
  if (!joint) return;
  kinematics::Pose pose = document_.pose();
  if (follow)
    kinematics::turnToNeutral(document_.specimen(), document_.articulation(), *joint, 2, pose);
  else
    pose.setAxialTyped(*joint, true);
  document_.changePose(pose, follow ? tr("Let the axial rotation of %1 follow its facets").arg(title_->text())
                                    : tr("Hold the axial rotation of %1").arg(title_->text()));
}

void JointView::toNeutral() {
  const auto joint = document_.selectedJoint();
  if (!joint) return;
  kinematics::Pose pose = document_.pose();
  pose[*joint].setZero();
  pose.setAxialTyped(*joint, false);
  document_.changePose(pose, tr("%1 to neutral").arg(title_->text()));
}

namespace {
constexpr int kShape = 10;
}

VerdictBadge::VerdictBadge(QWidget* parent) : QWidget(parent) { setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed); }

void VerdictBadge::show(const range::JointVerdict& verdict) {
  level_ = verdict.level;
  words_ = stateWords(verdict);
  setAccessibleName(words_);
  updateGeometry();
  update();
}

QSize VerdictBadge::sizeHint() const {
  return {kShape + 2 + kGap + fontMetrics().horizontalAdvance(words_), fontMetrics().height() + kGridStep};
}

void VerdictBadge::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paintVerdict(painter, QPointF(kShape / 2.0 + 1, height() / 2.0), kShape, level_);
  painter.setPen(theme().text);
  painter.drawText(rect().adjusted(kShape + kGap, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, words_);
}

}  // namespace zyga::ui
