#include "ui/panels/assumptions_panel.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QScrollArea>
#include <QSettings>
#include <QSignalBlocker>
#include <QToolButton>
#include <utility>

#include "core/range/presets.h"
#include "ui/panels/cartilage_field.h"
#include "ui/panels/live_amount.h"
#include "ui/panels/readouts.h"
#include "ui/parts/panel_parts.h"
#include "ui/theme/drag_slider.h"
#include "ui/theme/typography.h"
#include "ui/theme/unit_spin_box.h"
#include "ui/words/assumption_words.h"
#include "ui/words/numbers.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

/// Merge keys of the steps, by field.
enum class Field {
  Least = 2000,
  By,
  Neck,
  Trunk,
  Tail,
  AllCartilage,
  Press,
  Gape,
  Settling,
  Contact,
  Near,
  Neutral,
  Horizontal,
  Neighbours
};

constexpr char kKeepsInSpaceKey[] = "assumptions/keepInSpace";

void addHeading(QGridLayout& grid, const QString& words, QWidget* beside = nullptr) {
  const int row = grid.rowCount();
  auto* label = new QLabel(words);
  label->setProperty("role", "title");
  grid.addWidget(label, row, 0, 1, beside ? 2 : 3, Qt::AlignLeft | Qt::AlignVCenter);
  if (beside) grid.addWidget(beside, row, 2, Qt::AlignRight);
}

void addRow(QGridLayout& grid, const QString& words, QWidget* field, const QString& tip = {}) {
  const int row = grid.rowCount();
  auto* label = new QLabel(words);
  label->setToolTip(tip);
  label->setBuddy(field);
  grid.addWidget(label, row, 0);
  grid.addWidget(field, row, 1, 1, 2);
}

}  // namespace

/// A number of the assumptions with its control's words.
struct AssumptionsPanel::AmountRow {
  const char* name;
  QString label, tip, step, unit;
  double range::Assumptions::*part;
  double perUnit;  ///< the part's own unit in one unit shown
  double max, by, fine;
  Field key;
};

AssumptionsPanel::AssumptionsPanel(Document& document, QWidget* parent) : QWidget(parent), document_(document) {
  document_.setKeepsInSpace(QSettings().value(kKeepsInSpaceKey, false).toBool());
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(scrolling(makeContent()));
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (what & Change::Assumptions) refresh();
  });
  refresh();
}

QWidget* AssumptionsPanel::makeContent() {
  auto* content = new QWidget;
  auto* grid = new QGridLayout(content);
  setPanelMargins(*grid);
  grid->setVerticalSpacing(kGridStep);
  grid->setColumnStretch(1, 1);
  addOverlap(*grid);
  addCartilage(*grid);
  addTolerances(*grid);
  addNeutral(*grid);
  addHorizontal(*grid);
  auto* caution = mutedLabel(bareBoneCaution());
  caution->setToolTip(bareBoneSources());
  grid->addWidget(caution, grid->rowCount(), 0, 1, 3);
  grid->setRowStretch(grid->rowCount(), 1);
  return content;
}

LiveAmount* AssumptionsPanel::addAmount(QGridLayout& grid, const AmountRow& row) {
  auto* amount = new LiveAmount(row.label, row.unit);
  amount->setToolTip(row.tip);
  amount->field()->setObjectName(row.name);
  amount->slider()->setObjectName(QString("%1Slider").arg(row.name));
  amount->setScale(row.max, row.by, row.fine, row.fine < 1 ? 1 : 0);
  addRow(grid, row.label, amount, row.tip);
  const auto edit = [part = row.part, perUnit = row.perUnit](double value) -> Edit {
    return [=](range::Assumptions& a) { a.*part = value * perUnit; };
  };
  connect(amount, &LiveAmount::moved, this, [this, edit, step = row.step](double v) { preview(step, edit(v)); });
  connect(amount, &LiveAmount::released, this, [this, step = row.step] { release(step); });
  connect(amount, &LiveAmount::cancelled, &document_, &Document::cancelPreview);
  connect(amount, &LiveAmount::typed, this,
          [this, edit, step = row.step, key = row.key](double v) { change(static_cast<int>(key), step, edit(v)); });
  showers_.push_back([=, part = row.part, perUnit = row.perUnit](const range::Assumptions& a) {
    amount->setValue(a.*part / perUnit);
  });
  return amount;
}

