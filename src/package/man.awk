# Makes a man page of a command's own help: awk -v command=tasks -v version=1.0.0 -v day=2026-01-01 -f man.awk HELP
function roff(text) { gsub(/\\/, "\\e", text); gsub(/-/, "\\-", text); sub(/^[.']/, "\\\\\\&&", text); return text }
function section(name) { close_lines(); if (here != name) print ".SH " name; here = name }
function close_lines() { if (plain) print ".fi"; plain = 0 }
function open_lines() { if (!plain) print ".nf"; plain = 1 }
NR == 1 { title = command == "" ? "oldwood" : "oldwood-" command; page = toupper(title) }
{ line[NR] = $0 }
END {
    print ".TH " page " 1 " day " \"Oldwood " version "\" \"Oldwood\""; print ".ad l"
    i = 1
    while (i <= NR && (i == 1 || line[i] ~ /^ /)) { usage[++usages] = line[i]; i++ }
    while (i <= NR && line[i] != "" && line[i] !~ /^ / && line[i] !~ /:$/) { about = about (about == "" ? "" : " ") line[i]; i++ }
    short = about; sub(/[.;:] .*/, "", short); sub(/\.$/, "", short)
    section("NAME"); print roff(title) " \\- " roff(short)
    section("SYNOPSIS"); open_lines()
    for (u = 1; u <= usages; u++) { text = usage[u]; sub(/^Usage: /, "       ", text); sub(/^       /, "", text); print roff(text) }
    section("DESCRIPTION"); print roff(about)
    for (; i <= NR; i++) {
        text = line[i]
        if (text ~ /^ +-/) {
            section("OPTIONS"); sub(/^ +/, "", text)
            at = match(text, /  +/)
            print ".TP"
            if (at) { print ".B " roff(substr(text, 1, at - 1)); print roff(substr(text, at + RLENGTH)) } else print ".B " roff(text)
        } else if (here == "OPTIONS" && text ~ /^      +/) {
            sub(/^ +/, "", text); print roff(text)
        } else if (text ~ /^[A-Z][a-z' ]*:$/) {
            after = 0; sub(/:$/, "", text); section(toupper(text)); open_lines()
        } else if (text == "") {
            if (here == "OPTIONS") after = 1; else print ""
        } else {
            if (after) section("NOTES")
            after = 0
            open_lines(); print roff(text)
        }
    }
    close_lines()
    if (command != "") { print ".SH SEE ALSO"; print ".BR oldwood (1)" }
}
