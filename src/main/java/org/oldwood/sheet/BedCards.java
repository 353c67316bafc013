package org.oldwood.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.craft.feeding.Budget;
import org.oldwood.craft.feeding.Nutrient;
import org.oldwood.craft.mulching.MulchLayer;
import org.oldwood.crop.Crop;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.facts.feeding.Applications;
import org.oldwood.facts.feeding.BedLedger;
import org.oldwood.facts.feeding.BedMulch;
import org.oldwood.facts.feeding.FeedingBooks;
import org.oldwood.facts.feeding.StandFeed;
import org.oldwood.garden.Bed;
import org.oldwood.garden.BedState;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.plan.Task;
import org.oldwood.report.LedgerWords;
import org.oldwood.report.TaskWords;
import org.oldwood.season.Season;
import org.oldwood.words.Dates;
import org.oldwood.words.Words;

/** Tells of each bed: ground, tests, what was given, what is due, water. */
final class BedCards {
    private static final int TESTS = 2;
    private static final double HARDLY_CM = 0.5;
    private static final List<String> FOR_THE_BED = List.of("feeding", "soil", "mulching", "water");

    private final Ground ground;
    private final List<Task> tasks;
    private final FeedingBooks books;
    private final Season season;

    BedCards(Ground ground, List<Task> tasks) {
        this.ground = ground;
        this.tasks = tasks;
        this.books = new FeedingBooks(ground.world().documents());
        this.season = ground.state().season();
    }

    List<BedCard> of(List<BedState> beds) { return beds.stream().map(this::card).toList(); }

    private BedCard card(BedState state) {
        Optional<Situation> situation = ground.subjects().find(state.bed().id(), "bed").map(this::situation);
        return new BedCard(state.bed().name(), state.bed().id(), facts(state.bed()), tests(state), given(state),
                food(state), situation.map(this::mulch).orElse(""), due(state), WaterChart.of(ground, state),
                WaterChart.inWords(ground, state));
    }

    private Situation situation(Subject subject) {
        return new Situation(ground.world(), subject, season, ground.state().date());
    }

    private static List<String> facts(Bed bed) {
        List<String> facts = new ArrayList<>();
        facts.add(Words.amount(bed.areaM2()) + " m²");
        facts.add(bed.texture().map(it -> it.replace('-', ' ')).orElse("texture not known"));
        bed.rootableDepthCm().ifPresent(it -> facts.add("roots to " + Words.amount(it) + " cm"));
        if (bed.stonesPercent() > 0) { facts.add(Words.amount(bed.stonesPercent()) + " % stones"); }
        if (bed.shade() > 0) { facts.add(Math.round(100 * bed.shade()) + " % shade"); }
        if (bed.windy()) { facts.add("windy"); }
        bed.roof().ifPresent(roof -> facts.add("roof water from " + Words.amount(roof.areaM2()) + " m²"));
        return facts;
    }

    private static List<BedCard.Line> tests(BedState state) {
        List<BedCard.Line> lines = new ArrayList<>();
        for (int i = state.entries().size() - 1; i >= 0 && lines.size() < TESTS; i--) {
            Entry entry = state.entries().get(i);
            if (entry.kind() == EntryKind.SOIL_TEST) { lines.add(BedCard.Line.of(entry.date(), test(entry))); }
        }
        return lines;
    }

    private static String test(Entry entry) {
        List<String> parts = new ArrayList<>();
        entry.number("ph").ifPresent(it -> parts.add("pH " + Words.amount(it)));
        nutrient(entry, "P", "phosphorus", parts);
        nutrient(entry, "K", "potassium", parts);
        nutrient(entry, "Mg", "magnesium", parts);
        if (entry.flag("freeLime")) { parts.add("free lime"); }
        entry.text("by").ifPresent(by -> parts.add("by " + by));
        return String.join(", ", parts);
    }

    private static void nutrient(Entry entry, String symbol, String key, List<String> parts) {
        entry.number(key).ifPresent(it -> parts.add(symbol + " " + Words.amount(it) + " mg/l"));
        entry.count(key + "Index").ifPresent(it -> parts.add(symbol + " index " + it));
    }

    /** This season's and the last one's, the newest first. */
    private List<BedCard.Line> given(BedState state) {
        BedLedger ledger = BedLedger.of(books, ground.state(), ground.world().crops(), state);
        List<BedCard.Line> lines = new ArrayList<>();
        for (Applications.Given line : ledger.lines()) {
            if (line.season().compareTo(season.plus(-1)) >= 0) {
                String brings = LedgerWords.brings(line);
                lines.add(BedCard.Line.of(line.date(),
                        LedgerWords.what(line) + (brings.isEmpty() ? "" : ": " + brings) + marks(line)));
            }
        }
        Collections.reverse(lines);
        return lines;
    }

    private static String marks(Applications.Given line) {
        return line.notRead().isEmpty() ? "" : " (" + String.join("; ", line.notRead()) + ")";
    }

    private List<BedCard.Food> food(BedState state) {
        List<BedCard.Food> lines = new ArrayList<>();
        for (Subject stand : ground.subjects().ofKind("stand")) {
            if (stand.bed().map(it -> it.bed().id().equals(state.bed().id())).orElse(false)) {
                StandFeed.of(books, situation(stand)).ifPresent(it -> lines.add(food(stand, it)));
            }
        }
        return lines;
    }

    private BedCard.Food food(Subject stand, StandFeed feed) {
        Budget budget = feed.budget(books, 0);
        List<BedCard.Nutrient> nutrients = new ArrayList<>();
        for (Nutrient each : Nutrient.values()) {
            nutrients.add(new BedCard.Nutrient(Words.fixed(budget.due().of(each), 1),
                    Words.fixed(budget.need().gPerM2().of(each), 1)));
        }
        return new BedCard.Food(stand.crop().map(Crop::plural).orElse("") + ", " + form(stand), nutrients);
    }

    private static String form(Subject stand) {
        return stand instanceof Subject.Stand it ? it.form().replace('-', ' ') : "";
    }

    private String mulch(Situation situation) {
        BedMulch mulch = BedMulch.of(books, situation);
        return mulch.layer().map(layer -> mulch(layer, mulch.depthNow())).orElse("None was noted.");
    }

    private static String mulch(MulchLayer layer, double now) {
        String laid = "%s, laid %s cm deep on %s".formatted(layer.mulch().name(), Words.fixed(layer.laidCm(), 1),
                Dates.shortDay(layer.laid()));
        return now < HARDLY_CM ? "Hardly any is left of the " + laid + "."
                : "About " + Words.fixed(now, 1) + " cm is left of the " + laid + ".";
    }

    /** What the plan gives to the bed; the same more than once is told with its first day. */
    private List<BedCard.Line> due(BedState state) {
        Map<String, List<LocalDate>> days = new LinkedHashMap<>();
        for (Task task : tasks) {
            if (task.state() == Task.State.OPEN && TaskGroup.bed(task).equals(state.bed().id())
                    && FOR_THE_BED.contains(task.rule().craft()) && task.amount().isPresent()) {
                days.computeIfAbsent(TaskWords.headline(task), any -> new ArrayList<>()).add(task.day());
            }
        }
        List<BedCard.Line> lines = new ArrayList<>();
        days.forEach((words, all) -> lines.add(BedCard.Line.of(all.get(0), words + again(all))));
        return lines;
    }

    private static String again(List<LocalDate> days) {
        return days.size() == 1 ? "" : "; " + days.size() + " times until " + Days.day(days.get(days.size() - 1));
    }
}