void AssumptionsPanel::addOverlap(QGridLayout& grid) {
  by_ = calmComboBox();
  by_->setObjectName("overlapBy");
  by_->addItem(tr("of length"), static_cast<int>(range::OverlapBy::Length));
  by_->addItem(tr("of area"), static_cast<int>(range::OverlapBy::Area));
  by_->setAccessibleName(tr("Overlap by"));
  by_->setToolTip(
      tr("The published rule counts the facet's length (Stevens & Parrish 1999); area is the "
         "stricter reading at the same share"));
  connect(by_, &QComboBox::currentIndexChanged, this, [this] {
    const auto by = static_cast<range::OverlapBy>(by_->currentData().toInt());
    change(static_cast<int>(Field::By), tr("Overlap by length or area"),
           [=](range::Assumptions& a) { a.overlapBy = by; });
  });
  showers_.push_back([this](const range::Assumptions& a) {
    const QSignalBlocker quiet(by_);
    by_->setCurrentIndex(by_->findData(static_cast<int>(a.overlapBy)));
  });
  addHeading(grid, tr("Zygapophyseal overlap"), by_);
  addAmount(grid, {"leastOverlap", tr("Minimum"), tr("Share of the facet that must stay covered"),
                   tr("Minimum overlap"), "%", &range::Assumptions::minOverlap, 0.01, 100, 5, 1, Field::Least});
  grid.addWidget(overlapPresets(), grid.rowCount(), 1, 1, 2);
}

QWidget* AssumptionsPanel::overlapPresets() {
  auto* presets = new QWidget;
  auto* row = new QHBoxLayout(presets);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(kGridStep);
  for (const range::OverlapPreset& preset : range::kOverlapPresets) {
    auto* button = new QToolButton;
    button->setText(percent(preset.share));
    button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    button->setFocusPolicy(Qt::TabFocus);
    button->setObjectName(QString("overlap%1").arg(preset.share * 100));
    button->setAccessibleName(tr("Minimum overlap %1").arg(button->text()));
    button->setToolTip(QString("%1\n%2").arg(presetWords(preset), say(preset.source)));
    connect(button, &QToolButton::clicked, this, [this, share = preset.share] {
      change(static_cast<int>(Field::Least), tr("Minimum overlap"),
             [=](range::Assumptions& a) { a.minOverlap = share; });
    });
    row->addWidget(button, 1);
  }
  return presets;
}

void AssumptionsPanel::addCartilage(QGridLayout& grid) {
  addHeading(grid, tr("Cartilage"));
  // Not in the last column alone, or that would be as wide as this beside the longest heading.
  grid.addWidget(cartilagePresets(), grid.rowCount() - 1, 1, 1, 2, Qt::AlignRight);
  struct Row {
    range::Cartilage range::Assumptions::*part;
    const char* name;
    QString label, step;
    Field key;
  };
  const Row rows[] = {
      {&range::Assumptions::neck, "neckCartilage", tr("Neck"), tr("Cartilage of the neck"), Field::Neck},
      {&range::Assumptions::trunk, "trunkCartilage", tr("Trunk"), tr("Cartilage of the trunk"), Field::Trunk},
      {&range::Assumptions::tail, "tailCartilage", tr("Tail"), tr("Cartilage of the tail"), Field::Tail}};
  for (const Row& row : rows) {
    auto* field = new CartilageField(row.step);
    field->setObjectName(row.name);
    addRow(grid, row.label, field, tr("Thickness between the centra"));
    const auto edit = [part = row.part](const range::Cartilage& cartilage) -> Edit {
      return [=](range::Assumptions& a) { a.*part = cartilage; };
    };
    connect(field, &CartilageField::moved, this,
            [this, edit, step = row.step](const range::Cartilage& c) { preview(step, edit(c)); });
    connect(field, &CartilageField::released, this, [this, step = row.step] { release(step); });
    connect(field, &CartilageField::cancelled, &document_, &Document::cancelPreview);
    connect(field, &CartilageField::edited, this, [this, edit, field, step = row.step, key = row.key] {
      change(static_cast<int>(key), step, edit(field->value()));
    });
    showers_.push_back([field, part = row.part](const range::Assumptions& a) { field->setValue(a.*part); });
  }
}

