package org.oldwood.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Stage;
import org.oldwood.facts.Advisor;
import org.oldwood.facts.Fact;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.garden.Entries;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.season.StageDate;
import org.oldwood.season.Stages;
import org.oldwood.store.Fields;
import org.oldwood.store.IsoDate;

/**
 * One end of a rule's window: so many days after a stage, a day of the year, a day that a craft works out, or the last
 * entry of a kind.
 *
 * @param by {@code stage}, {@code day}, {@code fact} or {@code entry}
 * @param name the stage's key, the northern month-day, the fact's name or the entry's kind
 * @param of the fact's argument, if it takes one
 * @param plusDays days after it; negative for before
 */
public record WindowEnd(String by, String name, Optional<String> of, int plusDays) {
    private static final List<String> KINDS = List.of("stage", "day", "fact", "entry");

    static WindowEnd read(Fields rule, String key) {
        Optional<Fields> found = rule.object(key);
        if (found.isEmpty()) {
            rule.tell(key, "missing-key window", key, key);
            return new WindowEnd("day", "01-01", Optional.empty(), 0);
        }
        Fields fields = found.get();
        String by = KINDS.stream().filter(fields::has).findFirst().orElse("stage");
        WindowEnd anchor = new WindowEnd(by, fields.text(by),
                by.equals("fact") ? fields.optionalText("of") : Optional.empty(),
                fields.count("plusDays", -400, 4000, 0));
        anchor.check(fields);
        fields.done();
        return anchor;
    }

    private void check(Fields fields) {
        boolean right = switch (by) {
            case "stage" -> Stage.find(name).isPresent();
            case "day" -> IsoDate.monthDay(name).isPresent();
            case "entry" -> EntryKind.find(name).isPresent();
            default -> true;
        };
        fields.tellIf(!right, by, "unknown-anchor", by, name);
    }

    /**
     * A day and how it was found.
     *
     * @param how how it was found, put in words when asked
     */
    record Found(LocalDate day, Supplier<Window.How> how) {}

    /** Whether it is the same day for all that is of one crop. */
    boolean isOfTheCrop() {
        return by.equals("stage") || by.equals("day");
    }

    /** The day, or nothing where what it hangs on is not there. */
    Optional<Found> find(Situation situation, Advisor advisors) {
        return switch (by) {
            case "stage" -> stage(situation);
            case "day" ->
                IsoDate.monthDay(name).map(day -> found(situation.season().day(day), () -> how(0, "by the calendar")));
            case "entry" -> entry(situation.subject()).map(this::entry);
            default -> fact(advisors.fact(name, of, situation));
        };
    }

    private Optional<Found> stage(Situation situation) {
        Stage stage = Stage.find(name).orElse(Stage.DORMANT);
        Stages stages = situation.world().stages();
        return situation.subject().crop().map(crop -> found(stages.day(crop, situation.season(), stage),
                () -> how(crop, stages.date(crop, situation.season(), stage))));
    }

    private Window.How how(Crop crop, StageDate date) {
        return how(date.plusMinusDays(), crop.name() + ": " + date.inWords());
    }

    private Optional<Entry> entry(Subject subject) {
        return EntryKind.find(name).flatMap(kind -> Entries.last(subject.entries(), kind));
    }

    /** The day of the entry that it hangs on, where it hangs on one. */
    Optional<LocalDate> entryDay(Subject subject) {
        return entry(subject).map(Entry::date);
    }

    private Found entry(Entry entry) {
        return found(entry.date(), () -> how(0, entry.kind().key() + " on " + entry.date()));
    }

    private Optional<Found> fact(Fact fact) { return fact.day().map(day -> found(day, () -> how(0, fact.words()))); }

    private Found found(LocalDate from, Supplier<Window.How> how) { return new Found(from.plusDays(plusDays), how); }

    private Window.How how(int plusMinusDays, String words) {
        String shift = plusDays == 0 ? "" : Math.abs(plusDays) + (plusDays > 0 ? " days after " : " days before ");
        return new Window.How(plusMinusDays, shift + words);
    }
}
