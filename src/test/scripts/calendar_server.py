"""The round trip of calendar-server.sh. RFC 4791: 4.1, 5.3.2, 7.9."""
import base64
import http.client
import json
import os
import re
import socket
import subprocess
import sys
import tempfile
import time

OLDWOOD = sys.argv[1]
USER = "ada"
COLLECTION = "/ada/garden/"
wrong = []


def expect(what, holds, more=""):
    print(("  holds  " if holds else "  WRONG  ") + what + ("" if holds else f": {more}"))
    if not holds:
        wrong.append(what)


class Trial:
    def __init__(self, folder, port):
        self.folder, self.port = folder, port
        self.garden = folder + "/terrace"
        self.url = f"http://127.0.0.1:{port}{COLLECTION}"
        self.env = dict(os.environ, HOME=folder, LC_ALL="C.UTF-8", TZ="UTC", OLDWOOD_CALENDAR_PASSWORD="secret-word")

    def run(self, *command, given="", fails=False):
        done = subprocess.run(command, input=given, capture_output=True, text=True, env=self.env, timeout=300)
        if done.returncode and not fails:
            raise RuntimeError(" ".join(command) + "\n" + done.stdout + done.stderr)
        expect_secret(done.stdout + done.stderr)
        return done.stdout

    def oldwood(self, *words, today="2026-11-25"):
        return self.run(OLDWOOD, *words, "--garden", self.garden, "--today", today)

    def publish(self, *more, today="2026-11-25"):
        return json.loads(self.oldwood("calendar", "publish", self.url, "--user", USER, "--json", *more, today=today))

    def ask(self, method, path, body=None, **headers):
        connection = http.client.HTTPConnection("127.0.0.1", self.port, timeout=30)
        login = "Basic " + base64.b64encode(f"{USER}:secret-word".encode()).decode()
        connection.request(method, path, body, {"Authorization": login, **{k.replace("_", "-"): v for k, v in headers.items()}})
        answer = connection.getresponse()
        return answer.status, answer.headers.get("ETag"), answer.read().decode()

    def objects(self):
        _, _, listing = self.ask("PROPFIND", COLLECTION, Depth="1")
        return {path: self.ask("GET", path)[2] for path in re.findall(r"href>([^<]+\.ics)<", listing)}


def expect_secret(text):
    if "secret-word" in text:
        expect("the password is never shown", False)


def server(folder, port):
    with open(folder + "/radicale.conf", "w") as conf:
        conf.write(f"[server]\nhosts = 127.0.0.1:{port}\n[auth]\ntype = none\n[storage]\nfilesystem_folder = {folder}/store\n")
    with open(folder + "/radicale.log", "w") as log:
        return subprocess.Popen(["radicale", "--config", folder + "/radicale.conf"], stdout=log, stderr=log,
                                env=dict(os.environ, HOME=folder))


def wait_for(trial):
    for _ in range(100):
        try:
            return trial.ask("OPTIONS", "/")
        except OSError:
            time.sleep(0.1)
    raise RuntimeError("the server did not start")


def client(trial):
    """A person's client: fetches, ticks off one to-do, sends."""
    os.makedirs(trial.folder + "/client")
    with open(trial.folder + "/vdir.conf", "w") as conf:
        conf.write(f'[general]\nstatus_path = "{trial.folder}/status/"\n[pair p]\na = "l"\nb = "r"\ncollections = ["garden"]\n'
                   f'[storage l]\ntype = "filesystem"\npath = "{trial.folder}/client/"\nfileext = ".ics"\n'
                   f'[storage r]\ntype = "caldav"\nurl = "http://127.0.0.1:{trial.port}/"\nusername = "{USER}"\npassword = "x"\n')
    with open(trial.folder + "/todoman.py", "w") as conf:
        conf.write(f'path = "{trial.folder}/client/garden"\ncache_path = "{trial.folder}/cache"\ndate_format = "%Y-%m-%d"\n'
                   'time_format = "%H:%M"\ndefault_list = "garden"\n')
    sync = ("vdirsyncer", "-c", trial.folder + "/vdir.conf")
    trial.run(*sync, "discover", "p", given="y\n" * 5)
    trial.run(*sync, "sync")
    todoman = ("todoman", "--config", trial.folder + "/todoman.py")
    first = json.loads(trial.run(*todoman, "--porcelain", "list"))[0]
    trial.run(*todoman, "done", str(first["id"]))
    trial.run(*sync, "sync")
    return first["summary"]


