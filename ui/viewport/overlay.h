#pragma once

#include <QFont>
#include <QPainter>
#include <QString>
#include <vector>

#include "ui/document/document.h"
#include "ui/theme/theme.h"
#include "ui/viewport/camera.h"
#include "ui/viewport/scene.h"

namespace zyga::ui {

/// A verdict's shape on screen.
struct JointSymbol {
  JointIndex joint;
  range::Level level = range::Level::Supported;
  QPointF at;       ///< pixels
  qreal size = 14;  ///< pixels
};

/// The symbols to show: near and beyond, worst first, as many as fit without covering each other, and always the
/// selected joint and the one that carries the bone under the pointer.
std::vector<JointSymbol> jointSymbols(const Document& document, const Camera& camera);

/// What is drawn over the picture. `area` is the window in pixels.
void paintSymbols(QPainter& painter, const std::vector<JointSymbol>& symbols, const Theme& theme);
/// Where two bones enter each other, on screen.
struct ContactMark {
  std::size_t index = 0;  ///< in Assessment::contacts
  QPointF at;             ///< pixels
  bool told = false;      ///< its depth is written beside it
};
/// All contacts in front of the eye. Those of the selected bone, of the one under the pointer, and one that lies under
/// `pointer` are told.
std::vector<ContactMark> contactMarks(const Document& document, const Camera& camera, std::optional<QPointF> pointer);
/// Crosses at the places of contact, with the depth beside those that are told. `area` is the window in pixels.
void paintContacts(QPainter& painter, const QRectF& area, const Document& document,
                   const std::vector<ContactMark>& marks, const Theme& theme);
/// A pin at the joint where drags begin to bend.
void paintBendBase(QPainter& painter, const Document& document, const Camera& camera, const Theme& theme);
/// A small label beside `at`, kept inside the area.
void paintTag(QPainter& painter, const QRectF& area, const QPointF& at, const QString& text, const Theme& theme);
/// The bones as lines, until they have been sculpted.
void paintSticks(QPainter& painter, const Document& document, const std::vector<Sticks>& sticks, const Camera& camera,
                 const Theme& theme);
void paintProgress(QPainter& painter, const QRectF& area, double share, const Theme& theme);
/// What to do when there is no project.
void paintInvitation(QPainter& painter, const QRectF& area, const Theme& theme);

}  // namespace zyga::ui
