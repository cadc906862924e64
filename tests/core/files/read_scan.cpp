#include "core/files/scan/scan_process.h"

/// The reading process alone, so that tests need not wait for the whole program: `read_scan read-scan IN OUT ...`.
int main(int argc, char** argv) { return zyga::files::readScanProcess(argc - 1, argv + 1); }
