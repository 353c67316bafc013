#!/usr/bin/env bash
# Installs the Debian package in a clean Debian root, uses it as an ordinary user without Java on the PATH, installs it over an
# older version with a garden in use, and removes it. Needs root and debootstrap; run after `mvn -Ppackage verify`.
# usage: package-install.sh DEB [ROOT]      (ROOT is kept and used again; else a new one is made and taken away)
set -euo pipefail
deb=$1
root=${2:-$(mktemp -d)}

work=$(mktemp -d)
chmod 755 "$root" 2>/dev/null || true # an ordinary user must be able to enter it

say() { echo "package: $*"; }
inside() { chroot "$root" /usr/bin/env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin LC_ALL=C.UTF-8 HOME=/root "$@"; }
as_user() { inside su - grower -c "$1"; }

[ -x "$root/usr/bin/dpkg" ] || debootstrap --variant=minbase bookworm "$root" >"$work/debootstrap.log" 2>&1 || {
  tail -5 "$work/debootstrap.log" >&2
  exit 2
}
mount -t proc proc "$root/proc" 2>/dev/null || true
finish() {
  umount "$root/proc" 2>/dev/null || true
  rm -rf "$work"
  [ "$root" = "${kept:-}" ] || rm -rf "$root"
}
kept=${2:-}
trap finish EXIT
inside dpkg --purge oldwood >/dev/null 2>&1 || true
inside id grower >/dev/null 2>&1 || inside useradd -m -s /bin/sh grower
rm -rf "$root/home/grower"/* "$root/home/grower/.config"

# An older version: the same files under a lower number.
dpkg-deb -R "$deb" "$work/older"
sed -i 's/^Version: .*/Version: 0.0.1/' "$work/older/DEBIAN/control"
dpkg-deb --root-owner-group -Zgzip -z1 --build "$work/older" "$root/tmp/older.deb" >/dev/null
cp "$deb" "$root/tmp/oldwood.deb"

inside dpkg -i /tmp/older.deb >/dev/null
say "installed the older version"
as_user 'if command -v java; then exit 1; fi; if ls -A | grep -qv "^\.\(bash\|profile\)"; then echo "the home is not empty"; exit 1; fi'
as_user 'oldwood start garden --name "Garden" --at 52,-2 --plants blackcurrant=2,gooseberry=1 --planted 2021 --quiet'
as_user 'oldwood calendar --today 2026-11-28 --quiet; ls garden/calendars/*.ics >/dev/null'
say "the first calendar in two commands in an empty home"
as_user 'oldwood note counted --garden garden --plant blackcurrant-1 --stems 1=5,2=4,3=4 --quiet'
as_user 'oldwood calendar --garden garden --today 2026-11-28 --quiet; ls garden/calendars/*.ics >/dev/null; cat garden/calendars/*.ics' >"$work/before"
inside dpkg -i /tmp/oldwood.deb >/dev/null
say "installed over it"
as_user 'oldwood calendar --garden garden --today 2026-11-28 --quiet; cat garden/calendars/*.ics' >"$work/after"
cmp "$work/before" "$work/after"
as_user 'oldwood check --garden garden'
as_user 'oldwood --version' | grep -q "$(dpkg-deb -f "$deb" Version)"
[ -s "$root/usr/lib/oldwood/lib/oldwood.jsa" ] || { say "no class-data archive was made" && exit 1; }
as_user 'oldwood feed --garden garden --units us | grep -q "sq ft"'
grep -q "^Exec=/usr/" "$root/usr/share/applications/oldwood.desktop"
[ -x "$root$(sed -n 's/^Exec=\([^ ]*\).*/\1/p' "$root/usr/share/applications/oldwood.desktop")" ] || { say "the desktop entry starts nothing" && exit 1; }
inside sh -c 'gzip -dc /usr/share/man/man1/oldwood-tasks.1.gz | grep -q "^.SH OPTIONS"'
size=$(($(dpkg-deb -f "$deb" Installed-Size) / 1024))
[ "$size" -le 70 ] || { say "installed size is $size MB; the most is 70" && exit 1; }
inside dpkg --purge oldwood >/dev/null
left=$(find "$root/usr/lib/oldwood" "$root/usr/bin/oldwood" 2>/dev/null || true)
[ -z "$left" ] || { say "left behind: $left" && exit 1; }
[ -s "$root/home/grower/garden/journal.jsonl" ] || { say "the garden is gone" && exit 1; }
say "removed; the garden stays; installed size was $size MB"
