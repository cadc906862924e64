#include "ui/dialogs/picture/pass_fields.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/parts/panel_parts.h"
#include "ui/theme/typography.h"

namespace zyga::ui {
namespace {

struct Row {
  const char* title;
  const char* use;
};
/// By pass.
constexpr std::array<Row, picture::kAllPasses.size()> kRows{
    {{QT_TRANSLATE_NOOP("PassFields", "Shaded"),
      QT_TRANSLATE_NOOP("PassFields", "Bones in light, no lines, no ground: to paint over")},
     {QT_TRANSLATE_NOOP("PassFields", "Shadow"),
      QT_TRANSLATE_NOOP("PassFields", "What the bones take from the light on the ground: a layer to multiply")},
     {QT_TRANSLATE_NOOP("PassFields", "Outline"),
      QT_TRANSLATE_NOOP("PassFields", "Lines alone on nothing: to draw along or ink")},
     {QT_TRANSLATE_NOOP("PassFields", "Depth"),
      QT_TRANSLATE_NOOP("PassFields", "Near is white, far is black, 16 bits: for haze and focus")},
     {QT_TRANSLATE_NOOP("PassFields", "Direction"),
      QT_TRANSLATE_NOOP("PassFields", "Red faces right, green up, blue towards the eye: for other light")},
     {QT_TRANSLATE_NOOP("PassFields", "Bones"),
      QT_TRANSLATE_NOOP("PassFields", "One flat colour a bone, with a table: to select them by")},
     {QT_TRANSLATE_NOOP("PassFields", "Evidence"),
      QT_TRANSLATE_NOOP("PassFields", "One flat colour a kind of evidence: found, mirrored, inferred…")}}};

}  // namespace

PassFields::PassFields(QWidget* parent) : QWidget(parent), finished_(nullptr) {
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(kWideGap);
  grid->setVerticalSpacing(kGridStep);
  constexpr int kCells = static_cast<int>(kRows.size()) + 1, kColumns = 2, kHalf = (kCells + 1) / kColumns;
  int cell = 0;
  const auto add = [&](const char* name, const QString& title, const QString& use) {
    auto* box = new QCheckBox(title);
    box->setObjectName(name);
    box->setAccessibleDescription(use);
    QLabel* words = mutedLabel(use);
    words->setFont(smallFont(font()));
    words->setIndent(kWideGap + kGap);
    auto* column = new QVBoxLayout;
    column->setSpacing(0);
    column->addWidget(box);
    column->addWidget(words);
    column->addStretch(1);
    grid->addLayout(column, cell % kHalf, cell / kHalf);
    ++cell;
    connect(box, &QCheckBox::toggled, this, &PassFields::changed);
    return box;
  };
  finished_ = add("pictureFinished", tr("Finished picture"), tr("Light, shadow and lines in one"));
  for (std::size_t i = 0; i < kRows.size(); ++i) {
    const std::string name = "picturePass-" + std::string(picture::wordOf(picture::kAllPasses[i]));
    passes_[i] = add(name.c_str(), tr(kRows[i].title), tr(kRows[i].use));
  }
  for (int column = 0; column < kColumns; ++column) grid->setColumnStretch(column, 1);
}

bool PassFields::finished() const { return finished_->isChecked(); }

std::vector<picture::Pass> PassFields::passes() const {
  std::vector<picture::Pass> chosen;
  for (std::size_t i = 0; i < passes_.size(); ++i)
    if (passes_[i]->isChecked()) chosen.push_back(picture::kAllPasses[i]);
  return chosen;
}

void PassFields::setValue(bool finished, const std::vector<picture::Pass>& passes) {
  finished_->setChecked(finished);
  for (std::size_t i = 0; i < passes_.size(); ++i)
    passes_[i]->setChecked(std::find(passes.begin(), passes.end(), picture::kAllPasses[i]) != passes.end());
}

}  // namespace zyga::ui
