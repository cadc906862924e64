#pragma once

#include <string>
#include <string_view>

/// A sentence in a mesh file's own header, where its format has a place for one. Private to the writers of mesh files.
namespace zyga::files {

/// glTF and GLB: `asset.extras.note` (glTF 2.0, section 3.2). COLLADA: <comments> of the contributor. OBJ: a comment
/// line. PLY: a comment of its header. STL: the 80 bytes before the triangles, as much as fits. The text is taken as
/// ASCII. Unchanged for an empty note.
std::string withNote(std::string bytes, std::string_view ending, const std::string& note);

}  // namespace zyga::files
