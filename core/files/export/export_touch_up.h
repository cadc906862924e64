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

}  // namespace zyga::files
