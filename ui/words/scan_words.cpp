#include "ui/words/scan_words.h"

#include <QCoreApplication>
#include <cmath>

#include "core/files/json/numeral.h"
#include "core/files/project/project_body_guide.h"
#include "core/solid/flesh/body_guide.h"
#include "ui/words/numbers.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

constexpr const char* kCaution =
    QT_TRANSLATE_NOOP("words", "Not an engineering document; local codes and licensed practice decide.");

/// One phrase for a count, where there is something to count.
void tell(QStringList& said, std::size_t count, const char* english, const QStringList& parts = {}) {
  if (count > 0) said << filled(translated(english, static_cast<int>(count)), parts);
}

QString length(double value, double unit) {
  return unit > 0 ? millimetres(value * unit)
                  : filled(translated(QT_TRANSLATE_NOOP("words", "%1 in the file's unit")), {plain(value, 1)});
}

/// Of how far something may be off at most: never rounded down.
QString atMost(double metres) {
  const int decimals = metres < 1e-4 ? 3 : 2;
  const double step = std::pow(10.0, -3 - decimals);
  return millimetres(std::ceil(metres / step) * step, decimals);
}

QString volumeSaid(double volume, int decimals) { return plain(volume, decimals) + QString::fromUtf8("\u00A0m\u00B3"); }

template <class Index>
QString ids(const std::vector<Index>& indices, const anatomy::Specimen& specimen) {
  QStringList all;
  for (const Index i : indices) all << QString::fromStdString(specimen[i].id);
  return inOneLine(all);
}

std::string digits(double value, int decimals) { return QString::number(value, 'f', decimals).toStdString(); }

/// "head and feet 20, neck 50, ... mm; tail 1.35 x bone width, 1.2 x bone height", ASCII.
std::string thicknessNoted(const solid::GuideThickness& thickness) {
  std::string out;
  for (const auto& part : files::kGuideParts) {
    std::string name(part.part.id.substr(part.part.id.find('.') + 1));
    std::replace(name.begin(), name.end(), '-', ' ');
    out += (out.empty() ? "" : ", ") + name + " " + digits(thickness.*part.field * 1000, 0);
  }
  return out + " mm; tail " + files::toNumeral(thickness.tailWidth) + " x bone width, " +
         files::toNumeral(thickness.tailHeight) + " x bone height; limb muscles " + files::toNumeral(thickness.muscle) +
         " x usual";
}

}  // namespace

QStringList repairsSaid(const files::CleanScan& scan, double unit) {
  const solid::Repairs& r = scan.repairs;
  const files::CleanScan::LeftOut& out = scan.leftOut;
  QStringList said;
  tell(said, out.facesLost, QT_TRANSLATE_N_NOOP("words", "left out %n of %1 declared faces, which could not be used"),
       {QString::number(out.facesDeclared)});
  tell(said, out.badFaces, QT_TRANSLATE_N_NOOP("words", "dropped %n faces naming vertices that are not there"));
  tell(said, out.pointsAndLines, QT_TRANSLATE_N_NOOP("words", "left out %n points and lines"));
  tell(said, r.badIndices, QT_TRANSLATE_N_NOOP("words", "dropped %n triangles naming vertices that are not there"));
  tell(said, r.notFinite, QT_TRANSLATE_N_NOOP("words", "dropped %n triangles with a corner that is no number"));
  tell(said, r.welded, QT_TRANSLATE_N_NOOP("words", "welded %n vertices standing at the same place as another"));
  tell(said, r.seamsClosed, QT_TRANSLATE_N_NOOP("words", "closed seams at %n vertices"));
  tell(said, r.degenerate, QT_TRANSLATE_N_NOOP("words", "dropped %n triangles without area"));
  tell(said, r.duplicates, QT_TRANSLATE_N_NOOP("words", "dropped %n triangles given twice"));
  tell(said, r.turned, QT_TRANSLATE_N_NOOP("words", "turned %n triangles over to face as the rest"));
  tell(said, r.insideOut, QT_TRANSLATE_N_NOOP("words", "turned %n surfaces over, inside out before"));
  tell(said, r.unusedVertices, QT_TRANSLATE_N_NOOP("words", "dropped %n vertices without triangles"));
  if (scan.thinned)
    said << filled(
        translated(QT_TRANSLATE_NOOP("words", "thinned from %1 to %2 triangles, no point moved by more than %3")),
        {QString::number(scan.thinned->from), QString::number(scan.thinned->to),
         atMost(scan.thinned->error * (unit > 0 ? unit : anatomy::metresOf(scan.unitGuess.unit)))});
  if (out.looks.vertexColours) said << translated(QT_TRANSLATE_NOOP("words", "vertex colours were left out"));
  if (out.looks.faceColours) said << translated(QT_TRANSLATE_NOOP("words", "colours of faces were left out"));
  if (out.looks.textures) said << translated(QT_TRANSLATE_NOOP("words", "textures were left out"));
  return said;
}

