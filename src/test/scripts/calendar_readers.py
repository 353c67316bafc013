"""Compares what independent programs see in a calendar file. Start it through calendar-readers.sh.

The raw lines are checked against RFC 5545 (3.1 lines, 3.3.11 text, 3.6.1 and 3.6.2 items, 3.8.2.3
DUE); then every reader's items are held against those of a small reader of our own that knows only
lines, folds and escapes.
"""
import datetime
import json
import os
import re
import shutil
import subprocess
import sys
import tempfile

HERE = os.path.dirname(os.path.abspath(__file__))
problems = []


def complain(what):
    problems.append(what)
    print("  WRONG " + what)


def day(digits):
    return f"{digits[:4]}-{digits[4:6]}-{digits[6:8]}"


def plain(text):
    return re.sub(r"\\(.)", lambda m: "\n" if m[1] in "nN" else m[1], text)


def lines_of(raw):
    """RFC 5545, 3.1: CRLF, 75 octets, no fold inside a character, no empty line."""
    if raw.startswith(b"\xef\xbb\xbf"):
        complain("the file starts with a byte order mark")
    if re.search(rb"(?<!\r)\n|\r(?!\n)", raw) or not raw.endswith(b"\r\n"):
        complain("a line does not end with CRLF")
    for number, line in enumerate(raw.split(b"\r\n")[:-1], 1):
        if len(line) > 75 or not line.strip():
            complain(f"line {number} has {len(line)} octets")
        try:
            line.decode("utf-8")
        except UnicodeDecodeError:
            complain(f"line {number} is folded inside a character")
        if re.search(rb"[\x00-\x08\x0b-\x1f\x7f]", line):
            complain(f"line {number} has a control character")
    return raw.replace(b"\r\n ", b"").decode("utf-8").split("\r\n")[:-1]


def items_of(lines):
    items, stack = [], []
    for line in lines:
        name, _, value = line.partition(":")
        bare = name.split(";")[0]
        if bare == "BEGIN":
            stack.append(value)
            if value in ("VEVENT", "VTODO"):
                items.append({"kind": value.lower(), "alarms": 0, "raw": {}})
            elif value == "VALARM":
                items[-1]["alarms"] += 1
        elif bare == "END":
            if not stack or stack.pop() != value:
                complain("END:" + value + " without its BEGIN")
        elif bare == "METHOD":
            complain("METHOD makes the file a message")
        elif stack and stack[-1] in ("VEVENT", "VTODO"):
            if bare in items[-1]["raw"]:
                complain(bare + " stands twice in one item")
            if bare in ("SUMMARY", "DESCRIPTION", "LOCATION") and re.search(r"(?<!\\)(\\\\)*[,;]", value):
                complain(bare + " has a bare comma or semicolon")
            items[-1]["raw"][bare] = (name, value)
    if stack:
        complain("a component is not closed")
    return [finished(item) for item in items]


def finished(item):
    raw = item.pop("raw")
    get = lambda name: raw.get(name, ("", ""))[1]
    start, end = get("DTSTART"), get("DTEND" if item["kind"] == "vevent" else "DUE")
    for name in ("UID", "DTSTAMP", "SUMMARY"):
        if not get(name):
            complain("an item has no " + name)
    if not end or (start and end <= start):
        complain(get("UID") + ": the end is not after the start")
    if any("VALUE=DATE" not in raw[name][0] for name in ("DTSTART", "DTEND", "DUE") if name in raw):
        complain(get("UID") + ": a day is not of type DATE")
    if (get("STATUS") == "COMPLETED") != bool(get("COMPLETED")):
        complain(get("UID") + ": COMPLETED and its status do not come together")
    item.update(uid=get("UID"), title=plain(get("SUMMARY")), text=plain(get("DESCRIPTION")), status=get("STATUS"),
                start=day(start) if start else "", end=day(end), sequence=get("SEQUENCE"))
    return item


