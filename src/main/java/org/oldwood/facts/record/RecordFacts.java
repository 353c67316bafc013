package org.oldwood.facts.record;

import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.oldwood.facts.Advisor;
import org.oldwood.facts.Fact;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.garden.Entries;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.LotState;
import org.oldwood.store.Json;
import org.oldwood.words.Words;

/** The facts that stand in the record itself, without any craft. */
public final class RecordFacts extends Advisor {
    public RecordFacts() {
        knows("age", s -> age(s));
        knows("bushes", s -> Fact.number(s.subject().bushes(), Words.count(s.subject().bushes(), "plant", "plants")));
        knows("days-since", (of, s) -> ofKind(of, kind -> since(kind, s)));
        knows("days-by-today", (of, s) -> ofKind(of,
                kind -> since(kind, new Situation(s.world(), s.subject(), s.season(), s.world().today()))));
        knows("ever", (of, s) -> ofKind(of, kind -> happened(last(s, kind), kind.key(), "")));
        knows("this-season", RecordFacts::thisSeason);
        knows("task-skipped", (of, s) -> skipped(of.orElse(""), s));
        knows("seasons-since-noted", (of, s) -> sinceNoted(of.orElse(""), s));
        knows("crops-in-bed", s -> cropsInBed(s));
        knows("ph", s -> lastField(s, EntryKind.SOIL_TEST, "ph"));
        knows("moisture", s -> lastField(s, EntryKind.MOISTURE, "feel"));
        knows("origin-own-cutting", s -> origin(s));
        knows("finding", s -> lastField(s, EntryKind.INSPECTED, "finding"));
        knows("method", s -> lot(s, lot -> Fact.text(lot.method(), "made as " + lot.method())));
        knows("struck", s -> lot(s,
                lot -> Fact.number(lot.struck(), "%s were struck on %s".formatted(lot.struck(), lot.struckOn()))));
        knows("alive", s -> lastField(s, EntryKind.CHECKED, "alive"));
        knows("lifted", s -> happened(last(s, EntryKind.LIFTED), EntryKind.LIFTED.key(), ""));
        knows("planted-out", s -> happened(last(s, EntryKind.PLANTED_OUT), EntryKind.PLANTED_OUT.key(), ""));
    }

    private static Fact age(Situation s) {
        OptionalInt oldest = s.subject().plants().stream().mapToInt(plant -> plant.plant().seasonsOld(s.season()))
                .max();
        return oldest.isEmpty() ? Fact.unknown("no plant stands here; note planted")
                : Fact.number(oldest.getAsInt(),
                        "in season " + oldest.getAsInt() + " after planting (the planting season is 1)");
    }

    private static Fact ofKind(Optional<String> of, Function<EntryKind, Fact> fact) {
        return of.flatMap(EntryKind::find).map(fact).orElseGet(() -> Fact.unknown("no such entry kind"));
    }

    private static Optional<Entry> last(Situation s, EntryKind kind) {
        return later(s, entries -> Entries.last(entries, kind));
    }

    /**
     * The last one among what was noted of the subject. What was noted of the whole bed was noted of each plant in it.
     */
    private static Optional<Entry> later(Situation s, Function<List<Entry>, Optional<Entry>> last) {
        Optional<Entry> own = last.apply(s.subject().entries());
        if (!(s.subject() instanceof Subject.OnePlant plant)) { return own; }
        Optional<Entry> ofBed = last.apply(plant.in().entries());
        return own.isPresent() && ofBed.isPresent() && !ofBed.get().date().isAfter(own.get().date()) ? own
                : ofBed.or(() -> own);
    }

    /** The days since something was last noted. */
    public static Fact since(EntryKind kind, Situation s) {
        Optional<Entry> last = last(s, kind);
        if (last.isEmpty()) {
            return Fact.unknown(
                    "no \"%s\" is noted yet (%s); note one when it is done".formatted(kind.key(), kind.meaning()));
        }
        long days = ChronoUnit.DAYS.between(last.get().date(), s.day());
        return Fact.number((double) days,
                "by %s it is %s %s \"%s\" was last noted (%s)".formatted(s.day(),
                        Words.count(Math.abs(days), "day", "days"), days < 0 ? "before" : "since", kind.key(),
                        last.get().date()));
    }