QStringList flawsSaid(const solid::Flaws& f, double unit) {
  QStringList said;
  tell(said, f.holes, QT_TRANSLATE_N_NOOP("words", "%n holes left open, the longest border %1"),
       {length(f.longestHole, unit)});
  tell(said, f.nonManifoldEdges, QT_TRANSLATE_N_NOOP("words", "%n edges with more than two triangles"));
  tell(said, f.twisted, QT_TRANSLATE_N_NOOP("words", "%n edges where the surface is one-sided"));
  tell(said, f.surfaces > 1 ? f.surfaces : 0, QT_TRANSLATE_N_NOOP("words", "%n surfaces that are not connected"));
  tell(said, f.cavities, QT_TRANSLATE_N_NOOP("words", "%n hollows inside, counted off the volume"));
  return said;
}

QStringList missingSaid(const solid::OpenBorders& borders, const std::optional<solid::OneSidedness>& sides) {
  QStringList said;
  const bool oneSided = sides && sides->share > solid::kOneSided;
  const double missing = std::max(borders.missing(), oneSided ? sides->missing() : 0);
  if (borders.missing() >= solid::kMuchMissing || (borders.borders > 0 && oneSided))
    said << filled(
        translated(QT_TRANSLATE_NOOP("words", "open borders: %1, at least %2 of the closed surface is missing")),
        {QString::number(borders.borders), percent(missing)});
  if (!oneSided) return said;
  const auto side = [&said](double cranial, double caudal, const char* all, const char* front, const char* back) {
    const bool noFront = cranial > solid::kQuarterMissing, noBack = caudal > solid::kQuarterMissing;
    if (noFront || noBack) said << translated(noFront && noBack ? all : noFront ? front : back);
  };
  side(sides->leftCranial, sides->leftCaudal, QT_TRANSLATE_NOOP("words", "left side missing"),
       QT_TRANSLATE_NOOP("words", "left side missing: cranial half"),
       QT_TRANSLATE_NOOP("words", "left side missing: caudal half"));
  side(sides->rightCranial, sides->rightCaudal, QT_TRANSLATE_NOOP("words", "right side missing"),
       QT_TRANSLATE_NOOP("words", "right side missing: cranial half"),
       QT_TRANSLATE_NOOP("words", "right side missing: caudal half"));
  if (said.isEmpty())
    said << filled(translated(QT_TRANSLATE_NOOP("words", "%1 of the surface has no counterpart on the other side")),
                   {percent(sides->share)});
  return said;
}

QStringList doubtsSaid(const std::vector<anatomy::MarkDoubt>& doubts) {
  QStringList said;
  for (const anatomy::MarkDoubt& doubt : doubts) said << capital(say(doubt.why));
  return said;
}

QString suspectsSaid(const std::vector<reason::Value>& marks) {
  if (marks.empty()) return {};
  QStringList names;
  for (const reason::Value& mark : marks) names << say(mark);
  return filled(translated(QT_TRANSLATE_NOOP("words", "; in doubt: %1")), {inOneLine(names)});
}

QString cartilageShownSaid(const files::ShownCartilage& shown) {
  const char* form =
      shown.region == anatomy::Region::Cervical
          ? QT_TRANSLATE_NOOP("words",
                              "cartilage of the neck: %1 of the centra's length, as %2 of its joints show (%3 to %4)")
      : shown.region == anatomy::Region::Dorsal
          ? QT_TRANSLATE_NOOP("words",
                              "cartilage of the trunk: %1 of the centra's length, as %2 of its joints show (%3 to %4)")
          : QT_TRANSLATE_NOOP("words",
                              "cartilage of the tail: %1 of the centra's length, as %2 of its joints show (%3 to %4)");
  return filled(translated(form), {percent(shown.percent / 100, 1), QString::number(shown.joints),
                                   percent(shown.least / 100, 1), percent(shown.most / 100, 1)});
}

QString carriedSaid(const files::CarriedTo& carried) {
  QStringList causes;
  for (const reason::Reason& why : carried.leftOut) causes << say(why);
  QString words = filled(translated(QT_TRANSLATE_NOOP("words",
                                                      "%1: marks carried over from %2: %3, the surfaces %4 of the "
                                                      "bone's size apart")),
                         {QString::fromStdString(toId(carried.to)), QString::fromStdString(toId(carried.from)),
                          QString::number(carried.marks), percent(carried.misfit)});
  if (!causes.isEmpty())
    words = filled(translated(QT_TRANSLATE_NOOP("words", "%1; %2")), {words, causes.join(QStringLiteral("; "))});
  return words;
}

