#pragma once

#include <vector>

#include "core/files/project/project.h"
#include "ui/document/set_value.h"

namespace zyga::ui {

class Document;

/// Another list of named poses. The functions below make the usual edits; an index outside the list throws
/// std::out_of_range.
class EditNamedPoses : public SetValue<std::vector<files::NamedPose>> {
 public:
  EditNamedPoses(Document& document, std::vector<files::NamedPose> after, const QString& text);
};

/// Keeps the present pose under a name of its own ("Alert", then "Alert 2").
void addNamedPose(Document& document, const QString& name);
/// False, and nothing changes, when the name is blank or taken by another pose.
bool renameNamedPose(Document& document, std::size_t index, const QString& name);
void deleteNamedPose(Document& document, std::size_t index);
/// Puts the present pose in the place of the named one.
void replaceNamedPose(Document& document, std::size_t index);

}  // namespace zyga::ui
