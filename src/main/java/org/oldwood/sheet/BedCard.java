package org.oldwood.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.oldwood.craft.feeding.Budget;
import org.oldwood.craft.feeding.Nutrient;
import org.oldwood.craft.mulching.MulchLayer;
import org.oldwood.craft.water.Dose;
import org.oldwood.crop.Crop;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.facts.feeding.BedLedger;
import org.oldwood.facts.feeding.BedMulch;
import org.oldwood.facts.feeding.FeedingBooks;
import org.oldwood.facts.feeding.StandFeed;
import org.oldwood.facts.water.BedAccount;
import org.oldwood.facts.water.WaterDoses;
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

/** One bed: its ground, its tests, what was given, what is due, the water it holds. */
final class BedCard {
    private static final int TESTS = 2;
    private static final double HARDLY_CM = 0.5;
    private static final double WHOLE = 100;
    private static final int STEP = 3;
    private static final List<String> FOR_THE_BED = List.of("feeding", "soil", "mulching", "water");

    private final Ground ground;
    private final List<Task> tasks;
    private final FeedingBooks books;
    private final Season season;
    private final BedState state;

    private BedCard(Ground ground, List<Task> tasks, FeedingBooks books, BedState state) {
        this.ground = ground;
        this.tasks = tasks;
        this.books = books;
        this.season = ground.state().season();
        this.state = state;
    }

    static List<BedCard> of(Ground ground, List<Task> tasks, List<BedState> beds) {
        FeedingBooks books = new FeedingBooks(ground.world().documents());
        return beds.stream().map(bed -> new BedCard(ground, tasks, books, bed)).toList();
    }

    String name() { return state.bed().name(); }

    String id() { return state.bed().id(); }

    private Situation situation(Subject subject) {
        return new Situation(ground.world(), subject, season, ground.state().date());
    }

