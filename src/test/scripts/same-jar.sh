#!/usr/bin/env bash
# Builds the program twice from the same commit, in two folders, time zones and languages, and compares the jars.
# usage: same-jar.sh      Exit 0: the same bytes; 1: not.
set -euo pipefail
top=$(cd "$(dirname "$0")/../../.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
build() {
  mkdir -p "$work/$1/x"
  cp -r "$top/pom.xml" "$top/src" "$top/demo-data" "$work/$1/x/"
  (cd "$work/$1/x" && TZ=$2 LANG=$3 mvn -B -ntp -q -o -Dquick -DskipTests package >/dev/null)
  sha256sum <"$work/$1/x/target/oldwood/lib/oldwood.jar"
}
one=$(build one UTC C.UTF-8)
two=$(build another-folder Pacific/Kiritimati de_DE.UTF-8)
[ "$one" = "$two" ] || { echo "two builds gave two jars" >&2; exit 1; }
echo "two builds, the same jar: ${one%% *}"
