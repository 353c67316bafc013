package org.oldwood.craft.feeding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.oldwood.words.Words;

/**
 * How much of a feed a year's need allows, and how to say what therefore stays undone: a limit of the material, the
 * share of manures, the nitrogen of organic materials in a year, and a multiple of the need of what comes with the
 * nitrogen.
 *
 * @param given so much of each material was given in the season already, g/m²
 */
record FeedLimits(FeedingTables tables, Need need, Map<String, Double> given) {
    /** A feed is no source of a nutrient that is less than this share of what it brings. */
    private static final double WORTH_NAMING = 0.1;

    private record Limit(double most, String why) {}

    /** What the year still allows, g/m². */
    double left(Feed feed) {
        return Math.max(0, limit(feed).most - given.getOrDefault(feed.id(), 0.0));
    }

    private Limit limit(Feed feed) {
        FeedingTables.Limits limits = tables.limits();
        List<Limit> all = new ArrayList<>();
        feed.yearlyMost().ifPresent(most -> all.add(new Limit(most.is(), "more of it in a year harms")));
        double n = feed.gives(1).n();
        if (feed.bulky()) {
            all.add(new Limit(need.gPerM2().n() * limits.organicShareMost().is() / n,
                    "manures are to bring only a part of the nitrogen, for what they give is uncertain"));
        } else {
            all.add(new Limit(tables.doubts().most(), "that would be more of it than anybody gives"));
        }
        if (feed.organic()) {
            all.add(new Limit(limits.organicNMost().is() / feed.holds(1).n(),
                    "organic materials may hold at most %s of nitrogen in a year"
                            .formatted(limits.organicNMost().inWords())));
        }
        for (Nutrient nutrient : need.known()) {
            if (nutrient != Nutrient.N) {
                double base = Math.max(need.gPerM2().of(nutrient), limits.smallest().of(nutrient));
                all.add(new Limit(base * limits.overdoneMost().is() / feed.gives(1).of(nutrient),
                        "it would bring more than %s times%s the %s that is needed".formatted(
                                Words.amount(limits.overdoneMost().is()), limits.overdoneMost().seen().beside(),
                                nutrient.words())));
            }
        }
        return all.stream().min(Comparator.comparingDouble(Limit::most)).orElseThrow();
    }

    /** What is worth weighing out; less than the smallest dressing waits for the next season. */
    Nutrients worthGiving(Nutrients due) {
        return Nutrients.each(nutrient -> worthGiving(nutrient, due) ? due.of(nutrient) : 0);
    }

    private boolean worthGiving(Nutrient nutrient, Nutrients due) {
        return due.of(nutrient) >= tables.limits().smallest().of(nutrient);
    }

    /** What stays undone of what is worth giving, with the true reason and the way out. */
    List<String> missing(Budget year, Recipe recipe, double mostAtOnce) {
        Nutrients undone = year.undone();
        boolean tooLate = recipe.gives().n() - year.dressed().n() >= tables.limits().smallest().n();
        List<String> lines = new ArrayList<>();
        List<String> amounts = new ArrayList<>();
        List<String> names = new ArrayList<>();
        boolean trace = false;
        for (Nutrient nutrient : Nutrient.values()) {
            if (!worthGiving(nutrient, undone)) { continue; }
            String amount = inWords(nutrient, undone);
            if (nutrient == Nutrient.N && tooLate) {
                lines.add(
                        "%s are not given: a dressing holds at most %s g/m² of nitrogen here; another would come too late."
                                .formatted(amount, Words.amount(mostAtOnce)));
            } else if (brought(nutrient, year.choice())) {
                lines.add("%s are not given: %s. Beside it keep a feed that brings %s alone.".formatted(amount,
                        why(nutrient, recipe, year.choice()), nutrient.words()));
            } else {
                amounts.add(amount);
                names.add(nutrient.words());
                trace |= year.choice().allowed().stream().anyMatch(feed -> feed.gives(1).of(nutrient) > 0);
            }
        }
        if (!amounts.isEmpty()) {
            lines.add("%s are not given: no material at hand brings %s%s.".formatted(Words.list(amounts),
                    trace ? "more than a trace of " : "", Words.list(names)));
        }
        return List.copyOf(lines);
    }

    private String why(Nutrient nutrient, Recipe recipe, Choice choice) {
        return choice.allowed().stream().filter(feed -> feed.gives(1).of(nutrient) > 0)
                .filter(feed -> recipe.amount(feed) >= left(feed) * 0.999).findFirst()
                .map(feed -> "more of %s is not advised, since %s".formatted(feed.name(), limit(feed).why))
                .orElse(nutrient == Nutrient.N ? "these materials bring too much of others with it"
                        : "more of these materials would bring too much of others");
    }

    /** What is too little to weigh out, and what comes beyond the need. */
    List<String> notes(Budget year) {
        Nutrients undone = year.undone();
        Nutrients beyond = year.comesWithIt();
        List<String> notes = new ArrayList<>();
        List<String> little = new ArrayList<>();
        List<String> more = new ArrayList<>();
        for (Nutrient nutrient : Nutrient.values()) {
            double smallest = tables.limits().smallest().of(nutrient);
            if (undone.of(nutrient) >= smallest / 2 && undone.of(nutrient) < smallest
                    && brought(nutrient, year.choice())) {
                little.add(inWords(nutrient, undone));
            }
            if (beyond.of(nutrient) >= smallest) { more.add(inWords(nutrient, beyond)); }
        }
        if (!little.isEmpty()) {
            notes.add(
                    "%s are too little to weigh out; they may wait for the next season.".formatted(Words.list(little)));
        }
        if (!more.isEmpty()) { notes.add("%s come with it beyond the need.".formatted(Words.list(more))); }
        return notes;
    }

    private static String inWords(Nutrient nutrient, Nutrients of) {
        return "%s g/m² %s".formatted(Words.amount(of.of(nutrient)), nutrient.symbol());
    }

    private static boolean brought(Nutrient nutrient, Choice choice) {
        return choice.allowed().stream().map(feed -> feed.gives(1))
                .anyMatch(gives -> gives.of(nutrient) > gives.sum() * WORTH_NAMING);
    }
}
