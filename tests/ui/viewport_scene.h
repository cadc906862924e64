#pragma once

#include <QApplication>
#include <QImage>
#include <QSignalSpy>
#include <QTest>
#include <filesystem>

#include "core/files/export/mesh_export.h"
#include "ui/document/document.h"

namespace zyga::ui::test {

/// Round bars along the bones' landmarks, for tests of what is done with bones and not of how they look.
files::BoneMeshes barBones(const anatomy::Specimen& specimen);

/// A project from a sample's measurement table: "high_browser" or "low_browser".
files::Project sampleProject(const char* name);

/// The same bones with a finer level before their only one.
files::BoneMeshes inTwoLevels(files::BoneMeshes meshes);

/// How many pixels of `area` differ clearly between two pictures.
int differing(const QImage& a, const QImage& b, const QRect& area);

/// Whether there is a screen whose pixels can be looked at.
bool haveScreen();

}  // namespace zyga::ui::test
