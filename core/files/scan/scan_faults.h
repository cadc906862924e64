#pragma once

#include <span>

#include "core/files/disk/file_error.h"

/// What may be wrong with the file of a scan, or with the process that reads it: causes alone; the name of the file
/// stands in the fault that carries them.
namespace zyga::files::fault {

// The file.
inline constexpr Id kIsFolder{"scan.is-folder"};
inline constexpr Id kNotPlainFile{"scan.not-plain-file"};
inline constexpr Id kFileTooLarge{"scan.file-too-large", 2};  ///< bytes it has, the most that are read
inline constexpr Id kUnreadable{"scan.unreadable"};
inline constexpr Id kEmptyFile{"scan.empty-file"};
inline constexpr Id kNoMeshFormat{"scan.no-mesh-format"};
inline constexpr Id kNoSurface{"scan.no-surface"};
inline constexpr Id kNoUsableTriangle{"scan.no-usable-triangle"};
inline constexpr Id kCountsBeyondMeasure{"scan.counts-beyond-measure"};
inline constexpr Id kTooManyVertices{"scan.too-many-vertices"};

// Its head and its lists.
inline constexpr Id kBadCount{"scan.bad-count", 2};                 ///< the text found, of what
inline constexpr Id kElements{"scan.elements", 1};                  ///< name of a kind of element
inline constexpr Id kDeclaresTooMany{"scan.declares-too-many", 4};  ///< count, of what, bytes of each, bytes left
inline constexpr Id kNoPlyType{"scan.no-ply-type", 1};
inline constexpr Id kPlyHeadOpen{"scan.ply-head-open"};
inline constexpr Id kFaceNamesNoVertex{"scan.face-names-no-vertex", 3};  ///< face, vertex, number of vertices
inline constexpr Id kTooShortForStl{"scan.too-short-for-stl"};
inline constexpr Id kTooShortForGlb{"scan.too-short-for-glb"};
inline constexpr Id kGltfJson{"scan.gltf-json", 3};  ///< line, column, cause in the JSON
inline constexpr Id kGltfJsonCutShort{"scan.gltf-json-cut-short"};
inline constexpr Id kGlbCutShort{"scan.glb-cut-short", 2};  ///< bytes it claims, bytes it has
inline constexpr Id kCompressed{"scan.compressed", 1};      ///< name of the extension

// The process that reads it.
inline constexpr Id kNoTemporaryFolder{"scan.no-temporary-folder", 1};
inline constexpr Id kCannotStart{"scan.cannot-start", 2};               ///< program, the system's words
inline constexpr Id kTookTooLong{"scan.took-too-long", 1};              ///< seconds allowed by the clock
inline constexpr Id kTookProcessorTime{"scan.took-processor-time", 1};  ///< seconds allowed
inline constexpr Id kNeedsMemory{"scan.needs-memory", 3};  ///< triangles, bytes it would need, bytes allowed
inline constexpr Id kStoppedBySystem{"scan.stopped-by-system"};
inline constexpr Id kMeshTooLarge{"scan.mesh-too-large", 1};  ///< bytes allowed
inline constexpr Id kBrokeDown{"scan.broke-down", 1};         ///< name of the signal
inline constexpr Id kTooMuchMemory{"scan.too-much-memory", 1};
inline constexpr Id kEndedWithCode{"scan.ended-with-code", 1};
inline constexpr Id kDamagedAnswer{"scan.damaged-answer"};
inline constexpr Id kNoRoom{"scan.no-room", 1};  ///< folder

}  // namespace zyga::files::fault

namespace zyga::files {

inline constexpr reason::Term kVertices{"scan.vertices"}, kFaces{"scan.faces"}, kTriangles{"scan.triangles"};

}  // namespace zyga::files

/// Why a file or a part of one is not brought in with the set that it belongs to.
namespace zyga::files::fault {

inline constexpr Id kNoMeshInFolder{"scan-set.no-mesh-in-folder"};
inline constexpr Id kNoBoneAmongScans{"scan-set.no-bone-among-scans"};
inline constexpr Id kNameTellsNoBone{"scan-set.name-tells-no-bone"};
inline constexpr Id kNameNotSure{"scan-set.name-not-sure", 2};      ///< bone, what is in doubt
inline constexpr Id kAnimalHasNone{"scan-set.animal-has-none", 1};  ///< bone
inline constexpr Id kBoneInOtherFile{"scan-set.bone-twice", 2};     ///< bone, the file that it is already

}  // namespace zyga::files::fault
