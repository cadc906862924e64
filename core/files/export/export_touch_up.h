#pragma once

#include <string>
#include <string_view>

#include "core/files/export/mesh_export.h"

/// What the mesh library cannot be asked to write. Private to the writers of mesh files.
namespace zyga::files {

/// COLLADA: the library always declares metres and Y up; this puts the unit and axis in use into the header
/// (COLLADA 1.4.1, elements <unit> and <up_axis>).
std::string withColladaHeader(std::string_view document, LengthUnit unit, UpAxis up);

/// glTF and GLB: the library declares extensions whether or not they are used, among them one by which a reader may
/// melt neighbouring triangles into polygons. The list is blanked in place, so the lengths in a GLB stay right.
std::string withoutExtensions(std::string_view document);

/// A sentence in the file's own header, where its format has a place for one. glTF and GLB: `asset.extras.note` (glTF
/// 2.0, section 3.2). COLLADA: <comments> of the contributor. OBJ: a comment line. PLY: a comment of its header. STL:
/// the 80 bytes before the triangles, as much as fits. The text is taken as ASCII. Unchanged for an empty note.
std::string withNote(std::string bytes, std::string_view ending, const std::string& note);

}  // namespace zyga::files
