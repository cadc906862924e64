#include "ui/panels/bones_model.h"

#include <QComboBox>
#include <QPainter>
#include <algorithm>

#include "ui/commands/project_edits.h"
#include "ui/commands/scan_edits.h"
#include "ui/parts/evidence_mark.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"
#include "ui/words/anatomy_words.h"
#include "ui/words/say.h"
#include "ui/words/scan_words.h"

namespace zyga::ui {
namespace {

constexpr int kMarkSize = 14;

QIcon warningIcon() {
  QPixmap pixmap(2 * kMarkSize, 2 * kMarkSize);
  pixmap.setDevicePixelRatio(2);
  pixmap.fill(Qt::transparent);
  QPainter painter(&pixmap);
  painter.setRenderHint(QPainter::Antialiasing);
  paintVerdict(painter, {0.5 * kMarkSize, 0.5 * kMarkSize}, 0.75 * kMarkSize, range::Level::Beyond);
  return QIcon(pixmap);
}

}  // namespace

QStringList missingOf(const Document& document, const anatomy::BoneName& bone) {
  const files::ProjectScan* kept = document.hasProject() ? scanOf(document, bone) : nullptr;
  return kept ? missingSaid(kept->borders, {}) : QStringList();
}

BonesModel::BonesModel(Document& document, QObject* parent) : QAbstractItemModel(parent), document_(document) {
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (what & Change::Specimen) return regroup();
    if (what & (Changes(Change::Bones) | Change::Scans)) announceAll();
  });
  connect(&ThemeSwitch::instance(), &ThemeSwitch::changed, this, &BonesModel::announceAll);
  regroup();
}

void BonesModel::regroup() {
  beginResetModel();
  groups_.clear();
  if (document_.hasProject()) {
    const auto& bones = document_.specimen().bones;
    for (std::size_t i = 0; i < bones.size(); ++i) {
      const anatomy::Region region = regionOf(bones[i].name);
      auto group = std::find_if(groups_.begin(), groups_.end(), [&](const Group& g) { return g.region == region; });
      if (group == groups_.end()) group = groups_.insert(groups_.end(), Group{region, {}});
      group->bones.push_back({i});
    }
    std::sort(groups_.begin(), groups_.end(), [](const Group& a, const Group& b) { return a.region < b.region; });
    for (Group& group : groups_)
      std::sort(group.bones.begin(), group.bones.end(),
                [&](BoneIndex a, BoneIndex b) { return bones[a.value].name < bones[b.value].name; });
  }
  endResetModel();
}

void BonesModel::announceAll() {
  for (int g = 0; g < rowCount(); ++g) {
    const QModelIndex group = index(g, 0);
    emit dataChanged(group, index(g, kColumnCount - 1));
    emit dataChanged(index(0, 0, group), index(rowCount(group) - 1, kColumnCount - 1, group));
  }
}

// A region's index carries 0; a bone's carries the number of its region, counted from 1.
QModelIndex BonesModel::index(int row, int column, const QModelIndex& parent) const {
  if (!hasIndex(row, column, parent)) return {};
  return createIndex(row, column, parent.isValid() ? static_cast<quintptr>(parent.row()) + 1 : 0);
}

QModelIndex BonesModel::parent(const QModelIndex& child) const {
  if (!child.isValid() || child.internalId() == 0) return {};
  return createIndex(static_cast<int>(child.internalId()) - 1, 0, quintptr{0});
}

int BonesModel::rowCount(const QModelIndex& parent) const {
  if (!parent.isValid()) return static_cast<int>(groups_.size());
  if (parent.internalId() != 0 || parent.column() != 0) return 0;
  return static_cast<int>(groups_[static_cast<std::size_t>(parent.row())].bones.size());
}

int BonesModel::columnCount(const QModelIndex&) const { return kColumnCount; }

std::optional<BoneIndex> BonesModel::boneAt(const QModelIndex& index) const {
  if (!index.isValid() || index.internalId() == 0) return std::nullopt;
  return groups_[index.internalId() - 1].bones[static_cast<std::size_t>(index.row())];
}

QModelIndex BonesModel::indexOf(BoneIndex bone) const {
  for (std::size_t g = 0; g < groups_.size(); ++g) {
    const auto& bones = groups_[g].bones;
    const auto found = std::find(bones.begin(), bones.end(), bone);
    if (found != bones.end()) return createIndex(static_cast<int>(found - bones.begin()), 0, quintptr{g + 1});
  }
  return {};
}

QVariant BonesModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  if (const auto bone = boneAt(index)) return boneData(document_.specimen()[*bone], index.column(), role);
  return regionData(groups_[static_cast<std::size_t>(index.row())], index.column(), role);
}

