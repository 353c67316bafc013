package org.oldwood.facts.feeding;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.oldwood.craft.feeding.Budget;
import org.oldwood.craft.feeding.Feed;
import org.oldwood.craft.feeding.FeedPlan;
import org.oldwood.craft.feeding.Nutrients;
import org.oldwood.craft.feeding.Recipe;
import org.oldwood.craft.mulching.Mulch;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Stage;
import org.oldwood.facts.Advisor;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Fact;
import org.oldwood.facts.Purchase;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.season.Season;
import org.oldwood.words.Words;

/**
 * Tells the rules what food is due to a stand, and how much of which material each dressing takes. Facts:
 * {@code feed-due}, the nutrients due in g/m² together; {@code nitrogen-due}, g/m²; {@code second-due}, with the
 * rest that the second dressing brings, by its worth in nitrogen; {@code latest-feed}, the last good
 * day for the nitrogen of the next dressing; {@code latest-second-feed}, that of the second, be the first given or not.
 * Amounts: {@code feed-first}, {@code feed-second} and, for tubs, {@code feed-tub}.
 */
public final class FeedAdvisor extends Advisor {
    /** The plan weighs a stand as it is beside what it was and will be: more than that is not asked of again. */
    private static final int MOST_KEPT = 64;

    /** The kinds of entry that a need, or what counts of it, hangs on. */
    private static final Set<EntryKind> COUNTS = EnumSet.of(EntryKind.FED, EntryKind.LIMED, EntryKind.ACIDIFIED,
            EntryKind.MULCHED, EntryKind.SOIL_TEST, EntryKind.VIGOUR);

    private final IdentityHashMap<Subject, Map<Season, Optional<Found>>> found = new IdentityHashMap<>();

    /** The food of a stand in a season, and its budget from each dressing on, worked out when asked for. */
    private record Found(StandFeed stand, FeedingBooks books, Map<Integer, Budget> known) {
        Budget from(int which) { return known.computeIfAbsent(which, number -> stand.budget(books, number)); }
    }

    /** The rules ask several things of one stand: the very same, since comparing whole records would take longer. */
    private Optional<Found> stand(Situation s) {
        Map<Season, Optional<Found>> known = found.get(s.subject());
        if (known == null) {
            known = found.entrySet().stream().filter(other -> isFedAlike(other.getKey(), s.subject())).findFirst()
                    .map(Map.Entry::getValue).orElseGet(HashMap::new);
            if (found.size() == MOST_KEPT) { found.clear(); }
            found.put(s.subject(), known);
        }
        return known.computeIfAbsent(s.season(), season -> StandFeed.of(FeedingBooks.of(s), s)
                .map(stand -> new Found(stand, FeedingBooks.of(s), new HashMap<>())));
    }

    /** Whether a subject differs from what it was, or will be, by cuts, counts or picking at most: they change no food. */
    private static boolean isFedAlike(Subject one, Subject other) {
        return one.kind().equals(other.kind()) && one.id().equals(other.id()) && fedBy(one).equals(fedBy(other));
    }

    private static List<Entry> fedBy(Subject subject) {
        return Stream.concat(subject.bed().stream().flatMap(bed -> bed.entries().stream()), subject.entries().stream())
                .filter(entry -> COUNTS.contains(entry.kind())).toList();
    }

    public FeedAdvisor() {
        knows("feed-due", s -> fact(s, of -> due(s, of.stand(), Nutrients::sum)));
        knows("nitrogen-due", s -> fact(s, of -> due(s, of.stand(), Nutrients::n)));
        knows("second-due",
                s -> fact(s, of -> due(s, of.stand(), due -> due.n() + rest(FeedingBooks.of(s), of.from(1)))));
        knows("latest-feed", s -> fact(s,
                of -> latest(s, of.stand(), of.from(of.stand().begun(FeedingBooks.of(s), s.season()) ? 1 : 0))));
        knows("latest-second-feed", s -> fact(s, of -> latest(s, of.stand(), of.from(1))));
        measures("feed-first", s -> dressing(s, 0));
        measures("feed-second", s -> dressing(s, 1));
        measures("feed-tub", s -> stand(s).flatMap(of -> amount(FeedingBooks.of(s), s, of.stand(), of.from(0))));
    }

    private Fact fact(Situation s, Function<Found, Fact> fact) {
        return stand(s).map(fact).orElseGet(() -> Fact.unknown("no figures of its food are known"));
    }

    private static Fact due(Situation s, StandFeed stand, ToDoubleFunction<Nutrients> part) {
        Nutrients need = stand.need().gPerM2();
        Nutrients counting = stand.counting().all();
        Nutrients due = need.minus(counting).atLeastZero();
        return Fact
                .number(part.applyAsDouble(due),
                        "needs %s g/m² in season %s; %s counts already; due %s".formatted(FeedPlan.inWords(need),
                                s.season().label(), FeedPlan.inWords(counting), FeedPlan.inWords(due)))
                .from(stand.need().sources());
    }

