#!/usr/bin/env bash
# Lets independent programs read calendar files: what they see must be the same for all.
# usage: calendar-readers.sh [--install] FILE.ics...
# Readers that are not on the machine are left out, and that is said; --install fetches them first
# (Debian 12, as root). Exit 0: all that ran agree; 1: they do not, or a line breaks the standard.
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
node_dir=${CALENDAR_READERS_NODE:-$here/../../../target/calendar-readers}
if [ "${1:-}" = --install ]; then
  shift
  apt-get update -qq
  DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends \
    python3-icalendar python3-gi gir1.2-ical-3.0 khal calcurse todoman vdirsyncer radicale >&2
  mkdir -p "$node_dir"
  [ -f "$node_dir/package.json" ] || echo '{"private":true}' >"$node_dir/package.json"
  command -v npm >/dev/null && (cd "$node_dir" && npm install --silent --no-audit --no-fund ical.js@2.2.1 node-ical@0.26.1 >&2)
fi
[ $# -gt 0 ] || { sed -n '2,5p' "$0" >&2; exit 2; }
# Debian's own interpreter: its modules are not seen by another python3 that comes first
exec /usr/bin/python3 "$here/calendar_readers.py" "$node_dir" "$@"
