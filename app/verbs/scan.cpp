#include <QCoreApplication>
#include <algorithm>
#include <filesystem>
#include <iostream>
#include <set>

#include "app/verbs/project_file.h"
#include "app/verbs/scan_answer.h"
#include "app/verbs/scan_options.h"
#include "app/verbs/verb_words.h"
#include "app/verbs/verbs.h"
#include "core/anatomy/marks/mark_plan.h"
#include "core/anatomy/marks/scan_measures.h"
#include "core/files/disk/atomic_file.h"
#include "core/files/project/scan_animal.h"
#include "core/files/scan/scan_faults.h"
#include "ui/words/anatomy_words.h"
#include "ui/words/numbers.h"
#include "ui/words/say.h"
#include "ui/words/scan_size_words.h"
#include "ui/words/scan_words.h"
#include "ui/words/table_words.h"

namespace zyga::app {
namespace {

/// What --bone says of the first files, in order.
std::vector<anatomy::BoneName> bonesSaid(const Arguments& arguments) {
  std::vector<anatomy::BoneName> bones;
  std::string faults;
  for (const auto& option : arguments.options) {
    if (option.name != "--bone") continue;
    if (const auto bone = anatomy::parseBoneId(option.value))
      bones.push_back(*bone);
    else
      faults += said(QT_TRANSLATE_NOOP("words", "--bone: there is no bone '%1'"), {option.value}) + '\n';
  }
  if (!faults.empty()) throw BadInput(faults.substr(0, faults.size() - 1));
  if (bones.size() > arguments.files.size())
    refuse(QT_TRANSLATE_NOOP("words", "--bone: there are more bones than files"));
  const auto isFolder = [](const std::string& file) {
    std::error_code failed;
    return std::filesystem::is_directory(file, failed);
  };
  if (!bones.empty() && std::any_of(arguments.files.begin(), arguments.files.end(), isFolder))
    refuse(QT_TRANSLATE_NOOP("words",
                             "--bone names the bones of files one after the other; give the files of the "
                             "folder instead of the folder"));
  return bones;
}

struct GivenMarks {
  anatomy::LandmarkTable landmarks;
  anatomy::FacetTable facets;
};

/// The faults of both tables at once.
GivenMarks marksSaid(const Arguments& arguments) {
  GivenMarks out;
  std::vector<anatomy::TableMessage> messages;
  bool usable = true;
  const auto take = [&](auto reading, auto& table) {
    usable = usable && reading.usable();
    messages.insert(messages.end(), reading.messages.begin(), reading.messages.end());
    table = std::move(reading.table);
  };
  if (const auto file = arguments.find("--landmarks"))
    take(anatomy::readLandmarkTable(files::readWhole(*file), *file), out.landmarks);
  if (const auto file = arguments.find("--facets"))
    take(anatomy::readFacetTable(files::readWhole(*file), *file), out.facets);
  if (!usable) throw BadInput(ui::say(messages).toStdString());
  return out;
}

std::optional<anatomy::ScanUnit> unitSaid(const Arguments& arguments) {
  using anatomy::ScanUnit;
  if (!arguments.has("--unit")) return std::nullopt;
  return choiceOf<ScanUnit>(arguments, "--unit",
                            {{"mm", ScanUnit::Millimetre}, {"cm", ScanUnit::Centimetre}, {"m", ScanUnit::Metre}});
}

/// The kind of animal that the scans make on their own.
std::optional<anatomy::BodyPlan> planSaid(const Arguments& arguments) {
  using anatomy::BodyPlan;
  if (!arguments.has("--plan")) return std::nullopt;
  std::vector<std::pair<std::string_view, BodyPlan>> choices{{"sauropod", BodyPlan::HighBrowser}};
  for (const BodyPlan plan : anatomy::kBodyPlans) choices.emplace_back(toText(plan), plan);
  return choiceOf<BodyPlan>(arguments, "--plan", choices);
}

files::ScanSet readSet(const Arguments& arguments, const std::variant<anatomy::BodyPlan, anatomy::Specimen>& sculpted) {
  files::ScanSetWish wish;
  wish.paths.assign(arguments.files.begin(), arguments.files.end());
  wish.bones = bonesSaid(arguments);
  wish.unit = unitSaid(arguments);
  auto set = readScans(wish, sculpted);
  std::string faults;
  for (const auto& left : set.leftOut) {
    if (!left.asked) continue;
    const std::string file = left.file.string();
    if (left.why.id == files::fault::kNameTellsNoBone)
      faults +=
          said(QT_TRANSLATE_NOOP("words", "%1: its name does not tell which bone it is; give --bone ID"), {file}) +
          '\n';
    else if (left.why.id == files::fault::kCannotRead)
      faults += ui::say(left.why).toStdString() + '\n';  // names the file
    else
      faults += said(QT_TRANSLATE_NOOP("words", "%1: %2"), {file, ui::say(left.why)}) + '\n';
  }
  if (!faults.empty()) throw BadInput(faults.substr(0, faults.size() - 1));
  if (set.bones.empty()) {
    for (const auto& left : set.leftOut)
      faults += said(QT_TRANSLATE_NOOP("words", "%1: %2"), {left.file.string(), ui::say(left.why)}) + '\n';
    throw BadInput(faults + said(QT_TRANSLATE_NOOP("words", "none of the files can be brought in")));
  }
  return set;
}

Eigen::AlignedBox3d boxOf(const solid::TriangleMesh& mesh) {
  Eigen::AlignedBox3d box;
  for (const auto& p : mesh.positions) box.extend(p.cast<double>());
  return box;
}

/// The marks of the tables on every scan. Refused are tables whose lengths cannot be of these meshes.
void putMarksOf(const GivenMarks& given, const anatomy::Specimen& sculpted, ScansBroughtIn& scans) {
  std::string faults;
  for (const files::ProjectScan& scan : scans.scans)
    if (const auto off = anatomy::misfit(boxOf(*scan.mesh), scan.scan.bone, given.landmarks, given.facets))
      faults += ui::say(reasonOf(scan.scan.bone, *off)).toStdString() + '\n';
  if (!faults.empty()) throw BadInput(faults.substr(0, faults.size() - 1));
  for (files::ProjectScan& scan : scans.scans) {
    putMarks(scan.scan, sculpted[*sculpted.findBone(toId(scan.scan.bone))], given.landmarks, given.facets);
    scans.given.push_back(scan.scan);
  }
}

/// Rows of bones that are not among the scans are told of.
void tellUnusedRows(const GivenMarks& given, ScansBroughtIn& scans) {
  std::set<anatomy::BoneName> bones;
  for (const auto& [bone, points] : given.landmarks.points) bones.insert(bone);
  for (const auto& [bone, facets] : given.facets.facets) bones.insert(bone);
  for (const files::ProjectScan& scan : scans.scans) bones.erase(scan.scan.bone);
  QStringList unused;
  for (const anatomy::BoneName& bone : bones) unused << QString::fromStdString(toId(bone));
  if (!unused.isEmpty())
    scans.warnings.push_back(
        said(QT_TRANSLATE_NOOP("words", "the tables have marks of bones that are not among the scans: %1"),
             {ui::inOneLine(unused)}));
}

void tellTenfold(ScansBroughtIn& scans) {
  const double factor = scans.set.unit.factor;
  if (anatomy::isTenfold(factor))
    scans.warnings.push_back(said(QT_TRANSLATE_NOOP("words", "%1: fit the animal to them (--measures), or give --unit"),
                                  {ui::sizeOfSetSaid(factor)}));
}

void remarkOn(const anatomy::Specimen& sculpted, ScansBroughtIn& scans) {
  for (const files::ProjectScan& kept : scans.scans) {
    const anatomy::Bone& bone = sculpted[*sculpted.findBone(toId(kept.scan.bone))];
    ScanRemarks remarks;
    remarks.doubts = solid::markDoubts(kept.scan, bone, solid::MarkedSurface(*kept.mesh));
    remarks.sides = solid::oneSidedness(kept.scan, *kept.mesh);
    try {
      remarks.advised = anatomy::advisedStraightening(kept.scan);
    } catch (const reason::Failure&) {  // too few pairs, or a bone that was never symmetric: nothing to advise
    }
    scans.remarks.push_back(std::move(remarks));
  }
}

ScansBroughtIn bringIn(const Arguments& arguments, const GivenMarks& given, files::ScanSet set,
                       const anatomy::Specimen& sculpted) {
  ScansBroughtIn out;
  out.facetsGiven = given.facets;
  out.set = std::move(set);
  std::vector<solid::ColumnBone> column;
  for (const files::ScanOfSet& of : out.set.bones) {
    const anatomy::Bone& bone = sculpted[*sculpted.findBone(toId(of.bone.name))];
    out.scans.push_back(files::projectScan(of.clean, bone, of.unit, of.file));
    out.wanted.push_back(anatomy::marksFor(bone));
    column.push_back({bone.name, out.scans.back().mesh.get()});
  }
  tellTenfold(out);
  putMarksOf(given, sculpted, out);
  tellUnusedRows(given, out);
  if (arguments.has("--suggest")) {
    out.found = solid::suggestColumn(column, sculpted);
    for (std::size_t i = 0; i < out.scans.size(); ++i)
      takeOver(out.scans[i].scan, sculpted[*sculpted.findBone(toId(out.scans[i].scan.bone))], out.found->marks[i]);
  }
  if (arguments.has("--carry")) out.carried = files::carryMissing(out.scans, sculpted);
  remarkOn(sculpted, out);
  return out;
}

/// The marks as they stand, in tables that --landmarks and --facets read.
void writeMarks(const Arguments& arguments, const ScansBroughtIn& scans, std::string& wrote) {
  const auto records = files::recordsOf(scans.scans);
  const auto write = [&](const char* option, const std::string& text) {
    const auto file = arguments.find(option);
    if (!file) return;
    files::writeWhole(*file, text);
    wrote += wroteLine(*file);
  };
  write("--landmarks-out", writeLandmarkTable(anatomy::landmarkTableOf(records)));
  using Suggested = std::span<const anatomy::SuggestedMarks>;
  const auto suggested = scans.found ? Suggested(scans.found->marks) : Suggested();
  write("--facets-out", writeFacetTable(anatomy::facetTableOf(records, suggested, scans.facetsGiven)));
}

/// A second scan of a bone takes the first one's place.
void put(files::Project& project, files::ProjectScan scan) {
  std::erase_if(project.scans, [&](const auto& old) { return old.scan.bone == scan.scan.bone; });
  project.scans.push_back(std::move(scan));
}

/// "  C7 measures length 412.3 mm, facet tilt 31.0°"
std::string measuresText(const anatomy::Scan& scan) {
  const auto measures = anatomy::measuresOf(scan);
  QStringList parts;
  for (const auto& [measure, value] : measures)
    parts << ui::filled(ui::translated(QT_TRANSLATE_NOOP("words", "%1 %2")),
                        {ui::measureName(measure), ui::measureValue(measure, value)});
  const char* form = measures.empty() ? QT_TRANSLATE_NOOP("words", "%1 is not marked enough to be measured")
                                      : QT_TRANSLATE_NOOP("words", "%1 measures %2");
  return "  " + said(form, {toId(scan.bone), ui::inOneLine(parts)}) + "\n";
}

/// The scans in the animal; what they measured, said.
std::string putAll(const Arguments& arguments, const ScansBroughtIn& scans, files::Project& project) {
  std::string told;
  const bool own = scans.set.table.has_value();
  for (const auto& scan : scans.scans) {
    put(project, scan);
    if (own || arguments.has("--measures")) told += measuresText(scan.scan);
  }
  try {
    if (own) {
      using Joints = std::span<const solid::FoundJoint>;
      for (const auto& shown : settleAnimal(project, scans.found ? Joints(scans.found->joints) : Joints()))
        told += "  " + ui::cartilageShownSaid(shown).toStdString() + "\n";
      return told;
    }
    if (arguments.has("--measures")) {
      for (const auto& scan : scans.scans)
        project.table = withMeasures(std::move(project.table), scan.scan, anatomy::measuresOf(scan.scan));
      project.table = fillAnew(std::move(project.table));
    }
    project.setSpecimen(files::specimenOf(project.table, project.scans));
  } catch (const reason::Failure& failure) {
    throw BadInput(ui::say(failure.reason()).toStdString());
  }
  return told;
}

/// With the marks that are in doubt, which may be why, or why not to trust what can be assessed.
std::vector<std::string> whatIsLacking(const files::Project& project, const ScansBroughtIn& scans) {
  std::vector<std::string> out;
  const auto records = files::recordsOf(project.scans);
  const anatomy::Specimen& specimen = project.specimen();
  const auto suspectsOf = [&](const anatomy::Bone& bone, bool cranialEnd) {
    for (std::size_t i = 0; i < scans.scans.size(); ++i)
      if (scans.scans[i].scan.bone == bone.name) return suspectsAtEnd(scans.remarks[i].doubts, cranialEnd);
    return std::vector<reason::Value>{};
  };
  for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
    if (!specimen.joints[j].hasFacets()) continue;
    const anatomy::Bone &cranial = specimen[specimen.cranialBone({j})], &caudal = specimen[specimen.caudalBone({j})];
    QStringList suspects;
    for (const auto& [bone, marks] :
         {std::pair(&cranial, suspectsOf(cranial, false)), {&caudal, suspectsOf(caudal, true)}})
      for (const reason::Value& mark : marks)
        suspects << ui::filled(ui::translated(QT_TRANSLATE_NOOP("words", "%1 of %2")),
                               {ui::say(mark), QString::fromStdString(bone->id)});
    const std::string inDoubt = suspects.isEmpty()
                                    ? std::string()
                                    : said(QT_TRANSLATE_NOOP("words", "; in doubt: %1"), {ui::inOneLine(suspects)});
    const std::string id = specimen.joints[j].id;
    const auto lacks = anatomy::missingInputs(specimen, {j}, records);
    for (const auto& reason : lacks) out.push_back(id + ": " + ui::say(reason).toStdString() + inDoubt);
    if (lacks.empty() && !suspects.isEmpty())
      out.push_back(said(QT_TRANSLATE_NOOP("words", "%1 can be assessed"), {id}) + inDoubt);
  }
  return out;
}

/// The animal that gets the scans, and the scans as read.
struct AnimalAndScans {
  files::Project project;
  files::ScanSet set;
};

AnimalAndScans animalAndScans(const VerbSpec& spec, const Arguments& arguments, const std::string& out) {
  AnimalAndScans got;
  if (const auto plan = planSaid(arguments)) {
    if (arguments.has("--into"))
      refuse(QT_TRANSLATE_NOOP("words", "--plan makes an animal of its own: leave out one of --plan and --into"));
    got.set = readSet(arguments, *plan);
    got.set.table->name = std::filesystem::path(out).stem().string();
    got.project = files::projectFromTable(*got.set.table);
  } else {
    got.project = openProject(required(spec, arguments, "--into"));
    got.set = readSet(arguments, files::specimenOf(got.project.table, {}));
  }
  return got;
}

int scanVerbRun(const VerbSpec& spec, const Arguments& arguments) {
  const auto out = required(spec, arguments, "--out");
  const GivenMarks given = marksSaid(arguments);
  auto [project, set] = animalAndScans(spec, arguments, out);
  auto scans = bringIn(arguments, given, std::move(set), files::specimenOf(project.table, {}));
  const std::string measured = putAll(arguments, scans, project);
  scans.lacking = whatIsLacking(project, scans);
  for (const std::string& warning : scans.warnings) warn(QString::fromStdString(warning));
  std::string wrote = saveProject(project, out, arguments.has("--json"));
  writeMarks(arguments, scans, wrote);
  if (arguments.has("--json")) {
    std::cout << scansJson(scans, out);
    return kDone;
  }
  printScans(scans);
  std::cout << measured;
  for (const std::string& lacking : scans.lacking) std::cout << "  " << lacking << "\n";
  std::cout << wrote;
  return kDone;
}

}  // namespace

