package org.oldwood.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.care.BedMulch;
import org.oldwood.care.FeedingBooks;
import org.oldwood.care.Situation;
import org.oldwood.care.StandFeed;
import org.oldwood.care.Subject;
import org.oldwood.care.Task;
import org.oldwood.feeding.FeedPlan;
import org.oldwood.feeding.Words;
import org.oldwood.garden.Bed;
import org.oldwood.garden.BedState;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.Season;
import org.oldwood.report.TaskWords;

/** Tells of each bed: ground, tests, what was given, what is due, water. */
final class BedCards {
    private static final int TESTS = 2;
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

    List<BedCard> of(List<BedState> beds) {
        return beds.stream().map(this::card).toList();
    }

    private BedCard card(BedState state) {
        Optional<Situation> situation =
                ground.subjects().find(state.bed().id(), "bed").map(this::situation);
        return new BedCard(
                state.bed().name(),
                state.bed().id(),
                facts(state.bed()),
                tests(state),
                given(state),
                food(state),
                situation.map(this::mulch).orElse(""),
                due(state),
                BedWater.of(ground, state),
                BedWater.inWords(ground, state));
    }

    private Situation situation(Subject subject) {
        return new Situation(ground.world(), subject, season, ground.state().date());
    }

    private static List<String> facts(Bed bed) {
        List<String> facts = new ArrayList<>();
        facts.add(Words.amount(bed.areaM2()) + " m²");
        facts.add(bed.texture().map(it -> it.replace('-', ' ')).orElse("texture not known"));
        bed.rootableDepthCm().ifPresent(it -> facts.add("roots to " + Words.amount(it) + " cm"));
        if (bed.stonesPercent() > 0) {
            facts.add(Words.amount(bed.stonesPercent()) + " % stones");
        }
        if (bed.shade() > 0) {
            facts.add(Math.round(100 * bed.shade()) + " % shade");
        }
        if (bed.windy()) {
            facts.add("windy");
        }
        bed.roof()
                .ifPresent(
                        roof ->
                                facts.add(
                                        "roof water from " + Words.amount(roof.areaM2()) + " m²"));
        return facts;
    }

    private static List<BedCard.Line> tests(BedState state) {
        List<BedCard.Line> lines = new ArrayList<>();
        for (int i = state.entries().size() - 1; i >= 0 && lines.size() < TESTS; i--) {
            Entry entry = state.entries().get(i);
            if (entry.kind() == EntryKind.SOIL_TEST) {
                lines.add(new BedCard.Line(entry.date().toString(), test(entry)));
            }
        }
        return lines;
    }

    private static String test(Entry entry) {
        List<String> parts = new ArrayList<>();
        entry.number("ph").ifPresent(it -> parts.add("pH " + Words.amount(it)));
        nutrient(entry, "P", "phosphorus", parts);
        nutrient(entry, "K", "potassium", parts);
        nutrient(entry, "Mg", "magnesium", parts);
        if (entry.flag("freeLime")) {
            parts.add("free lime");
        }
        entry.text("by").ifPresent(by -> parts.add("by " + by));
        return String.join(", ", parts);
    }

    private static void nutrient(Entry entry, String symbol, String key, List<String> parts) {
        entry.number(key).ifPresent(it -> parts.add(symbol + " " + Words.amount(it) + " mg/l"));
        entry.count(key + "Index").ifPresent(it -> parts.add(symbol + " index " + it));
    }

    private List<BedCard.Line> given(BedState state) {
        List<Entry> all = new ArrayList<>(state.entries());
        state.plants().forEach(plant -> all.addAll(plant.entries()));
        LocalDate from = season.plus(-1).start();
        return all.stream()
                .filter(entry -> !entry.date().isBefore(from))
                .filter(entry -> !words(entry).isEmpty())
                .sorted(java.util.Comparator.comparing(Entry::date).reversed())
                .map(entry -> new BedCard.Line(entry.date().toString(), words(entry)))
                .toList();
    }

    private String words(Entry entry) {
        String what = entry.text("material").map(this::name).orElse("");
        String where = entry.text("plant").map(id -> " to " + id).orElse("");
        return switch (entry.kind()) {
            case FED, LIMED, ACIDIFIED ->
                    Words.weight(entry.number("grams").orElse(0)) + " of " + what + where;
            case MULCHED ->
                    what + ", " + Words.amount(entry.number("depthCm").orElse(0)) + " cm deep";
            default -> "";
        };
    }

    private String name(String material) {
        return books.materials()
                .feed(material)
                .map(it -> it.name())
                .or(() -> books.materials().lime(material).map(it -> it.name()))
                .or(() -> books.materials().acidifier(material).map(it -> it.name()))
                .or(() -> books.mulches().mulch(material).map(it -> it.name()))
                .orElse(material);
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

    private static BedCard.Food food(Subject stand, StandFeed feed) {
        String crop = stand.crop().map(it -> it.plural()).orElse("");
        return new BedCard.Food(
                crop,
                FeedPlan.inWords(feed.balance().need()),
                FeedPlan.inWords(
                        feed.balance()
                                .need()
                                .minus(feed.balance().due())
                                .plus(feed.balance().surplus())),
                FeedPlan.inWords(feed.balance().due()));
    }

    private String mulch(Situation situation) {
        BedMulch mulch = BedMulch.of(books, situation);
        return mulch.layer()
                .map(
                        layer ->
                                "About "
                                        + Words.fixed(mulch.depthNow(), 1)
                                        + " cm of "
                                        + layer.mulch().name()
                                        + " lies there, laid "
                                        + layer.laid()
                                        + ".")
                .orElse("No mulch was noted here.");
    }

    private List<BedCard.Line> due(BedState state) {
        return tasks.stream()
                .filter(task -> task.state() == Task.State.OPEN)
                .filter(task -> TaskGroup.bed(task).equals(state.bed().id()))
                .filter(task -> FOR_THE_BED.contains(task.rule().craft()))
                .filter(task -> task.amount().isPresent())
                .map(task -> new BedCard.Line(task.day().toString(), TaskWords.headline(task)))
                .toList();
    }
}
