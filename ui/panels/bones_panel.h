#pragma once

#include <QWidget>

#include "ui/document/document.h"

class QLabel;
class QLineEdit;
class QSortFilterProxyModel;
class QTreeView;

namespace zyga::ui {

class BonesModel;

/// The bones by region with a search field, and below them the measures of the chosen bone.
class BonesPanel : public QWidget {
  Q_OBJECT
 public:
  explicit BonesPanel(Document& document, QWidget* parent = nullptr);
  QSize sizeHint() const override { return {280, 420}; }

 signals:
  /// Show this bone close up.
  void frameBone(zyga::anatomy::BoneIndex bone);
  /// Show the measures of all bones.
  void tableAsked();

 private:
  void createSearch();
  void createTree();
  QWidget* createDetail();
  void filter(const QString& words);
  void showSelection();
  void takeSelection();
  void updateDetailTitle();
  void updateFound();

  Document& document_;
  BonesModel* model_;
  QSortFilterProxyModel* filtered_;
  QLineEdit* search_;
  QTreeView* tree_;
  QLabel* detailTitle_ = nullptr;
  QWidget* detail_;
  QLabel* hint_;
  QLabel* found_;
};

}  // namespace zyga::ui
