#include <gmock/gmock.h>

#include "core/files/scan/scan_process.h"

/// Verbs that are run within this program read scans by starting it again, as they do the real one.
int main(int argc, char** argv) {
  if (argc > 1 && argv[1] == zyga::files::protocol::kVerb) return zyga::files::readScanProcess(argc - 1, argv + 1);
  testing::InitGoogleMock(&argc, argv);
  return RUN_ALL_TESTS();
}
