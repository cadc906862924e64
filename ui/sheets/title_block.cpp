#include "ui/sheets/title_block.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <set>

#include "core/anatomy/summary.h"
#include "core/kinematics/stand_readings.h"
#include "ui/sheets/sheet_view.h"
#include "ui/words/anatomy_words.h"
#include "ui/words/assumption_words.h"
#include "ui/words/numbers.h"
#include "ui/words/report_words.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

constexpr int kMostSources = 5;
constexpr int kMostOnPlate = 5;  // lines about its bones

QString layoutWords(files::SheetLayout layout) {
  switch (layout) {
    case files::SheetLayout::Side:
      return translated(QT_TRANSLATE_NOOP("words", "Left lateral view"));
    case files::SheetLayout::ThreeViews:
      return translated(QT_TRANSLATE_NOOP("words", "Left lateral, cranial and dorsal views (first angle)"));
    case files::SheetLayout::Evidence:
      return translated(QT_TRANSLATE_NOOP("words", "What is known: left lateral view"));
    case files::SheetLayout::Plate:
      return translated(QT_TRANSLATE_NOOP("words", "Plate: cranial, left lateral, caudal, dorsal and ventral views"));
    case files::SheetLayout::Neck:
      break;
  }
  return translated(QT_TRANSLATE_NOOP("words", "Neck, left lateral view"));
}

/// "A4"
QString paperWord(files::SheetPaper paper) {
  for (const auto& [word, known] : files::kSheetPapers)
    if (known == paper) return QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size())).toUpper();
  return {};
}

QStringList assumptionLines(const range::Assumptions& a) {
  QStringList lines{filled(translated(a.overlapBy == range::OverlapBy::Length
                                          ? QT_TRANSLATE_NOOP("words", "At least %1 zygapophyseal overlap (by length).")
                                          : QT_TRANSLATE_NOOP("words", "At least %1 zygapophyseal overlap (by area).")),
                           {percent(a.minOverlap)})};
  if (a.neck == a.trunk && a.trunk == a.tail)
    lines += filled(translated(QT_TRANSLATE_NOOP("words", "Cartilage %1.")), {cartilageInFull(a.neck)});
  else
    lines += filled(translated(QT_TRANSLATE_NOOP("words", "Cartilage: neck %1, trunk %2, tail %3.")),
                    {cartilageInFull(a.neck), cartilageInFull(a.trunk), cartilageInFull(a.tail)});
  lines += filled(
      translated(QT_TRANSLATE_NOOP("words", "Facets may interpenetrate by %1 and separate by %2 of their length.")),
      {percent(a.facetContactTolerated), percent(a.facetGapTolerated)});
  if (a.settling > 0 && std::max({a.neck.amount, a.trunk.amount, a.tail.amount}) > 0)
    lines += filled(
        translated(QT_TRANSLATE_NOOP("words", "Bones settle by up to %1 of the cartilage's thickness when they turn.")),
        {percent(a.settling)});
  lines += a.neutralBy == range::NeutralBy::Facets
               ? translated(QT_TRANSLATE_NOOP("words", "Neutral: facets in greatest contact."))
               : translated(QT_TRANSLATE_NOOP("words", "Neutral: facets in contact, centrum faces parallel."));
  return lines;
}

QStringList sizeLines(const SheetScene& scene) {
  const auto summary = anatomy::summarise(scene.scenario.specimen());
  const auto readings = kinematics::readStand(scene.scenario.specimen(), scene.scenario.placement());
  const auto line = [](const QString& name, double length) {
    return filled(translated(QT_TRANSLATE_NOOP("words", "%1 %2")), {name, metres(length)});
  };
  QStringList lines{line(translated(QT_TRANSLATE_NOOP("words", "Along the column")), summary.total),
                    line(translated(QT_TRANSLATE_NOOP("words", "Neck")), summary.neck),
                    line(translated(QT_TRANSLATE_NOOP("words", "Trunk")), summary.trunk),
                    line(translated(QT_TRANSLATE_NOOP("words", "Tail")), summary.tail)};
  if (std::isfinite(readings.hipHeight))
    lines += line(translated(QT_TRANSLATE_NOOP("words", "Hip height")), readings.hipHeight);
  if (std::isfinite(readings.shoulderHeight))
    lines += line(translated(QT_TRANSLATE_NOOP("words", "Shoulder height")), readings.shoulderHeight);
  if (const auto snout = kinematics::snoutHeight(scene.scenario.specimen(), scene.scenario.placement()))
    lines += line(translated(QT_TRANSLATE_NOOP("words", "Head height")), *snout);
  return lines;
}

QStringList sourceLines(const SheetScene& scene) {
  std::set<std::string> sources;
  for (const anatomy::Bone& bone : scene.scenario.specimen().bones)
    if (bone.evidence != anatomy::Evidence::Inferred && !bone.source.empty()) sources.insert(bone.source);
  QStringList lines;
  for (const std::string& source : sources) lines += QString::fromStdString(source);
  if (lines.isEmpty()) return {translated(QT_TRANSLATE_NOOP("words", "No source is given."))};
  if (lines.size() > kMostSources) {
    const auto more = lines.size() - kMostSources;
    lines = lines.mid(0, kMostSources);
    lines += translated(QT_TRANSLATE_N_NOOP("words", "and %n more"), static_cast<int>(more));
  }
  return {filled(translated(QT_TRANSLATE_NOOP("words", "Sources: %1.")), {lines.join("; ")})};
}

