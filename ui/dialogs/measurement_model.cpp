#include "ui/dialogs/measurement_model.h"

#include <algorithm>

#include "core/anatomy/tables/blank_table.h"
#include "ui/commands/project_edits.h"
#include "ui/commands/table_edits.h"
#include "ui/parts/evidence_mark.h"
#include "ui/theme/theme.h"
#include "ui/words/anatomy_words.h"
#include "ui/words/numbers.h"
#include "ui/words/say.h"
#include "ui/words/table_words.h"

namespace zyga::ui {
namespace {

using anatomy::Measure;

constexpr int kEvidenceColumn = 0, kFirstMeasure = 1;

QString numberOf(Measure measure, double value) {
  return anatomy::isAngle(measure) ? plainDegrees(value) : ui::plain(value * 1000, 1);
}

/// As many digits as were typed.
QString exactNumberOf(Measure measure, double value) {
  const double scale = anatomy::isAngle(measure) ? 180 / std::numbers::pi : 1000;
  return QString::number(value * scale, 'g', 7);
}

/// Broken into lines that a narrow column has room for.
QString inLines(const QString& words) {
  constexpr int kLine = 12;
  QString out;
  int line = 0;
  for (const QString& word : words.split(' ')) {
    const bool breaks = line > 0 && line + 1 + word.size() > kLine;
    if (!out.isEmpty()) out += breaks ? '\n' : ' ';
    line = breaks ? static_cast<int>(word.size()) : line + 1 + static_cast<int>(word.size());
    out += word;
  }
  return out;
}

QString idOfBone(const anatomy::BoneName& bone) { return QString::fromStdString(toId(bone)); }

}  // namespace

MeasurementModel::MeasurementModel(Document& document, QObject* parent)
    : QAbstractTableModel(parent), document_(document) {
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (what & Change::Specimen)
      refresh();
    else if ((what & Change::Bones) && !bones_.empty())
      emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
  });
  refresh();
}

void MeasurementModel::refresh() {
  std::vector<anatomy::BoneName> bones;
  remarks_.clear();
  remarkAt_.clear();
  if (document_.hasProject()) {
    const anatomy::MeasurementTable& table = document_.project().table;
    for (const anatomy::TableRow& row : table.rows) bones.push_back(row.name);
    remarks_ = anatomy::implausibleCells(table);
    for (const auto& remark : remarks_) remarkAt_[{remark.bone, remark.measure}] = said(remark);
  }
  // With the same bones the place in the table stays.
  if (bones != bones_) {
    beginResetModel();
    bones_ = std::move(bones);
    endResetModel();
  } else if (!bones_.empty()) {
    emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
  }
  emit remarksChanged();
}

QString MeasurementModel::said(const anatomy::ImplausibleCell& remark) {
  return filled(translated(QT_TRANSLATE_NOOP("words", "%1; %2")), {say(causeOf(remark)), say(mendOf(remark))});
}

int MeasurementModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(bones_.size());
}

int MeasurementModel::sourceColumn() const {
  return kFirstMeasure + static_cast<int>(anatomy::measuresInOrder().size());
}

int MeasurementModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : sourceColumn() + 1; }

std::optional<Measure> MeasurementModel::measureAt(int column) const {
  if (column < kFirstMeasure || column >= sourceColumn()) return std::nullopt;
  return anatomy::measuresInOrder()[static_cast<std::size_t>(column - kFirstMeasure)];
}

QModelIndex MeasurementModel::indexOf(const anatomy::BoneName& bone, Measure measure) const {
  const auto row = std::find(bones_.begin(), bones_.end(), bone);
  const auto& order = anatomy::measuresInOrder();
  const auto column = std::find(order.begin(), order.end(), measure);
  if (row == bones_.end()) return {};
  return index(static_cast<int>(row - bones_.begin()), kFirstMeasure + static_cast<int>(column - order.begin()));
}

const anatomy::TableRow& MeasurementModel::rowAt(int row) const {
  return document_.project().table.rows.at(static_cast<std::size_t>(row));
}

