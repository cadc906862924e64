#include "core/kinematics/bend.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <iostream>
#include <numbers>

#include "app/verbs/joint_names.h"
#include "app/verbs/project_file.h"
#include "app/verbs/verb_words.h"
#include "app/verbs/verbs.h"
#include "core/kinematics/following.h"
#include "core/range/scenario.h"
#include "ui/words/range_words.h"
#include "ui/words/say.h"

namespace zyga::app {
namespace {

using anatomy::JointIndex;
using anatomy::Specimen;

constexpr std::array<std::string_view, 3> kMotions{"--dorsiflexion", "--lateral", "--torsion"};

double rad(double degrees) { return degrees * std::numbers::pi / 180; }

/// One --joint or --span and the turns that follow it.
struct Bend {
  std::vector<JointIndex> joints;
  bool span = false;
  std::string words;                           ///< "--joint C6-C7"
  std::array<std::optional<double>, 3> turns;  ///< rad
};

/// The movable joints on the way from one bone to the other, root side first.
std::vector<JointIndex> spanOf(const Specimen& specimen, const std::string& text) {
  const auto dash = text.find('-');
  const auto from = specimen.findBone(text.substr(0, dash));
  const auto to = dash == std::string::npos ? std::nullopt : specimen.findBone(text.substr(dash + 1));
  if (!from || !to)
    refuse(QT_TRANSLATE_NOOP("words", "--span: '%1' does not name two bones of the specimen, such as C2-C13"), {text});
  const auto a = specimen.chainTo(*from), b = specimen.chainTo(*to);
  std::vector<JointIndex> joints;
  // What both chains share lies outside the span.
  std::set_symmetric_difference(a.begin(), a.end(), b.begin(), b.end(), std::back_inserter(joints));
  std::erase_if(joints, [&](JointIndex j) { return specimen[j].kind == anatomy::JointKind::Fixed; });
  if (joints.empty()) refuse(QT_TRANSLATE_NOOP("words", "--span: nothing moves between %1"), {text});
  return joints;
}

std::vector<Bend> readBends(const Specimen& specimen, const Arguments& arguments) {
  std::vector<Bend> bends;
  for (const auto& option : arguments.options) {
    if (option.name == "--joint") {
      bends.push_back({{movableJoint(specimen, option.value)}, false, option.name + " " + option.value, {}});
    } else if (option.name == "--span") {
      bends.push_back({spanOf(specimen, option.value), true, option.name + " " + option.value, {}});
    } else if (const auto motion = std::find(kMotions.begin(), kMotions.end(), option.name); motion != kMotions.end()) {
      if (bends.empty())
        refuse(QT_TRANSLATE_NOOP("words", "%1 comes before any --joint or --span; name the joint first"),
               {option.name});
      bends.back().turns[static_cast<std::size_t>(motion - kMotions.begin())] =
          rad(numberOf(option, -180, 180, QT_TRANSLATE_NOOP("words", "degrees")));
    }
  }
  if (bends.empty())
    refuse(QT_TRANSLATE_NOOP("words", "nothing to bend: add --joint C6-C7 or --span C2-C13 and an angle"));
  for (const auto& bend : bends) {
    const bool turned =
        std::any_of(bend.turns.begin(), bend.turns.end(), [](const auto& turn) { return turn.has_value(); });
    if (!turned)
      refuse(QT_TRANSLATE_NOOP("words", "%1 has no angle: add --dorsiflexion, --lateral or --torsion with degrees"),
             {bend.words});
  }
  return bends;
}

/// Bends one pose of a project.
class Bender {
 public:
  Bender(const files::Project& project, kinematics::Pose pose)
      : project_(project),
        articulation_(kinematics::withAxialOf(articulationOf(project), pose)),
        pose_(std::move(pose)) {}

  void apply(const Bend& bend) {
    for (int motion = 0; motion < 3; ++motion) {
      const auto& turn = bend.turns[static_cast<std::size_t>(motion)];
      if (!turn) continue;
      if (bend.span) {
        spread(bend, motion, *turn);
      } else {
        set(bend.joints.front(), motion, *turn);
      }
    }
  }

  const kinematics::Pose& pose() const { return pose_; }

 private:
  /// A typed axial rotation stays; else it goes along when the joint is bent.
  void set(JointIndex joint, int motion, double turn) {
    const anatomy::Joint& bones = project_.specimen()[joint];
    pose_[joint] = kinematics::withMotion(bones, articulation_[joint], pose_[joint], motion, turn);
    if (motion != 2) return;
    pose_.setAxialTyped(joint, bones.hasFacets());
    articulation_ = kinematics::withAxialOf(std::move(articulation_), pose_);
  }

  double width(JointIndex joint, int motion) const {
    const auto& specimen = project_.specimen();
    const auto band = range::motionRange(specimen, articulation_, project_.assumptions, joint, pose_[joint], motion);
    return band.judged && !band.empty ? band.max - band.min : 0;
  }

