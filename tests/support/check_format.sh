#!/bin/bash
# usage: check_format.sh SOURCE_FOLDER
# Names every source that clang-format 14 would change.
set -euo pipefail
cd "$1"
find app core ui tests \( -name '*.h' -o -name '*.cpp' \) -print0 | sort -z | xargs -0 clang-format-14 --dry-run -Werror
