#!/usr/bin/env bash
# Notes on a real file system of 64 KB until it is full, and in a folder that is mounted read-only:
# every entry that was acknowledged is there afterwards, and the folder opens. Needs root, for mounting.
# usage: full-disk.sh OLDWOOD     the runnable, target/oldwood/bin/oldwood
# Exit 0: all held, or nothing can be mounted here (said); 1: something did not hold.
set -euo pipefail
oldwood=$(cd "$(dirname "$1")" && pwd)/$(basename "$1")
disk=$(mktemp -d)
mount -t tmpfs -o size=64k tmpfs "$disk" 2>/dev/null || { echo "nothing can be mounted here, left out"; rmdir "$disk"; exit 0; }
trap 'umount "$disk" && rmdir "$disk"' EXIT
garden="$disk/garden"
fail() { echo "$*" >&2; exit 1; }

"$oldwood" start "$garden" --name Terrace --at 52,-2 --plants blackcurrant=2 --planted 2021 --zone Europe/London --today 2026-11-25 --quiet >/dev/null
acknowledged=0
words=$(printf 'word %.0s' {1..900})
while said=$("$oldwood" note watered --garden "$garden" --bed blackcurrant-bed --litres 20 --note "$words" --today 2026-11-25 2>&1); do
  id=$(grep -o '^e-[0-9a-f]*' <<<"$said")
  grep -q "\"id\":\"$id\"" "$garden/journal.jsonl" || fail "$id was acknowledged and is not there"
  acknowledged=$((acknowledged + 1))
  [ $acknowledged -lt 100 ] || fail "the disk never filled"
done
tr '\n' ' ' <<<"$said" | tr -s ' ' | grep -q 'disk is not full' || fail "not told: $said"
[ "$(grep -c 'entry":"watered' "$garden/journal.jsonl")" = $acknowledged ] || fail "another number of entries"
"$oldwood" check --garden "$garden" --today 2026-11-25 || fail "the folder does not open"
"$oldwood" calendar --garden "$garden" --today 2026-11-25 >/dev/null 2>&1 && fail "calendars fit that cannot"
"$oldwood" check --garden "$garden" --today 2026-11-25 || fail "the folder does not open after that"

mount -o remount,ro "$disk"
"$oldwood" tasks --garden "$garden" --today 2026-11-25 >/dev/null 2>&1 || fail "a read-only folder cannot be read"
said=$("$oldwood" note watered --garden "$garden" --bed blackcurrant-bed --litres 20 --today 2026-11-25 2>&1) && fail "noted on a read-only disk"
tr '\n' ' ' <<<"$said" | tr -s ' ' | grep -q 'that you may write in it' || fail "not told: $said"
mount -o remount,rw,size=1m "$disk"
"$oldwood" note watered --garden "$garden" --bed blackcurrant-bed --litres 20 --today 2026-11-25 --quiet >/dev/null || fail "with room again it does not go on"
"$oldwood" check --garden "$garden" --today 2026-11-25
echo "full disk: $acknowledged entries acknowledged, $acknowledged there; read-only: read, and told when noting"
