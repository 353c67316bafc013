package org.oldwood.calendar;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Puts rounds on days so that no day and no week holds more than people can do. What already has a day keeps it while
 * it can; the others take the nearest work day in their window with room, and those that find none are told in the
 * event of another round. Unchanged items find the same days again.
 */
final class EventDays {
    /** A window is not searched farther than this from the day planned. */
    private static final int FARTHEST_DAYS = 42;

    /** A plan that moves by a week is news, however good the old day still is. */
    private static final int NEWS_DAYS = 7;

    private final Layout layout;
    private final LocalDate today;
    private final Map<LocalDate, Integer> onDay = new HashMap<>();
    private final Map<LocalDate, Integer> inWeek = new HashMap<>();

    EventDays(Layout layout, LocalDate today) {
        this.layout = layout;
        this.today = today;
    }

    void over(List<Outgoing> all) {
        List<Outgoing> seeking = new ArrayList<>();
        for (Outgoing out : all) {
            if (!out.item.parent().isEmpty() || out.item.progress().state() == Item.State.WITHDRAWN) {
                out.callOffEvent();
            } else if (stands(out)) {
                if (!out.isCancelled("VEVENT") && !out.isPast()) { take(out.item.days().best()); }
            } else if (out.event == Outgoing.Event.OWN) { seeking.add(out); }
        }
        seeking.sort(Comparator.comparing((Outgoing out) -> out.planned).thenComparing(Outgoing::identity));
        List<Outgoing> guests = new ArrayList<>();
        for (Outgoing out : seeking) {
            free(out).ifPresentOrElse(day -> put(out, day), () -> guests.add(out));
        }
        List<Outgoing> hosts = new ArrayList<>(all);
        hosts.removeAll(guests);
        for (Outgoing out : guests) {
            host(out, hosts).ifPresentOrElse(host -> visit(out, host), () -> put(out, out.item.days().best()));
        }
        ring(all);
    }

    /** Whether it has its day already: it is over, or was shown on a day that is still good. */
    private boolean stands(Outgoing out) {
        Item item = out.item;
        if (!item.isDue() || item.days().last().isBefore(today)) {
            out.before.ifPresent(before -> {
                if (before.event() != Outgoing.Event.OWN) { out.callOffEvent(); }
            });
            return out.event == Outgoing.Event.OWN;
        }
        Optional<LocalDate> shown = out.before.filter(before -> before.event() == Outgoing.Event.OWN)
                .filter(before -> Math.abs(before.planned().toEpochDay() - out.planned.toEpochDay()) < NEWS_DAYS)
                .map(before -> before.item().days().best())
                .filter(day -> !day.isBefore(today) && item.days().hold(day));
        shown.ifPresent(day -> out.item = item.on(item.days().at(day)));
        out.before.filter(before -> shown.isPresent()).ifPresent(before -> out.planned = before.planned());
        return shown.isPresent();
    }

    private Optional<LocalDate> free(Outgoing out) {
        Item.Days days = out.item.days();
        LocalDate wanted = days.best().isBefore(today) ? today : days.best();
        List<LocalDate> near = Stream.iterate(wanted.minusDays(FARTHEST_DAYS), day -> day.plusDays(1))
                .limit(2 * FARTHEST_DAYS + 1).filter(day -> days.hold(day) && !day.isBefore(today) && hasRoom(day))
                .sorted(Comparator.comparingLong(day -> far(wanted, day))).toList();
        return near.stream().filter(day -> layout.workDays().contains(day.getDayOfWeek())).findFirst()
                .or(() -> near.stream().findFirst());
    }

    /** Of two days as near, the later: what the work waits for is then done. */
    private static long far(LocalDate wanted, LocalDate day) {
        long days = day.toEpochDay() - wanted.toEpochDay();
        return days < 0 ? -2 * days + 1 : 2 * days;
    }

    private boolean hasRoom(LocalDate day) {
        return onDay.getOrDefault(day, 0) < layout.mostADay()
                && inWeek.getOrDefault(monday(day), 0) < layout.mostAWeek();
    }

    private static LocalDate monday(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    private void put(Outgoing out, LocalDate day) {
        out.item = out.item.on(out.item.days().at(day));
        take(day);
    }

    private void take(LocalDate day) {
        onDay.merge(day, 1, Integer::sum);
        inWeek.merge(monday(day), 1, Integer::sum);
    }

    private Optional<Outgoing> host(Outgoing guest, List<Outgoing> hosts) {
        Item.Days days = guest.item.days();
        return hosts.stream().filter(out -> out.event == Outgoing.Event.OWN && out.item.isDue())
                .filter(out -> days.hold(out.item.days().best()) && !out.item.days().best().isBefore(today))
                .min(Comparator.comparingLong((Outgoing out) -> far(days.best(), out.item.days().best()))
                        .thenComparing(Outgoing::identity));
    }

    private static void visit(Outgoing guest, Outgoing host) {
        guest.callOffEvent();
        guest.item = guest.item.on(guest.item.days().at(host.item.days().best()));
        host.guests.add(guest.title());
    }

    /** At most one alarm a day; who had it keeps it. */
    private static void ring(List<Outgoing> all) {
        Map<LocalDate, Outgoing> first = new HashMap<>();
        Comparator<Outgoing> order = Comparator
                .comparing((Outgoing out) -> out.before.filter(Remembered::rings).isEmpty())
                .thenComparing(Outgoing::identity);
        all.stream().filter(out -> out.event == Outgoing.Event.OWN && out.item.isDue()).sorted(order)
                .forEach(out -> first.putIfAbsent(out.item.days().best(), out));
        first.values().forEach(out -> out.rings = true);
    }
}
