#!/usr/bin/env bash
# Opens sheets and the page for the phone in a real browser and holds them against the program's own JSON and the journal.
# usage: run.sh [--install | --fetch] [LAUNCHER]
# --install fetches the browser (Debian, as root) and the packages first, --fetch fetches them alone. Exit 0: all holds; 1: it does not; 2: the
# browser or the packages are not on this machine and could not be fetched, so nothing was looked at.
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
home=$(cd "$here/../../.." && pwd)
place=$home/target/sheet-browser
missing() { echo "sheets and page not looked at in a browser: $1" >&2; exit 2; }

install=no
only=no
if [ "${1:-}" = --install ]; then install=yes; shift; fi
if [ "${1:-}" = --fetch ]; then install=yes; only=yes; shift; fi
if [ $install = yes ] && ! command -v chromium >/dev/null && [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
  { apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends chromium fonts-liberation; } >&2 || true
fi
if [ $install = yes ] && ! command -v npm >/dev/null && [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
  DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends nodejs npm >&2 || true
fi
command -v chromium >/dev/null || missing "there is no chromium"
command -v node >/dev/null || missing "there is no node"
[ "$(node -p 'process.versions.node.split(".")[0]')" -ge 18 ] || missing "node is older than 18"

program=$(realpath -m "${1:-$home/target/oldwood/bin/oldwood}")
mkdir -p "$place"
cp "$here"/*.mjs "$here"/package.json "$here"/package-lock.json "$place"
cd "$place"
if [ ! -d node_modules/puppeteer-core ] || [ ! -d node_modules/jsqr ]; then
  [ $install = yes ] || missing "its packages are not in $place/node_modules"
  npm ci --ignore-scripts --no-audit --no-fund --silent >&2 || missing "its packages could not be fetched"
fi
[ $only = no ] || exit 0
# OLDWOOD_PICTURE=yes makes README's picture anew, and nothing else.
some=()
[ "${OLDWOOD_PICTURE:-no}" = no ] || some=(--test-name-pattern=picture)
export OLDWOOD_HOME=$home OLDWOOD=$program
node --test --test-reporter=spec "${some[@]}" phone.test.mjs &
phone=$!
node --test --test-reporter=spec "${some[@]}" sheet.test.mjs || exit 1
wait "$phone" || exit 1
