#pragma once

#include <random>

#include "core/anatomy/plan/build_specimen.h"
#include "core/anatomy/tables/measurement_table.h"
#include "core/files/project/project.h"

namespace zyga::files::example {

/// An invented neck, as somebody might type it.
inline anatomy::MeasurementTable measuredNeck() {
  const char* text =
      "# specimen: Quarry \"Seven\" \xC3\xA9l\xC3\xA9phant\n"
      "# plan: low browser\n"
      "# cervicals: 15\n# dorsals: 10\n# sacrals: 5\n# caudals: 80\n"
      "bone,length (mm),cotyle height (mm),wedge (deg),evidence,source\n"
      "C6,612.5,150,1.25,found,\"invented, box 3\"\n"
      "C7,640.1,,,found,\n"
      "S3,,,,found,\n";
  return anatomy::readMeasurementTable(text, "neck.csv").table;
}

inline kinematics::Pose randomPose(const anatomy::Specimen& specimen, unsigned seed) {
  std::mt19937 generator(seed);
  std::uniform_real_distribution<double> angle(-0.3, 0.3), metre(-20, 20);
  auto pose = kinematics::Pose::neutral(specimen);
  for (auto& angles : pose.angles) {
    if (generator() % 3 != 0) angles = {angle(generator), generator() % 2 ? 0.0 : angle(generator), angle(generator)};
  }
  pose.X_WRoot.translation() = Eigen::Vector3d(metre(generator), metre(generator), metre(generator));
  const Eigen::Vector3d axis(angle(generator), angle(generator), angle(generator));
  pose.X_WRoot.linear() = Eigen::AngleAxisd(angle(generator), axis.normalized()).toRotationMatrix();
  return pose;
}

/// No field at its default.
inline range::Assumptions oddAssumptions() {
  range::Assumptions assumptions;
  assumptions.minOverlap = 0.333;
  assumptions.overlapBy = range::OverlapBy::Area;
  assumptions.neck = {range::Cartilage::In::PercentOfCentrum, 4.56};
  assumptions.trunk = {range::Cartilage::In::Millimetres, 12.3};
  assumptions.tail = {range::Cartilage::In::PercentOfCentrum, 18};
  assumptions.settling = 0.35;
  assumptions.facetContactTolerated = 0.07;
  assumptions.facetGapTolerated = 0.31;
  assumptions.contactTolerated = {range::ContactTolerance::In::PercentOfBone, 0.25};
  assumptions.inferredNeighbours = true;
  assumptions.neutralBy = range::NeutralBy::FacetsAndCentra;
  assumptions.horizontalBy = anatomy::HorizontalBy::CentrumFaces;
  assumptions.nearMargin = 0.2;
  return assumptions;
}

/// A project that uses every member of the file.
inline Project everything() {
  Project project;
  auto measured = measuredNeck();
  measured.regionTotals = {{"neck", 9.8765}, {"tail", 11.0}};
  project.table = anatomy::fillBlanks(measured);
  project.setSpecimen(anatomy::buildSpecimen(project.table));
  project.assumptions = oddAssumptions();
  project.pose = randomPose(project.specimen(), 1);
  project.poses = {{"neutral", kinematics::Pose::neutral(project.specimen())},
                   {"browsing \"high\"", randomPose(project.specimen(), 2)},
                   {"", randomPose(project.specimen(), 3)}};
  return project;
}

}  // namespace zyga::files::example
