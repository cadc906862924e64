#!/bin/bash
# usage: check_layers.sh SOURCE_FOLDER
# Every folder may include only what it is allowed here: app -> ui -> core, and inside core study -> range -> kinematics
# -> anatomy with files, report, solid and picture used from above. A new arrow is a decision, so it is written down
# here. No Qt in core but Qt Core in core/files.
set -euo pipefail
cd "$1"
faults=0
declare -A allowed

fault() {
  echo "$1" >&2
  faults=1
}

# allow FOLDER INCLUDES...: folders, each without its rooms; "core/*" is all of core.
allow() {
  local folder=$1
  shift
  allowed[$folder]=" $* "
}

# For all: values that say why, progress, decompositions, loops over all cores.
base="core/reason core/task core/linear"

allow core/reason
allow core/task
allow core/linear
allow core/anatomy $base
allow core/anatomy/tables $base core/anatomy core/anatomy/plan
allow core/anatomy/plan $base core/anatomy core/anatomy/tables
allow core/anatomy/plan/plans core/anatomy/plan
allow core/anatomy/marks $base core/anatomy core/anatomy/tables
anatomy="core/anatomy core/anatomy/tables core/anatomy/plan core/anatomy/marks"
allow core/kinematics $base $anatomy
allow core/range $base $anatomy core/kinematics core/range/contact
allow core/range/contact $base $anatomy core/kinematics core/range
below_study="$base $anatomy core/kinematics core/range core/range/contact"
rooms_of_study="core/study/reach core/study/ground core/study/mass core/study/stances core/study/claims core/study/stress
  core/study/uncertainty"
allow core/study $below_study $rooms_of_study
allow core/study/reach $below_study core/study core/study/ground
allow core/study/ground $below_study core/study core/study/mass
allow core/study/mass $below_study core/study core/study/ground
allow core/study/stances $below_study core/study core/study/ground core/study/mass core/study/reach
allow core/study/claims $below_study core/study core/study/reach core/study/uncertainty
allow core/study/stress $below_study core/study core/study/mass core/study/reach
allow core/study/uncertainty $below_study core/study core/study/reach
study="core/study $rooms_of_study"
below_solid="$base $anatomy"
allow core/solid/cache $base core/solid/sculpt
below_solid="$below_solid core/solid/cache"
allow core/solid/mesh $below_solid core/solid/sculpt
allow core/solid/facets $base $anatomy core/solid/mesh
allow core/solid/sdf $below_solid core/solid/mesh core/solid/sculpt
allow core/solid/sculpt/axial $below_solid core/solid/sdf
allow core/solid/sculpt/appendicular $below_solid core/solid/sdf
allow core/solid/sculpt $below_solid core/solid/mesh core/solid/sdf core/solid/sculpt/axial core/solid/sculpt/appendicular
allow core/solid/levelset $below_solid core/solid/mesh core/solid/sculpt core/solid/watertight
allow core/solid/watertight $below_solid core/solid/levelset core/solid/mesh core/solid/sculpt core/solid/sdf
allow core/solid/flesh $below_solid core/solid/levelset core/solid/mesh core/solid/sdf core/solid/watertight
solid="core/solid/mesh core/solid/facets core/solid/sculpt core/solid/levelset core/solid/watertight core/solid/flesh"
allow core/picture $base core/solid/mesh
allow core/files/disk $base
allow core/files/json $base core/files/disk
allow core/files/scan $base $anatomy core/range/contact $solid core/files/disk core/files/json core/files/export
allow core/files/project $below_study $study $solid core/files/disk core/files/json core/files/scan
allow core/files/export $below_study $study $solid core/files/disk core/files/json core/files/project
allow core/report $below_study $study core/files/json core/files/project

allow ui/words "core/*"
# No widgets in these: batch verbs use them too.
allow ui/plots "core/*" ui/words
allow ui/pictures "core/*" ui/words
allow ui/palette "core/*"
allow ui/sheets "core/*" ui/words ui/palette
allow ui/report "core/*" ui/words ui/plots ui/sheets
allow ui/theme "core/*" ui/words ui/palette
allow ui/settings "core/*" ui/words ui/theme
allow ui/parts "core/*" ui/words ui/theme
allow ui/document "core/*" ui/words ui/theme
allow ui/commands "core/*" ui/words ui/theme ui/document
allow ui/ground "core/*" ui/words ui/document
allow ui/studies "core/*" ui/words ui/theme ui/document ui/plots
allow ui/drag "core/*" ui/words ui/theme ui/document
allow ui/strip "core/*" ui/words ui/theme ui/document
allow ui/viewport "core/*" ui/words ui/theme ui/document ui/drag ui/ground
allow ui/help "core/*" ui/words ui/theme ui/parts
panel="core/* ui/words ui/theme ui/parts ui/document ui/commands"
set -f
allow ui/panels $panel ui/drag ui/panels/joint
allow ui/panels/joint $panel
allow ui/panels/claims $panel ui/panels
allow ui/panels/ground $panel ui/ground
allow ui/panels/studies $panel ui/studies ui/plots
allow ui/dialogs $panel ui/settings
allow ui/dialogs/picture $panel ui/pictures ui/viewport
allow ui/dialogs/sheet $panel ui/sheets
allow ui/scans $panel ui/viewport

allow app/arguments core/reason
allow app/verbs "core/*" app/arguments ui/words ui/plots ui/sheets ui/report ui/pictures
window="core/* ui/*"
allow app/window $window app/window/controllers app/window/docks
allow app/window/docks $window app/window app/window/controllers
allow app/window/controllers $window app/window
allow app app/verbs app/window
set +f

# Lines "FILE:NUMBER:FOLDER INCLUDED_FOLDER", without what stays in its folder.
arrows() {
  grep -rnE --include='*.h' --include='*.cpp' '^#include "(core|ui|app|tests)/' core ui app |
    sed -E 's|^((.*)/[^/:]*:[0-9]+):#include "(.*)/[^/"]*".*|\1:\2 \3|' | awk '{split($1, at, ":"); if (at[3] != $2) print}'
}

while read -r where to; do
  folder=${where##*:}
  if [ -z "${allowed[$folder]+known}" ]; then
    fault "$folder has no list of what it may include"
    allowed[$folder]=" $to "
  fi
  list=${allowed[$folder]}
  [[ $list == *" $to "* || $list == *" ${to%%/*}/* "* ]] || fault "${where%:*}: $folder may not include $to"
done < <(arrows)

while IFS= read -r line; do
  fault "$line: no Qt in core"
done < <(grep -rnE --include='*.h' --include='*.cpp' '#include <Q' core --exclude-dir=files || true)

qt_core='QByteArray|QCborValue|QCoreApplication|QDeadlineTimer|QDir|QFile|QFileInfo|QIODevice|QJson[A-Za-z]*|QLocale|QLockFile|QProcess|QSaveFile|QStandardPaths|QString|QStringList|QTemporaryDir|QTemporaryFile|QUrl|QVariant|QtCore/[A-Za-z]*'
while IFS= read -r line; do
  fault "$line: core/files may use Qt Core only"
done < <(grep -rnE --include='*.h' --include='*.cpp' '#include <Q' core/files | grep -vE "#include <($qt_core)>" || true)

exit "$faults"
