#include "core/range/neutral.h"

#include <QCoreApplication>
#include <iostream>
#include <numbers>

#include "app/verbs/assumption_options.h"
#include "app/verbs/assumptions_words.h"
#include "app/verbs/project_file.h"
#include "app/verbs/verb_words.h"
#include "app/verbs/verbs.h"
#include "core/files/json/json_write.h"
#include "core/kinematics/standing.h"
#include "ui/words/numbers.h"
#include "ui/words/range_words.h"
#include "ui/words/say.h"

namespace zyga::app {
namespace {

namespace json = files::json;

using anatomy::JointIndex;
using ui::filled;
using ui::translated;

/// How one joint with facets comes to rest.
struct NeutralJoint {
  JointIndex joint;
  kinematics::Articulation::Rest rest;
  double thickness = 0;    ///< of the cartilage, m
  double turn = 0;         ///< by the cartilage, dorsal positive, rad
  double facetHeight = 0;  ///< over the centre of rotation, m
  range::ArticulationNote note;
};

NeutralJoint neutralJoint(const anatomy::Specimen& specimen, JointIndex index, const range::Assumptions& assumptions) {
  const anatomy::Joint& joint = specimen[index];
  const double thickness = assumptions.cartilageOf(joint.region).thickness(joint);
  const auto bare = range::articulate(specimen, index, 0, assumptions.neutralBy);
  const auto rest = range::articulate(specimen, index, thickness, assumptions.neutralBy);
  const double turn = kinematics::jointAngles(joint, bare.rotation.transpose() * rest.rotation)[0];
  return {index,
          rest,
          thickness,
          turn,
          range::facetHeight(specimen, index),
          range::articulationNote(specimen, index, rest)};
}

std::vector<NeutralJoint> neutralJoints(const files::Project& project) {
  std::vector<NeutralJoint> joints;
  for (std::size_t j = 0; j < project.specimen().joints.size(); ++j) {
    if (project.specimen().joints[j].hasFacets()) {
      joints.push_back(neutralJoint(project.specimen(), {j}, project.assumptions));
    }
  }
  return joints;
}

std::string noteOf(const anatomy::Specimen& specimen, const NeutralJoint& j) {
  return ui::articulationWords(specimen, j.joint, j.note).toStdString();
}

json::Value neutralJointJson(const anatomy::Specimen& specimen, const NeutralJoint& j) {
  return json::object({{"id", specimen[j.joint].id},
                       {"solved", j.rest.solved},
                       {"residual_mm", json::millionths(j.rest.residual * 1000)},
                       {"cartilage_turn_deg", json::degrees(j.turn)},
                       {"t_mm", json::millionths(j.thickness * 1000)},
                       {"h_mm", json::millionths(j.facetHeight * 1000)},
                       {"note", j.note.good() ? json::Value() : noteOf(specimen, j)}});
}

std::string neutralJson(const files::Project& project, const std::vector<NeutralJoint>& all) {
  std::vector<json::Value> joints;
  for (const auto& joint : all) joints.push_back(neutralJointJson(project.specimen(), joint));
  return json::document(json::object({{"specimen", project.table.name},
                                      {"assumptions", assumptionsJson(project.assumptions)},
                                      {"joints", json::arrayOf(joints, json::Layout::OnLines)},
                                      {"caution", caution()}},
                                     json::Layout::OnLines));
}

std::string neutralText(const files::Project& project, const std::vector<NeutralJoint>& joints) {
  std::size_t solved = 0;
  const NeutralJoint* worst = nullptr;
  std::string notes;
  for (const auto& j : joints) {
    solved += j.rest.solved;
    if (!worst || j.rest.residual > worst->rest.residual) worst = &j;
    if (!j.note.good()) notes += "  " + noteOf(project.specimen(), j) + "\n";
  }
  const QString title = filled(translated(QT_TRANSLATE_NOOP("words", "%1: all joints at neutral, standing")),
                               {QString::fromStdString(project.table.name)});
  const QString all =
      translated(QT_TRANSLATE_N_NOOP("words", "%n joints with facets"), static_cast<int>(joints.size()));
  QString count =
      filled(translated(QT_TRANSLATE_NOOP("words", "%1 articulated of %2")), {QString::number(solved), all});
  if (worst)
    count = filled(
        translated(QT_TRANSLATE_NOOP("words", "%1; facet centres farthest apart at %2, by %3")),
        {count, QString::fromStdString(project.specimen()[worst->joint].id), ui::millimetres(worst->rest.residual)});
  return title.toStdString() + "\n" + assumptionsText(project.assumptions) + "  " + count.toStdString() + "\n" + notes;
}

void bringToNeutral(files::Project& project) {
  const auto articulation = range::articulate(project.specimen(), project.assumptions);
  const auto zero = kinematics::Pose::neutral(project.specimen());
  project.pose = kinematics::stand(project.specimen(), articulation, zero);
}

int neutral(const VerbSpec&, const Arguments& arguments) {
  const auto out = arguments.find("--out");
  const bool json = arguments.has("--json");
  if (!out && !json)
    refuse(QT_TRANSLATE_NOOP("words", "nothing to do: add --out FILE2.zyga for the project at neutral, or --json"));
  if (out && out->empty()) refuse(QT_TRANSLATE_NOOP("words", "--out: the name is empty; write --out FILE2.zyga"));
  auto project = openProject(arguments.file);
  project.assumptions = assumptionsFrom(arguments, project.assumptions);
  const auto joints = neutralJoints(project);
  std::string wrote;
  if (out) {
    bringToNeutral(project);
    wrote = saveProject(project, *out, json);
  }
  std::cout << (json ? neutralJson(project, joints) : neutralText(project, joints) + wrote);
  return kDone;
}

}  // namespace

Verb neutralVerb() {
  return {
      {"neutral", "FILE.zyga",
       QT_TRANSLATE_NOOP("words",
                         "brings every joint to osteological neutral pose (ONP) and stands the animal on the ground"),
       withAssumptionOptions(
           {{"--out", "FILE2.zyga", QT_TRANSLATE_NOOP("words", "the project to write; may be left out with --json")},
            {"--json", "", QT_TRANSLATE_NOOP("words", "how each joint with facets comes to rest, for machines")}}),
       QT_TRANSLATE_NOOP(
           "words",
           "The present pose becomes all angles zero, with shoulders and hips turned so that the feet stand; "
           "assumptions\n"
           "that are given are written into the project, because the bones stand by them. Named poses stay.\n"
           "In JSON: residual_mm is how far the facets stay from centred, cartilage_turn_deg how far the cartilage of\n"
           "thickness t_mm turns the joint dorsally, h_mm the facets' height over the centre of rotation.\n")},
      neutral};
}

}  // namespace zyga::app
