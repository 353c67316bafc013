package org.oldwood.facts.record;

import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.oldwood.facts.Advisor;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Fact;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.garden.Entries;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.LotState;
import org.oldwood.garden.PlantState;
import org.oldwood.season.Season;
import org.oldwood.store.Json;

/** The facts that stand in the record itself, without any craft. */
public final class RecordFacts implements Advisor {
    private final Map<String, BiFunction<Optional<String>, Situation, Fact>> facts = new LinkedHashMap<>();
    private final Map<Integer, Fact> ages = new HashMap<>();

    public RecordFacts() {
        facts.put("age", (of, s) -> age(s.subject().plants(), s.season()));
        facts.put("bushes", (of, s) -> bushes(s));
        facts.put("days-since", RecordFacts::daysSince);
        facts.put("ever", RecordFacts::ever);
        facts.put("this-season", RecordFacts::thisSeason);
        facts.put("crops-in-bed", (of, s) -> cropsInBed(s));
        facts.put("ph", (of, s) -> lastField(s, EntryKind.SOIL_TEST, "ph", "ph"));
        facts.put("soil-test-age", (of, s) -> since("soil-test-age", EntryKind.SOIL_TEST, s));
        facts.put("moisture", (of, s) -> lastField(s, EntryKind.MOISTURE, "feel", "moisture"));
        facts.put("origin-own-cutting", (of, s) -> origin(s));
        facts.put("finding", (of, s) -> lastField(s, EntryKind.INSPECTED, "finding", "finding"));
        facts.put(
                "method",
                (of, s) -> lot(
                        s,
                        "method",
                        l -> Fact.text(
                                "method",
                                l.state().method(),
                                "made as " + l.state().method())));
        facts.put(
                "struck",
                (of, s) -> lot(
                        s,
                        "struck",
                        l -> Fact.number(
                                "struck",
                                l.state().struck(),
                                l.state().struck()
                                        + " were struck on "
                                        + l.state().struckOn())));
        facts.put("alive", (of, s) -> lastField(s, EntryKind.CHECKED, "alive", "alive"));
        facts.put("lifted", (of, s) -> happened(s, EntryKind.LIFTED, "lifted"));
        facts.put("planted-out", (of, s) -> happened(s, EntryKind.PLANTED_OUT, "planted-out"));
    }

    @Override
    public List<String> facts() {
        return List.copyOf(facts.keySet());
    }

    @Override
    public List<String> amounts() {
        return List.of();
    }

    @Override
    public Fact fact(String name, Optional<String> of, Situation situation) {
        var found = facts.get(name);
        if (found == null) {
            throw new IllegalArgumentException("no fact " + name);
        }
        return found.apply(of, situation);
    }

    @Override
    public Optional<Amount> amount(String name, Situation situation) {
        return Optional.empty();
    }

    /** Of the oldest. Most plants of a garden share a few ages, so each is put in words once. */
    private Fact age(List<PlantState> plants, Season season) {
        if (plants.isEmpty()) {
            return Fact.unknown("age", "no plant stands here; note planted");
        }
        int oldest = Integer.MIN_VALUE;
        for (PlantState plant : plants) {
            oldest = Math.max(oldest, plant.plant().seasonsOld(season));
        }
        Fact known = ages.get(oldest);
        if (known == null) {
            String words = "in season " + oldest + " after planting (the planting season is 1)";
            known = Fact.number("age", oldest, words);
            ages.put(oldest, known);
        }
        return known;
    }

    private static Fact bushes(Situation s) {
        int bushes = s.subject().plants().stream()
                .mapToInt(plant -> plant.plant().bushes())
                .sum();
        return Fact.number("bushes", bushes, bushes + (bushes == 1 ? " plant" : " plants"));
    }

    private static Optional<EntryKind> kind(Optional<String> of) {
        return of.flatMap(EntryKind::find);
    }

    private static Optional<Entry> last(Situation s, EntryKind kind) {
        return later(s, entries -> Entries.last(entries, kind));
    }

    /**
     * The last one among what was noted of the subject. What was noted of the whole bed was noted of each plant in it.
     */
    private static Optional<Entry> later(Situation s, Function<List<Entry>, Optional<Entry>> last) {
        Optional<Entry> own = last.apply(s.subject().entries());
        if (!(s.subject() instanceof Subject.OnePlant plant)) {
            return own;
        }
        Optional<Entry> ofBed = last.apply(plant.in().entries());
        return own.isPresent()
                        && ofBed.isPresent()
                        && !ofBed.get().date().isAfter(own.get().date())
                ? own
                : ofBed.or(() -> own);
    }

