#!/usr/bin/env bash
# Publishes a garden to a real CalDAV server on this machine (Radicale), lets a real client (todoman
# through vdirsyncer) tick a to-do off, reads it back, changes and withdraws tasks, and looks at what
# is left: no duplicate, no lost completion, no lost property of the client.
# usage: calendar-server.sh OLDWOOD     the runnable, target/oldwood/bin/oldwood
# Exit 0: all held, or the programs are not installed (said); 1: something did not hold.
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
oldwood=$(cd "$(dirname "$1")" && pwd)/$(basename "$1")
for program in radicale vdirsyncer todoman; do
  command -v "$program" >/dev/null || { echo "$program is not on this machine, left out"; exit 0; }
done
exec /usr/bin/python3 "$here/calendar_server.py" "$oldwood"