const anatomy::Cell& MeasurementModel::cellAt(const QModelIndex& index) const {
  return rowAt(index.row()).measures[*measureAt(index.column())];
}

QVariant MeasurementModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  if (const auto measure = measureAt(index.column())) return measureData(index, *measure, role);
  const anatomy::TableRow& row = rowAt(index.row());
  if (role == kTakenRole) return true;
  if (index.column() == kEvidenceColumn) {
    if (role == Qt::DisplayRole) return evidenceWord(row.evidence);
    if (role == Qt::EditRole) return static_cast<int>(row.evidence);
    if (role == Qt::ToolTipRole) return capital(evidenceName(row.evidence));
    return {};
  }
  if (role == Qt::DisplayRole || role == Qt::EditRole || (role == Qt::ToolTipRole && !row.source.empty()))
    return QString::fromStdString(row.source);
  return {};
}

QVariant MeasurementModel::measureData(const QModelIndex& index, Measure measure, int role) const {
  const anatomy::Cell& cell = cellAt(index);
  const bool taken = anatomy::takesMeasure(boneAt(index.row()).kind, measure);
  switch (role) {
    case kTakenRole:
      return taken;
    case kMeasuredRole:
      return cell.measured();
    case kRemarkRole: {
      const auto found = remarkAt_.find({boneAt(index.row()), measure});
      return found == remarkAt_.end() ? QString() : found->second;
    }
    case kInferredRole:
      return taken && cell.known() && !cell.measured() ? numberOf(measure, cell.value) : QString();
    case Qt::DisplayRole:
      return taken && cell.known() ? numberOf(measure, cell.value) : QString();
    case Qt::EditRole:
      return cell.measured() ? exactNumberOf(measure, cell.value) : QString();
    case Qt::TextAlignmentRole:
      return QVariant::fromValue(Qt::Alignment(Qt::AlignRight | Qt::AlignVCenter));
    case Qt::ForegroundRole:
      return cell.measured() ? theme().text : theme().muted;
    case Qt::BackgroundRole:
      return taken ? QVariant() : QVariant(withAlpha(theme().line, 0.35));
    case Qt::ToolTipRole:
      return taken ? toolTipOf(index, measure) : QString();
    default:
      return {};
  }
}

QString MeasurementModel::toolTipOf(const QModelIndex& index, Measure measure) const {
  const anatomy::Cell& cell = cellAt(index);
  QStringList lines{cellName(boneAt(index.row()), measure)};
  lines << (cell.known() ? originOf(measure, cell) : tr("not measured, and not needed"));
  const QString remark = data(index, kRemarkRole).toString();
  if (!remark.isEmpty()) lines << remark;
  return lines.join('\n');
}

QString MeasurementModel::refusalOf(const QModelIndex& index, const QString& text) const {
  const auto measure = measureAt(index.column());
  if (!measure || text.trimmed().isEmpty()) return {};
  const TypedValue typed = readTyped(*measure, text);
  if (!typed.refused()) {
    const Obstacle obstacle = obstacleTo(document_, {boneAt(index.row()), *measure, typed.value});
    if (!obstacle.any()) return {};
    return filled(translated(QT_TRANSLATE_NOOP("words", "%1; %2")), {say(obstacle.cause), say(obstacle.mend)});
  }
  return filled(translated(QT_TRANSLATE_NOOP("words", "%1; %2")), {say(typed.cause), say(typed.mend)});
}

bool MeasurementModel::setMeasure(const QModelIndex& index, Measure measure, const QString& typed) {
  const anatomy::BoneName bone = boneAt(index.row());
  const QString name = cellName(bone, measure);
  if (typed.trimmed().isEmpty()) {
    if (cellAt(index).measured()) clear({index});
    return true;
  }
  if (typed.trimmed() == data(index, Qt::EditRole).toString()) return true;
  if (const QString why = refusalOf(index, typed); !why.isEmpty()) {
    emit refused(tr("%1: %2").arg(name, why));
    return false;
  }
  const double value = readTyped(measure, typed).value;
  changeCells(document_, {{bone, measure, value}}, tr("%1: %2").arg(name, measureValue(measure, value)));
  return true;
}

