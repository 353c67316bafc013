package org.oldwood.calendar;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.oldwood.garden.Zone;
import org.oldwood.store.Output;

/** Writes a garden's plan as calendar files and remembers what was written. */
public final class Export {
    private final Garden garden;
    private final Layout layout;
    private final LocalDate today;
    private final boolean replacing;

    /**
     * Whose calendars these are.
     *
     * @param id the garden's random id; two gardens of one name never share a UID
     * @param name as people know it
     * @param zone where its days begin
     * @param folder where {@code calendar-state.jsonl} is kept
     */
    public record Garden(UUID id, String name, Zone zone, Path folder) {}

    /** Which items go together into one pair of files. */
    public enum Split {
        NONE,
        BED,
        CRAFT
    }

    /** The files that hold the plan now, those of them that changed, and what to tell. */
    public record Result(List<Path> files, List<Path> changed, List<String> notices) {}

    public Export(Garden garden, Layout layout, LocalDate today) {
        this(garden, layout, today, false);
    }

    /** With {@code replacing}, over files that are not ours too, but never over the record. */
    public Export(Garden garden, Layout layout, LocalDate today, boolean replacing) {
        this.garden = garden;
        this.layout = layout;
        this.today = today;
        this.replacing = replacing;
    }

    Result pairs(List<Item> plan, Path folder, Split split) throws IOException {
        return pairs(Items.of(plan), folder, split);
    }

    /** Two files, or two for each bed or craft: events and to-dos. */
    public Result pairs(Items plan, Path folder, Split split) throws IOException {
        Work work = new Work(plan);
        Map<String, List<Outgoing>> groups = new TreeMap<>();
        for (Outgoing task : work.memory.written()) {
            String group = split == Split.NONE ? "" : group(work.memory.item(task), split);
            groups.computeIfAbsent(group, g -> new ArrayList<>()).add(task);
        }
        for (Map.Entry<String, List<Outgoing>> group : groups.entrySet()) {
            work.pair(folder, group.getKey(), group.getValue());
        }
        return work.done();
    }

    Result feed(List<Item> plan, Path file) throws IOException {
        return feed(Items.of(plan), file);
    }

    /**
     * One file for a web server to offer. A subscription replaces the whole calendar, so what was withdrawn is left
     * out; to-dos are too, since a subscription cannot be ticked off.
     */
    public Result feed(Items plan, Path file) throws IOException {
        Work work = new Work(plan);
        List<Outgoing> standing = work.memory.written().stream()
                .filter(task -> !work.memory.isCancelled(task))
                .toList();
        IcsWriter.Head head = new IcsWriter.Head(work.uids.calendar("feed"), garden.name, true);
        work.feed(file, head, standing);
        return work.done();
    }

    private static String group(Item item, Split split) {
        return switch (split) {
            case NONE -> "";
            case BED -> FileName.ofBed(item.bed());
            case CRAFT -> item.words().category();
        };
    }

    /** One export under way. */
    private final class Work {
        final Memory memory;
        final Uids uids;
        final List<Path> files = new ArrayList<>();
        final List<Path> changed = new ArrayList<>();

        Work(Items plan) throws IOException {
            memory = new Memory(garden, layout, today, plan);
            uids = memory.uids();
        }

        /** Both at once, since an item's event and its to-do have most lines in common. */
        void pair(Path folder, String group, List<Outgoing> written) throws IOException {
            String suffix = group.isEmpty() ? "" : "-" + group;
            String base = FileName.of(garden.name) + suffix;
            String name = group.isEmpty() ? garden.name : garden.name + ", " + group;
            Path eventFile = folder.resolve(base + "-events.ics");
            Path todoFile = folder.resolve(base + "-todos.ics");
            IcsWriter.Head eventHead = new IcsWriter.Head(uids.calendar(group + " events"), name, false);
            IcsWriter.Head todoHead = new IcsWriter.Head(uids.calendar(group + " todos"), name + " to do", false);
            ItemLines shared = new ItemLines(layout);
            try (Output eventOut = output(eventHead, eventFile);
                    Output todoOut = output(todoHead, todoFile)) {
                IcsWriter events = new IcsWriter(eventOut.out(), shared, uids, garden.zone);
                IcsWriter todos = new IcsWriter(todoOut.out(), shared, uids, garden.zone);
                events.begin(eventHead);
                todos.begin(todoHead);
                for (Outgoing task : written) {
                    Content content = memory.content(task);
                    shared.make(content, task.stamp());
                    events.event();
                    todos.todo();
                }
                events.end();
                todos.end();
                finish(eventOut, eventFile);
                finish(todoOut, todoFile);
            }
        }

        void feed(Path file, IcsWriter.Head head, List<Outgoing> written) throws IOException {
            ItemLines lines = new ItemLines(layout);
            try (Output output = output(head, file)) {
                IcsWriter writer = new IcsWriter(output.out(), lines, uids, garden.zone);
                writer.begin(head);
                for (Outgoing task : written) {
                    Content content = memory.content(task);
                    lines.make(content, task.stamp());
                    writer.event();
                }
                writer.end();
                finish(output, file);
            }
        }

        private Output output(IcsWriter.Head head, Path file) throws IOException {
            new Standing(garden, uids.areAdopted(), replacing).mustGiveWay(head.uid(), file);
            Path folder = file.toAbsolutePath().getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            return Output.to(file);
        }

        private void finish(Output output, Path file) throws IOException {
            files.add(file);
            if (output.finish()) {
                changed.add(file);
            }
        }

        Result done() throws IOException {
            memory.keep();
            return new Result(List.copyOf(files), List.copyOf(changed), List.copyOf(memory.notices()));
        }
    }
}
