#pragma once

#include <QObject>
#include <QPointer>

#include "ui/document/document.h"

class QAction;
class QMenu;
class QMimeData;

namespace zyga::ui {

class LandmarkEditor;
class BringInDialog;
class MessageBar;
class ScanSuggestions;

/// Real bones: brought in from files, marked in the landmark editor, mirrored, scaled, taken out again. Each is one
/// undo step.
class ScanController : public QObject {
  Q_OBJECT
 public:
  ScanController(Document& document, MessageBar& messages, QWidget& window);

  /// For the status bar.
  QWidget* readout() const;
  /// Fills the menu of what can be done with real bones; returns the action that brings them in.
  QAction* addTo(QMenu& menu);
  /// What can be done with this bone, for the menu over the animal.
  void addFor(QMenu& menu, BoneIndex bone);

  /// Mesh files among what is being dropped.
  static QStringList meshFiles(const QMimeData& data);
  /// Files, and folders of them.
  void bringIn(const QStringList& paths);
  void openLandmarks(std::optional<BoneIndex> bone);

 signals:
  /// Somebody wants to read a page of the help.
  void helpAsked(const QString& page);
  /// There is no animal to put bones into: they may make one of their own. Empty: of a folder to be chosen.
  void animalAsked(const QString& folder);
  /// The animal has another size.
  void resized();

 private:
  static QStringList withoutFolders(const QStringList& paths);
  void askForAnimal(const QStringList& paths);
  void chooseFiles(BringInDialog& dialog);
  void chooseLandmarks(BringInDialog& dialog);
  void putInPlace(const BringInDialog& dialog);
  void mirror(BoneIndex bone);
  void scale(BoneIndex bone);
  void scaleAnimal();
  void fitAnimal();
  void takeOut(BoneIndex bone);
  /// Otherwise says that there are none.
  bool hasScans();
  /// The chosen bone, if it has a scan; otherwise says what is missing.
  std::optional<BoneIndex> chosenScan();
  void onChosen(const std::function<void(BoneIndex)>& act);

  Document& document_;
  MessageBar& messages_;
  QWidget& window_;
  ScanSuggestions* suggestions_;
  QPointer<BringInDialog> bringing_;
  QPointer<LandmarkEditor> editor_;
};

}  // namespace zyga::ui