def steps(trial):
    trial.run(OLDWOOD, "start", trial.garden, "--name", "Terrace", "--at", "52,-2", "--plants", "blackcurrant=3,gooseberry=2",
              "--planted", "2021", "--today", "2026-11-25")
    trial.ask("MKCALENDAR", COLLECTION, '<?xml version="1.0"?><C:mkcalendar xmlns:D="DAV:" xmlns:C="urn:ietf:params:xml:ns:caldav">'
              '<D:set><D:prop><D:displayname>Garden</D:displayname></D:prop></D:set></C:mkcalendar>')
    stranger = "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:x\r\nBEGIN:VEVENT\r\nUID:theirs\r\nDTSTAMP:20260101T000000Z\r\nDTSTART;VALUE=DATE:20260101\r\nSUMMARY:Tea\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n"
    trial.ask("PUT", COLLECTION + "theirs.ics", stranger, Content_Type="text/calendar")
    theirs = trial.ask("GET", COLLECTION + "theirs.ics")[:2]

    trial_run = trial.publish("--dry-run")
    expect("a dry run writes nothing", len(trial.objects()) == 1, len(trial.objects()))
    first = trial.publish()
    objects = trial.objects()
    expect("every task is there once", len(objects) - 1 == len(first["created"]) == len(trial_run["created"]) and not first["refused"], first)
    again = trial.publish()
    expect("publishing again changes nothing", not again["changed"] and not again["created"] and again["unchanged"] == len(objects) - 1, again)

    summary = client(trial)
    ticked = next(path for path, text in trial.objects().items() if "STATUS:COMPLETED" in text)
    status, etag, text = trial.ask("GET", ticked)
    trial.ask("PUT", ticked, text.replace("END:VTODO", "X-CLIENT-NOTE:kept\r\nEND:VTODO"), If_Match=etag, Content_Type="text/calendar; charset=utf-8")
    moved = trial.publish("--due", "after")
    after = trial.objects()
    expect("all to-dos are changed and none is doubled", len(after) == len(objects) and not moved["created"] and not moved["refused"], moved)
    expect("the completion survives", "STATUS:COMPLETED" in after[ticked] and "COMPLETED" in after[ticked].replace("STATUS:COMPLETED", ""), after[ticked])
    expect("the client's property survives", "X-CLIENT-NOTE:kept" in after[ticked], after[ticked])
    expect("the new due day is there", after[ticked] != text and any("ticked off on the server" in n for n in moved["notices"]), moved["notices"])

    journal = lambda: open(trial.garden + "/journal.jsonl").read()
    said = json.loads(trial.oldwood("calendar", "read", trial.url, "--user", USER, "--json"))
    expect("the completion is read back", [a["said"] for a in said["answers"]] == ["done"] and said["answers"][0]["title"] == summary, said)
    trial.oldwood("calendar", "read", trial.url, "--user", USER, "--yes")
    noted = journal()
    trial.oldwood("calendar", "read", trial.url, "--user", USER, "--yes")
    expect("reading twice notes once", noted == journal() and noted.count('"done"') == 1, noted)
    trial.publish("--due", "after")

    for plant in plants(trial):
        trial.oldwood("note", "grubbed", "--plant", plant, "--cause", "trial")
    removed = trial.publish("--due", "after")
    left = trial.objects()
    expect("what no longer applies is removed", removed["removed"] and len(left) == len(after) - len(removed["removed"]) + len(removed["created"]), removed)
    expect("what was done is not removed", ticked in left and "STATUS:COMPLETED" in left[ticked])
    expect("strangers are untouched", trial.ask("GET", COLLECTION + "theirs.ics")[:2] == theirs)
    uids = [re.search(r"\nUID:(\S+)", text)[1] for text in left.values()]
    expect("no UID is there twice", len(set(uids)) == len(uids))


def plants(trial):
    """All of one crop, so that its rounds go."""
    entries = [json.loads(line) for line in open(trial.garden + "/journal.jsonl")]
    found = [entry["plant"] for entry in entries if entry.get("entry") == "planted" and entry.get("crop") == "blackcurrant"]
    if not found:
        raise RuntimeError("no blackcurrant was planted")
    return found


def main():
    with tempfile.TemporaryDirectory() as folder, socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
        free.close()
        process = server(folder, port)
        try:
            trial = Trial(folder, port)
            wait_for(trial)
            steps(trial)
        finally:
            process.terminate()
            process.wait(20)
    return 1 if wrong else 0


sys.exit(main())
