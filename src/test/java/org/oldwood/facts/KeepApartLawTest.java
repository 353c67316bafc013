package org.oldwood.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.oldwood.plan.Plan;
import org.oldwood.plan.Task;
import org.oldwood.plan.TestGarden;
import org.oldwood.store.Fields;

/** No plan ever breaks a pair that must be kept apart. The pairs are read anew, not from the planner. */
class KeepApartLawTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final List<Pair> PAIRS = pairs();
    private static final Map<String, Set<String>> TAGS = tags();

    private record Pair(String first, String then, double days) {}

    private record Noted(String kind, String material, int daysAgo, String bed) {}

    private record Given(LocalDate day, Set<String> tags, boolean planned, String words) {}

    private static List<Pair> pairs() {
        return TestGarden.DOCUMENTS.fields("keep-apart.json").objects("apart").stream()
                .map(each -> new Pair(each.text("first"), each.text("then"),
                        each.object("days").orElseThrow().number("is", 0, 1000)))
                .toList();
    }

    private static Map<String, Set<String>> tags() {
        Map<String, Set<String>> tags = new HashMap<>();
        for (String file : List.of("feeds", "limes", "mulches")) {
            Fields document = TestGarden.DOCUMENTS.fields("materials/" + file + ".json");
            for (String list : List.of("feeds", "limes", "acidifiers", "mulches")) {
                document.objects(list).forEach(each -> tags.computeIfAbsent(each.text("id"), id -> new HashSet<>())
                        .addAll(each.texts("tags")));
            }
        }
        return tags;
    }

    @Provide
    Arbitrary<List<Noted>> journals() {
        Arbitrary<Noted> one = Combinators
                .combine(
                        Arbitraries.of("fed dried-blood", "fed ammonium-sulphate", "fed poultry-manure", "fed wood-ash",
                                "limed ground-limestone", "limed wood-ash", "acidified sulphur",
                                "mulched farmyard-manure", "mulched straw"),
                        Arbitraries.integers().between(0, 400), Arbitraries.of("ribes", "blue", "canes"))
                .as((what, ago, bed) -> new Noted(what.split(" ")[0], what.split(" ")[1], ago, bed));
        return one.list().ofMaxSize(6);
    }

    @Provide
    Arbitrary<String> kept() {
        return Arbitraries.of("dried-blood", "ammonium-sulphate", "cattle-manure", "poultry-pellets", "farmyard-manure",
                "general-10-10-10");
    }

    @Property(tries = 150)
    void no_plan_breaks_a_pair(@ForAll("journals") List<Noted> journal, @ForAll("kept") String kept,
            @ForAll("ph") double ph) {
        TestGarden garden = new TestGarden(52, ", \"materials\": [\"" + kept + "\", \"sulphate-of-potash\"]");
        for (String bed : List.of("ribes", "blue", "canes")) {
            garden.note("soil-test", "2025-10-01", "'bed': '" + bed + "', 'ph': " + ph);
        }
        journal.forEach(each -> note(garden, each));

        Plan plan = garden.plan(TODAY.toString());

        Map<String, List<Given>> byBed = given(journal, plan);
        byBed.values().forEach(KeepApartLawTest::check);
    }

    @Provide
    Arbitrary<Double> ph() { return Arbitraries.of(4.2, 5.0, 5.6, 6.0, 6.6); }

    private static void note(TestGarden garden, Noted each) {
        String amount = each.kind.equals("mulched") ? "'depthCm': 5" : "'grams': 300";
        garden.note(each.kind, TODAY.minusDays(each.daysAgo).toString(),
                "'bed': '" + each.bed + "', 'material': '" + each.material + "', " + amount);
    }

    private static Map<String, List<Given>> given(List<Noted> journal, Plan plan) {
        Map<String, List<Given>> byBed = new HashMap<>();
        for (Noted each : journal) {
            byBed.computeIfAbsent(each.bed, bed -> new ArrayList<>())
                    .add(new Given(TODAY.minusDays(each.daysAgo), TAGS.get(each.material), false, each.toString()));
        }
        for (Task task : plan.tasks()) {
            Set<String> tags = new HashSet<>(task.rule().tags());
            task.amount().ifPresent(amount -> tags.addAll(amount.tags()));
            if (task.state() == Task.State.OPEN && !tags.isEmpty()) {
                task.subject().bed().ifPresent(bed -> byBed.computeIfAbsent(bed.bed().id(), id -> new ArrayList<>())
                        .add(new Given(task.day(), tags, true, task.id())));
            }
        }
        return byBed;
    }

    private static void check(List<Given> all) {
        for (Given first : all) {
            for (Given then : all) {
                if (first != then && (first.planned || then.planned)) {
                    for (Pair pair : PAIRS) {
                        long days = ChronoUnit.DAYS.between(first.day, then.day);
                        boolean broken = first.tags.contains(pair.first) && then.tags.contains(pair.then) && days >= 0
                                && days < pair.days;
                        assertThat(broken).as(first.words + " then " + then.words + " after " + days).isFalse();
                    }
                }
            }
        }
    }

    @Test
    void limed_yesterday_means_no_ammonium_inside_the_gap_in_either_order() {
        TestGarden garden = new TestGarden(52, ", \"materials\": [\"ammonium-sulphate\"]").note("limed", "2027-03-09",
                "'bed': 'ribes', 'material': 'ground-limestone', 'grams': 3000");
        Plan plan = garden.plan("2027-03-10");

        assertThat(plan.tasks()).noneMatch(
                task -> task.id().startsWith("feed-first@ribes") && task.day().isBefore(LocalDate.of(2027, 6, 7)));
        assertThat(plan.notices()).anyMatch(
                notice -> notice.contains("limed ground-limestone on 2027-03-09") && notice.contains("90 days"));

        TestGarden fed = new TestGarden(52, ", \"materials\": [\"ammonium-sulphate\"]")
                .note("soil-test", "2026-09-01", "'bed': 'ribes', 'ph': 5.5")
                .note("fed", "2027-02-09", "'bed': 'ribes', 'material': 'ammonium-sulphate', 'grams': 100");
        assertThat(fed.plan("2027-02-10").tasks()).noneMatch(
                task -> task.id().equals("lime@ribes@2027") && task.day().isBefore(LocalDate.of(2027, 2, 23)));
    }
}