QVariant BonesModel::regionData(const Group& group, int column, int role) const {
  if (role != Qt::DisplayRole) return {};
  if (column == kBone) return regionName(group.region);
  if (column != kEvidence) return {};
  const auto& specimen = document_.specimen();
  const auto found = std::count_if(group.bones.begin(), group.bones.end(), [&](BoneIndex bone) {
    return specimen[bone].evidence == anatomy::Evidence::Found ||
           specimen[bone].evidence == anatomy::Evidence::FoundDeformed;
  });
  return tr("%1 of %2").arg(found).arg(group.bones.size());
}

QVariant BonesModel::boneData(const anatomy::Bone& bone, int column, int role) const {
  if (role == kIdRole) return QString::fromStdString(bone.id);
  if (role == kEvidenceRole) return static_cast<int>(bone.evidence);
  const QString name = capital(boneName(bone.name));
  if (column == kBone && bone.scanned && (role == Qt::ToolTipRole || role == Qt::DecorationRole))
    if (const auto missing = missingOf(document_, bone.name); !missing.isEmpty()) {
      if (role == Qt::DecorationRole) return warningIcon();
      return tr("%1\nIncomplete scan: %2.").arg(name, missing.join("; "));
    }
  if (role == kTitleRole || (role == Qt::ToolTipRole && column == kBone)) return name;
  // Under the heading of its region a vertebra is best told by its number.
  if (column == kBone && role == Qt::DisplayRole)
    return isVertebra(bone.name.kind) ? QString::fromStdString(bone.id) : name;
  if (column == kEvidence) {
    if (role == Qt::DisplayRole) return evidenceWord(bone.evidence);
    if (role == Qt::ToolTipRole) return evidenceName(bone.evidence);
    if (role == Qt::EditRole) return static_cast<int>(bone.evidence);
    if (role == Qt::DecorationRole) return evidenceMark(bone.evidence, kMarkSize, 2);
  }
  if (column == kSource && (role == Qt::DisplayRole || role == Qt::EditRole))
    return QString::fromStdString(bone.source);
  return {};
}

bool BonesModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  const auto bone = boneAt(index);
  if (!bone || role != Qt::EditRole) return false;
  const anatomy::Bone& present = document_.specimen()[*bone];
  const BoneRecord before{present.evidence, present.source};
  BoneRecord after = before;
  if (index.column() == kEvidence)
    after.evidence = static_cast<anatomy::Evidence>(value.toInt());
  else if (index.column() == kSource)
    after.source = value.toString().trimmed().toStdString();
  if (after == before) return true;
  const QString id = QString::fromStdString(present.id);
  const QString what = index.column() == kEvidence ? tr("Evidence of %1").arg(id) : tr("Source of %1").arg(id);
  document_.undoStack().push(new SetBoneRecord(document_, *bone, std::move(after), what));
  return true;
}

QVariant BonesModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  switch (section) {
    case kBone:
      return tr("Bone");
    case kEvidence:
      return tr("Evidence");
    case kSource:
      return tr("Source");
    default:
      return {};
  }
}

Qt::ItemFlags BonesModel::flags(const QModelIndex& index) const {
  Qt::ItemFlags flags = QAbstractItemModel::flags(index);
  if (boneAt(index) && index.column() != kBone) flags |= Qt::ItemIsEditable;
  return flags;
}

QWidget* EvidenceDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex&) const {
  QComboBox* box = evidenceChoice(parent);
  connect(box, &QComboBox::activated, this, [this, box] {
    auto* self = const_cast<EvidenceDelegate*>(this);
    emit self->commitData(box);
    emit self->closeEditor(box);
  });
  return box;
}

void EvidenceDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
  auto* box = static_cast<QComboBox*>(editor);
  box->setCurrentIndex(box->findData(index.data(Qt::EditRole)));
}

void EvidenceDelegate::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const {
  model->setData(index, static_cast<QComboBox*>(editor)->currentData());
}

void BoneTitleDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  QStyledItemDelegate::paint(painter, option, index);
  const QString id = index.data(BonesModel::kIdRole).toString();
  const QString title = index.data().toString();
  if (id.isEmpty() || title.compare(id, Qt::CaseInsensitive) == 0) return;
  const QRect area = option.rect.adjusted(kGap, 0, -kGap, 0);
  if (option.fontMetrics.horizontalAdvance(title + "  " + id) + kGap > area.width()) return;
  painter->save();
  painter->setFont(option.font);
  painter->setPen(theme().muted);
  painter->drawText(area, Qt::AlignRight | Qt::AlignVCenter, id);
  painter->restore();
}

}  // namespace zyga::ui
