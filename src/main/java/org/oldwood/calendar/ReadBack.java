package org.oldwood.calendar;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.oldwood.calendar.format.RawComponent;
import org.oldwood.calendar.format.RawReader;
import org.oldwood.store.Problems;

/**
 * Finds in calendar files what was ticked off, skipped or begun there. Takes over neither dates nor texts, but tells
 * where they were changed; leaves items alone that are not this garden's.
 */
public final class ReadBack {
    private final Export.Garden garden;
    private final LocalDate today;
    private final Layout layout;
    private final Map<String, Item> ours = new HashMap<>();
    private final Map<String, Remembered> written;
    private final Map<String, Answer> answers = new LinkedHashMap<>();
    private final Set<String> done = new HashSet<>();
    private final List<String> notices = new ArrayList<>();
    private final Problems problems = new Problems();

    /** What was said, what was noticed besides, and what could not be read. */
    public record Result(List<Answer> answers, List<String> notices, Problems problems) {}

    /** @param plan the rounds and the tasks as they stand now, with what the journal already knows of them */
    public ReadBack(Export.Garden garden, List<Item> plan, Layout layout, LocalDate today) throws IOException {
        this.garden = garden;
        this.layout = layout;
        this.today = today;
        CalendarState state = CalendarState.of(garden.folder(), problems);
        Uids uids = new Uids(garden.id(), state.adopted());
        state.items().values().forEach(old -> know(old.item(), uids));
        written = state.items();
        plan.forEach(item -> know(item, uids));
    }

    private void know(Item item, Uids uids) {
        ours.put(uids.event(item.identity()), item);
        ours.put(uids.todo(item.identity()), item);
    }

    /** Reads one more file. */
    public ReadBack read(InputStream in, String name) throws IOException {
        RawComponent file = RawReader.read(in, name, problems);
        ItemReader reader = new ItemReader(garden.zone());
        int strangers = 0;
        for (RawComponent raw : file.items()) {
            Item item = ours.get(raw.uid());
            if (item == null) {
                strangers++;
            } else {
                hear(item, raw, reader.read(raw));
            }
        }
        if (strangers > 0) {
            notices.add(name + ": " + strangers + " items are not this garden's and were left alone.");
        }
        return this;
    }

    /** Reads text that came from a server. */
    public ReadBack read(String text, String name) throws IOException {
        return read(new ByteArrayInputStream(text.getBytes(UTF_8)), name);
    }

    public Result result() {
        answers.values().removeIf(answer -> answer.what() == Answer.What.NOT_DONE && done.contains(answer.identity()));
        return new Result(List.copyOf(answers.values()), List.copyOf(notices), problems);
    }

    private void hear(Item item, RawComponent raw, ReadItem seen) {
        noticeChanges(item, raw, seen);
        if (seen.isDone()) { done.add(item.identity()); }
        answer(item, seen).or(
                () -> isUntouched(raw, seen) ? Optional.empty() : Optional.of(said(item, Answer.What.NOT_DONE, seen)))
                .ifPresent(answer -> keep(item.identity(), answer));
    }

    /**
     * Only a to-do that somebody changed in a calendar can say that a tick was taken back; an older copy of ours
     * cannot.
     */
    private static boolean isUntouched(RawComponent raw, ReadItem seen) {
        return raw.isEvent() || seen.isDone() || seen.status().equals("CANCELLED") || seen.modified().isEmpty();
    }

    /** A task can be in several files; that it is done counts for more than that it is not. */
    private void keep(String identity, Answer answer) {
        answers.merge(identity, answer, (one, other) -> other.what().compareTo(one.what()) < 0 ? other : one);
    }

    private Optional<Answer> answer(Item item, ReadItem seen) {
        Item.State known = item.progress().state();
        if (known == Item.State.DONE || isAsWritten(item, seen)) { return Optional.empty(); }
        if (seen.isDone()) { return Optional.of(said(item, Answer.What.DONE, seen)); }
        if (!known.isDue()) { return Optional.empty(); }
        if (seen.status().equals("CANCELLED")) {
            return Title.isOfCancelled(seen.title()) ? Optional.empty()
                    : Optional.of(said(item, Answer.What.SKIPPED, seen));
        }
        return seen.isUnderWay() && !isKnown(item.progress(), seen)
                ? Optional.of(said(item, Answer.What.UNDER_WAY, seen))
                : Optional.empty();
    }

    /** What our own file said is no news, whatever was noted or taken back since. */
    private boolean isAsWritten(Item item, ReadItem seen) {
        Remembered last = written.get(item.identity());
        if (last == null) { return false; }
        Item.Progress progress = last.item().progress();
        return progress.state() == Item.State.DONE ? seen.isDone() && seen.completed().equals(progress.day())
                : seen.isUnderWay() && isKnown(progress, seen);
    }

    private static boolean isKnown(Item.Progress known, ReadItem seen) {
        return known.state() == Item.State.BEGUN && (seen.percent() == 0 || seen.percent() == known.percent());
    }

    private Answer said(Item item, Answer.What what, ReadItem seen) {
        String basis = seen.isCompletedGiven()
                ? "the day of reading, since the calendar's day of completion cannot be read"
                : "the day of reading, since the calendar names none";
        LocalDate day = today;
        if (what == Answer.What.DONE && seen.completed().isPresent()) {
            day = seen.completed().get();
            basis = "the day of completion in the calendar";
        } else if (seen.modified().isPresent()) {
            day = seen.modified().get();
            basis = "the day the calendar's entry was last changed";
        }
        if (day.isAfter(today)) {
            day = today;
            basis = "the day of reading, since the calendar names a day still to come";
        }
        int percent = what == Answer.What.DONE ? 100 : seen.percent();
        return new Answer(item.identity(), tasks(item), item.words().title(), what, day, percent, basis);
    }

    /** A tick means the round as it was shown, whatever came into it since. */
    private List<String> tasks(Item item) {
        Remembered last = written.get(item.identity());
        List<String> tasks = last == null || last.item().tasks().isEmpty() ? item.tasks() : last.item().tasks();
        return tasks.isEmpty() ? List.of(item.identity()) : tasks;
    }

    /**
     * Held against what we last wrote, not against the plan, which may have moved since; an older copy of ours that
     * nobody touched is no news either.
     */
    private void noticeChanges(Item item, RawComponent raw, ReadItem seen) {
        Remembered last = written.get(item.identity());
        if (last != null && ItemReader.isOurStamp(raw) && isOlder(raw, last)) { return; }
        String[] days = (last == null ? layout.shown(item.days()) : last.shown()).split("[/ ]", -1);
        int from = raw.isEvent() ? 0 : 2;
        boolean isMoved = isOther(seen.start(), days[from]) || isOther(seen.end(), days[from + 1]);
        if (isMoved) {
            notices.add(item.words().title() + ": has other dates in the calendar than in the plan; the plan's stay.");
        }
    }

    private static boolean isOlder(RawComponent raw, Remembered last) {
        return !raw.value("LAST-MODIFIED").orElse("").equals(Stamp.UTC.format(last.stamp().changed()));
    }

    private static boolean isOther(String value, String isoDay) {
        return !value.isEmpty() && !isoDay.replace("-", "").equals(value.substring(0, Math.min(8, value.length())));
    }
}