def run(*command, **more):
    env = dict(os.environ, LC_ALL="C.UTF-8", TZ="UTC", HOME=more.pop("home", "/nonexistent"))
    done = subprocess.run(command, capture_output=True, text=True, encoding="utf-8", env=env, timeout=300)
    if done.returncode:
        raise RuntimeError((done.stderr or done.stdout)[-300:])
    return done.stdout


def python_icalendar(file, items, tmp):
    import icalendar
    with open(file, "rb") as raw:
        root = icalendar.Calendar.from_ical(raw.read())
    seen = []
    for part in root.walk():
        if part.name in ("VEVENT", "VTODO"):
            when = lambda name: part[name].dt.isoformat() if name in part else ""
            seen.append({"uid": str(part["UID"]), "kind": part.name.lower(), "title": str(part["SUMMARY"]),
                         "text": str(part.get("DESCRIPTION", "")), "status": str(part.get("STATUS", "")),
                         "start": when("DTSTART"), "end": when("DTEND" if part.name == "VEVENT" else "DUE"),
                         "sequence": str(part.get("SEQUENCE", "")), "alarms": len(part.walk("VALARM"))})
    return seen


def libical(file, items, tmp):
    import gi
    gi.require_version("ICalGLib", "3.0")
    from gi.repository import ICalGLib
    with open(file, encoding="utf-8", newline="") as raw:
        root = ICalGLib.Component.new_from_string(raw.read())
    if root.count_errors():
        raise RuntimeError(f"counts {root.count_errors()} errors")
    seen = []
    for name, kind in (("vevent", ICalGLib.ComponentKind.VEVENT_COMPONENT), ("vtodo", ICalGLib.ComponentKind.VTODO_COMPONENT)):
        part = root.get_first_component(kind)
        while part:
            when = part.get_dtend() if name == "vevent" else part.get_due()
            start = part.get_dtstart()
            text = lambda t: "" if t is None or t.is_null_time() else f"{t.get_year():04}-{t.get_month():02}-{t.get_day():02}"
            seen.append({"uid": part.get_uid(), "kind": name, "title": part.get_summary(), "text": part.get_description() or "",
                         "start": text(start), "end": text(when), "sequence": str(part.get_sequence())})
            part = root.get_next_component(kind)
    return seen


def javascript(reader):
    def read(file, items, tmp):
        return json.loads(run("node", os.path.join(HERE, "calendar_readers.mjs"), reader, file, NODE))
    return read


def khal(file, items, tmp):
    os.makedirs(tmp + "/cal")
    with open(tmp + "/conf", "w") as conf:
        conf.write(f"[calendars]\n[[c]]\npath = {tmp}/cal\n[sqlite]\npath = {tmp}/db\n[locale]\nlocal_timezone = UTC\n"
                   "default_timezone = UTC\ndateformat = %Y-%m-%d\nlongdateformat = %Y-%m-%d\ntimeformat = %H:%M\n"
                   "datetimeformat = %Y-%m-%d %H:%M\nlongdatetimeformat = %Y-%m-%d %H:%M\n[default]\ndefault_calendar = c\n")
    run("khal", "-c", tmp + "/conf", "import", "--batch", file, home=tmp)
    events = [item for item in items if item["kind"] == "vevent"]
    if not events:
        return None
    out = run("khal", "-c", tmp + "/conf", "list", "--once", "-df", "", "-f", "\u241e{uid}\u241f{title}\u241f{start-date}\u241f{end-date}\u241d",
              min(e["start"] for e in events), max(e["end"] for e in events), home=tmp)
    seen = []
    for uid, title, start, end in re.findall("\u241e(.*?)\u241f(.*?)\u241f(.*?)\u241f(.*?)\u241d", out, re.S):
        after = datetime.date.fromisoformat(end) + datetime.timedelta(1)
        seen.append({"uid": uid, "kind": "vevent", "title": title, "start": start, "end": after.isoformat()})
    return seen


