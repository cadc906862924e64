#pragma once

#include <QAbstractItemModel>
#include <QStyledItemDelegate>
#include <vector>

#include "ui/document/document.h"

namespace zyga::ui {

/// What is missing of the scan of a bone, as its open borders tell it; empty where nothing is, or where it has none.
QStringList missingOf(const Document& document, const anatomy::BoneName& bone);

/// The bones of the document as a tree: regions, and under each its bones. Evidence and source can be edited, each edit
/// an undoable step.
class BonesModel : public QAbstractItemModel {
  Q_OBJECT
 public:
  enum Column { kBone, kEvidence, kSource, kColumnCount };
  enum Role { kIdRole = Qt::UserRole, kTitleRole, kEvidenceRole };

  explicit BonesModel(Document& document, QObject* parent = nullptr);

  QModelIndex index(int row, int column, const QModelIndex& parent = {}) const override;
  QModelIndex parent(const QModelIndex& child) const override;
  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;
  QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;

  /// The bone in this row; none for a region.
  std::optional<BoneIndex> boneAt(const QModelIndex& index) const;
  QModelIndex indexOf(BoneIndex bone) const;

 private:
  struct Group {
    anatomy::Region region;
    std::vector<BoneIndex> bones;
  };

  void regroup();
  void announceAll();
  QVariant regionData(const Group& group, int column, int role) const;
  QVariant boneData(const anatomy::Bone& bone, int column, int role) const;

  Document& document_;
  std::vector<Group> groups_;
};

/// Edits an evidence status from the list of statuses, each with its mark.
class EvidenceDelegate : public QStyledItemDelegate {
  Q_OBJECT
 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  void setEditorData(QWidget* editor, const QModelIndex& index) const override;
  void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;
};

/// Paints a bone's title with its id in muted text at the right end.
class BoneTitleDelegate : public QStyledItemDelegate {
  Q_OBJECT
 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

}  // namespace zyga::ui
