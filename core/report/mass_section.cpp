#include "core/report/sections.h"
#include "core/report/words.h"
#include "core/study/mass/balance.h"

namespace zyga::report {
namespace {

using anatomy::BoneKind;
using anatomy::Measure;
using anatomy::Side;

std::string tonnes(const study::MassRange& mass) {
  return fixed(mass.low / 1000, 1) + " to " + fixed(mass.high / 1000, 1) + " t, middle " + fixed(mass.mass / 1000, 1) +
         " t";
}

void tell(const std::string& key, const study::MassRange& mass, Numbers& numbers) {
  numbers.push_back({key + ".low", mass.low, "kg"});
  numbers.push_back({key + ".middle", mass.mass, "kg"});
  numbers.push_back({key + ".high", mass.high, "kg"});
}

double circumference(const files::Project& project, BoneKind kind) {
  for (const Side side : {Side::Left, Side::Right})
    if (const auto* row = project.table.find({kind, 0, 0, side}); row && row->measures[Measure::Circumference].known())
      return row->measures[Measure::Circumference].value;
  return 0;
}

}  // namespace

Section massSection(const Matter& matter, Numbers& numbers) {
  const auto segments = study::bodySegments(matter.project.specimen, matter.articulation);
  const study::Balance balance = balanceOf(matter.project.specimen, segments, matter.project.densities, matter.X_WB);
  tell("mass.by_volume", balance.body.mass, numbers);
  Section section;
  section.heading = "Mass and balance";
  section.sentences = {"By volume: " + tonnes(balance.body.mass) + "."};
  const double humerus = circumference(matter.project, BoneKind::Humerus),
               femur = circumference(matter.project, BoneKind::Femur);
  if (humerus > 0 && femur > 0) {
    const study::MassRange mass = study::massFromCircumferences(humerus, femur);
    tell("mass.by_circumference", mass, numbers);
    section.sentences.push_back("By the circumferences of humerus and femur: " + tonnes(mass) + ".");
  }
  section.sentences.push_back(sentence(balance, matter.pose.X_WRoot.linear().col(0).head<2>()));
  if (balance.margin) numbers.push_back({"balance.margin", *balance.margin, "m"});
  if (balance.foreShare) {
    section.sentences.push_back("The fore feet carry " + percent(*balance.foreShare) + " of the weight.");
    numbers.push_back({"balance.fore_share", 100 * *balance.foreShare, "%"});
  }
  section.cautions = {
      "Volume: hulls around the bones x 1.21 x density; " + std::string(study::kHullSource) + ".",
      "Circumference: " + std::string(study::kCircumferenceSource) + ", mean error of prediction 25.63 %.",
      "Both are estimates."};
  return section;
}

Section cautionsSection(const Matter& matter) {
  Section section;
  section.heading = "Cautions";
  section.sentences = {"Bones permit a pose or they do not; that an animal took a pose is another matter.",
                       "Everything above holds under the assumptions stated, and changes with them.",
                       "Bare-bone ranges may be off by 5 degrees a joint, and soft tissue may lessen them.",
                       "Not an engineering document; local codes and licensed practice decide."};
  if (!matter.project.trackway.prints.empty())
    section.sentences.push_back(
        "Speeds from tracks on soft ground are too high (Prescott et al. 2025, Biol. Lett. "
        "21:20250191).");
  return section;
}

}  // namespace zyga::report
