#include "ui/sheets/joint_table.h"

#include <QObject>
#include <algorithm>

#include "ui/sheets/sheet_marks.h"
#include "ui/words/numbers.h"

namespace zyga::ui {
namespace {

QString cover(const range::JointVerdict& verdict, range::OverlapBy by) {
  if (!verdict.left && !verdict.right) return QString(QChar(0x2013));
  double smallest = 1;
  for (const auto& side : {verdict.left, verdict.right})
    if (side) smallest = std::min(smallest, by == range::OverlapBy::Length ? side->overlapLength : side->overlapArea);
  return percent(smallest);
}

bool ofTheNeck(const anatomy::Joint& joint) {
  return joint.region == anatomy::Region::Cervical || joint.region == anatomy::Region::Skull;
}

}  // namespace

JointTable::JointTable(const SheetScene& scene, const SheetStyle& style)
    : titles_{QObject::tr("joint"), QObject::tr("up"), QObject::tr("left"), QObject::tr("rotation"),
              QObject::tr("zygapophyseal overlap")},
      style_(style) {
  for (const range::JointVerdict& verdict : scene.scenario.assessment().joints) {
    const anatomy::Joint& joint = scene.scenario.specimen()[verdict.joint];
    if (!ofTheNeck(joint)) continue;
    const Eigen::Vector3d& angles = scene.scenario.pose()[verdict.joint];
    rows_.push_back({{QString::fromStdString(joint.id), degrees(angles.x()), degrees(angles.y()), degrees(angles.z()),
                      cover(verdict, scene.scenario.assumptions().overlapBy)},
                     verdict.level});
  }
  for (qsizetype c = 0; c < titles_.size(); ++c) {
    double width = widthOf(titles_[c], style.text);
    for (const Row& row : rows_) width = std::max(width, widthOf(row.cells[c], style.text));
    widths_.push_back(width + 1.8 * style.text);
  }
}

double JointTable::width() const {
  double width = 1.6 * style_.text;
  for (const double column : widths_) width += column;
  return width;
}

double JointTable::height() const { return (static_cast<double>(rows_.size()) + 1.6) * style_.leading(); }

void JointTable::draw(Page& page, const QPointF& topLeft) const {
  const auto drawRow = [&](const QStringList& cells, double y, const QColor& colour) {
    double x = topLeft.x() + 1.6 * style_.text;
    for (qsizetype c = 0; c < cells.size(); ++c) {
      const double wide = widths_[static_cast<std::size_t>(c)];
      // Names to the left, numbers to the right.
      page.words({{c == 0 ? x : x + wide, y}, cells[c], style_.text, colour, c == 0 ? Qt::AlignLeft : Qt::AlignRight});
      x += wide;
    }
  };
  page.begin("joint-table");
  double y = topLeft.y() + style_.leading();
  drawRow(titles_, y, style_.muted);
  y += 0.4 * style_.leading();
  page.line({topLeft.x(), y}, {topLeft.x() + width(), y}, style_.stroke(style_.ink, style_.hairline));
  for (const Row& row : rows_) {
    y += style_.leading();
    drawVerdict(page, {topLeft.x() + 0.5 * style_.text, y - 0.36 * style_.text}, 0.8 * style_.text, row.level);
    drawRow(row.cells, y, style_.ink);
  }
  page.end();
}

}  // namespace zyga::ui
