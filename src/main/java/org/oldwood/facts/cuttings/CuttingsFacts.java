package org.oldwood.facts.cuttings;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.oldwood.craft.cuttings.Course;
import org.oldwood.craft.cuttings.Forecast;
import org.oldwood.craft.cuttings.Method;
import org.oldwood.craft.cuttings.PlantingOut;
import org.oldwood.craft.cuttings.StrikeWindow;
import org.oldwood.craft.cuttings.Timeline;
import org.oldwood.craft.cuttings.parent.ParentHealth;
import org.oldwood.crop.Figure;
import org.oldwood.facts.Fact;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.garden.LotState;
import org.oldwood.garden.Plant;
import org.oldwood.garden.PlantState;
import org.oldwood.words.Words;

/** What the cuttings craft knows of a lot, of parents and of plants that came from a lot. */
final class CuttingsFacts {
    static final List<String> NAMES = List.of(
            "roots-date",
            "moist-from-date",
            "moist-to-date",
            "lift-date",
            "lift-by-date",
            "plant-out-date",
            "expected-plants",
            "set-in-place",
            "parent-fit",
            "strike-from-date",
            "strike-by-date",
            "planting-cut",
            "flowers-off");

    private final LotBook book;

    /** Whether flowers come off, by course and age: the same for all plants of a planting. */
    private final IdentityHashMap<Course, Map<Integer, Fact>> flowers = new IdentityHashMap<>();

    CuttingsFacts(LotBook book) {
        this.book = book;
    }

    Fact of(String name, Optional<String> of, Situation s) {
        return switch (name) {
            case "parent-fit" -> parentFit(s);
            case "strike-from-date", "strike-by-date" -> strike(name, of, s);
            case "planting-cut" -> plantingCut(s);
            case "flowers-off" -> flowersOff(s);
            default -> lot(name, s);
        };
    }

    private Fact lot(String name, Situation s) {
        Optional<LotState> lot =
                s.subject() instanceof Subject.Lot subject ? Optional.of(subject.state()) : Optional.empty();
        return lot.flatMap(book::forecast)
                .map(found -> lotFact(name, found))
                .orElseGet(() -> Fact.unknown(name, "no dates are known for cuttings of this crop and method"));
    }

    private static Fact lotFact(String name, Forecast forecast) {
        Timeline line = forecast.line();
        return switch (name) {
            case "roots-date" -> day(name, line.rooted().date(), "the day they should have rooted", forecast);
            case "moist-from-date" -> day(name, line.moistFrom().date(), "the day they come into leaf", forecast);
            case "moist-to-date" ->
                day(name, line.moistTo().date(), "the day they have rooted or drop their leaves", forecast);
            case "lift-date" -> day(name, line.liftFrom().date(), "the day they are fit to lift", forecast);
            case "lift-by-date" -> day(name, line.liftBy().date(), "the last good day to lift them", forecast);
            case "plant-out-date" -> day(name, line.plantOut().date(), "the day they are planted out", forecast);
            case "set-in-place" -> {
                boolean inPlace = forecast.course().method().inPlace();
                yield Fact.yes(name, inPlace, inPlace ? "set at once where it stays" : "lifted and planted out later");
            }
            default ->
                Fact.number(
                        name,
                        forecast.plants().mean(),
                        Words.one(forecast.plants().mean()) + " plants are expected of these cuttings",
                        sources(forecast.course()));
        };
    }

    private static Fact day(String name, LocalDate day, String words, Forecast forecast) {
        return Fact.day(name, day, words + ": " + day, sources(forecast.course()));
    }

    static String[] sources(Course course) {
        Set<String> sources = new LinkedHashSet<>();
        for (Method.PhaseFigures pair : course.method().phases().values()) {
            sources.addAll(pair.rate().sources());
        }
        return sources.toArray(String[]::new);
    }

    private Fact strike(String name, Optional<String> method, Situation s) {
        Optional<StrikeWindow> window = s.subject().plants().stream()
                .findFirst()
                .map(PlantState::plant)
                .flatMap(plant -> book.strikeWindow(plant.crop(), plant.form(), method.orElse("hardwood"), s.season()));
        if (window.isEmpty()) {
            return Fact.unknown(name, "no time is known for cuttings of this crop and method");
        }
        boolean opens = name.equals("strike-from-date");
        LocalDate day = (opens ? window.get().opens() : window.get().closes()).date();
        String words = (opens ? window.get().opens() : window.get().closes()).words();
        return Fact.day(name, day, words + ": " + day, window.get().sources().toArray(String[]::new));
    }

    private Fact parentFit(Situation s) {
        boolean any = s.subject().plants().isEmpty() || !fitParents(s).isEmpty();
        return Fact.yes("parent-fit", any, any ? "a bush is fit to take cuttings from" : whyNone(s));
    }

    private String whyNone(Situation s) {
        String first = warnings(s).stream()
                .findFirst()
                .map(words -> words.endsWith(".") ? words.substring(0, words.length() - 1) : words)
                .orElse("buy certified stock");
        return "no bush here is fit to take cuttings from; " + first;
    }

    List<PlantState> fitParents(Situation s) {
        return s.subject().plants().stream().filter(this::isFit).toList();
    }

    private boolean isFit(PlantState plant) {
        return book.health(plant).map(ParentHealth::fit).orElse(true);
    }

    List<String> warnings(Situation s) {
        return s.subject().plants().stream()
                .flatMap(plant -> book.health(plant).map(ParentHealth::warnings).orElse(List.of()).stream()
                        .map(it -> plant.plant().id() + ": " + it.words()))
                .distinct()
                .limit(3)
                .toList();
    }

    /** The course on which a plant was planted: that of its lot, or the default of its form. */
    private Optional<Course> course(Situation s) {
        if (s.subject().plants().isEmpty()) {
            return Optional.empty();
        }
        Plant plant = s.subject().plants().get(0).plant();
        Optional<LotState> lot = plant.lot().map(id -> s.world().state().lots().get(id));
        return lot.isPresent()
                ? lot.flatMap(book::course)
                : book.course(plant.crop(), plant.form(), Optional.empty(), Optional.empty());
    }

    private Fact plantingCut(Situation s) {
        return course(s)
                .map(course -> Fact.text(
                        "planting-cut",
                        course.cut().id(),
                        "the plant is to be " + course.cut().words(),
                        course.cut().sources().toArray(String[]::new)))
                .orElseGet(() -> Fact.unknown("planting-cut", "no cut at planting is known"));
    }

    private Fact flowersOff(Situation s) {
        Optional<Course> course = course(s);
        if (course.isEmpty()) {
            return Fact.unknown("flowers-off", "nothing is known of the first flowers");
        }
        int age = s.subject().plants().get(0).plant().seasonsOld(s.season());
        return flowers.computeIfAbsent(course.get(), any -> new HashMap<>())
                .computeIfAbsent(age, seasons -> flowersOff(course.get().cut(), seasons));
    }

    private static Fact flowersOff(PlantingOut.Cut cut, int age) {
        Optional<Figure> seasons = cut.flowersOff();
        boolean off = age >= 1 && age <= seasons.map(Figure::is).orElse(0.0);
        return Fact.yes(
                "flowers-off",
                off,
                "in season %s after planting; flowers come off in %s for plants %s"
                        .formatted(
                                age,
                                seasons.map(it -> "the first " + it.inWords()).orElse("none"),
                                cut.words()),
                seasons.map(Figure::sources).orElse(List.of()).toArray(String[]::new));
    }
}
