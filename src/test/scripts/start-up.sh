#!/usr/bin/env bash
# Starts the packaged program with its class-data archive, without, with a broken one, with one cut short, from another
# folder and under another Java, where there is one (OTHER_JAVA_HOME): the same on stdout, nothing on stderr, each time.
# Usage: start-up.sh target/oldwood
set -euo pipefail
built=$(cd "$1" && pwd)
work=$(mktemp -d)
archive=$built/lib/oldwood.jsa
back() {
    if [ -e "$work/whole.jsa" ]; then mv -f "$work/whole.jsa" "$archive"; fi
    rm -rf "$work"
}
trap back EXIT
export XDG_CACHE_HOME=$work/cache
"$built/bin/oldwood" sources >"$work/expected"
[ -s "$work/expected" ]

holds() {
    local name=$1 launcher=$2
    "$launcher" sources >"$work/out" 2>"$work/err"
    cmp "$work/expected" "$work/out"
    if [ -s "$work/err" ]; then
        echo "start-up, $name: something on stderr:" >&2
        cat "$work/err" >&2
        exit 1
    fi
    echo "start-up, $name: same output"
}

holds "archive in place" "$built/bin/oldwood"
# cut short where it stands: only there does the JVM get as far as mapping it
mv "$archive" "$work/whole.jsa"
size=$(wc -c <"$work/whole.jsa")
for left in $((size - 1)) $((size - 4096)) $((size * 9 / 10)) $((size / 2)) 5000; do
    head -c "$left" "$work/whole.jsa" >"$archive"
    holds "archive cut to $left of $size octets" "$built/bin/oldwood"
    rm "$archive"
done
mv "$work/whole.jsa" "$archive"
cp -r "$built" "$work/moved"
holds "moved to another folder" "$work/moved/bin/oldwood"
ln -s "$built/bin/oldwood" "$work/link"
holds "through a link" "$work/link"
# a copy that says that it was built here
printf '%s\n%s\n' "$(head -n 1 "$built/lib/oldwood.java")" "$work/moved/lib" >"$work/moved/lib/oldwood.java"
holds "archive of another folder" "$work/moved/bin/oldwood"
chmod u+w "$work/moved/lib/oldwood.jsa"
head -c 100 "$built/lib/oldwood.jsa" >"$work/moved/lib/oldwood.jsa"
holds "archive that holds nothing" "$work/moved/bin/oldwood"
echo "no archive" >"$work/moved/lib/oldwood.jsa"
holds "archive overwritten" "$work/moved/bin/oldwood"
rm "$work/moved/lib/oldwood.jsa"
holds "archive missing" "$work/moved/bin/oldwood"
rm "$work/moved/lib/oldwood.java"
holds "built by nobody knows which Java" "$work/moved/bin/oldwood"
if [ -n "${OTHER_JAVA_HOME:-}" ]; then
    export JAVA_HOME=$OTHER_JAVA_HOME
    holds "another Java, first run" "$built/bin/oldwood"
    holds "another Java, second run" "$built/bin/oldwood"
fi
