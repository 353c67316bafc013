#!/usr/bin/env bash
# Makes out of target/oldwood a Debian package with a Java runtime of its own, and the tree of which the zips are made. Run by `mvn -Ppackage verify`; the same commit and JDK give the same bytes.
# usage: build.sh VERSION TIMESTAMP      (TIMESTAMP as 2026-01-01T00:00:00Z)
set -euo pipefail
cd "$(dirname "$0")/../.."
version=$1
SOURCE_DATE_EPOCH=$(date -u -d "$2" +%s)
export SOURCE_DATE_EPOCH TZ=UTC LC_ALL=C
day=${2%%T*}
jdk=${JAVA_HOME:-$(dirname "$(dirname "$(readlink -f "$(command -v javac)")")")}
out=target/package
rm -rf "$out"
mkdir -p "$out"

# The runtime: only the modules that the program and its libraries use (jdeps tells them; java.desktop is named by ical4j's
# property editors alone and is not needed).
"$jdk/bin/jlink" --add-modules java.base,java.net.http,java.xml,jdk.httpserver,jdk.crypto.ec,jdk.zipfs \
  --strip-debug --no-header-files --no-man-pages --compress=2 --output "$out/runtime"

# What every package holds: launcher, jars, the list of classes for the archive, licences, man pages, completion.
tree=$out/tree
mkdir -p "$tree/lib" "$tree/licences" "$tree/man"
cp -r target/oldwood/bin "$tree/bin"
cp target/oldwood/lib/*.jar "$tree/lib/"
LC_ALL=C sort -u target/classes.lst >"$tree/lib/oldwood.classes" # which classes, not in which order they happened to come
cp docs/dependencies.md "$tree/licences/README.md"
for jar in "$tree"/lib/*.jar; do
  name=$(basename "$jar" .jar)
  ("$jdk/bin/jar" tf "$jar" | grep -iE '^(META-INF/)?(licen[cs]e|notice)[^/]*$' || true) | while read -r text; do
    (cd "$out" && "$jdk/bin/jar" xf "../../$jar" "$text" && mv "$text" "../../$tree/licences/$name-$(basename "$text")")
  done
done
rm -rf "$out/META-INF"
oldwood=target/oldwood/bin/oldwood
page() { # COMMAND, or none for the program itself
  $oldwood ${1:+"$1"} --help | awk -v command="${1:-}" -v version="$version" -v day="$day" -f src/package/man.awk
}
page "" >"$tree/man/oldwood.1"
commands=$($oldwood --help | sed -n '/^Commands:/,/^$/s/^  \([a-z0-9]\{2,\}\) .*/\1/p')
for command in $commands; do page "$command" >"$tree/man/oldwood-$command.1"; done
$oldwood completion >"$tree/completion.bash"

# The zips, for systems without dpkg, are made of this tree by src/package/zip*.xml: with the runtime for this kind of machine,
# and without, for any Java from 17 on.

if command -v dpkg-deb >/dev/null; then
  arch=$(dpkg --print-architecture)
  deb=$out/deb
  mkdir -p "$deb/DEBIAN" "$deb/usr/bin" "$deb/usr/lib/oldwood" "$deb/usr/share/man/man1" \
    "$deb/usr/share/bash-completion/completions" "$deb/usr/share/doc/oldwood" "$deb/usr/share/applications"
  cp -r "$tree/bin" "$tree/lib" "$deb/usr/lib/oldwood/"
  cp -r "$out/runtime" "$deb/usr/lib/oldwood/runtime"
  rm "$deb/usr/lib/oldwood/bin/oldwood.cmd"
  ln -s ../lib/oldwood/bin/oldwood "$deb/usr/bin/oldwood"
  for text in "$tree"/man/*.1; do gzip -9nc "$text" >"$deb/usr/share/man/man1/$(basename "$text").gz"; done
  cp "$tree/completion.bash" "$deb/usr/share/bash-completion/completions/oldwood"
  cp -r "$tree/licences" "$deb/usr/share/doc/oldwood/licences"
  gzip -9nc docs/changes.md >"$deb/usr/share/doc/oldwood/changelog.gz"
  cp src/package/oldwood.desktop "$deb/usr/share/applications/"
  cp src/package/open-page "$deb/usr/lib/oldwood/"
  cp src/package/postinst src/package/prerm "$deb/DEBIAN/"
  chmod 755 "$deb/DEBIAN/postinst" "$deb/DEBIAN/prerm"
  sed -e "s/@VERSION@/$version/; s/@ARCH@/$arch/; s/@SIZE@/$(du -sk --apparent-size "$deb/usr" | cut -f1)/" src/package/control >"$deb/DEBIAN/control"
  find "$deb" -type d -exec chmod 755 {} +
  find "$deb/usr" -type f ! -perm -u+x -exec chmod 644 {} +
  (cd "$deb" && find usr -type f | sort | xargs md5sum >DEBIAN/md5sums)
  find "$deb" -exec touch -h -d "@$SOURCE_DATE_EPOCH" {} +
  dpkg-deb --root-owner-group -Zxz --build "$deb" "$out/oldwood_${version}_$arch.deb" >/dev/null
  rm -r "$deb"
fi