    /** What the second dressing brings beside nitrogen, by its worth in nitrogen: a pinch of potash is no dressing. */
    private static double rest(FeedingBooks books, Budget budget) {
        Nutrients useful = budget.next().map(plan -> useful(plan, budget)).orElse(Nutrients.NONE);
        return (useful.sum() - useful.n()) / books.tables().limits().nitrogenWeight().is();
    }

    private Fact latest(Situation s, StandFeed stand, Budget budget) {
        Optional<LocalDate> byNitrogen = budget.next().flatMap(budget::latest).map(s.season()::day);
        Optional<LocalDate> byManure = byManure(s, stand, budget);
        if (byManure.isPresent() && byNitrogen.map(byManure.get()::isBefore).orElse(true)) {
            return Fact.day(byManure.get(), "the last day for raw manure before picking, " + byManure.get())
                    .from(FeedingBooks.of(s).tables().limits().manure().hanging().sources());
        }
        return byNitrogen
                .map(day -> Fact.day(day, "the last good day for the nitrogen in it, " + day)
                        .from(budget.timing().sources()))
                .orElseGet(() -> Fact.unknown("it brings no nitrogen, so any day will do"));
    }

    /** Raw manure must lie long before the first fruit is picked; bushes hold theirs off the soil. */
    private Optional<LocalDate> byManure(Situation s, StandFeed stand, Budget budget) {
        if (budget.next().stream().flatMap(plan -> plan.parts().stream()).noneMatch(part -> part.feed().is("manure"))) {
            return Optional.empty();
        }
        LocalDate picking = s.world().stages().day(stand.crop(), s.season(), Stage.RIPE);
        return Optional.of(FeedingBooks.of(s).tables().limits().manure().latest(picking, false));
    }

    private Optional<Amount> dressing(Situation s, int number) {
        return stand(s).filter(of -> of.from(number).next().map(next -> next.number() == number).orElse(true))
                .flatMap(of -> amount(FeedingBooks.of(s), s, of.stand(), of.from(number)));
    }

    private static Optional<Amount> amount(FeedingBooks books, Situation s, StandFeed stand, Budget budget) {
        // what the first dressing of a plan said is missing need not be said again by the second
        List<String> missing = stand.planned(s.season(), s.world().today()) ? List.of() : budget.missing();
        if (budget.dressings().isEmpty() && missing.isEmpty()) { return Optional.empty(); }
        FeedPlan plan = budget.next().orElse(new FeedPlan(0, "", List.of(), Nutrients.NONE, false, budget.ground()));
        List<String> lines = new ArrayList<>(plan.measures());
        lines.addAll(missing);
        lines.addAll(budget.notes());
        plan.parts().forEach(
                part -> part.feed().notRead().forEach(mark -> lines.add(part.feed().name() + ": " + mark + ".")));
        lines.addAll(stand.assumed());
        List<String> arithmetic = new ArrayList<>(stand.lines(s.season()));
        arithmetic.addAll(budget.lines());
        arithmetic.add("this dressing: " + FeedPlan.inWords(plan.gives()) + " g/m²");
        String words = plan.parts().isEmpty()
                ? "%s g/m² on %s m², of a material that you do not keep yet".formatted(FeedPlan.inWords(budget.due()),
                        Words.amount(plan.ground().areaM2()))
                : plan.words();
        return Optional.of(Amount.of(plan.totalGrams(), "g", words, arithmetic, stand.need().sources())
                .withWorth(worth(books, useful(plan, budget), plan), worth(books, budget.due(), plan)).withLines(lines)
                .withLacks(missing)
                .withMaterial(plan.cautions(), plan.tags(),
                        plan.parts().stream().map(part -> purchase(books, part)).toList())
                .withNoted(plan.parts().stream()
                        .map(part -> new Amount.Noted(EntryKind.FED,
                                Map.of("material", part.feed().id(), "grams", Words.fixed(part.amount(), 1))))
                        .toList()));
    }

    /**
     * What a dressing gives of what is due: the year may want more than any dressing holds, and some comes beyond it.
     */
    private static Nutrients useful(FeedPlan plan, Budget budget) {
        return budget.due().minus(budget.due().minus(plan.gives()).atLeastZero());
    }

    /** A gram of nitrogen is worth some of another nutrient: potash alone is no dressing. */
    private static double worth(FeedingBooks books, Nutrients given, FeedPlan plan) {
        double more = books.tables().limits().nitrogenWeight().is() - 1;
        return (given.sum() + more * given.n()) * plan.ground().areaM2();
    }

    /** What is a mulch, too, is bought by the litre like that, so that a list has it once. */
    private static Purchase purchase(FeedingBooks books, Recipe.Part part) {
        Feed feed = part.feed();
        Optional<Mulch> mulch = books.mulches().mulches().stream()
                .filter(each -> each.asFeed().filter(feed.id()::equals).isPresent()).findFirst();
        Figure bag = books.mulches().figure("bag");
        return mulch
                .map(same -> new Purchase(same.id(), same.name(), part.amount() / same.density().is(), "l",
                        Optional.of(new Purchase.Pack(bag.is(), "bag", "bags", bag)), feed.notRead()))
                .orElseGet(() -> new Purchase(feed.id(), feed.name(), part.amount(), "g",
                        feed.pack().map(Purchase.Pack::ofKilograms), feed.notRead()));
    }
}
