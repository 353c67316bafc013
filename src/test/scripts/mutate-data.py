#!/usr/bin/env python3
"""Changes the bundled data one place at a time, in a copy, and asks the tests that are not golden files.

usage, at the repository's root, after the tests were compiled:
  src/test/scripts/mutate-data.py CLASSES LIBRARIES KIND [SEED [COUNT]]
CLASSES: the folders of compiled tests and classes. LIBRARIES: the class path of all else, with JUnit's launcher.
KIND: safety (figures of reference/safety.txt, every caution's reach and figures, every rule's work), windows (both ends of
every rule), random (numbers of crops, rules, materials and tables), others (the same, without FiguresTest). With a SEED, COUNT of them are drawn.
Prints each mutant that no test noticed, then the share.
"""
import glob, json, os, random, re, subprocess, sys, tempfile

DATA = "src/main/resources"
ROOT = DATA + "/org/oldwood/"
OWN = ["src/test/resources"]
FIGURES = ["org.oldwood.FiguresTest", "org.oldwood.PrintedFiguresTest", "org.oldwood.SafetyFiguresTest",
           "org.oldwood.RelationsTest", "org.oldwood.DataTest"]
REACH = ["org.oldwood.plan.CautionsTest"]
WINDOWS = ["org.oldwood.plan.RuleWindowsTest", "org.oldwood.plan.RuleSituationsTest"]
GOLDEN = "(DemoCalendars|Readme|DependenciesDoc|RecordDoc|RulesDoc|Schema|Errors|Kill|Fuzz|FullDisk|GrowersYear).*"
ROOMS = {"rules/": ["plan"], "rounds": ["plan.round"], "entries": ["garden", "facts.record"],
         "pruning": ["craft.pruning", "facts.pruning"], "yield": ["craft.pruning", "facts.pruning"],
         "cuttings": ["craft.cuttings", "facts.cuttings"], "feeding": ["craft.feeding", "facts.feeding"],
         "materials": ["craft.feeding", "craft.mulching", "facts.feeding", "facts.mulching"],
         "water": ["craft.water", "facts.water"], "stages": ["season", "facts.record"], "crop": ["crop", "craft.pruning"],
         "season": ["season"], "liming": ["craft.feeding"], "acidifying": ["craft.feeding"], "mulching": ["craft.mulching"],
         "soils": ["craft.water", "facts.water"], "surfaces": ["craft.water"]}


def load(name):
    with open(ROOT + name, encoding="utf-8") as file:
        return json.load(file)


def step(value, name):
    if isinstance(value, list):
        return next(i for i, item in enumerate(value) if item.get("id") == name)
    return name


def place(document, path):
    """The container and key of the last step of a path."""
    steps = path.split("/")
    for each in steps[:-1]:
        document = document[step(document, each)]
    return document, step(document, steps[-1])


def other(value):
    """A near but wrong value."""
    if isinstance(value, bool):
        return not value
    if isinstance(value, int):
        return value + (1 if abs(value) < 8 else round(value * 0.2))
    if isinstance(value, float):
        return round(value * 1.2 + 0.1, 3)
    if re.fullmatch(r"\d\d-\d\d", value):
        return "%02d-%s" % (int(value[:2]) % 12 + 1, value[3:])
    return value + "x"


def changed(name, path, change):
    document = load(name)
    holder, key = place(document, path)
    change(holder, key)
    return name, document


def replace(value):
    def change(holder, key):
        holder[key] = value(holder[key])
    return change


def safety():
    with open("src/test/resources/reference/safety.txt", encoding="utf-8") as file:
        for line in file:
            if not line.startswith("#"):
                name, path = re.match(r"(.*?\.json)/(.*)", line.split("|")[0]).groups()
                yield line.split("|")[0], changed(name, path, replace(other))
    for apart in load("keep-apart.json")["apart"]:
        document = load("keep-apart.json")
        document["apart"] = [each for each in document["apart"] if each["id"] != apart["id"]]
        yield "without " + apart["id"], ("keep-apart.json", document)
    for caution in load("cautions.json")["cautions"]:
        for key in ("tasks", "tags", "groups", "crops", "countries"):
            values = caution.get(key, [])
            for value in values:
                yield "%s: without %s" % (caution["id"], value), of_caution(caution, key, [v for v in values if v != value])
            more = {"tasks": "pick", "tags": "saw", "groups": "lonicera", "crops": "haskap", "countries": "NZ"}[key]
            if more not in values and values:
                yield "%s: also %s" % (caution["id"], more), of_caution(caution, key, values + [more])
        for end in caution.get("months", {}):
            for by in (-1, 1):
                months = dict(caution["months"])
                months[end] = (months[end] + by - 1) % 12 + 1
                yield "%s: %s %+d month" % (caution["id"], end, by), of_caution(caution, "months", months)
        yield caution["id"] + ": gravity", of_caution(caution, "gravity", caution["gravity"] % 3 + 1)
        yield caution["id"] + ": removed", removed(caution["id"])
        for figure in re.finditer(r"(?<![\w-])\d+(?:\.\d+)?", caution["line"]):
            line = caution["line"][:figure.start()] + str(int(figure.group()) + 3) + caution["line"][figure.end():]
            yield "%s: %s" % (caution["id"], line), of_caution(caution, "line", line)
    for name in load("rules/index.json")["rules"]:
        for rule in load("rules/%s.json" % name)["rules"]:
            for key in ("work", "tools"):
                for value in rule.get(key, []):
                    left = [v for v in rule[key] if v != value]
                    yield "%s: without %s" % (rule["id"], value), changed(
                        "rules/%s.json" % name, "rules/%s/%s" % (rule["id"], key), replace(lambda old, left=left: left))