    private static Fact happened(Optional<Entry> last, String kind, String when) {
        return Fact.yes(last.isPresent(), last.map(entry -> "\"%s\" was noted on %s".formatted(kind, entry.date()))
                .orElse("no \"%s\" %s".formatted(kind, when.isEmpty() ? "was noted" : when)));
    }

    private static Fact thisSeason(Optional<String> of, Situation s) {
        Optional<Entry> last = of.flatMap(EntryKind::find).flatMap(kind -> last(s, kind))
                .filter(entry -> s.season().contains(entry.date()));
        return happened(last, of.orElse(""), "in season " + s.season().label());
    }

    /** Whether another rule's task was left out, and nothing of it done to any part of the subject. */
    private static Fact skipped(String rule, Situation s) {
        List<Entry> noted = s.world().state().finished().getOrDefault(s.task(rule), List.of());
        Set<String> out = noted.stream().flatMap(entry -> entry.ids("only").stream()).collect(Collectors.toSet());
        boolean whole = noted.stream().allMatch(entry -> entry.kind() == EntryKind.SKIPPED)
                && (noted.stream().anyMatch(entry -> entry.ids("only").isEmpty())
                        || s.subject().plants().stream().allMatch(plant -> out.contains(plant.plant().id())));
        return noted.stream().filter(entry -> whole).reduce((a, b) -> b)
                .map(last -> Fact.yes(true, "%s was skipped on %s".formatted(rule, last.date())))
                .orElseGet(() -> Fact.yes(false, "%s is not noted as skipped".formatted(rule)));
    }

    /** The seasons since the subject's task of a rule was last noted, done or skipped, in one before this; all its seasons where none was. */
    private static Fact sinceNoted(String rule, Situation s) {
        int age = s.subject().plants().stream().mapToInt(plant -> plant.plant().seasonsOld(s.season())).max().orElse(0);
        return IntStream.rangeClosed(1, age).boxed()
                .filter(ago -> s.world().state().finished()
                        .containsKey(new Situation(s.world(), s.subject(), s.season().plus(-ago), s.day()).task(rule)))
                .findFirst()
                .map(ago -> Fact.number(ago,
                        "%s was noted %s ago".formatted(rule, Words.count(ago, "season", "seasons"))))
                .orElseGet(() -> Fact.number(age, "%s was noted in no season before".formatted(rule)));
    }

    /** What the last entry of a kind says that has a number or a word under the key. */
    private static Fact lastField(Situation s, EntryKind kind, String key) {
        Optional<Entry> last = later(s, entries -> Entries.last(entries, kind,
                entry -> entry.values().get(key) instanceof Json.Num || entry.text(key).isPresent()));
        if (last.isPresent() && last.get().values().get(key) instanceof Json.Num num) {
            return Fact.number(num.value(), told(key, num.written(), last.get()));
        }
        return last.map(entry -> Fact.text(entry.needed(key), told(key, entry.needed(key), entry))).orElseGet(
                () -> Fact.unknown("no \"%s\" with \"%s\" is noted yet; note one".formatted(kind.key(), key)));
    }

    private static String told(String key, String value, Entry entry) {
        return (key.equals("ph") ? "pH" : key) + " " + value + " noted on " + entry.date();
    }

    private static Fact cropsInBed(Situation s) {
        long crops = s.subject().plants().stream().map(plant -> plant.plant().crop()).distinct().count();
        return Fact.number((double) crops, Words.count(crops, "crop", "crops"));
    }

    private static Fact origin(Situation s) {
        Optional<String> lot = s.subject().plants().stream().flatMap(plant -> plant.plant().lot().stream()).findFirst();
        return Fact.yes(lot.isPresent(), lot.map(id -> "raised from own cuttings, " + id + parent(id, s))
                .orElse("not raised from own cuttings"));
    }

    private static String parent(String lot, Situation s) {
        return Optional.ofNullable(s.world().state().lots().get(lot)).flatMap(LotState::parent)
                .map(plant -> " from " + plant).orElse("");
    }

    private static Fact lot(Situation s, Function<LotState, Fact> ask) {
        return s.subject() instanceof Subject.Lot lot ? ask.apply(lot.state()) : Fact.unknown("these are no cuttings");
    }
}
