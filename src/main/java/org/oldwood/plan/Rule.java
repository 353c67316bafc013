package org.oldwood.plan;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Seen;
import org.oldwood.facts.Fact;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.garden.EntryKind;
import org.oldwood.plan.settle.DoneBy;
import org.oldwood.season.Season;
import org.oldwood.store.Fields;
import org.oldwood.store.Nearest;

/**
 * One rule: which task, for which subject, in which window, under which conditions, how much, and why. Data; the format
 * is described in {@code docs/rules.md}.
 */
public record Rule(String id, String craft, String title, String subject, List<String> crops, List<String> groups,
        List<String> forms, WindowEnd opens, WindowEnd closes, Optional<WindowEnd> noLaterThan, double best,
        List<Condition> when, Optional<String> amount, DoneBy doneBy, IfMissed ifMissed, List<String> after,
        boolean clears, int repeatDays, boolean notInFrost, boolean openGround, OptionalDouble minutes,
        List<String> tags, String reason, String text, List<String> work, List<String> tools, List<String> cautions,
        List<String> sources, Seen seen) {

    private static final List<String> SUBJECTS = List.of("plant", "stand", "bed", "lot", "garden");

    static Rule read(Fields fields) {
        Rule rule = new Rule(fields.text("id"), fields.text("craft"), fields.text("title"),
                fields.oneOf("subject", SUBJECTS), fields.texts("crops"), fields.texts("groups"), fields.texts("forms"),
                WindowEnd.read(fields, "opens"), WindowEnd.read(fields, "closes"),
                fields.has("noLaterThan") ? Optional.of(WindowEnd.read(fields, "noLaterThan")) : Optional.empty(),
                fields.number("best", 0, 1, 0), fields.objects("when").stream().map(Condition::read).toList(),
                fields.optionalText("amount"), doneBy(fields), IfMissed.read(fields), fields.texts("after"),
                fields.flag("clears", false), fields.count("repeatDays", 0, 366, 0), fields.flag("notInFrost", false),
                fields.flag("openGround", false), fields.optionalNumber("minutes", 0, 10_000), fields.texts("tags"),
                fields.text("reason"), fields.text("text", ""), fields.texts("work"), fields.texts("tools"),
                fields.texts("cautions"), fields.texts("source"), Seen.parse(fields.oneOf("seen", Seen.keys())));
        fields.tellIf(rule.sources.isEmpty(), "source", "missing-source of-rule");
        fields.optionalText("like");
        fields.optionalText("note");
        fields.done();
        return rule;
    }

    private static DoneBy doneBy(Fields fields) {
        List<EntryKind> kinds = new ArrayList<>();
        for (String kind : fields.texts("doneBy")) {
            EntryKind.find(kind).ifPresentOrElse(kinds::add,
                    () -> fields.tell("doneBy", "unknown-entry of-rule", kind, Nearest.hint(kind, EntryKind.keys())));
        }
        Map<String, String> wanted = new HashMap<>();
        fields.object("doneFields").ifPresent(inner -> inner.keys().forEach(key -> wanted.put(key, inner.text(key))));
        Fields enough = fields.object("doneWhen").orElseGet(fields::none);
        Optional<DoneBy.Measure> measure = enough.has("percent")
                ? Optional.of(new DoneBy.Measure(enough.optionalText("sum"), enough.number("percent", 1, 100)))
                : Optional.empty();
        DoneBy doneBy = new DoneBy(List.copyOf(kinds), Map.copyOf(wanted), enough.flag("together", false),
                enough.count("earlyDays", 0, 366, 0), measure);
        enough.done();
        return doneBy;
    }

    /** Whether the rule speaks of such a subject at all; its conditions are another matter. */
    public boolean concerns(Subject of) {
        return subject.equals(of.kind()) && cropFits(of.crop()) && formFits(of);
    }

    /** Whether it speaks of plants of that crop and form, one by one or together. */
    boolean concernsPlantsOf(Subject of) {
        return (subject.equals("plant") || subject.equals("stand")) && cropFits(of.crop()) && formFits(of);
    }

    /** A window made of entries or of a craft's days is the same in every season: it belongs to the one it opens in. */
    boolean isBySeason() {
        return opens.isOfTheCrop();
    }

    /** Whether its window hangs on entries alone: then it is the same in every season. */
    boolean hangsOnEntries() {
        return opens.by().equals("entry") && closes.by().equals("entry") && noLaterThan.isEmpty();
    }

    private boolean cropFits(Optional<Crop> crop) {
        if (crops.isEmpty() && groups.isEmpty()) { return true; }
        return crop.isPresent() && (crop.get().isAmong(crops) || groups.contains(crop.get().group()));
    }

    private boolean formFits(Subject of) {
        return forms.isEmpty() || of.plants().stream().anyMatch(plant -> forms.contains(plant.plant().form()));
    }

    /**
     * The situation with those plants of a stand alone that are old enough, where each is done and noted for itself: a
     * bush of the first year is not cut with its elders. The very same where that is all of them, or none.
     */
    Situation onThoseOldEnough(Situation all) {
        boolean eachNoted = doneBy.kinds().stream().anyMatch(kind -> kind.field("bed").isEmpty());
        if (!eachNoted || !(all.subject() instanceof Subject.Stand stand)) { return all; }
        Subject.Stand some = stand.only(plant -> isOldEnough(plant.plant().seasonsOld(all.season())));
        return some.plants().isEmpty() || some.plants().size() == stand.plants().size() ? all
                : new Situation(all.world(), some, all.season(), all.day());
    }

    private boolean isOldEnough(int seasons) {
        Fact age = Fact.number(seasons, "");
        return when.stream().filter(condition -> condition.fact().equals("age"))
                .allMatch(condition -> condition.holds(age));
    }

    /**
     * The number of the first repeat in a window. Repeats are numbered from 1; where a craft works out the window anew
     * each day, by their week of the season, so that a repeat that was done is not taken for the next one.
     */
    int firstOrdinal(Season season, Window window) {
        return opens.by().equals("fact") ? (int) (1 + ChronoUnit.WEEKS.between(season.start(), window.first())) : 1;
    }
}