def of_caution(caution, key, value):
    return changed("cautions.json", "cautions/%s" % caution["id"], lambda holder, at: holder[at].update({key: value}))


def removed(caution):
    document = load("cautions.json")
    document["cautions"] = [each for each in document["cautions"] if each["id"] != caution]
    return "cautions.json", document


def windows():
    for name in load("rules/index.json")["rules"]:
        for rule in load("rules/%s.json" % name)["rules"]:
            for end in (end for end in ("opens", "closes") if end in rule):
                def change(holder, key):
                    anchor = holder[key]
                    if "day" in anchor:
                        anchor["day"] = other(anchor["day"])
                    else:
                        anchor["plusDays"] = anchor.get("plusDays", 0) + 14
                yield "%s %s" % (rule["id"], end), changed("rules/%s.json" % name, "rules/%s/%s" % (rule["id"], end), change)


def numbers(value, path):
    if isinstance(value, dict):
        for key, inner in value.items():
            yield from numbers(inner, path + [key])
    elif isinstance(value, list):
        for at, inner in enumerate(value):
            yield from numbers(inner, path + [at])
    elif path[-1] != "format" and not isinstance(value, bool) and (
            isinstance(value, (int, float)) or isinstance(value, str) and re.fullmatch(r"\d\d-\d\d", value)):
        yield path


def chance(seed, count):
    places = []
    for folder, _, files in os.walk(ROOT):
        for file in files:
            name = os.path.relpath(os.path.join(folder, file), ROOT)
            if name.endswith(".json") and not name.startswith(("sources", "climates", "page", "sheet")):
                places += [(name, path) for path in numbers(load(name), [])]
    places.sort(key=str)
    for name, path in random.Random(seed).sample(places, count):
        document = load(name)
        holder = document
        for each in path[:-1]:
            holder = holder[each]
        before = holder[path[-1]]
        holder[path[-1]] = other(before)
        yield "%s/%s: %s to %s" % (name, "/".join(map(str, path)), before, holder[path[-1]]), (name, document)


class Tests:
    """One process that runs test classes on a changed document; a process for each change took ten seconds."""

    def __init__(self, libraries):
        own = [os.path.abspath(each) + "/" for each in [DATA] + OWN]
        self.run = subprocess.Popen(
            ["java", "-Xmx1g", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Djqwik.tries.default=50", "-Dgolden=no",
             "-cp", libraries, "src/test/scripts/DataFaults.java", ":".join(own)],
            stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True)

    def fail(self, names, mutant):
        name, document = mutant
        with tempfile.TemporaryDirectory() as folder:
            target = os.path.join(folder, "org/oldwood", name)
            os.makedirs(os.path.dirname(target))
            with open(target, "w", encoding="utf-8") as file:
                json.dump(document, file)
            self.run.stdin.write(" ".join([folder + "/"] + names) + "\n")
            self.run.stdin.flush()
            for line in self.run.stdout:
                if line.startswith("= "):
                    return line.strip() != "= ok"
        sys.exit("the tests ended early")


def quick(kind, name):
    if kind == "safety":
        return REACH if name.startswith(("cautions", "rules")) else FIGURES
    return WINDOWS if kind == "windows" else FIGURES + (WINDOWS if name.startswith("rules/") else [])


def rooms(name):
    found = next((found for key, found in ROOMS.items() if key in name), ["plan"])
    names = REACH + WINDOWS
    for room in found:
        for path in glob.glob("src/test/java/org/oldwood/%s/**/*Test.java" % room.replace(".", "/"), recursive=True):
            if not re.fullmatch(GOLDEN, os.path.basename(path)):
                names.append(path[len("src/test/java/"):-len(".java")].replace("/", "."))
    return sorted(set(names))


def main():
    classes, libraries, kind = sys.argv[1:4]
    OWN.extend(classes.split(":"))
    seed, count = (int(sys.argv[4]) if len(sys.argv) > 4 else 1), (int(sys.argv[5]) if len(sys.argv) > 5 else 200)
    if kind == "others":
        FIGURES.remove("org.oldwood.FiguresTest")
        kind = "random"
    mutants = list({"safety": safety, "windows": windows, "random": lambda: chance(seed, count)}[kind]())
    if kind != "random" and len(sys.argv) > 4:
        mutants = random.Random(seed).sample(mutants, min(count, len(mutants)))
    tests = Tests(libraries)
    if tests.fail(FIGURES + REACH + WINDOWS, ("format-of-nothing.json", {})):
        sys.exit("the tests fail on the data as it is")
    lived = 0
    for what, mutant in mutants:
        if not tests.fail(quick(kind, mutant[0]), mutant) and (
                kind != "random" or not tests.fail(rooms(mutant[0]), mutant)):
            lived += 1
            print("not noticed:", what, flush=True)
    print("%s: %d of %d noticed" % (kind, len(mutants) - lived, len(mutants)))


if __name__ == "__main__":
    main()