    /** Area, soil and what else is declared. */
    List<String> facts() {
        Bed bed = state.bed();
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

    /** The last soil tests, the newest first. */
    List<Line> tests() {
        List<Line> lines = new ArrayList<>();
        for (int i = state.entries().size() - 1; i >= 0 && lines.size() < TESTS; i--) {
            Entry entry = state.entries().get(i);
            if (entry.kind() == EntryKind.SOIL_TEST) { lines.add(Line.of(entry.date(), test(entry))); }
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

    /** What was given this season and last, the newest first. */
    List<Line> given() {
        BedLedger ledger = BedLedger.of(books, ground.state(), ground.world().crops(), state);
        List<Line> lines = new ArrayList<>();
        LedgerWords.alike(ledger.lines().stream().filter(line -> line.season().compareTo(season.plus(-1)) >= 0))
                .forEach(alike -> {
                    List<String> marks = alike.get(0).notRead();
                    lines.add(Line.of(alike.get(0).date(), LedgerWords.inWords(alike)
                            + (marks.isEmpty() ? "" : " (" + String.join("; ", marks) + ")")));
                });
        Collections.reverse(lines);
        return lines;
    }

    /** What each stand needs and what of it is due. */
    List<Food> food() {
        return ground.subjects().ofKind("stand").stream()
                .filter(stand -> stand.bed().filter(it -> it.bed().id().equals(id())).isPresent())
                .flatMap(
                        stand -> StandFeed.of(books, situation(stand))
                                .map(it -> new Food(stand.crop().map(Crop::plural).orElse("") + ", "
                                        + (stand instanceof Subject.Stand of ? of.form().replace('-', ' ') : ""),
                                        it.budget(books, 0)))
                                .stream())
                .toList();
    }

    /** What mulch lies there; may be empty. */
    String mulch() {
        return ground.subjects().find(id(), "bed").map(bed -> BedMulch.of(books, situation(bed)))
                .map(mulch -> mulch.layer().map(layer -> mulch(layer, mulch.depthNow())).orElse("None was noted."))
                .orElse("");
    }

    private static String mulch(MulchLayer layer, double now) {
        String laid = "%s, laid %s cm deep on %s".formatted(layer.mulch().name(), Words.fixed(layer.laidCm(), 1),
                Dates.shortDay(layer.laid()));
        return now < HARDLY_CM ? "Hardly any is left of the " + laid + "."
                : "About " + Words.fixed(now, 1) + " cm is left of the " + laid + ".";
    }

    /** What the plan gives to the bed; the same more than once is told with its first day. */
    List<Line> due() {
        return tasks.stream()
                .filter(task -> task.state() == Task.State.OPEN && TaskGroup.bed(task).equals(id())
                        && FOR_THE_BED.contains(task.rule().craft()) && task.amount().isPresent())
                .collect(Collectors.groupingBy(TaskWords::headline, LinkedHashMap::new,
                        Collectors.mapping(Task::day, Collectors.toList())))
                .entrySet().stream()
                .map(each -> Line.of(each.getValue().get(0), each.getKey() + again(each.getValue()))).toList();
    }

    private static String again(List<LocalDate> days) {
        return days.size() == 1 ? "" : "; " + days.size() + " times until " + Shown.day(days.get(days.size() - 1));
    }

    /** The water it holds; absent where that cannot be said. */
    Optional<Water> water() {
        return ground.water().account(state).map(this::water);
    }

    private Water water(BedAccount account) {
        LocalDate today = ground.state().date();
        Axis axis = Axis.of(season);
        StringBuilder line = new StringBuilder();
        for (LocalDate day = season.start(); axis.holds(day); day = day.plusDays(STEP)) {
            double share = account.days().heldShare(account.index(day));
            line.append(line.isEmpty() ? "M" : "L").append(Shown.plain(axis.middle(day))).append(' ')
                    .append(Shown.plain(WHOLE * (1 - share)));
        }
        double now = account.days().heldShare(account.index(today));
        return new Water(line.toString(), Shown.plain(axis.middle(today)), Math.round(WHOLE * now),
                Shown.day(season.start()), Shown.day(season.end()));
    }

    /** What it holds and when it will want water; nothing where that cannot be said. */
    String waterWords() {
        return state.plants().isEmpty() ? "No plant stands here."
                : ground.water().account(state).map(each -> held(each) + inTubs(each)).orElse("");
    }

    private String inTubs(BedAccount account) {
        return WaterDoses.aDayInTubs(account, ground.water().data().figures(), ground.state().date()).map(" "::concat)
                .orElse("");
    }

    private String held(BedAccount account) {
        LocalDate today = ground.state().date();
        int index = account.index(today);
        double total = account.soil().water().totalAvailableMm();
        String held = "About %s mm of %s mm that the roots can draw. "
                .formatted(Math.round(total - account.days().depletion(index)), Math.round(total));
        if (account.days().isShort(index)) { return held + "Short now: " + dose(account, account.refill(today)); }
        OptionalInt likely = account.outlook(ground.state().season().plus(1).end()).likely();
        return likely.isPresent()
                ? "%sIn mean weather it wants water about %s: %s".formatted(held,
                        Shown.day(today.plusDays(likely.getAsInt() + 1L)), dose(account, account.refillWhenShort()))
                : held + "In mean weather it does not run short before the next season is over.";
    }

    private static String dose(BedAccount account, Dose dose) {
        return "%s l in all, %s l per %s.".formatted(Math.round(dose.litres()), Words.one(dose.litresEach()),
                account.soil().each());
    }

    /**
     * A day and what was or is to be.
     *
     * @param day year-month-day
     */
    record Line(String day, String dayWords, String words) {
        static Line of(LocalDate day, String words) { return new Line(day.toString(), Dates.shortDay(day), words); }
    }

    /** The food of one stand, g/m². */
    record Food(String stand, Budget budget) {
        String due(Nutrient nutrient) { return Words.fixed(budget.due().of(nutrient), 1); }

        String need(Nutrient nutrient) { return Words.fixed(budget.need().gPerM2().of(nutrient), 1); }
    }

    /**
     * The water that the roots can reach, over the season, in mean weather from today on.
     *
     * @param line its outline, 0 to 100 across and down
     * @param today where today lies
     * @param share held today, per cent
     * @param from the first day
     * @param to the last day
     */
    record Water(String line, String today, long share, String from, String to) {}
}
