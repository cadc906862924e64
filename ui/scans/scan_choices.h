#pragma once

#include <QIcon>
#include <QString>
#include <optional>
#include <vector>

#include "core/anatomy/tables/measurement_table.h"
#include "core/range/findings.h"
#include "core/solid/mesh/triangle_mesh.h"

class QComboBox;
class QWidget;

/// Words and choices that bringing in and marking share.
namespace zyga::ui {

/// All bones of the animal that have a mesh of their own, to be chosen from or found by typing; none is chosen.
QComboBox* boneChoice(const anatomy::Specimen& specimen);
std::optional<anatomy::BoneName> chosenBone(const QComboBox& choice);
/// Chooses a bone; none where the list does not have it.
void chooseBone(QComboBox& choice, const std::optional<anatomy::BoneName>& bone);

/// "12,034 triangles, 153 mm × 80 mm × 70 mm"; `unit` is the mesh's in m.
QString sizeInWords(const solid::TriangleMesh& mesh, double unit);
/// Says what went wrong, beside the window it concerns.
void tellFault(QWidget& window, const QString& text);
QIcon verdictIcon(range::Level level);

}  // namespace zyga::ui
