#!/bin/bash
# usage: check_layers.sh SOURCE_FOLDER
# Every folder may include only from folders below it: app -> ui -> core, inside core study -> range -> kinematics ->
# anatomy with files, solid and picture used from above, and crew by all. No Qt header in core but Qt Core in core/files.
set -euo pipefail
cd "$1"
faults=0

fault() {
  echo "$1" >&2
  faults=1
}

# allow FOLDER INCLUDES...: all other includes from the project are faults.
allow() {
  local folder=$1 pattern
  shift
  pattern=$(IFS='|'; echo "$*")
  [ -d "$folder" ] || return 0
  while IFS= read -r line; do
    fault "$line: $folder may include only $*"
  done < <(grep -rnE --include='*.h' --include='*.cpp' '#include "(core|ui|app|tests)/' "$folder" |
    grep -vE "#include \"($pattern)/" || true)
}

allow core/crew core/crew
allow core/anatomy core/anatomy
allow core/kinematics core/kinematics core/anatomy
allow core/range core/range core/kinematics core/anatomy core/crew
allow core/solid core/solid core/anatomy core/crew
allow core/picture core/picture core/solid core/crew
allow core/study core/study core/range core/kinematics core/anatomy core/solid core/crew
allow core/files core/files core/study core/range core/kinematics core/anatomy core/solid
allow core/report core/report core/files core/study core/range core/kinematics core/anatomy core/solid
allow ui ui core
allow app app ui core

while IFS= read -r line; do
  fault "$line: no Qt in core"
done < <(grep -rnE --include='*.h' --include='*.cpp' '#include <Q' core --exclude-dir=files || true)

qt_core='QByteArray|QCborValue|QDir|QFile|QFileInfo|QIODevice|QJson[A-Za-z]*|QLocale|QLockFile|QSaveFile|QString|QStringList|QTemporaryDir|QTemporaryFile|QUrl|QVariant|QtCore/[A-Za-z]*'
while IFS= read -r line; do
  fault "$line: core/files may use Qt Core only"
done < <(grep -rnE --include='*.h' --include='*.cpp' '#include <Q' core/files | grep -vE "#include <($qt_core)>" || true)

exit "$faults"
