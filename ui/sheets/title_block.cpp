#include "ui/sheets/title_block.h"

#include <QObject>
#include <algorithm>
#include <cmath>
#include <set>

#include "core/anatomy/summary.h"
#include "core/kinematics/stand_readings.h"
#include "ui/sheets/sheet_view.h"
#include "ui/theme/words.h"

namespace zyga::ui {
namespace {

constexpr int kMostSources = 5;

QString layoutWords(files::SheetLayout layout) {
  switch (layout) {
    case files::SheetLayout::Side:
      return QObject::tr("Left lateral view");
    case files::SheetLayout::ThreeViews:
      return QObject::tr("Left lateral, cranial and dorsal views (first angle)");
    case files::SheetLayout::Evidence:
      return QObject::tr("What is known: left lateral view");
    case files::SheetLayout::Neck:
      break;
  }
  return QObject::tr("Neck, left lateral view");
}

QString paperWords(files::SheetPaper paper) {
  for (const auto& [word, known] : files::kSheetPapers)
    if (known == paper) return text(word).toUpper();
  return {};
}

QString cartilage(const range::Cartilage& c) {
  const bool percent = c.in == range::Cartilage::In::PercentOfCentrum;
  return QObject::tr(percent ? "%1 % of the centrum" : "%1 mm").arg(c.amount);
}

QStringList assumptionLines(const range::Assumptions& a) {
  const QString by = a.overlapBy == range::OverlapBy::Length ? QObject::tr("length") : QObject::tr("area");
  QStringList lines{QObject::tr("Facets share at least %1 % by %2.").arg(a.leastOverlap * 100).arg(by)};
  if (a.neck == a.trunk && a.trunk == a.tail)
    lines += QObject::tr("Cartilage %1.").arg(cartilage(a.neck));
  else
    lines += QObject::tr("Cartilage: neck %1, trunk %2, tail %3.")
                 .arg(cartilage(a.neck), cartilage(a.trunk), cartilage(a.tail));
  lines += QObject::tr("Facets may press in by %1 % and gape by %2 % of their length.")
               .arg(a.facetContactTolerated * 100)
               .arg(a.facetGapTolerated * 100);
  lines += a.neutralBy == range::NeutralBy::Facets ? QObject::tr("Neutral: facets in greatest contact.")
                                                   : QObject::tr("Neutral: facets in contact, centrum faces parallel.");
  return lines;
}

QStringList sizeLines(const SheetScene& scene) {
  const auto summary = anatomy::summarise(*scene.specimen);
  const auto readings = kinematics::readStand(*scene.specimen, scene.X_WB);
  const auto line = [](const QString& name, double metres) {
    return QObject::tr("%1 %2 m").arg(name, QString::number(metres, 'f', 2));
  };
  QStringList lines{line(QObject::tr("Along the column"), summary.total), line(QObject::tr("Neck"), summary.neck),
                    line(QObject::tr("Trunk"), summary.trunk), line(QObject::tr("Tail"), summary.tail)};
  if (std::isfinite(readings.hipHeight)) lines += line(QObject::tr("Hip height"), readings.hipHeight);
  if (std::isfinite(readings.shoulderHeight)) lines += line(QObject::tr("Shoulder height"), readings.shoulderHeight);
  if (const auto snout = kinematics::snoutHeight(*scene.specimen, scene.X_WB))
    lines += line(QObject::tr("Head height"), *snout);
  return lines;
}

QStringList sourceLines(const SheetScene& scene) {
  std::set<std::string> sources;
  for (const anatomy::Bone& bone : scene.specimen->bones)
    if (bone.evidence != anatomy::Evidence::Inferred && !bone.source.empty()) sources.insert(bone.source);
  QStringList lines;
  for (const std::string& source : sources) lines += QString::fromStdString(source);
  if (lines.isEmpty()) return {QObject::tr("No source is given.")};
  if (lines.size() > kMostSources) {
    const auto more = lines.size() - kMostSources;
    lines = lines.mid(0, kMostSources);
    lines += QObject::tr("and %1 more").arg(more);
  }
  return {QObject::tr("Sources: %1.").arg(lines.join("; "))};
}

QStringList noteLines(const SheetScene& scene) {
  QStringList lines;
  for (std::size_t i = 0; i < scene.notes.size(); ++i) {
    const anatomy::Note& note = scene.notes[i];
    QString line = QString("%1  %2").arg(i + 1).arg(QString::fromStdString(note.text));
    line += QObject::tr(" (%1, %2").arg(QString::fromStdString(toId(note.bone)), text(title(note.basis)));
    line += note.source.empty() ? QString(")") : QObject::tr("; %1)").arg(QString::fromStdString(note.source));
    lines += line;
  }
  return lines;
}

QStringList broken(const QStringList& lines, double size, double width) {
  QStringList all;
  for (const QString& line : lines) all += brokenWords(line, size, width);
  return all;
}

}  // namespace

QString verdictWords(const range::Assessment& assessment) {
  const auto count = [&](range::Level level) {
    return std::count_if(assessment.joints.begin(), assessment.joints.end(),
                         [level](const auto& v) { return v.level == level; });
  };
  const auto beyond = count(range::Level::Beyond), near = count(range::Level::Near);
  const auto all = static_cast<qlonglong>(assessment.joints.size());
  if (beyond > 0) return QObject::tr("%1 of %2 joints beyond their range").arg(beyond).arg(all);
  if (near > 0) return QObject::tr("No joint beyond its range, %1 of %2 near it").arg(near).arg(all);
  return QObject::tr("No joint beyond its range");
}

TitleBlock::TitleBlock(const SheetScene& scene, const files::Sheet& sheet, const EvidenceKey& key, double width,
                       const SheetStyle& style)
    : title_(QString::fromStdString(sheet.title.empty() ? scene.specimen->name : sheet.title)),
      layout_(layoutWords(sheet.layout)),
      paper_(paperWords(sheet.paper)),
      width_(width),
      text_(style.text),
      leading_(style.leading()),
      titleSize_(style.title) {
  const double gap = 3 * text_;
  const double shares[] = {0.25, 0.15, 0.24, 0.36};
  const QString pose = scene.poseName.empty() ? QObject::tr("present pose") : QString::fromStdString(scene.poseName);
  const QStringList first{layout_, QObject::tr("Pose: %1.").arg(pose), verdictWords(scene.assessment) + "."};
  QStringList known{key.completeness() + "."};
  known += sourceLines(scene);
  known +=
      QObject::tr("Ranges are of bare bones: they may be off by 5 degrees a joint, and soft tissue may lessen them.");
  known += QObject::tr("Not an engineering document; local codes and licensed practice decide.");
  const std::pair<QString, QStringList> parts[] = {{QString(), first},
                                                   {QObject::tr("Sizes"), sizeLines(scene)},
                                                   {QObject::tr("Assumptions"), assumptionLines(scene.assumptions)},
                                                   {QObject::tr("Evidence and cautions"), known}};
  double x = 0;
  for (std::size_t i = 0; i < 4; ++i) {
    const double share = shares[i] * (width_ - 3 * gap);
    columns_.push_back({parts[i].first, broken(parts[i].second, text_, share), x});
    x += share + gap;
  }
  if (!sheet.notes || scene.notes.empty()) return;
  // Notes run in three columns, filled one after the other.
  const double wide = (width_ - 2 * gap) / 3;
  std::vector<QStringList> entries;
  qsizetype rows = 0;
  for (const QString& line : noteLines(scene)) {
    entries.push_back(brokenWords(line, text_, wide));
    rows += entries.back().size();
  }
  const qsizetype most = (rows + 2) / 3;
  for (const QStringList& entry : entries) {
    const bool full = notes_.empty() || (notes_.size() < 3 && notes_.back().lines.size() + entry.size() > most + 1 &&
                                         !notes_.back().lines.isEmpty());
    if (full) notes_.push_back({QString(), {}, static_cast<double>(notes_.size()) * (wide + gap)});
    notes_.back().lines += entry;
  }
}

double TitleBlock::height() const {
  qsizetype rows = 0, noteRows = 0;
  for (const Column& column : columns_) rows = std::max(rows, column.lines.size() + (column.title.isEmpty() ? 0 : 1));
  for (const Column& column : notes_) noteRows = std::max(noteRows, column.lines.size());
  const double body = 1.2 * titleSize_ + 0.6 * leading_ + static_cast<double>(rows) * leading_;
  return body + (noteRows > 0 ? (static_cast<double>(noteRows) + 1.1) * leading_ : 0);
}

void TitleBlock::draw(Plate& plate, const QPointF& topLeft, double scale, const SheetStyle& style) const {
  plate.begin("title-block");
  double top = topLeft.y();
  const auto divide = [&] {
    plate.line({topLeft.x(), top}, {topLeft.x() + width_, top}, style.stroke(style.ink, style.hairline));
  };
  qsizetype noteRows = 0;
  for (const Column& column : notes_) {
    noteRows = std::max(noteRows, column.lines.size());
    for (qsizetype i = 0; i < column.lines.size(); ++i)
      plate.words({{topLeft.x() + column.x, top + (static_cast<double>(i) + 1.2) * leading_},
                   column.lines[i],
                   text_,
                   style.ink});
  }
  if (noteRows > 0) {
    divide();
    top += (static_cast<double>(noteRows) + 1.1) * leading_;
  }
  divide();
  const double base = top + 1.2 * titleSize_;
  plate.words({{topLeft.x(), base}, title_, titleSize_, style.ink, Qt::AlignLeft, true});
  plate.words({{topLeft.x() + width_, base},
               QObject::tr("%1   %2").arg(scaleWords(scale), paper_),
               titleSize_,
               style.ink,
               Qt::AlignRight,
               true});
  for (const Column& column : columns_) {
    const double x = topLeft.x() + column.x;
    double y = base + 1.25 * leading_;
    if (!column.title.isEmpty()) {
      plate.words({{x, y}, column.title, text_, style.muted});
      y += leading_;
    }
    for (const QString& line : column.lines) {
      plate.words({{x, y}, line, text_, style.ink});
      y += leading_;
    }
  }
  plate.end();
}

}  // namespace zyga::ui