QToolButton* AssumptionsPanel::cartilagePresets() {
  auto* button = new QToolButton;
  button->setObjectName("cartilagePresets");
  button->setText(tr("Published values…"));
  button->setAccessibleName(tr("Published cartilage values"));
  button->setToolTip(tr("Thickness found or argued for in other animals, each with its source"));
  button->setFocusPolicy(Qt::TabFocus);
  button->setPopupMode(QToolButton::InstantPopup);
  auto* menu = new QMenu(button);
  menu->setToolTipsVisible(true);
  using Age = range::CartilagePreset::Age;
  menu->addSection(tr("Neck, trunk and tail"));
  for (const auto& [animal, percent] :
       {std::pair(tr("Grown sauropod"), range::kGrownCartilage), {tr("Young sauropod"), range::kYoungCartilage}}) {
    const range::Cartilage cartilage{range::Cartilage::In::PercentOfCentrum, percent};
    QAction* action = menu->addAction(tr("%1: %2").arg(animal, cartilageWords(cartilage)), this, [this, cartilage] {
      change(static_cast<int>(Field::AllCartilage), tr("Cartilage"),
             [=](range::Assumptions& a) { a.neck = a.trunk = a.tail = cartilage; });
    });
    action->setToolTip(tr("Measured in necks only; taken for trunk and tail as well: program default, no source"));
  }
  for (const auto& [age, heading] : {std::pair(Age::Grown, tr("Neck, as in grown animals")),
                                     {Age::Young, tr("Neck, as in young animals")},
                                     {Age::NotTold, tr("Neck, as in an animal of unknown age")}}) {
    menu->addSection(heading);
    for (const range::CartilagePreset& preset : range::kCartilagePresets) {
      if (preset.age != age) continue;
      QAction* action = menu->addAction(presetWords(preset), this, [this, cartilage = preset.cartilage()] {
        change(static_cast<int>(Field::Neck), tr("Cartilage of the neck"),
               [=](range::Assumptions& a) { a.neck = cartilage; });
      });
      action->setToolTip(say(preset.source));
    }
  }
  menu->addSeparator();
  menu->addAction(tr("None of them is the right value for another animal"))->setEnabled(false);
  button->setMenu(menu);
  return button;
}

void AssumptionsPanel::addTolerances(QGridLayout& grid) {
  addHeading(grid, tr("Tolerated"));
  addAmount(grid, {"facetContact", tr("Facet contact"),
                   tr("Share of the facet's length by which facets may interpenetrate. Program default, no source"),
                   tr("Tolerated facet interpenetration"), "%", &range::Assumptions::facetContactTolerated, 0.01, 50, 5,
                   1, Field::Press});
  addAmount(grid,
            {"facetGap", tr("Facet gap"),
             tr("Share of the facet's length by which facets may separate. Program default, no source"),
             tr("Tolerated facet gap"), "%", &range::Assumptions::facetGapTolerated, 0.01, 100, 5, 1, Field::Gape});
  addAmount(grid, {"settling", tr("Settling"),
                   tr("Share of the cartilage's thickness by which bones shift so that their facets fit best when they "
                      "turn. Program default, no source"),
                   tr("Settling within the cartilage"), "%", &range::Assumptions::settling, 0.01, 100, 10, 5,
                   Field::Settling});
  addContact(grid);
  addAmount(grid, {"nearMargin", tr("Near limit"),
                   tr("How close to a limit counts as near, as a share of the range. Program default, no source"),
                   tr("Near-limit margin"), "%", &range::Assumptions::nearMargin, 0.01, 50, 5, 1, Field::Near});
  addNeighbours(grid);
}

