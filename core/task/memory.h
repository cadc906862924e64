#pragma once

namespace zyga::task {

/// Asks the C library to keep memory that is freed for the next that is wanted (up to 64 MiB an arena) in place of
/// giving it back to the system: samples build and drop whole animals of some megabytes each, and without this a
/// quarter of their time went into pages taken back and handed out anew (measured, glibc 2.36). For the first lines of
/// a program's main; without glibc nothing happens.
void keepFreedMemory();

}  // namespace zyga::task
