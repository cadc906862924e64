#include "core/task/memory.h"

#include <cstdlib>  // says whether this is glibc

#ifdef __GLIBC__
#include <malloc.h>
#endif

namespace zyga::task {

void keepFreedMemory() {
#ifdef __GLIBC__
  mallopt(M_TRIM_THRESHOLD, 64 << 20);
  mallopt(M_MMAP_THRESHOLD, 32 << 20);
#endif
}

}  // namespace zyga::task
