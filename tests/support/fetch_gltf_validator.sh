#!/bin/bash
# usage: fetch_gltf_validator.sh FOLDER
# Puts the glTF validator of the Khronos Group (npm package gltf-validator, Apache-2.0) under FOLDER/node_modules, once.
# Exit 0: it is there; 3: npm or node is not installed; anything else: the fetch failed.
set -eu
folder=$1
version=2.0.0-dev.3.10
command -v node >/dev/null && command -v npm >/dev/null || { echo "node or npm is not installed" >&2; exit 3; }
mkdir -p "$folder"
exec 9>"$folder/lock"
flock 9
installed=$(sed -n 's/.*"version": "\(.*\)".*/\1/p' "$folder/node_modules/gltf-validator/package.json" 2>/dev/null || true)
[ "$installed" = "$version" ] && exit 0
npm install --silent --no-audit --no-fund --prefix "$folder" "gltf-validator@$version"
