#include <QCoreApplication>

#include "ui/words/wordings.h"

namespace zyga::ui {

/// Meshes: of scans that are read, of surfaces that are made, of files that are written.
Wordings scanWordings() {
  static constexpr const char* kBytes = QT_TRANSLATE_N_NOOP("words", "%n bytes");
  static constexpr Wording kWordings[] = {
      // The file.
      {"scan.is-folder", QT_TRANSLATE_NOOP("words", "it is a folder")},
      {"scan.not-plain-file", QT_TRANSLATE_NOOP("words", "it is not a plain file")},
      {"scan.file-too-large", QT_TRANSLATE_NOOP("words", "it is %1 large, the most that is read is %2")},
      {"scan.unreadable", QT_TRANSLATE_NOOP("words", "it cannot be read")},
      {"scan.empty-file", QT_TRANSLATE_NOOP("words", "it is empty")},
      {"scan.no-mesh-format", QT_TRANSLATE_NOOP("words", "it is in no mesh format that is read here")},
      {"scan.no-surface", QT_TRANSLATE_NOOP("words", "there is no surface in it")},
      {"scan.no-usable-triangle", QT_TRANSLATE_NOOP("words", "none of its triangles can be used")},
      {"scan.counts-beyond-measure", QT_TRANSLATE_NOOP("words", "its counts are beyond all measure: it is damaged")},
      {"scan.too-many-vertices", QT_TRANSLATE_NOOP("words", "it has more vertices than can be counted here")},
      {"scan.bad-count", QT_TRANSLATE_NOOP("words", "its header gives '%1' as the number of %2")},
      {"scan.elements", QT_TRANSLATE_NOOP("words", "%1 elements")},
      {"scan.declares-too-many",
       QT_TRANSLATE_NOOP("words",
                         "it declares %1 %2, which need at least %3 each, but it has only %4 left for them: it is "
                         "damaged or cut short"),
       {nullptr, nullptr, kBytes, kBytes}},
      {"scan.no-ply-type", QT_TRANSLATE_NOOP("words", "its header names a type '%1', which PLY does not have")},
      {"scan.ply-head-open", QT_TRANSLATE_NOOP("words", "its PLY header does not end")},
      {"scan.face-names-no-vertex",
       QT_TRANSLATE_NOOP("words", "its face %1 names vertex %2, but there are only %3, counted from 0: it is damaged")},
      {"scan.too-short-for-stl", QT_TRANSLATE_NOOP("words", "it is too short for an STL file")},
      {"scan.too-short-for-glb", QT_TRANSLATE_NOOP("words", "it is too short for a GLB file")},
      {"scan.gltf-json", QT_TRANSLATE_NOOP("words", "its JSON:%1, column %2: %3")},
      {"scan.gltf-json-cut-short", QT_TRANSLATE_NOOP("words", "its JSON is cut short")},
      {"scan.glb-cut-short",
       QT_TRANSLATE_NOOP("words", "it says it is %1 long, but has %2: it is cut short"),
       {kBytes, kBytes}},
      {"scan.compressed",
       QT_TRANSLATE_NOOP("words",
                         "its meshes are compressed (%1), which is not read here; export it without compression")},
      {"scan.vertices", QT_TRANSLATE_NOOP("words", "vertices")},
      {"scan.faces", QT_TRANSLATE_NOOP("words", "faces")},
      {"scan.triangles", QT_TRANSLATE_NOOP("words", "triangles")},
      // The process that reads it.
      {"scan.no-temporary-folder", QT_TRANSLATE_NOOP("words", "no temporary folder can be made in %1")},
      {"scan.cannot-start", QT_TRANSLATE_NOOP("words", "cannot start %1: %2")},
      {"scan.took-too-long", QT_TRANSLATE_NOOP("words", "reading it takes longer than the %1 seconds allowed")},
      {"scan.took-processor-time", QT_TRANSLATE_NOOP("words", "reading it took more than %1\u00A0s of processor time")},
      {"scan.stopped-by-system",
       QT_TRANSLATE_NOOP("words", "the system stopped the process that read it, most likely for want of memory")},
      {"scan.mesh-too-large", QT_TRANSLATE_NOOP("words", "its mesh is larger than the %1 allowed")},
      {"scan.broke-down",
       QT_TRANSLATE_NOOP("words",
                         "it is damaged, or of a kind that is not understood: the process that read it broke down "
                         "(%1); nothing else is harmed")},
      {"scan.too-much-memory", QT_TRANSLATE_NOOP("words", "reading it needs more memory than the %1 allowed")},
      {"scan.needs-memory",
       QT_TRANSLATE_NOOP("words",
                         "reading its %1 triangles would need about %2 of memory, more than the %3 allowed: thin it "
                         "first in the program that made it")},
      {"scan.ended-with-code", QT_TRANSLATE_NOOP("words", "the process that read it ended with code %1")},
      {"scan.damaged-answer", QT_TRANSLATE_NOOP("words", "the process that read it gave a damaged answer")},
      {"scan.no-room", QT_TRANSLATE_NOOP("words", "there is no room for it in %1")},
      // Files that belong together.
      {"scan-set.no-mesh-in-folder", QT_TRANSLATE_NOOP("words", "there is no mesh file in this folder")},
      {"scan-set.no-bone-among-scans",
       QT_TRANSLATE_NOOP("words", "none of the files is known by its name to be a bone of such an animal")},
      {"scan-set.name-tells-no-bone", QT_TRANSLATE_NOOP("words", "its name does not tell which bone it is")},
      {"scan-set.name-not-sure", QT_TRANSLATE_NOOP("words", "it may be %1, but its name does not say so surely: %2")},
      {"scan-set.animal-has-none", QT_TRANSLATE_NOOP("words", "the animal has no %1")},
      {"scan-set.bone-twice", QT_TRANSLATE_NOOP("words", "it would be %1, which %2 is already")},
      // Marks carried over from another bone.
      {"carry.other-shape", QT_TRANSLATE_NOOP("words", "%2 is too different from %1 for its marks")},
      {"carry.no-surface-under", QT_TRANSLATE_NOOP("words", "%1: there is too little surface where it should lie")},
      // What is fitted to a scan.
      {"fit.nothing-brushed", QT_TRANSLATE_NOOP("words", "nothing has been brushed")},
      {"fit.flat-patch", QT_TRANSLATE_NOOP("words", "the patch is flat: no sphere goes through it")},
      {"fit.too-few-for-sphere", QT_TRANSLATE_NOOP("words", "a sphere needs at least four triangles brushed")},
      {"fit.too-few-for-ring", QT_TRANSLATE_NOOP("words", "a ring needs at least three places")},
      {"fit.ring-on-line", QT_TRANSLATE_NOOP("words", "the places lie along one line: click round the rim")},
      // Marks that can hardly be right.
      {"doubt.left", QT_TRANSLATE_NOOP("words", "left %1")},
      {"doubt.right", QT_TRANSLATE_NOOP("words", "right %1")},
      {"doubt.off-mid-plane",
       QT_TRANSLATE_NOOP("words",
                         "%1 lies %2 off the mid-plane of the other marks; on a bone of this size that is doubted from "
                         "%3 on (program default, no source)")},
      {"doubt.uneven",
       QT_TRANSLATE_NOOP("words",
                         "%1 lies %3 off the mirror image of %2; on a bone of this size one of the two is doubted from "
                         "%4 on (program default, no source)")},
      {"doubt.areas-differ",
       QT_TRANSLATE_NOOP("words",
                         "%1 and %2 differ in area %3 times; one of the two is doubted from %4 times on (program "
                         "default, no source)")},
      {"doubt.turned",
       QT_TRANSLATE_NOOP("words",
                         "%1 is turned by %3 from the mirror image of %2; one of the two is doubted from %4 on "
                         "(program default, no source)")},
      {"doubt.other-side", QT_TRANSLATE_NOOP("words", "%1 lies on the other side of the mid-plane")},
      {"doubt.poor-facet",
       QT_TRANSLATE_NOOP("words",
                         "%1: the surface lies %2 off its plane; at this size it is doubted to be one facet from %3 on "
                         "(program default, no source)")},
      {"doubt.poor-fit",
       QT_TRANSLATE_NOOP("words",
                         "%1: the places lie %2 off the ball or ring; on a bone of this size the fit is doubted from "
                         "%3 on (program default, no source)")},
      {"doubt.centre-unsure",
       QT_TRANSLATE_NOOP("words",
                         "%1: the centre is only known to %2; on a bone of this size it is doubted from %3 on (program "
                         "default, no source). Brush more of the curve")},
      {"doubt.off-surface",
       QT_TRANSLATE_NOOP("words",
                         "%1 lies %2 off the surface; on a bone of this size that is doubted from %3 on (program "
                         "default, no source)")},
      {"doubt.no-surface", QT_TRANSLATE_NOOP("words", "%1 has surface under only %2 of its outline")},
      {"doubt.far-from-bone",
       QT_TRANSLATE_NOOP("words",
                         "%1 lies %2 from the nearest surface; on a bone of this size that is doubted from %3 on "
                         "(program default, no source)")},
      {"doubt.wrong-way", QT_TRANSLATE_NOOP("words", "%1 faces the wrong way for its role")},
      {"doubt.into-bone", QT_TRANSLATE_NOOP("words", "%1 faces into the bone")},
      // Which correction of a deformation is advised.
      {"straighten.advise-shear",
       QT_TRANSLATE_NOOP("words", "a shear of %1 explains the marks: pairs are off by %2 as found, by %3 without it")},
      {"straighten.advise-squash",
       QT_TRANSLATE_NOOP("words",
                         "a compression of %1 explains the marks better than a shear: pairs are off by %2 as found, by "
                         "%3 without it")},
      {"straighten.advise-as-found",
       QT_TRANSLATE_NOOP("words",
                         "pairs are off by %1 only; from %2 on that tells a deformation (program default, no source)")},
      {"straighten.advise-no-gain",
       QT_TRANSLATE_NOOP("words",
                         "pairs are off by %1, and by %2 after a correction: it would only follow the scatter of the "
                         "marks")},
      // What is suggested where two bones meet.
      {"bone-of-pair.cranial", QT_TRANSLATE_NOOP("words", "the cranial bone")},
      {"bone-of-pair.caudal", QT_TRANSLATE_NOOP("words", "the caudal bone")},
      {"suggest.no-surface", QT_TRANSLATE_NOOP("words", "%1 has no surface")},
      {"suggest.not-finite",
       QT_TRANSLATE_NOOP("words", "the mesh of %1 is damaged: it names points that are not there")},
      {"suggest.inside-out", QT_TRANSLATE_NOOP("words", "the mesh of %1 is inside out: turn its faces over")},
      {"suggest.far-apart",
       QT_TRANSLATE_NOOP(
           "words",
           "the bones do not lie in articulation: within %1 of the smaller bone’s size nothing of them faces "
           "the other")},
      {"suggest.no-centra",
       QT_TRANSLATE_NOOP("words", "no ends of the centra were found that face each other: mark them by hand")},
      {"suggest.no-facets", QT_TRANSLATE_NOOP("words", "no facets were found beside the mid-plane: mark them by hand")},
      {"suggest.at-joint", QT_TRANSLATE_NOOP("words", "nothing is suggested at %1: %2")},
      {"suggest.no-neighbour-before",
       QT_TRANSLATE_NOOP("words",
                         "no bone was given that its cranial end meets with facets; by shape alone facets are not told "
                         "from other flat parts: mark them by hand")},
      {"suggest.no-neighbour-behind",
       QT_TRANSLATE_NOOP("words",
                         "no bone was given that its caudal end meets with facets; by shape alone facets are not told "
                         "from other flat parts: mark them by hand")},
      {"suggest.no-facet-there", QT_TRANSLATE_NOOP("words", "%1 was not found: mark it by hand")},
      {"suggest.no-canal",
       QT_TRANSLATE_NOOP("words", "no ring of bone was found over the centrum: mark the neural canal by hand")},
      {"suggest.no-cranial-end", QT_TRANSLATE_NOOP("words", "the cranial end of the centrum was not found by shape")},
      {"suggest.no-caudal-end", QT_TRANSLATE_NOOP("words", "the caudal end of the centrum was not found by shape")},
      {"suggest.in-one-another",
       QT_TRANSLATE_NOOP("words",
                         "both bones lie in the same place: each has a frame of its own, and nothing tells how they "
                         "met")},
      {"marks.beside-mesh",
       QT_TRANSLATE_NOOP(
           "words", "the mark %2 of %1 lies %3 beside its mesh: check the unit of the table and that of the scan")},
      {"marks.beside-mesh-fits",
       QT_TRANSLATE_NOOP("words",
                         "the mark %2 of %1 lies %3 beside its mesh; multiplied by %4 all its marks would fit: check "
                         "the unit of the table and that of the scan")},
      {"marks.in-one-spot",
       QT_TRANSLATE_NOOP("words",
                         "all marks of %1 lie in one spot of its mesh: check the unit of the table and that of the "
                         "scan")},
      {"marks.in-one-spot-fits",
       QT_TRANSLATE_NOOP("words",
                         "all marks of %1 lie in one spot of its mesh; multiplied by %2 they would fit: check the unit "
                         "of the table and that of the scan")},
      // Surfaces that are made, and files of meshes.
      {"mesh.no-bone-meshes", QT_TRANSLATE_NOOP("words", "there are no bone meshes yet")},
      {"mesh.no-closed-bone", QT_TRANSLATE_NOOP("words", "none of the bones has a closed surface")},
      {"mesh.no-bones-for-guide", QT_TRANSLATE_NOOP("words", "there are no bones to put a body guide around")},
      {"mesh.voxel-too-fine",
       QT_TRANSLATE_NOOP("words", "a voxel of %1 would need about %2 of memory; the smallest that fits in %3 is %4")},
      {"mesh.voxel-too-coarse",
       QT_TRANSLATE_NOOP("words", "a voxel of %1 is too coarse: nothing is left of the bones; try %2")},
      {"export.unknown-ending", QT_TRANSLATE_NOOP("words", "the ending must be .glb, .gltf, .obj, .ply, .stl or .dae")},
      {"export.library-left-out", QT_TRANSLATE_NOOP("words", "the mesh library wrote no %1")},
      {"guide.head-and-feet", QT_TRANSLATE_NOOP("words", "head and feet")},
      {"guide.neck", QT_TRANSLATE_NOOP("words", "neck")},
      {"guide.neck-base", QT_TRANSLATE_NOOP("words", "neck base")},
      {"guide.trunk", QT_TRANSLATE_NOOP("words", "trunk")},
      {"guide.tail-base", QT_TRANSLATE_NOOP("words", "tail base")},
      {"guide.upper-limbs", QT_TRANSLATE_NOOP("words", "upper limbs")},
      {"guide.lower-limbs", QT_TRANSLATE_NOOP("words", "lower limbs")},
      // Figures.
      {"study.unknown-ending",
       QT_TRANSLATE_NOOP("words", "%1: a figure is written as svg, pdf or png, numbers as json")},
  };
  return kWordings;
}

}  // namespace zyga::ui
