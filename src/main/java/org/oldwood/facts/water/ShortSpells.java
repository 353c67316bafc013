package org.oldwood.facts.water;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.oldwood.facts.Fact;
import org.oldwood.facts.Situation;

/**
 * When one bed runs short of water in the weeks of a season in which its plants grow: past days as they were, days to
 * come in mean weather and without watering.
 */
record ShortSpells(BedAccount account, GardenWater.Growing growing, Situation situation) {

    public Optional<LocalDate> first() { return account.firstShort(growing.from(), growing.to()); }

    public Optional<LocalDate> last() { return account.lastShort(growing.from(), growing.to()); }

    /** The next day short, today included. */
    public Optional<LocalDate> next() {
        LocalDate today = situation.world().today();
        return !situation.season().contains(today) || today.isAfter(growing.to()) ? Optional.empty()
                : account.firstShort(latest(today, growing.from()), growing.to());
    }

    /** Days short from the day asked about on. */
    public int daysShort() {
        return from().isAfter(growing.to()) ? 0 : account.daysShort(from(), growing.to());
    }

    private LocalDate from() { return latest(situation.day(), growing.from()); }

    private static LocalDate latest(LocalDate a, LocalDate b) { return a.isAfter(b) ? a : b; }

    /** One of its days, told as {@code which}, with a gap for the bed. */
    public Fact day(Optional<LocalDate> day, String which) {
        return day.map(date -> Fact.day(date, which.formatted(bed()) + date + " in mean weather, if nobody waters")
                .from(sources())).orElseGet(() -> never());
    }

    private Fact never() {
        return Fact.unknown("in mean weather " + bed() + " does not run short while its plants grow");
    }

    /** How far ahead of today one of these days lies; below 0 where it is past. */
    public Fact ahead(Optional<LocalDate> day, String verb) {
        LocalDate today = situation.world().today();
        return day.map(date -> Fact.number((double) (date.toEpochDay() - today.toEpochDay()), bed() + verb + date)
                .from(sources())).orElseGet(() -> never());
    }

    public Fact runsShort() {
        Optional<LocalDate> first = from().isAfter(growing.to()) ? Optional.empty()
                : account.firstShort(from(), growing.to());
        String words = first.map(date -> " runs short about %s and is short on %s days until %s if nobody waters"
                .formatted(date, daysShort(), growing.to())).orElse(" does not run short from " + from());
        return Fact.yes(first.isPresent(), "in mean weather " + bed() + words).from(sources());
    }

    private String bed() { return account.state().bed().name(); }

    private List<String> sources() { return account.soil().sources(); }
}
