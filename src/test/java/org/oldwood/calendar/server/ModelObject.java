package org.oldwood.calendar.server;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.oldwood.calendar.DavStore;

/** One object on the model's server, and what a person did to it. */
final class ModelObject {
    final String task;
    final String uid;
    final boolean isEvent;
    /** Lines, or parts of them, that a person wrote and that have to stay. */
    final Map<String, String> wrote = new LinkedHashMap<>();
    /** The title that stood there when the person put another in its place. */
    String titleBefore = "";

    Optional<LocalDate> ticked = Optional.empty();
    boolean isDeleted;
    /** A publish that went through has seen it, so that its deletion will be seen too. */
    boolean isRemembered;
    /** A publish that went through has seen that it was deleted. */
    boolean isRecorded;
    /** A client dropped what it did not know, so that nobody knows any more who wrote what. */
    boolean isUnmarked;

    private final DavStore store;

    ModelObject(DavStore store, String task, String uid, boolean isEvent) {
        this.store = store;
        this.task = task;
        this.uid = uid;
        this.isEvent = isEvent;
    }

    Optional<String> path() {
        return store.objects.entrySet().stream().filter(object -> object.getValue().contains("UID:" + uid))
                .map(Map.Entry::getKey).findFirst();
    }

    /** Unfolded, with plain line ends. */
    String text() {
        return path().map(store.objects::get).orElse("").replace("\r\n ", "").replace("\r\n", "\n");
    }

    String value(String property) {
        return text().lines().filter(line -> line.startsWith(property + ":") || line.startsWith(property + ";"))
                .map(line -> line.substring(line.indexOf(':') + 1)).findFirst().orElse("");
    }

    boolean isTouched() { return !wrote.isEmpty(); }

    /** A person does something to it, if it is there. */
    String touch(Random random, int step, LocalDate today) {
        if (path().isEmpty()) { return "none"; }
        int what = random.nextInt(12);
        switch (what) {
            case 0, 1 -> tick(random, today);
            case 2 -> {
                titleBefore = wrote.containsKey("title") ? titleBefore : value("SUMMARY");
                write("title", "SUMMARY", "SUMMARY:Mine " + step, "SUMMARY:Mine " + step);
            }
            case 3 -> {
                String words = "my words " + step;
                wrote.put("words", words);
                edit("(?m)^DESCRIPTION:(.*)$", "DESCRIPTION:" + words + "\\\\n$1");
            }
            case 4 -> move(random);
            case 5 -> write("place", "LOCATION", "LOCATION:Shed " + step, "LOCATION:Shed " + step);
            case 6 -> add("comment", "COMMENT:Ask Ada " + step);
            case 7 ->
                add("alarm", "BEGIN:VALARM\nACTION:DISPLAY\nDESCRIPTION:Mine " + step + "\nTRIGGER:-PT1H\nEND:VALARM");
            case 8 -> begin();
            case 9 -> path().ifPresent(at -> {
                store.objects.remove(at);
                forget();
                isDeleted = true;
            });
            case 10 -> path().ifPresent(
                    at -> store.put(DavStore.COLLECTION + "import-" + step + uid + ".ics", store.objects.remove(at)));
            default -> {
                if (random.nextInt(4) == 0) {
                    edit("(?m)^X-OLDWOOD-WRITTEN:.*\n", "");
                    isUnmarked = true;
                }
            }
        }
        return (isEvent ? "event " : "to-do ") + task + " " + what + wrote;
    }

    /** Nothing of the person's is in it any more. */
    void forget() {
        wrote.clear();
        ticked = Optional.empty();
        isUnmarked = false;
    }

    private void tick(Random random, LocalDate today) {
        if (isEvent || ticked.isPresent()) { return; }
        ticked = Optional.of(today);
        String completed = "COMPLETED:" + today.toString().replace("-", "") + "T110000Z";
        edit("(?m)^STATUS:.*\n", "");
        edit("(?m)^PERCENT-COMPLETE:.*\n", "");
        edit("(?m)^SUMMARY", switch (random.nextInt(3)) {
            case 0 -> "STATUS:COMPLETED\n" + completed;
            case 1 -> "STATUS:COMPLETED\n" + completed + "\nPERCENT-COMPLETE:100";
            default -> completed;
        } + "\nSUMMARY");
        wrote.put("tick", completed);
        wrote.remove("begun");
    }

    private void begin() {
        // what was made anew as completed is not begun again
        if (!isEvent && ticked.isEmpty() && !wrote.containsKey("begun") && !text().contains("\nCOMPLETED:")) {
            edit("(?m)^(STATUS|PERCENT-COMPLETE):.*\n", "");
            add("begun", "PERCENT-COMPLETE:40");
        }
    }

    private void move(Random random) {
        String name = isEvent ? "DTEND" : "DUE";
        if (!value(name).isEmpty()) {
            String line = name + ";VALUE=DATE:202705" + (10 + random.nextInt(20));
            write("days", name, line, line);
        }
    }

    private void write(String what, String property, String line, String stays) {
        edit("(?m)^" + property + "[:;].*$", line);
        wrote.put(what, stays);
    }

    private void add(String what, String lines) {
        String old = wrote.put(what, lines);
        if (old == null) {
            String kind = isEvent ? "VEVENT" : "VTODO";
            edit("(?m)^END:" + kind, lines + "\nEND:" + kind);
        } else {
            edit(java.util.regex.Pattern.quote(old), lines);
        }
    }

    private void edit(String from, String to) {
        path().ifPresent(at -> store.put(at, text().replaceFirst(from, to).replace("\n", "\r\n")));
    }
}