void AssumptionsPanel::addContact(QGridLayout& grid) {
  using range::Cartilage;
  using range::ContactTolerance;
  const auto typed = [](const Cartilage& shown) {
    return ContactTolerance{shown.in == Cartilage::In::Millimetres ? ContactTolerance::In::Millimetres
                                                                   : ContactTolerance::In::PercentOfBone,
                            shown.amount};
  };
  const QString step = tr("Tolerated bone interpenetration");
  auto* field = new CartilageField(step, tr("Percent of the smaller bone's mean extent, or millimetres"),
                                   {10, 0.1, 0.05, 2}, {50, 1, 0.5, 1});
  field->setObjectName("boneContact");
  addRow(grid, tr("Bone contact"), field,
         tr("Depth by which bones may interpenetrate away from their joint. Program default, no source") + '\n' +
             bendingRibsWords());
  const auto edit = [typed](const Cartilage& shown) -> Edit {
    return [tolerance = typed(shown)](range::Assumptions& a) { a.contactTolerated = tolerance; };
  };
  connect(field, &CartilageField::moved, this, [this, edit, step](const Cartilage& c) { preview(step, edit(c)); });
  connect(field, &CartilageField::released, this, [this, step] { release(step); });
  connect(field, &CartilageField::cancelled, &document_, &Document::cancelPreview);
  connect(field, &CartilageField::edited, this,
          [this, edit, field, step] { change(static_cast<int>(Field::Contact), step, edit(field->value())); });
  showers_.push_back([field](const range::Assumptions& a) {
    const bool millimetres = a.contactTolerated.in == ContactTolerance::In::Millimetres;
    field->setValue(
        {millimetres ? Cartilage::In::Millimetres : Cartilage::In::PercentOfCentrum, a.contactTolerated.amount});
  });
}

void AssumptionsPanel::addNeighbours(QGridLayout& grid) {
  auto* box = new QCheckBox(tr("Judge scans against inferred neighbours"));
  box->setObjectName("inferredNeighbours");
  box->setToolTip(
      tr("A joint between a marked scan and a bone whose facets are inferred is not assessed until both are marked; "
         "this assesses it against the inferred facets, and says so at the joint"));
  connect(box, &QCheckBox::toggled, this, [this](bool on) {
    change(static_cast<int>(Field::Neighbours), tr("Scans beside inferred bones"),
           [=](range::Assumptions& a) { a.inferredNeighbours = on; });
  });
  showers_.push_back([box](const range::Assumptions& a) {
    const QSignalBlocker quiet(box);
    box->setChecked(a.inferredNeighbours);
  });
  grid.addWidget(box, grid.rowCount(), 0, 1, 3);
}

void AssumptionsPanel::addNeutral(QGridLayout& grid) {
  addHeading(grid, tr("Neutral articulation"));
  neutral_ = calmComboBox();
  neutral_->setObjectName("neutralBy");
  neutral_->setAccessibleName(tr("Definition of neutral"));
  neutral_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  for (const auto by : {range::NeutralBy::Facets, range::NeutralBy::FacetsAndCentra}) {
    neutral_->addItem(neutralName(by), static_cast<int>(by));
    neutral_->setItemData(neutral_->count() - 1, neutralSources(by), Qt::ToolTipRole);
  }
  connect(neutral_, &QComboBox::currentIndexChanged, this, [this] {
    const auto by = static_cast<range::NeutralBy>(neutral_->currentData().toInt());
    change(static_cast<int>(Field::Neutral), tr("Definition of neutral"),
           [=](range::Assumptions& a) { a.neutralBy = by; });
  });
  showers_.push_back([this](const range::Assumptions& a) {
    const QSignalBlocker quiet(neutral_);
    neutral_->setCurrentIndex(neutral_->findData(static_cast<int>(a.neutralBy)));
    neutral_->setToolTip(neutralSources(a.neutralBy));
  });
  grid.addWidget(neutral_, grid.rowCount(), 0, 1, 3);
  stays_ = calmComboBox();
  stays_->setObjectName("whatStays");
  stays_->setAccessibleName(tr("What stays when neutral moves"));
  stays_->setToolTip(
      tr("When an assumption moves the neutral articulation, either the deflections stay and the bones turn, or "
         "the bones stay in space and the deflections are recomputed"));
  stays_->addItem(tr("when it moves, deflections stay"), false);
  stays_->addItem(tr("when it moves, bones stay in space"), true);
  stays_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  stays_->setCurrentIndex(stays_->findData(document_.keepsInSpace()));
  connect(stays_, &QComboBox::currentIndexChanged, this, [this] { keepInSpace(stays_->currentData().toBool()); });
  grid.addWidget(stays_, grid.rowCount(), 0, 1, 3);
}

