#include "ui/panels/assumptions_panel.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QToolButton>

#include "ui/panels/cartilage_field.h"
#include "ui/panels/panel_parts.h"
#include "ui/theme/figures.h"
#include "ui/theme/unit_spin_box.h"

namespace zyga::ui {
namespace {

/// Merge keys of the steps, by field.
enum class Field { Least = 2000, By, Neck, Trunk, Tail, Contact, Gap, Near };

/// Cartilage between centra, % of centrum length. Taylor & Wedel 2013, PLoS ONE 8(10):e78214, abstract.
struct CartilagePreset {
  const char* animal;
  double percent;
};
constexpr CartilagePreset kPresets[] = {{"Rhea", 2.59},
                                        {"Sauroposeidon", 4.5},
                                        {"Turkey", 4.56},
                                        {"Juvenile Apatosaurus, low", 15},
                                        {"Juvenile Apatosaurus, high", 20},
                                        {"Juvenile giraffe", 24}};

void setQuietly(QDoubleSpinBox& box, double value) {
  const QSignalBlocker quiet(&box);
  box.setValue(value);
}

}  // namespace

AssumptionsPanel::AssumptionsPanel(Document& document, QWidget* parent) : QWidget(parent), document_(document) {
  auto* content = new QWidget;
  auto* form = new QFormLayout(content);
  setPanelMargins(*form);
  form->setLabelAlignment(Qt::AlignLeft);
  form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
  createOverlap(*form);
  createCartilage(*form);
  createTolerances(*form);
  auto* caution = mutedLabel(tr("A range taken from bare bone may be off by 5° a joint, and flesh may lessen it."));
  caution->setToolTip(tr("Kuznetsov & Tereschenko 2010; Cobley, Rayfield & Barrett 2013; Hutson & Hutson 2012"));
  form->addRow(caution);
  auto* scroll = new QScrollArea;
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setWidget(content);
  // The surface is the panel's, not the window's.
  content->setAutoFillBackground(false);
  scroll->viewport()->setAutoFillBackground(false);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(scroll);
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (what & Change::Assumptions) refresh();
  });
  refresh();
}

QDoubleSpinBox* AssumptionsPanel::percentField(const char* name, const QString& label, double most) {
  auto* field = new UnitSpinBox("%");
  field->setObjectName(name);
  field->setAccessibleName(label);
  field->setDecimals(0);
  field->setMinimumWidth(88);
  field->setRange(0, most);
  field->setSingleStep(5);
  field->setAlignment(Qt::AlignRight);
  return field;
}

void AssumptionsPanel::createOverlap(QFormLayout& form) {
  least_ = percentField("leastOverlap", tr("Least facet overlap"), 100);
  by_ = calmComboBox();
  by_->setObjectName("overlapBy");
  by_->addItem(tr("of length"), static_cast<int>(range::OverlapBy::Length));
  by_->addItem(tr("of area"), static_cast<int>(range::OverlapBy::Area));
  by_->setAccessibleName(tr("Overlap by"));
  auto* row = new QHBoxLayout;
  row->setSpacing(kGridStep);
  row->addWidget(least_, 1);
  row->addWidget(by_, 1);
  form.addRow(tr("Least overlap"), row);
  auto* presets = new QHBoxLayout;
  presets->setSpacing(kGridStep);
  for (const int percent : {50, 25, 0}) {
    auto* button = new QToolButton;
    button->setText(tr("%1 %").arg(percent));
    button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    button->setFocusPolicy(Qt::TabFocus);
    button->setObjectName(QString("overlap%1").arg(percent));
    button->setToolTip(
        tr("Published rules: 50 % of facet length (Cobley, Rayfield & Barrett 2013); living animals keep "
           "50 %, 25 % or almost none (Kambic et al. 2017)"));
    connect(button, &QToolButton::clicked, this, [this, percent] { least_->setValue(percent); });
    presets->addWidget(button, 1);
  }
  form.addRow(QString(), presets);
  connect(least_, &QDoubleSpinBox::valueChanged, this, [this](double percent) {
    change(static_cast<int>(Field::Least), tr("Least overlap"),
           [=](range::Assumptions& a) { a.leastOverlap = percent / 100; });
  });
  connect(by_, &QComboBox::currentIndexChanged, this, [this] {
    const auto by = static_cast<range::OverlapBy>(by_->currentData().toInt());
    change(static_cast<int>(Field::By), tr("Overlap by length or area"),
           [=](range::Assumptions& a) { a.overlapBy = by; });
  });
}