QString leftOutSaid(const files::LeftOutOfSet& left) {
  const QString file = QString::fromStdString(left.file.filename().string());
  const QString name = left.part.empty() ? file
                                         : filled(translated(QT_TRANSLATE_NOOP("words", "%1 of %2")),
                                                  {QString::fromStdString(left.part), file});
  return filled(translated(QT_TRANSLATE_NOOP("words", "%1 is left out: %2")), {name, say(left.why)});
}

QString causeAlone(const std::exception& error) {
  const auto* failure = dynamic_cast<const reason::Failure*>(&error);
  if (failure && failure->reason().id == files::fault::kCannotRead) return say(failure->reason().values.back());
  return sayFailure(error);
}

QStringList scansAmissSaid(const std::vector<files::ProjectScan>& scans) {
  QStringList sentences;
  for (const files::ProjectScan& kept : scans)
    for (const reason::Reason* reason : {&kept.trouble, &kept.moved})
      if (!reason->empty()) sentences << say(*reason);
  return sentences;
}

QStringList scansSavedSaid(const files::ScansSaved& saved) {
  QStringList sentences;
  if (saved.kept > 0 && saved.folder.empty())
    sentences << translated(QT_TRANSLATE_NOOP("words", "The scans are inside the project file."));
  const QString folder = QString::fromStdString(saved.folder.string());
  if (saved.kept > 0 && !saved.folder.empty())
    sentences << filled(
        translated(saved.folderMade ? QT_TRANSLATE_NOOP("words",
                                                        "The scans are in the new folder %1; it belongs to the "
                                                        "project: move both together.")
                                    : QT_TRANSLATE_NOOP("words",
                                                        "The scans are in the folder %1; it belongs to the project: "
                                                        "move both together.")),
        {folder});
  for (const auto& aside : saved.setAside)
    sentences << filled(
        translated(QT_TRANSLATE_NOOP("words", "In the place of a scan lay another file; it is kept as %1.")),
        {QString::fromStdString(aside.string())});
  QStringList lost;
  for (const std::string& bone : saved.lost) lost << QString::fromStdString(bone);
  if (!lost.empty())
    sentences << filled(translated(QT_TRANSLATE_NOOP("words", "Without the scans that could not be read: %1.")),
                        {inOneLine(lost)});
  return sentences;
}

QStringList surfacesSaid(const files::SculptedSurfaces& made, const anatomy::Specimen& specimen) {
  QStringList said;
  if (const auto& skeleton = made.skeleton) {
    said << filled(translated(QT_TRANSLATE_NOOP("words", "One closed surface: %1, %2, %3, voxel %4.")),
                   {translated(QT_TRANSLATE_N_NOOP("words", "%n triangles"), static_cast<int>(made.skeletonTriangles)),
                    translated(QT_TRANSLATE_N_NOOP("words", "%n separate pieces"), static_cast<int>(skeleton->pieces)),
                    volumeSaid(skeleton->volume, 3), millimetres(skeleton->voxel)});
    tell(said, skeleton->hollows, QT_TRANSLATE_N_NOOP("words", "%n closed hollows were filled."));
    tell(said, skeleton->specks, QT_TRANSLATE_N_NOOP("words", "%n specks smaller than eight voxels left out."));
    tell(said, skeleton->holesClosed, QT_TRANSLATE_N_NOOP("words", "Holes in %n bones were closed over."));
    if (!skeleton->leftOut.empty())
      said << filled(translated(QT_TRANSLATE_NOOP("words", "Left out because their surfaces enclose nothing: %1.")),
                     {ids(skeleton->leftOut, specimen)});
    if (!skeleton->unfilled.empty())
      said << filled(
          translated(QT_TRANSLATE_NOOP("words", "Joints left open because the bones stand too far apart: %1.")),
          {ids(skeleton->unfilled, specimen)});
  }
  if (const auto& guide = made.guide)
    said << filled(translated(QT_TRANSLATE_NOOP("words", "Body guide: %1, %2. A guide, not anatomy.")),
                   {translated(QT_TRANSLATE_N_NOOP("words", "%n triangles"), static_cast<int>(guide->triangles)),
                    volumeSaid(guide->volume, 2)});
  return said;
}

QString fabricationCaution() { return translated(kCaution); }

void noteSurfaces(files::SculptedSurfaces& made, const anatomy::Specimen& specimen,
                  const solid::GuideThickness& thickness) {
  for (files::NamedSurface& surface : made.surfaces) {
    if (surface.name == solid::kGuideName)
      surface.note = "Body guide: an envelope of chosen thickness, not anatomy. " + thicknessNoted(thickness) + ".";
    else if (made.skeleton)
      surface.note = "Posed skeleton of " + specimen.name + " as one closed surface, voxel " +
                     digits(made.skeleton->voxel * 1000, 1) + " mm. " + kCaution;
  }
}

}  // namespace zyga::ui
