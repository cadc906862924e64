#pragma once

#include <QString>

#include "core/study/ground/trackway_fit.h"
#include "core/study/mass/balance.h"

/// What the animal stands on and weighs.
namespace zyga::ui {

/// "left hind foot"
QString footName(kinematics::Foot foot);
/// "LP1"; of a print that only an earlier row tells of "after RP2".
QString printName(const study::PlacedPrint& print);
/// "Right fore foot 120 mm ahead of and 40 mm left of RM1", "Left hind foot on LP1 (3 mm)", "Left fore foot: no print".
QString footFitWords(const study::FootFit& fit, const std::vector<study::PlacedPrint>& prints);
/// Goes with every speed.
QString speedCaution();

/// "fore limbs"
QString bodyPartName(study::BodyPart part);
/// "7.0 to 10.4 t", or kg below a tonne.
QString massWords(const study::MassRange& mass);
/// By the circumferences of a table's humerus and femur: "17.7 to 30.0 t, circumferences inferred".
QString circumferenceWords(const std::optional<study::CircumferenceMass>& mass);
/// "98–112°" from rad; one number where both ends read the same; "unknown" without.
QString angleRange(const std::optional<study::MinMeanMax>& values);
/// "1.20–1.40 m" and the like.
QString metresRange(const std::optional<study::MinMeanMax>& values);
QString plainRange(const std::optional<study::MinMeanMax>& values, int decimals);
/// "0.84–1.02 m/s (3.0–3.7 km/h)".
QString speedRange(const std::optional<study::MinMeanMax>& values);

/// "The centre of mass lies over 4 planted feet, 412 mm inside the nearest edge, which is on the left.". `forward_W`:
/// where the animal faces.
QString balanceWords(const study::Balance& balance, const Eigen::Vector2d& forward_W);
/// How much of the weight a tail on the ground carries, and whether the feet alone would do. Empty without such a tail.
QString tailLoadWords(const study::Balance& balance);
/// Where the centre of mass would lie with the tail as heavy as its errors allow.
QString tailFleshWords(const study::BodyMass& body, const Eigen::Vector2d& forward_W);
/// "1.21", or "1.21 to 1.50" where parts have their own.
QString hullFactorWords(const study::Densities& densities);
/// What the errors of density and hull factor by part are, and what they are not.
QString partErrorsWords();
/// "mean error 25.63 %, not a bound"
QString circumferenceErrorWords();
/// "balanced, 412 mm inside": for a title.
QString balanceInShort(const study::Balance& balance);

}  // namespace zyga::ui
