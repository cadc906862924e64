#include "ui/scans/scan_choices.h"

#include <Eigen/Geometry>
#include <QComboBox>
#include <QCompleter>
#include <QLineEdit>
#include <QLocale>
#include <QMessageBox>
#include <QObject>
#include <QPainter>
#include <QPixmap>
#include <algorithm>

#include "ui/parts/panel_parts.h"
#include "ui/theme/theme.h"
#include "ui/words/anatomy_words.h"
#include "ui/words/numbers.h"

namespace zyga::ui {

QComboBox* boneChoice(const anatomy::Specimen& specimen) {
  QComboBox* box = calmComboBox();
  std::vector<anatomy::BoneName> names;
  for (const anatomy::Bone& bone : specimen.bones)
    if (!bone.fusedInto) names.push_back(bone.name);
  std::sort(names.begin(), names.end());
  for (const anatomy::BoneName& name : names) box->addItem(boneNameAndId(name), QString::fromStdString(toId(name)));
  box->setEditable(true);
  box->setInsertPolicy(QComboBox::NoInsert);
  box->lineEdit()->setPlaceholderText(QObject::tr("choose a bone"));
  box->completer()->setCompletionMode(QCompleter::PopupCompletion);
  box->completer()->setFilterMode(Qt::MatchContains);
  box->setMaxVisibleItems(14);
  box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box->setCurrentIndex(-1);
  // Its name, its id or both are a choice, half a word typed and left is none.
  QObject::connect(box->lineEdit(), &QLineEdit::editingFinished, box, [box] {
    const QString typed = box->currentText().simplified();
    int at = box->findText(typed, Qt::MatchFixedString);
    if (at < 0) at = box->findData(typed, Qt::UserRole, Qt::MatchFixedString);
    for (int i = 0; at < 0 && i < box->count(); ++i)
      if (const auto bone = anatomy::parseBoneId(box->itemData(i).toString().toStdString());
          bone && boneName(*bone).compare(typed, Qt::CaseInsensitive) == 0)
        at = i;
    if (at >= 0) box->setCurrentIndex(at);
    box->setEditText(box->itemText(box->currentIndex()));
  });
  return box;
}

std::optional<anatomy::BoneName> chosenBone(const QComboBox& choice) {
  return anatomy::parseBoneId(choice.currentData().toString().toStdString());
}

void chooseBone(QComboBox& choice, const std::optional<anatomy::BoneName>& bone) {
  choice.setCurrentIndex(bone ? choice.findData(QString::fromStdString(toId(*bone))) : -1);
  choice.lineEdit()->setCursorPosition(0);
}

QString sizeInWords(const solid::TriangleMesh& mesh, double unit) {
  Eigen::AlignedBox3d box;
  for (const auto& p : mesh.positions) box.extend(p.cast<double>());
  const Eigen::Vector3d size = box.sizes() * unit;
  constexpr double kSmall = 0.02;  // m
  const int decimals = size.maxCoeff() < kSmall ? 1 : 0;
  return QObject::tr("%1 triangles, %2 × %3 × %4")
      .arg(QLocale(QLocale::English).toString(static_cast<qulonglong>(mesh.triangles.size())),
           millimetres(size.x(), decimals), millimetres(size.y(), decimals), millimetres(size.z(), decimals));
}

void tellFault(QWidget& window, const QString& text) {
  auto* box = new QMessageBox(QMessageBox::NoIcon, window.windowTitle(), text, QMessageBox::Close, &window);
  box->setObjectName("fault");
  box->setAttribute(Qt::WA_DeleteOnClose);
  box->open();
}

QIcon verdictIcon(range::Level level) {
  constexpr int kSize = 16;
  QPixmap pixmap(2 * kSize, 2 * kSize);
  pixmap.setDevicePixelRatio(2);
  pixmap.fill(Qt::transparent);
  QPainter painter(&pixmap);
  painter.setRenderHint(QPainter::Antialiasing);
  paintVerdict(painter, {0.5 * kSize, 0.5 * kSize}, 11, level);
  return QIcon(pixmap);
}

}  // namespace zyga::ui
