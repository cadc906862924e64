#include "ui/panels/ground/prints_model.h"

#include <array>

#include "core/anatomy/tables/csv.h"
#include "ui/commands/project_edits.h"
#include "ui/theme/theme.h"

namespace zyga::ui {
namespace {

using study::Footprint;

struct ColumnSpec {
  const char* title;
  const char* meaning;
  std::optional<double> Footprint::*distance;
};

constexpr std::array<ColumnSpec, PrintsModel::kColumnCount> kColumns{
    {{QT_TRANSLATE_NOOP("PrintsModel", "Foot"), QT_TRANSLATE_NOOP("PrintsModel", "Which foot: LP1, right fore, ..."),
      nullptr},
     {QT_TRANSLATE_NOOP("PrintsModel", "Pace"),
      QT_TRANSLATE_NOOP("PrintsModel", "From this print to the next one, of the other side, cm"), &Footprint::pace},
     {QT_TRANSLATE_NOOP("PrintsModel", "Next"),
      QT_TRANSLATE_NOOP("PrintsModel", "From the next print to the one after it, cm"), &Footprint::nextPace},
     {QT_TRANSLATE_NOOP("PrintsModel", "Stride"),
      QT_TRANSLATE_NOOP("PrintsModel", "From this print to the next one of this side, cm"), &Footprint::stride},
     {QT_TRANSLATE_NOOP("PrintsModel", "Length"), QT_TRANSLATE_NOOP("PrintsModel", "Of the print, cm"),
      &Footprint::length},
     {QT_TRANSLATE_NOOP("PrintsModel", "Gauge"),
      QT_TRANSLATE_NOOP("PrintsModel", "From left to right across the direction of travel, cm"), &Footprint::gauge},
     {QT_TRANSLATE_NOOP("PrintsModel", "Ahead"),
      QT_TRANSLATE_NOOP("PrintsModel", "Fore prints: centre ahead of the hind print of its side and number, cm"),
      &Footprint::ahead}}};

constexpr double kMost = 20;  // m

const ColumnSpec& spec(int column) { return kColumns.at(static_cast<std::size_t>(column)); }

QString centimetres(double metres) { return QString::number(metres * 100, 'g', 6); }

/// "LP1" after "RP1" is "LP2"... the other side, and the next number after a right foot.
QString nameAfter(const QString& last) {
  QString next = last;
  const auto foot = study::footFromText(last.toStdString());
  if (!foot) return last;
  const bool left = isLeft(*foot);
  for (const auto& [l, r] :
       {std::pair{"left", "right"}, std::pair{"Left", "Right"}, std::pair{"L", "R"}, std::pair{"l", "r"}}) {
    const qsizetype at = last.indexOf(left ? l : r);
    if (at < 0) continue;
    next.replace(at, qstrlen(left ? l : r), left ? r : l);
    break;
  }
  qsizetype digits = next.size();
  while (digits > 0 && next[digits - 1].isDigit()) --digits;
  if (left || digits == next.size()) return next;
  return next.left(digits) + QString::number(next.mid(digits).toInt() + 1);
}

}  // namespace

PrintsModel::PrintsModel(Document& document, QObject* parent) : QAbstractTableModel(parent), document_(document) {
  connect(&document_, &Document::changed, this, &PrintsModel::follow);
  follow(Change::Everything);
}

void PrintsModel::follow(Changes what) {
  if (!(what & Change::Ground)) return;
  const int rows = document_.hasProject() ? static_cast<int>(document_.project().trackway.prints.size()) : 0;
  if (rows == rows_) {
    if (rows > 0) emit dataChanged(index(0, 0), index(rows - 1, kColumnCount - 1));
    return;
  }
  beginResetModel();
  rows_ = rows;
  endResetModel();
}

const Footprint* PrintsModel::at(int row) const {
  const auto& prints = document_.project().trackway.prints;
  return row >= 0 && row < static_cast<int>(prints.size()) ? &prints[static_cast<std::size_t>(row)] : nullptr;
}

int PrintsModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : rows_; }
int PrintsModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : kColumnCount; }

QVariant PrintsModel::data(const QModelIndex& index, int role) const {
  const Footprint* print = index.isValid() && document_.hasProject() ? at(index.row()) : nullptr;
  if (!print) return {};
  const auto distance = spec(index.column()).distance;
  if (role == Qt::TextAlignmentRole && distance)
    return QVariant::fromValue(Qt::Alignment(Qt::AlignRight | Qt::AlignVCenter));
  if (role == Qt::ToolTipRole && !distance && !study::footFromText(print->foot))
    return tr("Tells neither left nor right, so it can't be laid on the ground");
  if (role == Qt::ForegroundRole && !distance && !study::footFromText(print->foot)) return theme().muted;
  if (role != Qt::DisplayRole && role != Qt::EditRole) return {};
  if (!distance) return QString::fromStdString(print->foot);
  return print->*distance ? centimetres(*(print->*distance)) : QString();
}

QVariant PrintsModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation == Qt::Vertical) return {};
  if (role == Qt::DisplayRole) return tr(spec(section).title);
  if (role == Qt::ToolTipRole) return tr(spec(section).meaning);
  return {};
}

bool PrintsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (role != Qt::EditRole || !index.isValid() || !at(index.row())) return false;
  auto trackway = document_.project().trackway;
  auto& print = trackway.prints[static_cast<std::size_t>(index.row())];
  const QString typed = value.toString().trimmed();
  const auto& column = spec(index.column());
  if (!column.distance) {
    print.foot = typed.toStdString();
  } else if (typed.isEmpty()) {
    print.*column.distance = std::nullopt;
  } else {
    double number = 0;
    const bool reads = anatomy::parseNumber(typed.toStdString(), number);
    const bool signedPlace = index.column() == kAhead || index.column() == kGauge;
    if (!reads || std::abs(number) > kMost * 100 || (number <= 0 && !signedPlace)) {
      emit refused(tr("“%1” is no distance in cm; leave the cell blank when it is not known.").arg(typed));
      return false;
    }
    print.*column.distance = number / 100;
  }
  changeTrackway(document_, trackway, tr("%1 of a footprint").arg(tr(column.title)));
  return true;
}

Qt::ItemFlags PrintsModel::flags(const QModelIndex& index) const {
  return QAbstractTableModel::flags(index) | (index.isValid() ? Qt::ItemIsEditable : Qt::NoItemFlags);
}

void PrintsModel::addPrint() {
  auto trackway = document_.project().trackway;
  Footprint next;
  next.foot = "LP1";
  if (!trackway.prints.empty()) {
    next = trackway.prints.back();
    next.foot = nameAfter(QString::fromStdString(next.foot)).toStdString();
  }
  trackway.prints.push_back(next);
  changeTrackway(document_, trackway, tr("Add a footprint"));
}

void PrintsModel::removePrint(int row) {
  if (!at(row)) return;
  auto trackway = document_.project().trackway;
  trackway.prints.erase(trackway.prints.begin() + row);
  changeTrackway(document_, trackway, tr("Remove a footprint"));
}

}  // namespace zyga::ui
