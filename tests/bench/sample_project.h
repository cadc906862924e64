#pragma once

#include <fstream>
#include <sstream>

#include "core/files/project/project.h"

namespace zyga::bench {

/// The first sample, as the window opens it.
inline files::Project sampleProject() {
  std::stringstream text;
  text << std::ifstream(ZYGAPOSE_SOURCE_DIR "/samples/high_browser.csv").rdbuf();
  return files::projectFromTable(anatomy::readMeasurementTable(text.str(), "high_browser.csv").table);
}

}  // namespace zyga::bench