def calcurse(file, items, tmp):
    run("calcurse", "-q", "-D", tmp, "-C", tmp, "-i", file, home=tmp)
    with open(tmp + "/apts", encoding="utf-8") as apts, open(tmp + "/todo", encoding="utf-8") as todo:
        seen = len(apts.readlines()) + len(todo.readlines())
    if seen != len(items):
        raise RuntimeError(f"sees {seen} of {len(items)} items")
    return None


def todoman(file, items, tmp):
    todos = [item for item in items if item["kind"] == "vtodo"]
    if not todos:
        return None
    os.makedirs(tmp + "/list")
    with open(file, encoding="utf-8", newline="") as raw:
        parts = re.findall(r"BEGIN:VTODO\r\n.*?END:VTODO\r\n", raw.read(), re.S)
    for number, part in enumerate(parts):
        with open(f"{tmp}/list/{number}.ics", "w", encoding="utf-8", newline="") as out:
            out.write("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//check//EN\r\n" + part + "END:VCALENDAR\r\n")
    with open(tmp + "/config.py", "w") as conf:
        conf.write(f'path = "{tmp}/list"\ncache_path = "{tmp}/cache"\ndate_format = "%Y-%m-%d"\ntime_format = "%H:%M"\ndefault_list = "list"\n')
    rows = json.loads(run("todoman", "--config", tmp + "/config.py", "--porcelain", "list", "--status", "ANY", home=tmp))
    due = lambda row: datetime.datetime.fromtimestamp(row["due"], datetime.timezone.utc).date().isoformat()
    have = sorted((row["summary"], due(row)) for row in rows)
    want = sorted((item["title"], item["end"]) for item in todos)
    if have != want:
        raise RuntimeError("sees other to-dos: " + str([x for x in have if x not in want][:3]))
    return None


def compare(reader, seen, items):
    wanted = {item["uid"]: item for item in items if reader != "khal" or item["kind"] == "vevent"}
    if sorted(wanted) != sorted(item["uid"] for item in seen):
        complain(f"{reader} sees {len(seen)} of {len(wanted)} items")
        return
    other = [(item["uid"], key, value, wanted[item["uid"]][key])
             for item in seen for key, value in item.items() if value != wanted[item["uid"]][key]]
    for uid, key, value, want in other[:3]:
        complain(f"{reader}: {key} of {uid} is {value!r}, not {want!r}")
    if len(other) > 3:
        complain(f"{reader}: and {len(other) - 3} more")


def has_module(name):
    return NODE and shutil.which("node") and os.path.isdir(os.path.join(NODE, "node_modules", name))


def available(name):
    if name in ("ical.js", "node-ical"):
        return has_module(name)
    if name == "python-icalendar":
        import importlib.util
        return importlib.util.find_spec("icalendar")
    if name == "libical":
        try:
            import gi
            gi.require_version("ICalGLib", "3.0")
            return True
        except (ImportError, ValueError):
            return False
    return shutil.which(name)


READERS = {"python-icalendar": python_icalendar, "libical": libical, "ical.js": javascript("ical.js"),
           "node-ical": javascript("node-ical"), "khal": khal, "calcurse": calcurse, "todoman": todoman}


def check(file):
    print(file)
    with open(file, "rb") as raw:
        items = items_of(lines_of(raw.read()))
    if len({item["uid"] for item in items}) != len(items):
        complain("a UID stands twice")
    for name, read in READERS.items():
        if not available(name):
            print(f"  {name}: not on this machine, left out")
            continue
        before = len(problems)
        with tempfile.TemporaryDirectory() as tmp:
            try:
                seen = read(os.path.abspath(file), items, tmp)
                if seen is not None:
                    compare(name, seen, items)
            except Exception as failure:  # a reader may fail in any way
                complain(f"{name}: {failure}")
        if len(problems) == before:
            print(f"  {name}: agrees on {len(items)} items")


if __name__ == "__main__":
    NODE = sys.argv[1]
    for name in sys.argv[2:]:
        check(name)
    sys.exit(1 if problems else 0)
