package org.oldwood.facts.cuttings;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.oldwood.craft.cuttings.Course;
import org.oldwood.craft.cuttings.LikelyDay;
import org.oldwood.craft.cuttings.PlantingOut;
import org.oldwood.craft.cuttings.StrikeWindow;
import org.oldwood.craft.cuttings.Timeline;
import org.oldwood.craft.cuttings.parent.ParentHealth;
import org.oldwood.crop.Figure;
import org.oldwood.facts.Advisor;
import org.oldwood.facts.Fact;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.garden.LotState;
import org.oldwood.garden.Plant;
import org.oldwood.garden.PlantState;

/** What the cuttings craft tells the rules of lots, of parents and of plants that came from a lot. */
public final class CuttingsAdvisor extends Advisor {
    public CuttingsAdvisor() {
        lot("roots-date", Timeline::rooted, "the day they should have rooted");
        lot("moist-from-date", Timeline::moistFrom, "the day they come into leaf");
        lot("moist-to-date", Timeline::moistTo, "the day they have rooted or drop their leaves");
        lot("lift-date", Timeline::liftFrom, "the day they are fit to lift");
        lot("lift-by-date", Timeline::liftBy, "the last good day to lift them");
        knows("parent-fit", this::parentFit);
        knows("strike-from-date", (of, s) -> strike(of, s, StrikeWindow::opens));
        knows("strike-by-date", (of, s) -> strike(of, s, StrikeWindow::closes));
        knows("planting-cut", this::plantingCut);
        knows("flowers-off", this::flowersOff);
        measures("cuttings-to-take", s -> amounts(s).take(s, Optional.empty()));
        measures("layers-to-take", s -> amounts(s).take(s, Optional.of("layer")));
        measures("lot-expected", s -> amounts(s).expected(s));
        measures("lot-water", s -> amounts(s).water(s));
        measures("lift", s -> amounts(s).standing(s));
        measures("plant-out", s -> amounts(s).standing(s));
    }

    private static LotBook book(Situation s) {
        return s.world().once(LotBook.class, of -> new LotBook(of.state(), of.crops(), of.stages()));
    }

    private CuttingsAmounts amounts(Situation s) { return new CuttingsAmounts(book(s), this); }

    private void lot(String name, Function<Timeline, LikelyDay> end, String words) {
        knows(name,
                s -> Optional.of(s.subject()).filter(Subject.Lot.class::isInstance).map(Subject.Lot.class::cast)
                        .map(Subject.Lot::state).flatMap(book(s)::forecast)
                        .map(found -> day(end.apply(found.line()), words).from(sources(found.course())))
                        .orElseGet(() -> Fact.unknown("no dates are known for cuttings of this crop and method")));
    }

    private static Fact day(LikelyDay day, String words) { return Fact.day(day.date(), words + ": " + day.date()); }

    static List<String> sources(Course course) {
        return course.method().phases().values().stream().flatMap(pair -> pair.rate().sources().stream()).distinct()
                .toList();
    }

    private Fact strike(Optional<String> method, Situation s, Function<StrikeWindow, LikelyDay> end) {
        return s.subject().plants().stream().findFirst().map(PlantState::plant).flatMap(
                plant -> book(s).strikeWindow(plant.crop(), plant.form(), method.orElse("hardwood"), s.season()))
                .map(window -> day(end.apply(window), end.apply(window).words()).from(window.sources()))
                .orElseGet(() -> Fact.unknown("no time is known for cuttings of this crop and method"));
    }

    private Fact parentFit(Situation s) {
        boolean any = s.subject().plants().isEmpty() || !fitParents(s).isEmpty();
        return Fact.yes(any, any ? "a bush is fit to take cuttings from" : whyNone(s));
    }

    private String whyNone(Situation s) {
        String first = warnings(s).stream().findFirst()
                .map(words -> words.endsWith(".") ? words.substring(0, words.length() - 1) : words)
                .orElse("buy certified stock");
        return "no bush here is fit to take cuttings from; " + first;
    }

    List<PlantState> fitParents(Situation s) {
        return s.subject().plants().stream().filter(plant -> book(s).health(plant).map(ParentHealth::fit).orElse(true))
                .toList();
    }

    List<String> warnings(Situation s) {
        return s.subject().plants().stream().flatMap(plant -> book(s).health(plant).map(ParentHealth::warnings)
                .orElse(List.of()).stream().map(it -> plant.plant().id() + ": " + it.words())).distinct().limit(3)
                .toList();
    }

    /** The course on which a plant was planted: that of its lot, or the default of its form. */
    private Optional<Course> course(Situation s) {
        if (s.subject().plants().isEmpty()) { return Optional.empty(); }
        Plant plant = s.subject().plants().get(0).plant();
        Optional<LotState> lot = plant.lot().map(id -> s.world().state().lots().get(id));
        return lot.isPresent() ? lot.flatMap(book(s)::course)
                : book(s).course(plant.crop(), plant.form(), Optional.empty(), Optional.empty());
    }

    private Fact plantingCut(Situation s) {
        return course(s).map(course -> Fact.text(course.cut().id(), "the plant is to be " + course.cut().words())
                .from(course.cut().sources())).orElseGet(() -> Fact.unknown("no cut at planting is known"));
    }

    private Fact flowersOff(Situation s) {
        return course(s)
                .map(course -> flowersOff(course.cut(), s.subject().plants().stream()
                        .mapToInt(plant -> plant.plant().seasonsOld(s.season())).max().orElse(0)))
                .orElseGet(() -> Fact.unknown("nothing is known of the first flowers"));
    }

    private static Fact flowersOff(PlantingOut.Cut cut, int age) {
        Optional<Figure> seasons = cut.flowersOff();
        boolean off = age >= 1 && age <= seasons.map(Figure::is).orElse(0.0);
        return Fact
                .yes(off,
                        "in season %s after planting; flowers come off in %s for plants %s".formatted(age,
                                seasons.map(it -> "the first " + it.inWords().replaceFirst("^1 seasons", "season"))
                                        .orElse("none"),
                                cut.words()))
                .from(seasons.map(Figure::sources).orElse(List.of()));
    }
}