  void spread(const Bend& bend, int motion, double turn) {
    std::vector<double> weights;
    double sum = 0;
    for (const auto joint : bend.joints) sum += weights.emplace_back(width(joint, motion));
    if (sum <= 0) {
      std::cerr << said(QT_TRANSLATE_NOOP("words",
                                          "warning: %1: no joint of it has a range for %2; the turn is shared evenly"),
                        {bend.words, kMotions[static_cast<std::size_t>(motion)]})
                << "\n";
      weights.assign(weights.size(), 1);
      sum = static_cast<double>(weights.size());
    }
    for (double& weight : weights) weight /= sum;
    Eigen::Vector3d turns = Eigen::Vector3d::Zero();
    turns(motion) = turn;
    pose_ = kinematics::spreadTurn(project_.specimen(), articulation_, pose_, bend.joints, weights, turns);
  }

  const files::Project& project_;
  kinematics::Articulation articulation_;
  kinematics::Pose pose_;
};

/// The joints that were bent, each once.
std::vector<JointIndex> bentJoints(const std::vector<Bend>& bends) {
  std::vector<JointIndex> joints;
  for (const auto& bend : bends) joints.insert(joints.end(), bend.joints.begin(), bend.joints.end());
  std::sort(joints.begin(), joints.end());
  joints.erase(std::unique(joints.begin(), joints.end()), joints.end());
  return joints;
}

/// Every verdict of a few joints; of many only what is not simply within range.
void tellVerdicts(const files::Project& project, const std::vector<Bend>& bends) {
  constexpr std::size_t kFew = 3;
  const range::Scenario scenario(project.sharedSpecimen, project.assumptions, project.pose);
  const auto joints = bentJoints(bends);
  std::size_t within = 0;
  for (const auto joint : joints) {
    const auto* verdict = scenario.assessment().find(joint);
    if (!verdict) continue;
    within += verdict->level == range::Level::Supported;
    if (joints.size() <= kFew || verdict->level != range::Level::Supported)
      std::cout << "  " << ui::verdictSentence(scenario, *verdict).toStdString() << "\n";
  }
  const QString bent =
      ui::translated(QT_TRANSLATE_N_NOOP("words", "%n joints bent, %1 within range"), static_cast<int>(joints.size()));
  std::cout << "  " << ui::filled(bent, {QString::number(within)}).toStdString() << "\n";
}

int bend(const VerbSpec& spec, const Arguments& arguments) {
  const auto out = required(spec, arguments, "--out");
  auto project = openProject(arguments.file);
  const auto chosen = choosePose(project, arguments);
  const auto bends = readBends(project.specimen(), arguments);
  Bender bender(project, chosen.pose);
  for (const auto& bend : bends) bender.apply(bend);
  project.pose = bender.pose();
  if (chosen.index) project.poses[*chosen.index].pose = project.pose;
  const auto wrote = saveProject(project, out);
  std::cout << (chosen.index
                    ? said(QT_TRANSLATE_NOOP("words", "bent the pose '%1', now also the present pose"), {chosen.name})
                    : said(QT_TRANSLATE_NOOP("words", "bent the present pose")))
            << "\n";
  tellVerdicts(project, bends);
  std::cout << wrote;
  return kDone;
}

}  // namespace

Verb bendVerb() {
  return {{"bend",
           "FILE.zyga",
           QT_TRANSLATE_NOOP("words", "turns joints of a pose and writes the project anew"),
           {{"--joint", "C6-C7",
             QT_TRANSLATE_NOOP("words", "the joint that the following angles are for; may be repeated")},
            {"--span", "C2-C13",
             QT_TRANSLATE_NOOP("words", "instead of a joint: all joints between two bones; may be repeated")},
            {"--dorsiflexion", "DEG", QT_TRANSLATE_NOOP("words", "dorsiflexion from neutral; limbs: flexion")},
            {"--lateral", "DEG", QT_TRANSLATE_NOOP("words", "left lateral flexion; limbs: abduction")},
            {"--torsion", "DEG", QT_TRANSLATE_NOOP("words", "axial rotation, left side up; limbs: rotation")},
            {"--pose", "NAME", QT_TRANSLATE_NOOP("words", "starts from a named pose")},
            {"--out", "FILE2.zyga", QT_TRANSLATE_NOOP("words", "the project to write")}},
           QT_TRANSLATE_NOOP(
               "words",
               "--joint sets an angle, and leaves the joint's other angles. --span adds the turn to what is there, "
               "shared in\n"
               "proportion to each joint's range. The result becomes the present pose; with --pose it also replaces "
               "the named\n"
               "one. A pose out of range is written all the same: the verdicts are printed, and assess judges it.\n")},
          bend};
}

}  // namespace zyga::app
