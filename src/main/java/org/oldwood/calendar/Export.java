package org.oldwood.calendar;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;

/** Writes a garden's plan as calendar files and remembers what was written. */
public final class Export {
    private final Garden garden;
    private final Layout layout;
    private final LocalDate today;

    /**
     * Whose calendars these are.
     *
     * @param id the garden's random id; two gardens of one name never share a UID
     * @param name as people know it
     * @param zone where its days begin
     * @param folder where {@code calendar-state.jsonl} is kept
     */
    public record Garden(UUID id, String name, ZoneId zone, Path folder) {}

    /** Which items go together into one pair of files. */
    public enum Split {
        NONE,
        BED,
        CRAFT
    }

    /** The files that hold the plan now, those of them that changed, and what to tell. */
    public record Result(List<Path> files, List<Path> changed, List<String> notices) {}

    public Export(Garden garden, Layout layout, LocalDate today) {
        this.garden = garden;
        this.layout = layout;
        this.today = today;
    }

    /** Two files, or two for each bed or craft: events and to-dos. */
    public Result pairs(List<Item> plan, Path folder, Split split) throws IOException {
        Work work = new Work(plan);
        Map<String, List<Revision.Written>> groups = new TreeMap<>();
        for (Revision.Written written : work.memory.written()) {
            groups.computeIfAbsent(group(written.item(), split), g -> new ArrayList<>())
                    .add(written);
        }
        for (Map.Entry<String, List<Revision.Written>> group : groups.entrySet()) {
            work.pair(folder, group.getKey(), group.getValue());
        }
        return work.done();
    }

    /**
     * One file for a web server to offer. A subscription replaces the whole calendar, so what was
     * withdrawn is left out; to-dos are too, since a subscription cannot be ticked off.
     */
    public Result feed(List<Item> plan, Path file) throws IOException {
        Work work = new Work(plan);
        List<Revision.Written> standing =
                work.memory.written().stream()
                        .filter(written -> !written.item().progress().state().isCancelled())
                        .toList();
        IcsWriter.Head head = new IcsWriter.Head(work.uids.calendar("feed"), garden.name, true);
        work.file(file, head, standing, IcsWriter::event);
        return work.done();
    }

    private static String group(Item item, Split split) {
        return switch (split) {
            case NONE -> "";
            case BED -> FileName.ofBed(item.bed());
            case CRAFT -> item.words().category();
        };
    }

    private interface Component {
        void write(IcsWriter writer, Item item, Stamp stamp) throws IOException;
    }

    /** One export under way. */
    private final class Work {
        final Memory memory;
        final Uids uids;
        final List<Path> files = new ArrayList<>();
        final List<Path> changed = new ArrayList<>();

        Work(List<Item> plan) throws IOException {
            memory = new Memory(garden, layout, today, plan);
            uids = memory.uids();
        }

        void pair(Path folder, String group, List<Revision.Written> written) throws IOException {
            String suffix = group.isEmpty() ? "" : "-" + group;
            String base = FileName.of(garden.name) + suffix;
            String name = group.isEmpty() ? garden.name : garden.name + ", " + group;
            file(
                    folder.resolve(base + "-events.ics"),
                    new IcsWriter.Head(uids.calendar(group + " events"), name, false),
                    written,
                    IcsWriter::event);
            file(
                    folder.resolve(base + "-todos.ics"),
                    new IcsWriter.Head(uids.calendar(group + " todos"), name + " to do", false),
                    written,
                    IcsWriter::todo);
        }

        void file(
                Path file, IcsWriter.Head head, List<Revision.Written> written, Component component)
                throws IOException {
            if (!uids.areAdopted()) {
                Standing.mustBe(head.uid(), file);
            }
            boolean isNew =
                    Replace.file(
                            file,
                            out -> {
                                IcsWriter writer = new IcsWriter(out, layout, uids, garden.zone);
                                writer.begin(head);
                                for (Revision.Written one : written) {
                                    component.write(writer, one.item(), one.stamp());
                                }
                                writer.end();
                            });
            files.add(file);
            if (isNew) {
                changed.add(file);
            }
        }

        Result done() throws IOException {
            memory.keep();
            return new Result(
                    List.copyOf(files), List.copyOf(changed), List.copyOf(memory.notices()));
        }
    }
}
