package org.oldwood.calendar;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.calendar.format.RawComponent;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.Problems;
import org.oldwood.store.RecordException;

/** A plan held against what was written before, and what is to be remembered of it. */
public final class Memory {
    private final Export.Garden garden;
    private final Layout layout;
    private final Uids uids;
    private final Components components;
    private final List<Outgoing> written = new ArrayList<>();
    private final Map<String, Remembered> history = new HashMap<>();
    private final Map<String, String> adopted;
    private final List<String> notices = new ArrayList<>();

    /** @throws RecordException for a plan without items: a good file is worth more than an empty one */
    public Memory(Export.Garden garden, Layout layout, LocalDate today, List<Item> plan) throws IOException {
        if (plan.isEmpty()) { throw new RecordException(Problem.of("empty-plan", Place.of(garden.name()))); }
        this.garden = garden;
        this.layout = layout;
        Problems problems = new Problems();
        CalendarState state = CalendarState.of(garden.folder(), problems);
        problems.list().forEach(problem -> notices.add(problem.inWords()));
        adopted = state.adopted();
        uids = new Uids(garden.id(), adopted);
        components = new Components(layout, uids, garden.zone());
        Revision revision = new Revision(today);
        planned(plan, state.items(), revision);
        Map<String, Remembered> vanished = new LinkedHashMap<>(state.items());
        plan.forEach(item -> vanished.remove(item.identity()));
        vanished.values().forEach(old -> vanished(old, revision));
        new EventDays(layout, today).over(written);
        written.sort(Comparator.comparing((Outgoing out) -> out.item.days().best()).thenComparing(Outgoing::identity));
        for (Outgoing out : written) {
            String hash = components.hash(out);
            out.stamp(hash, revision.stamp(out, hash, layout.shown(out.item.days())));
        }
    }

    private void planned(List<Item> items, Map<String, Remembered> before, Revision revision) {
        Map<String, Item> known = new HashMap<>();
        for (Item item : items) {
            if (known.put(item.identity(), item) != null) {
                throw new IllegalArgumentException("two items are called " + item.identity());
            }
            Optional<Remembered> old = Optional.ofNullable(before.get(item.identity()));
            written.add(new Outgoing(old.map(was -> revision.steady(item, was)).orElse(item), old));
        }
    }

    private void vanished(Remembered old, Revision revision) {
        Item item = old.item();
        Map<String, Item.Progress> came = garden.came();
        List<String> tasks = item.tasks().isEmpty() ? List.of(item.identity()) : item.tasks();
        boolean isWithdrawn = item.progress().state() == Item.State.WITHDRAWN;
        if (!isWithdrawn && revision.isJustOver(item.days()) && came.keySet().containsAll(tasks)) {
            Item.Progress last = tasks.stream().map(came::get)
                    .max(Comparator.comparing(each -> each.day().orElse(LocalDate.MIN))).orElseThrow();
            Outgoing late = new Outgoing(item.with(last), Optional.of(old));
            // noted after the last export that had it: whoever imported that still has it open
            if (item.isDue() || components.hash(late).equals(old.hash())) {
                written.add(late);
                return;
            }
        }
        // a plant may be grubbed after its task was done and before that was written
        boolean isDone = came.containsKey(item.identity()) || tasks.stream().anyMatch(came::containsKey);
        switch (isDone && !isWithdrawn ? Revision.Fate.HISTORY : revision.fate(old)) {
            case WITHDRAWN -> written.add(new Outgoing(item.with(Item.Progress.WITHDRAWN), Optional.of(old)));
            case HISTORY -> history.put(item.identity(), old);
            case FORGOTTEN -> {
            }
        }
    }

    /** Everything to write, by day, then identity. */
    public List<Outgoing> written() { return written; }

    /** An item as a calendar has it; of one without an event, none may be asked for. */
    public RawComponent component(Outgoing out, String component) {
        return component.equals("VEVENT") ? components.event(out, out.stamp()) : components.todo(out, out.stamp());
    }

    /** The event of work that is to be done still, though another one tells of it now: for whoever wrote in it. */
    public RawComponent ownEvent(Outgoing out) {
        return components.event(out, out.stamp(), out.item.progress().state());
    }

    public Uids uids() { return uids; }

    public List<String> notices() { return notices; }

    /** Remembers the plan as written; call it under the journal's lock. What another run adopted meanwhile stays. */
    public void keep() throws IOException {
        Map<String, Remembered> all = new HashMap<>(history);
        written.stream().filter(out -> !out.isPast()).forEach(out -> all.put(out.identity(), out.remembered(layout)));
        Path folder = garden.folder();
        Map<String, String> kept = new HashMap<>(adopted);
        kept.putAll(CalendarState.of(folder, new Problems()).adopted());
        new CalendarState(all, kept).write(folder.resolve(CalendarState.FILE));
    }
}