    private static Fact daysSince(Optional<String> of, Situation s) {
        return kind(of).map(kind -> since("days-since", kind, s))
                .orElse(Fact.unknown("days-since", "no such entry kind"));
    }

    private static Fact since(String name, EntryKind kind, Situation s) {
        Optional<Entry> last = last(s, kind);
        return last.map(entry -> {
                    long days = ChronoUnit.DAYS.between(entry.date(), s.day());
                    return Fact.number(
                            name,
                            (double) days,
                            "\"%s\" was last noted %s days before %s (%s)"
                                    .formatted(kind.key(), days, s.day(), entry.date()));
                })
                .orElseGet(() -> Fact.unknown(
                        name,
                        "no \"%s\" is noted yet (%s); note one when it is done".formatted(kind.key(), kind.meaning())));
    }

    private static Fact ever(Optional<String> of, Situation s) {
        return kind(of).map(kind -> happened(s, kind, "ever")).orElse(Fact.unknown("ever", "no such entry kind"));
    }

    private static Fact happened(Situation s, EntryKind kind, String name) {
        Optional<Entry> last = last(s, kind);
        return Fact.yes(
                name,
                last.isPresent(),
                last.map(entry -> "\"%s\" was noted on %s".formatted(kind.key(), entry.date()))
                        .orElse("no \"%s\" was noted".formatted(kind.key())));
    }

    private static Fact thisSeason(Optional<String> of, Situation s) {
        Optional<Entry> last = kind(of).flatMap(kind -> last(s, kind))
                .filter(entry -> s.season().contains(entry.date()));
        return Fact.yes(
                "this-season",
                last.isPresent(),
                last.map(entry -> "\"%s\" was noted on %s".formatted(of.orElse(""), entry.date()))
                        .orElse("no \"%s\" in season %s"
                                .formatted(of.orElse(""), s.season().label())));
    }

    private static Fact lastField(Situation s, EntryKind kind, String key, String name) {
        Optional<Entry> last = later(s, entries -> lastWith(entries, kind, key));
        if (last.isPresent() && last.get().values().get(key) instanceof Json.Num num) {
            return Fact.number(name, num.value(), told(key, num.written(), last.get()));
        }
        if (last.isPresent()) {
            String text = last.get().needed(key);
            return Fact.text(name, text, told(key, text, last.get()));
        }
        return Fact.unknown(
                name, "\"%s\" is in no \"%s\" yet (%s); note it there".formatted(key, kind.key(), kind.meaning()));
    }

    private static String told(String key, String value, Entry entry) {
        return key + " " + value + " noted on " + entry.date();
    }

    /** The last entry of a kind that has a number or a word under the key. */
    private static Optional<Entry> lastWith(List<Entry> entries, EntryKind kind, String key) {
        for (int i = entries.size() - 1; i >= 0; i--) {
            Entry entry = entries.get(i);
            if (entry.kind() == kind
                    && (entry.values().get(key) instanceof Json.Num
                            || entry.text(key).isPresent())) {
                return Optional.of(entry);
            }
        }
        return Optional.empty();
    }

    private static Fact cropsInBed(Situation s) {
        long crops = s.subject().plants().stream()
                .map(plant -> plant.plant().crop())
                .distinct()
                .count();
        return Fact.number("crops-in-bed", (double) crops, crops + " crops");
    }

    private static Fact origin(Situation s) {
        Optional<String> lot = s.subject().plants().stream()
                .flatMap(plant -> plant.plant().lot().stream())
                .findFirst();
        return Fact.yes(
                "origin-own-cutting",
                lot.isPresent(),
                lot.map(id -> "raised from own cuttings, " + id + parent(id, s))
                        .orElse("not raised from own cuttings"));
    }

    private static String parent(String lot, Situation s) {
        return Optional.ofNullable(s.world().state().lots().get(lot))
                .flatMap(LotState::parent)
                .map(plant -> " from " + plant)
                .orElse("");
    }

    private static Fact lot(Situation s, String name, Function<Subject.Lot, Fact> ask) {
        return s.subject() instanceof Subject.Lot lot ? ask.apply(lot) : Fact.unknown(name, "these are no cuttings");
    }
}