void AssumptionsPanel::createCartilage(QFormLayout& form) {
  struct Row {
    CartilageField** field;
    range::Cartilage range::Assumptions::*part;
    const char* name;
    QString label, step;
    Field key;
  };
  const Row rows[] = {
      {&neck_, &range::Assumptions::neck, "neckCartilage", tr("Cartilage, neck"), tr("Cartilage of the neck"),
       Field::Neck},
      {&trunk_, &range::Assumptions::trunk, "trunkCartilage", tr("trunk"), tr("Cartilage of the trunk"), Field::Trunk},
      {&tail_, &range::Assumptions::tail, "tailCartilage", tr("tail"), tr("Cartilage of the tail"), Field::Tail}};
  for (const Row& row : rows) {
    CartilageField* field = *row.field = new CartilageField(row.label);
    field->setObjectName(row.name);
    form.addRow(row.label, field);
    connect(field, &CartilageField::edited, this, [this, field, part = row.part, key = row.key, step = row.step] {
      change(static_cast<int>(key), step, [=](range::Assumptions& a) { a.*part = field->value(); });
    });
  }
  form.addRow(QString(), cartilagePresets());
}

QToolButton* AssumptionsPanel::cartilagePresets() {
  auto* button = new QToolButton;
  button->setText(tr("Neck as in…"));
  button->setToolTip(tr("Thickness measured in other animals: Taylor & Wedel 2013, PLoS ONE 8(10):e78214"));
  button->setPopupMode(QToolButton::InstantPopup);
  auto* menu = new QMenu(button);
  for (const CartilagePreset& preset : kPresets) {
    const QString label = tr("%1: %2 %").arg(QString::fromLatin1(preset.animal)).arg(preset.percent);
    menu->addAction(label, this, [this, percent = preset.percent] {
      change(static_cast<int>(Field::Neck), tr("Cartilage of the neck"), [=](range::Assumptions& a) {
        a.neck = {range::Cartilage::In::PercentOfCentrum, percent};
      });
    });
  }
  button->setMenu(menu);
  return button;
}

void AssumptionsPanel::createTolerances(QFormLayout& form) {
  struct Row {
    QDoubleSpinBox** field;
    double range::Assumptions::*part;
    const char* name;
    QString label, tip, step;
    double most;
    Field key;
  };
  const Row rows[] = {{&contact_, &range::Assumptions::facetContactTolerated, "facetContact", tr("Facets may press"),
                       tr("Share of the facet's length by which facets may enter each other. Author's choice"),
                       tr("Tolerated facet contact"), 50, Field::Contact},
                      {&gap_, &range::Assumptions::facetGapTolerated, "facetGap", tr("Facets may gape"),
                       tr("Share of the facet's length by which facets may stand apart. Author's choice"),
                       tr("Tolerated facet gap"), 100, Field::Gap},
                      {&near_, &range::Assumptions::nearMargin, "nearMargin", tr("Near the edge"),
                       tr("How close to a limit counts as near, as a share of the range. Author's choice"),
                       tr("Near margin"), 50, Field::Near}};
  for (const Row& row : rows) {
    QDoubleSpinBox* field = *row.field = percentField(row.name, row.label, row.most);
    field->setToolTip(row.tip);
    form.addRow(row.label, field);
    connect(field, &QDoubleSpinBox::valueChanged, this,
            [this, part = row.part, key = row.key, step = row.step](double percent) {
              change(static_cast<int>(key), step, [=](range::Assumptions& a) { a.*part = percent / 100; });
            });
  }
}

void AssumptionsPanel::change(int mergeKey, const QString& what, const std::function<void(range::Assumptions&)>& edit) {
  if (!document_.hasProject()) return;
  range::Assumptions after = document_.assumptions();
  edit(after);
  if (after == document_.assumptions()) return;
  document_.changeAssumptions(after, what, mergeKey);
}

void AssumptionsPanel::refresh() {
  setEnabled(document_.hasProject());
  if (!document_.hasProject()) return;
  const range::Assumptions& a = document_.assumptions();
  setQuietly(*least_, a.leastOverlap * 100);
  setQuietly(*contact_, a.facetContactTolerated * 100);
  setQuietly(*gap_, a.facetGapTolerated * 100);
  setQuietly(*near_, a.nearMargin * 100);
  const QSignalBlocker quiet(by_);
  by_->setCurrentIndex(by_->findData(static_cast<int>(a.overlapBy)));
  neck_->setValue(a.neck);
  trunk_->setValue(a.trunk);
  tail_->setValue(a.tail);
}

}  // namespace zyga::ui
