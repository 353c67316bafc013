package org.oldwood.calendar;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.oldwood.calendar.format.Colours;
import org.oldwood.calendar.format.ContentLines;
import org.oldwood.calendar.format.Hygiene;
import org.oldwood.store.Output;

/**
 * Writes a garden's plan as calendar files and remembers what was written.
 *
 * @param replacing whether files that are not ours give way too; the record never does
 */
public record Export(Garden garden, Layout layout, LocalDate today, boolean replacing) {
    public static final String PRODUCT = "-//Oldwood//Oldwood 1//EN";

    /**
     * Whose calendars these are.
     *
     * @param id the garden's random id; two gardens of one name never share a UID
     * @param zone where its days begin
     * @param folder where {@code calendar-state.jsonl} is kept
     * @param came what came of all tasks that the journal has as done or skipped, also of those that no plan has any
     *     more, by id
     */
    public record Garden(UUID id, String name, ZoneId zone, Path folder, Map<String, Item.Progress> came) {}

    /** Which items go together into one pair of files. */
    public enum Split {
        ALL,
        BED,
        CRAFT
    }

    /** The files that hold the plan now, those of them that changed, and what to tell. */
    public record Result(List<Path> files, List<Path> changed, List<String> notices) {}

    /** What is said once, at the head of a file (RFC 7986, 5). */
    private record Head(String uid, String name, boolean isFeed) {}

    /** Two files, or two for each bed or craft: events and to-dos. */
    public Result pairs(List<Item> plan, Path folder, Split split) throws IOException {
        Work work = new Work(plan);
        Map<String, List<Outgoing>> groups = new TreeMap<>();
        for (Outgoing out : work.news()) {
            groups.computeIfAbsent(group(out.item, split), g -> new ArrayList<>()).add(out);
            // the file that it has left, which may hold nothing any more
            out.before.ifPresent(old -> groups.computeIfAbsent(group(old.item(), split), g -> new ArrayList<>()));
        }
        for (Map.Entry<String, List<Outgoing>> group : groups.entrySet()) {
            work.pair(folder, group.getKey(), group.getValue());
        }
        return work.done();
    }

    /**
     * One file for a web server to offer. A subscription replaces the whole calendar, so what was withdrawn is left
     * out; to-dos are too, since a subscription cannot be ticked off.
     */
    public Result feed(List<Item> plan, Path file) throws IOException {
        Work work = new Work(plan);
        List<Outgoing> standing = work.news().stream().filter(out -> !out.isCancelled("VEVENT")).toList();
        work.write(file, new Head(work.memory.uids().calendar("feed"), garden.name, true), "VEVENT", standing);
        return work.done();
    }

    private static String group(Item item, Split split) {
        return switch (split) {
            case ALL -> "";
            case BED -> FileName.ofBed(item.bed());
            case CRAFT -> item.words().category();
        };
    }

    /** One export under way. */
    private final class Work {
        final Memory memory;
        private final List<Path> files = new ArrayList<>();
        private final List<Path> changed = new ArrayList<>();

        Work(List<Item> plan) throws IOException { memory = new Memory(garden, layout, today, plan); }

        List<Outgoing> news() { return memory.written().stream().filter(out -> !out.isPast()).toList(); }

        void pair(Path folder, String group, List<Outgoing> written) throws IOException {
            String base = FileName.of(garden.name) + (group.isEmpty() ? "" : "-" + group);
            String name = group.isEmpty() ? garden.name : "%s, %s".formatted(garden.name, group);
            Uids uids = memory.uids();
            Head events = new Head(uids.calendar(group + " events"), name, false);
            Head todos = new Head(uids.calendar(group + " todos"), name + " to do", false);
            write(folder.resolve(base + "-events.ics"), events, "VEVENT", written);
            write(folder.resolve(base + "-todos.ics"), todos, "VTODO", written);
        }

        /** No METHOD: the file is no message (RFC 5546). */
        void write(Path file, Head head, String component, List<Outgoing> written) throws IOException {
            FileInPlace standing = new FileInPlace(garden, memory.uids().areAdopted(), replacing);
            // RFC 5545, 3.6: a calendar holds at least one component; a feed has its readers even so
            if (!head.isFeed && written.stream().noneMatch(out -> out.has(component))) {
                if (standing.isOurs(head.uid, file)) {
                    Files.delete(file);
                    changed.add(file);
                    memory.notices().add(file.getFileName() + " held nothing any more and was removed.");
                }
                return;
            }
            standing.mustGiveWay(head.uid, file);
            Path folder = file.toAbsolutePath().getParent();
            if (folder != null) { Files.createDirectories(folder); }
            try (Output output = Output.to(file)) {
                ContentLines lines = new ContentLines(output.out());
                begin(lines, head);
                for (Outgoing out : written) {
                    if (out.has(component)) { memory.component(out, component).write(lines); }
                }
                lines.whole("END:VCALENDAR");
                lines.flush();
                files.add(file);
                if (output.finish()) { changed.add(file); }
            }
        }

        private void begin(ContentLines lines, Head head) throws IOException {
            String name = Hygiene.line(head.name);
            lines.whole("BEGIN:VCALENDAR");
            lines.whole("VERSION:2.0");
            lines.whole("PRODID:" + PRODUCT);
            lines.whole("CALSCALE:GREGORIAN");
            lines.text("UID", head.uid);
            lines.text("NAME", name);
            lines.text("X-WR-CALNAME", name);
            lines.whole("COLOR:" + Colours.CALENDAR);
            if (head.isFeed) {
                lines.whole("REFRESH-INTERVAL;VALUE=DURATION:P1D");
                lines.whole("X-PUBLISHED-TTL:P1D");
            }
        }

        Result done() throws IOException {
            memory.keep();
            return new Result(List.copyOf(files), List.copyOf(changed), List.copyOf(memory.notices()));
        }
    }
}