/// Of a plate: which bones, and how they are known.
QStringList plateLines(const SheetScene& scene, const std::vector<std::size_t>& bones) {
  QStringList lines;
  for (const std::size_t i : bones) {
    if (lines.size() == kMostOnPlate && bones.size() > kMostOnPlate) {
      lines += translated(QT_TRANSLATE_N_NOOP("words", "and %n more"), static_cast<int>(bones.size()) - kMostOnPlate);
      break;
    }
    const anatomy::Bone& bone = scene.scenario.specimen().bones[i];
    lines += filled(translated(QT_TRANSLATE_NOOP("words", "%1: %2.")),
                    {boneNameAndId(bone.name), evidenceName(bone.evidence)});
  }
  return lines;
}

/// Of a plate: what was measured on its bones, or their inferred lengths.
QStringList plateMeasures(const SheetScene& scene, const std::vector<std::size_t>& bones) {
  QStringList lines;
  for (const std::size_t i : bones) {
    const anatomy::Bone& bone = scene.scenario.specimen().bones[i];
    for (int m = 0; m < anatomy::kMeasureCount && lines.size() <= kMostOnPlate; ++m) {
      const auto measure = static_cast<anatomy::Measure>(m);
      const anatomy::Cell& cell = bone.measures[measure];
      if (!cell.measured() && !(measure == anatomy::Measure::Length && cell.known())) continue;
      const QString name = bones.size() > 1 ? QString::fromStdString(bone.id) + ", " + measureName(measure)
                                            : capital(measureName(measure));
      lines += filled(cell.measured() ? translated(QT_TRANSLATE_NOOP("words", "%1 %2"))
                                      : translated(QT_TRANSLATE_NOOP("words", "%1 %2, inferred")),
                      {name, measureValue(measure, cell.value)});
    }
  }
  return lines;
}

QStringList noteLines(const SheetScene& scene) {
  QStringList lines;
  for (std::size_t i = 0; i < scene.notes.size(); ++i) {
    const anatomy::Note& note = scene.notes[i];
    lines += filled(note.source.empty() ? translated(QT_TRANSLATE_NOOP("words", "%1  %2 (%3, %4)"))
                                        : translated(QT_TRANSLATE_NOOP("words", "%1  %2 (%3, %4; %5)")),
                    {QString::number(i + 1), QString::fromStdString(note.text), QString::fromStdString(toId(note.bone)),
                     noteBasisName(note.basis), QString::fromStdString(note.source)});
  }
  return lines;
}

QStringList broken(const QStringList& lines, double size, double width) {
  QStringList all;
  for (const QString& line : lines) all += brokenWords(line, size, width);
  return all;
}

}  // namespace

TitleBlock::TitleBlock(const SheetScene& scene, const files::Sheet& sheet, const EvidenceKey& key, double width,
                       const SheetStyle& style)
    : title_(QString::fromStdString(sheet.title.empty() ? scene.scenario.specimen().name : sheet.title)),
      layout_(layoutWords(sheet.layout)),
      paper_(paperWord(sheet.paper)),
      width_(width),
      text_(style.text),
      leading_(style.leading()),
      titleSize_(style.title) {
  const double gap = 3 * text_;
  const double shares[] = {0.25, 0.15, 0.24, 0.36};
  const bool plate = sheet.layout == files::SheetLayout::Plate;
  const std::vector<std::size_t> bones = plate ? plateBones(scene, sheet.plate) : std::vector<std::size_t>();
  QStringList first{layout_};
  if (plate) {
    first += plateLines(scene, bones);
  } else {
    first += filled(translated(QT_TRANSLATE_NOOP("words", "Pose: %1.")), {poseWord(scene.poseName)});
    first += verdictCount(scene.scenario.assessment()) + '.';
  }
  QStringList known{key.completeness() + "."};
  known += sourceLines(scene);
  if (!plate) known += bareBoneCaution();
  if (sheet.bones == files::SheetBones::InBody)
    known += translated(QT_TRANSLATE_NOOP("words", "The dark body is a guide by program defaults, not anatomy."));
  known += notEngineering();
  const std::pair<QString, QStringList> parts[] = {
      {QString(), first},
      plate ? std::pair(translated(QT_TRANSLATE_NOOP("words", "Measures")), plateMeasures(scene, bones))
            : std::pair(translated(QT_TRANSLATE_NOOP("words", "Sizes")), sizeLines(scene)),
      plate ? std::pair(QString(), QStringList())
            : std::pair(translated(QT_TRANSLATE_NOOP("words", "Assumptions")),
                        assumptionLines(scene.scenario.assumptions())),
      {translated(QT_TRANSLATE_NOOP("words", "Evidence and cautions")), known}};
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

void TitleBlock::draw(Page& page, const QPointF& topLeft, double scale, const SheetStyle& style) const {
  page.begin("title-block");
  double top = topLeft.y();
  const auto divide = [&] {
    page.line({topLeft.x(), top}, {topLeft.x() + width_, top}, style.stroke(style.ink, style.hairline));
  };
  qsizetype noteRows = 0;
  for (const Column& column : notes_) {
    noteRows = std::max(noteRows, column.lines.size());
    for (qsizetype i = 0; i < column.lines.size(); ++i)
      page.words({{topLeft.x() + column.x, top + (static_cast<double>(i) + 1.2) * leading_},
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
  page.words({{topLeft.x(), base}, title_, titleSize_, style.ink, Qt::AlignLeft, true});
  page.words({{topLeft.x() + width_, base},
              scaleWords(scale) + QStringLiteral("   ") + paper_,
              titleSize_,
              style.ink,
              Qt::AlignRight,
              true});
  for (const Column& column : columns_) {
    const double x = topLeft.x() + column.x;
    double y = base + 1.25 * leading_;
    if (!column.title.isEmpty()) {
      page.words({{x, y}, column.title, text_, style.muted});
      y += leading_;
    }
    for (const QString& line : column.lines) {
      page.words({{x, y}, line, text_, style.ink});
      y += leading_;
    }
  }
  page.end();
}

}  // namespace zyga::ui