void AssumptionsPanel::addHorizontal(QGridLayout& grid) {
  addHeading(grid, tr("Slope of a vertebra"));
  horizontal_ = calmComboBox();
  horizontal_->setObjectName("horizontalBy");
  horizontal_->setAccessibleName(tr("What the slope of a vertebra is measured by"));
  horizontal_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  for (const auto by : anatomy::kHorizontalBy) {
    horizontal_->addItem(horizontalName(by), static_cast<int>(by));
    horizontal_->setItemData(horizontal_->count() - 1, horizontalSources(by), Qt::ToolTipRole);
  }
  connect(horizontal_, &QComboBox::currentIndexChanged, this, [this] {
    const auto by = static_cast<anatomy::HorizontalBy>(horizontal_->currentData().toInt());
    change(static_cast<int>(Field::Horizontal), tr("What the slope of a vertebra is measured by"),
           [=](range::Assumptions& a) { a.horizontalBy = by; });
  });
  showers_.push_back([this](const range::Assumptions& a) {
    const QSignalBlocker quiet(horizontal_);
    horizontal_->setCurrentIndex(horizontal_->findData(static_cast<int>(a.horizontalBy)));
    horizontal_->setToolTip(horizontalSources(a.horizontalBy));
  });
  grid.addWidget(horizontal_, grid.rowCount(), 0, 1, 3);
}

void AssumptionsPanel::keepInSpace(bool keeps) {
  document_.setKeepsInSpace(keeps);
  QSettings().setValue(kKeepsInSpaceKey, keeps);
  emit hint(keeps ? tr("From now on the bones stay in space when neutral moves; their deflections are recomputed")
                  : tr("From now on the deflections stay when neutral moves; the bones turn"));
}

range::Assumptions AssumptionsPanel::edited(const Edit& edit) const {
  range::Assumptions after = document_.project().assumptions;
  edit(after);
  return after;
}

void AssumptionsPanel::preview(const QString& step, const Edit& edit) {
  if (!document_.hasProject()) return;
  document_.previewAssumptions(edited(edit));
  emit hint(tr("%1: %2 · %3 · Esc puts it back")
                .arg(step, assumptionsInShort(document_.assumptions()), verdictCount(document_.assessment())));
}

void AssumptionsPanel::release(const QString& step) {
  const int before = document_.undoStack().index();
  document_.commitPreview(step);
  if (document_.undoStack().index() != before) tellStep();
}

void AssumptionsPanel::change(int mergeKey, const QString& step, const Edit& edit) {
  if (!document_.hasProject()) return;
  const range::Assumptions after = edited(edit);
  if (after == document_.project().assumptions) return;
  document_.changeAssumptions(after, step, mergeKey);
  tellStep();
}

void AssumptionsPanel::tellStep() {
  emit hint(QString("%1 · %2").arg(document_.undoStack().undoText(), verdictCount(document_.assessment())));
}

void AssumptionsPanel::refresh() {
  setEnabled(document_.hasProject());
  if (!document_.hasProject()) return;
  for (const auto& show : showers_) show(document_.assumptions());
}

}  // namespace zyga::ui
