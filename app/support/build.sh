# Sourced by the scripts that build: configures once, then builds only what has changed.

# build_program FOLDER TARGET [cmake options...]: TARGET "all" builds everything. Options are applied when they differ
# from the folder's cache, so that a second run has nothing to do.
build_program() {
  local folder=$1 target=$2 option
  shift 2
  set -- -DCMAKE_UNITY_BUILD=ON "$@"
  local configure=
  [ -f "$folder/build.ninja" ] || configure=yes
  for option in "$@"; do
    [ -n "$configure" ] || grep -qE "^${option%%=*}(:[A-Z]+)?=${option#*=}\$" <(sed 's/^/-D/' "$folder/CMakeCache.txt") ||
      configure=yes
  done
  if [ -n "$configure" ]; then
    mkdir -p "$folder"
    cmake -S "$source" -B "$folder" -G Ninja -DCMAKE_BUILD_TYPE=Release "$@" \
      >"$folder/configure.log" 2>&1 || {
      cat "$folder/configure.log" >&2
      echo "error: the build could not be set up, see above" >&2
      exit 2
    }
  fi
  cmake --build "$folder" --target "$target" || {
    echo "error: the build failed, see above" >&2
    exit 2
  }
}
