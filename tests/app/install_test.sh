#!/bin/bash
# install_test.sh BUILD: installs the program into a folder of its own, does its work from there and takes it away again.
set -euo pipefail
build=$1
place=$(mktemp -d)
trap 'rm -rf "$place"' EXIT

fail() {
  echo "error: $*" >&2
  exit 1
}

cmake --install "$build" --prefix "$place/usr" >"$place/log" || { cat "$place/log"; fail "the program did not install"; }
cp "$build/install_manifest.txt" "$place/manifest"
program=$place/usr/bin/zygapose share=$place/usr/share

for file in "$program" "$share/zygapose/samples/high_browser.csv" "$share/applications/zygapose.desktop" \
  "$share/icons/hicolor/scalable/apps/zygapose.svg" "$share/mime/packages/zygapose.xml" "$share/man/man1/zygapose.1"; do
  [ -s "$file" ] || fail "$file is not there"
done

(cd "$place" && "$program" make "$share/zygapose/samples/high_browser.csv" --out animal.zyga >/dev/null)
[ -s "$place/animal.zyga" ] || fail "the installed program wrote no project"

verbs=$("$program" help | sed -nE 's/^  ([a-z-]+)  +.*/\1/p' | grep -v '^help$')
[ -n "$verbs" ] || fail "the program names no verbs"
for verb in $verbs; do
  grep -qxF ".SS $verb" "$share/man/man1/zygapose.1" || fail "the manual page lacks the verb $verb"
done
# Projects with their scans beside them, and those in one file.
grep -q '^MimeType=application/x-zygapose-project;application/x-zygapose-project-zip;$' \
  "$share/applications/zygapose.desktop" || fail "no file types"
for type in x-zygapose-project x-zygapose-project-zip; do
  grep -q "type=\"application/$type\"" "$share/mime/packages/zygapose.xml" || fail "the file type $type is not told"
done

xargs -d '\n' rm <"$place/manifest"
left=$(find "$place/usr" -type f -o -type l)
[ -z "$left" ] || fail "taken away again, these files stay: $left"
