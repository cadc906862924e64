# Sourced by the scripts that build: makes sure that the Debian packages of a list are there.

# The packages named in the list files, leaving out those whose command is there already.
wanted_packages() {
  sed -e 's/#.*//' "$@" | while read -r package unless command; do
    [ -n "$package" ] || continue
    [ "$unless" = unless ] && command -v "$command" >/dev/null && continue
    echo "$package"
  done
}

# Those of the packages given as arguments that are not installed.
missing_packages() {
  local installed
  # Virtual and unknown names make dpkg-query complain and exit with 1; what it lists counts.
  installed=$(dpkg-query -W -f '${db:Status-Status} ${Package}\n' "$@" 2>/dev/null | sed -n 's/^installed //p') || true
  comm -23 <(printf '%s\n' "$@" | sort -u) <(printf '%s\n' "$installed" | sort -u)
}

# How to become root: nothing when root already, sudo when it may be used, else exit 1.
as_root() {
  if [ "$(id -u)" = 0 ]; then
    echo env
  elif command -v sudo >/dev/null && { [ -t 0 ] || sudo -n true 2>/dev/null; }; then
    echo "sudo env"
  else
    return 1
  fi
}

# require_packages FILE...: installs what is missing, or says exactly what to install and exits with 2.
require_packages() {
  local wanted missing become
  wanted=$(wanted_packages "$@")
  if ! command -v dpkg-query >/dev/null || ! command -v apt-get >/dev/null; then
    echo "error: this is not a Debian system, so the packages cannot be installed for you." >&2
    echo "Install what these Debian 12 packages hold, then run again with ZYGAPOSE_SKIP_PACKAGES=1:" >&2
    printf '  %s\n' $wanted >&2
    exit 2
  fi
  missing=$(missing_packages $wanted)
  [ -n "$missing" ] || return 0
  if ! become=$(as_root); then
    echo "error: packages are missing, and without root or sudo they cannot be installed. As root, run:" >&2
    echo "  apt-get install --no-install-recommends $(echo $missing)" >&2
    exit 2
  fi
  echo "Installing: $(echo $missing)"
  local apt="$become DEBIAN_FRONTEND=noninteractive apt-get -q -o DPkg::Lock::Timeout=300"
  $apt update </dev/null
  if ! $apt install -y --no-install-recommends $missing </dev/null; then
    echo "error: the packages could not be installed. They are meant for Debian 12 (bookworm):" >&2
    echo "  apt-get install --no-install-recommends $(echo $missing)" >&2
    exit 2
  fi
}

# ensure_packages FILE...: as require_packages, unless the person has said that everything is there.
ensure_packages() {
  [ -n "${ZYGAPOSE_SKIP_PACKAGES:-}" ] || require_packages "$@"
}
