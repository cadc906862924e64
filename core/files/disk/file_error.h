#pragma once

#include <stdexcept>

namespace zyga::files {

/// What a reader has to say: the file, the place of the fault, the cause and the mend, in one sentence for people.
class FileError : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

}  // namespace zyga::files