Verb scanVerb() {
  return {
      {"scan",
       "FILE|FOLDER...",
       QT_TRANSLATE_NOOP("words", "puts bone scans in the place of sculpted bones"),
       {{"--bone", "ID",
         QT_TRANSLATE_NOOP("words", "which bone the file is, once a file in order; guessed from its name unless said")},
        {"--unit", "mm|cm|m",
         QT_TRANSLATE_NOOP("words", "the files' unit; guessed from the size of all together unless said")},
        {"--suggest", "",
         QT_TRANSLATE_NOOP("words",
                           "finds facets, ends of the centra and neural canals where neighbours lie in articulation")},
        {"--carry", "",
         QT_TRANSLATE_NOOP("words", "marks that vertebrae still lack come from the nearest one that has some")},
        {"--landmarks", "FILE.csv",
         QT_TRANSLATE_NOOP("words", "bone,landmark,x (mm),y (mm),z (mm) in the axes of the scans")},
        {"--facets", "FILE.csv",
         QT_TRANSLATE_NOOP("words",
                           "one facet a row in the axes of the scans; marks of tables go before suggested ones")},
        {"--landmarks-out", "FILE.csv",
         QT_TRANSLATE_NOOP("words", "the landmarks that came of it, as --landmarks reads them")},
        {"--facets-out", "FILE.csv", QT_TRANSLATE_NOOP("words", "the facets that came of it, as --facets reads them")},
        {"--measures", "",
         QT_TRANSLATE_NOOP("words", "what the landmarks measure goes into the table: bones around the scans follow")},
        {"--into", "FILE.zyga", QT_TRANSLATE_NOOP("words", "the project that gets them")},
        {"--plan", "sauropod|mammal|bird",
         QT_TRANSLATE_NOOP("words", "instead of --into: they make an animal of their own, measured by them")},
        {"--out", "FILE2.zyga",
         QT_TRANSLATE_NOOP("words",
                           "the project to write; cleaned meshes are kept beside it in the folder scans, those of a "
                           "FILE.zygazip inside it")},
        {"--json", "", QT_TRANSLATE_NOOP("words", "everything, for machines")}},
       QT_TRANSLATE_NOOP(
           "words",
           "Every file is read by a process of its own with limits on time and memory. Nothing is written unless all\n"
           "files that are named can be used; what a folder holds beside bones is told and left out. A file in which\n"
           "several parts are named as bones gives them all. Bones keep the frame that they share.\n"
           "\n"
           "Mammals and birds have a column alone, with as many vertebrae as the names of the files say; a body plan\n"
           "can also be named as tables name it: high browser, low browser.\n"
           "\n"
           "Columns of a table of facets: bone, facet (prezyg.L, prezyg.R, postzyg.L, postzyg.R), centre x (mm),\n"
           "centre y (mm), centre z (mm), normal x, normal y, normal z, length (mm), width (mm); where known slide x,\n"
           "slide y, slide z (direction of sliding), radius (mm), residual (mm), confidence, outline (mm).\n"
           "\n"
           "--json: unit, unit_sure, size_factor (times the animal's bones); bones: file, part, bone, "
           "bone_confidence,\n"
           "unit, unit_by (size, format, person), unit_sure, placed, mid_plane, neural_canal, landmarks (place_mm), "
           "facets\n"
           "(centre_mm, normal, slide, area_mm2, length_mm, width_mm, residual_mm, confidence from 0 to 1, set_by, "
           "taken),\n"
           "left_open (why not); joints: id, found, confidence, ball_and_socket, disc_mm, joint_space_mm, why_not;\n"
           "left_out; carried (to, from, misfit, marks, left_out): marks from other bones; lacking; warnings. Of each\n"
           "bone also thinned (from, to, error_mm) where it had too many triangles;\n"
           "doubts (mark, id, why): marks that can hardly be right; missing (borders, border_length_mm, share,\n"
           "one_sided_share, said): what the scan lacks of a closed and symmetric surface, at least; advised\n"
           "(correction, why): whether its marks tell a shear or a compression. Places are mm in the file's own "
           "frame.\n"
           "Suggestions less sure than 0.5 are told and not taken.\n"),
       true},
      scanVerbRun};
}

}  // namespace zyga::app