void MeasurementModel::clear(const QModelIndexList& cells) {
  std::vector<CellEdit> edits;
  for (const QModelIndex& cell : cells)
    if (const auto measure = measureAt(cell.column()); measure && cellAt(cell).measured())
      edits.push_back({boneAt(cell.row()), *measure, std::nullopt});
  if (edits.empty()) return;
  const QString what = edits.size() == 1 ? tr("%1: blank").arg(cellName(edits[0].bone, edits[0].measure))
                                         : tr("%n cells blank", nullptr, static_cast<int>(edits.size()));
  changeCells(document_, edits, what);
}

void MeasurementModel::fill(const std::vector<std::pair<QModelIndex, QString>>& texts) {
  std::vector<CellEdit> edits;
  for (const auto& [cell, text] : texts) {
    const auto measure = measureAt(cell.column());
    if (!measure || !data(cell, kTakenRole).toBool() || text.trimmed().isEmpty()) continue;
    const TypedValue typed = readTyped(*measure, text);
    if (typed.refused())
      return emit refused(tr("%1: %2").arg(
          cellName(boneAt(cell.row()), *measure),
          filled(translated(QT_TRANSLATE_NOOP("words", "%1; %2")), {say(typed.cause), say(typed.mend)})));
    edits.push_back({boneAt(cell.row()), *measure, typed.value});
  }
  const Obstacle obstacle = changeCells(document_, edits, tr("Paste measures"));
  if (obstacle.any())
    emit refused(filled(translated(QT_TRANSLATE_NOOP("words", "%1; %2")), {say(obstacle.cause), say(obstacle.mend)}));
}

bool MeasurementModel::setRecord(int row, anatomy::Evidence evidence, const std::string& source, const QString& text) {
  const auto bone = document_.specimen().findBone(toId(boneAt(row)));
  if (!bone) return false;
  const BoneRecord after{evidence, source};
  const anatomy::Bone& present = document_.specimen()[*bone];
  if (after == BoneRecord{present.evidence, present.source}) return true;
  document_.undoStack().push(new SetBoneRecord(document_, *bone, after, text.arg(idOfBone(boneAt(row)))));
  return true;
}

bool MeasurementModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (!index.isValid() || role != Qt::EditRole) return false;
  if (const auto measure = measureAt(index.column())) return setMeasure(index, *measure, value.toString());
  const anatomy::TableRow& row = rowAt(index.row());
  if (index.column() == kEvidenceColumn)
    return setRecord(index.row(), static_cast<anatomy::Evidence>(value.toInt()), std::string(row.source),
                     tr("Evidence of %1"));
  return setRecord(index.row(), row.evidence, value.toString().trimmed().toStdString(), tr("Source of %1"));
}

QVariant MeasurementModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation == Qt::Vertical) {
    if (section >= rowCount()) return {};
    if (role == Qt::DisplayRole) return idOfBone(boneAt(section));
    if (role == Qt::ToolTipRole) return boneNameAndId(boneAt(section));
    return {};
  }
  const auto measure = measureAt(section);
  if (role == Qt::ToolTipRole && measure) return capital(measureName(*measure));
  if (role != Qt::DisplayRole) return {};
  if (!measure) return section == kEvidenceColumn ? tr("Evidence") : tr("Source");
  return inLines(measureName(*measure)) + '\n' + (anatomy::isAngle(*measure) ? tr("(°)") : tr("(mm)"));
}

Qt::ItemFlags MeasurementModel::flags(const QModelIndex& index) const {
  if (!index.isValid()) return Qt::NoItemFlags;
  const Qt::ItemFlags usual = Qt::ItemIsSelectable | Qt::ItemIsEnabled;
  return index.data(kTakenRole).toBool() ? usual | Qt::ItemIsEditable : usual;
}

}  // namespace zyga::ui
