package org.oldwood.care;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.oldwood.cuttings.Course;
import org.oldwood.cuttings.Forecast;
import org.oldwood.cuttings.LotBook;
import org.oldwood.cuttings.LotCounts;
import org.oldwood.cuttings.ParentHealth;
import org.oldwood.cuttings.StrikePlan;
import org.oldwood.cuttings.Survival;
import org.oldwood.garden.LotState;
import org.oldwood.garden.PlantState;

/** What the cuttings craft tells the rules of lots and of parents. Built anew for each plan. */
final class CuttingsAdvisor implements Advisor {
    private static final double SURE = 0.9;
    private static final List<Integer> WANTED = List.of(1, 3, 10);
    private static final String LAYERS = "layers-to-take";

    private @Nullable LotBook book;
    private Situation.@Nullable World world;

    @Override
    public List<String> facts() {
        return List.of(
                "roots-date",
                "lift-date",
                "lift-by-date",
                "plant-out-date",
                "expected-plants",
                "parent-fit");
    }

    @Override
    public List<String> amounts() {
        return List.of("cuttings-to-take", LAYERS, "lot-expected", "lift", "plant-out");
    }

    @SuppressWarnings("ReferenceEquality") // one plan has one world; comparing its parts is slow
    private LotBook book(Situation s) {
        LotBook now = book;
        if (now == null || world != s.world()) {
            now = new LotBook(s.world().state(), s.world().crops(), s.world().stages());
            book = now;
            world = s.world();
        }
        return now;
    }

    @Override
    public Fact fact(String name, Optional<String> of, Situation s) {
        if (name.equals("parent-fit")) {
            return parentFit(s);
        }
        Optional<Forecast> forecast = lot(s).flatMap(book(s)::forecast);
        return forecast.map(found -> lotFact(name, found))
                .orElseGet(
                        () ->
                                Fact.unknown(
                                        name,
                                        "no dates are known for cuttings of this crop and method"));
    }

    private static Optional<LotState> lot(Situation s) {
        return s.subject() instanceof Subject.Lot lot ? Optional.of(lot.state()) : Optional.empty();
    }

    private static Fact lotFact(String name, Forecast forecast) {
        return switch (name) {
            case "roots-date" ->
                    day(name, forecast.line().rooted().date(), "rooted by then", forecast);
            case "lift-date" ->
                    day(name, forecast.line().liftFrom().date(), "fit to lift from then", forecast);
            case "lift-by-date" ->
                    day(name, forecast.line().liftBy().date(), "to be lifted by then", forecast);
            case "plant-out-date" ->
                    day(name, forecast.line().plantOut().date(), "planted out then", forecast);
            default ->
                    Fact.number(
                            name,
                            forecast.plants().mean(),
                            one(forecast.plants().mean()) + " plants are expected of the lot",
                            sources(forecast.course()));
        };
    }

    private static Fact day(String name, LocalDate day, String words, Forecast forecast) {
        return Fact.day(name, day, words + ": " + day, sources(forecast.course()));
    }

    private static String[] sources(Course course) {
        return course.method().phases().figures().stream()
                .flatMap(pair -> pair.percent().sources().stream())
                .distinct()
                .toArray(String[]::new);
    }

    private Fact parentFit(Situation s) {
        List<PlantState> fit = fitParents(s);
        boolean any = !fit.isEmpty() || s.subject().plants().isEmpty();
        return Fact.yes(
                "parent-fit",
                any,
                any
                        ? "a bush is fit to take cuttings from"
                        : "no bush here is fit to take cuttings from");
    }

    private List<PlantState> fitParents(Situation s) {
        return s.subject().plants().stream()
                .filter(plant -> book(s).health(plant).map(ParentHealth::fit).orElse(true))
                .toList();
    }

    @Override
    public Optional<Amount> amount(String name, Situation s) {
        return switch (name) {
            case "cuttings-to-take" -> take(s, Optional.empty());
            case LAYERS -> take(s, Optional.of("layer"));
            case "lot-expected" -> lot(s).flatMap(lot -> expected(lot, s));
            case "lift" -> lot(s).flatMap(lot -> standing(lot, s, "to lift"));
            default -> lot(s).flatMap(lot -> standing(lot, s, "to plant out"));
        };
    }

    private Optional<Amount> take(Situation s, Optional<String> method) {
        if (s.subject().crop().isEmpty() || s.subject().plants().isEmpty()) {
            return Optional.empty();
        }
        if (fitParents(s).isEmpty()) {
            return Optional.empty();
        }
        String crop = s.subject().crop().get().id();
        String form = s.subject().plants().get(0).plant().form();
        return book(s).course(crop, form, method, Optional.empty())
                .flatMap(course -> take(course, book(s).survival(crop, course), s));
    }

    private Optional<Amount> take(Course course, Survival survival, Situation s) {
        List<String> each = new ArrayList<>();
        for (int wanted : WANTED) {
            StrikePlan.fewest(wanted, SURE, survival)
                    .ifPresent(number -> each.add(number + " for " + wanted));
        }
        if (each.isEmpty()) {
            return Optional.empty();
        }
        int first = StrikePlan.fewest(1, SURE, survival).orElse(1);
        List<String> lines = new ArrayList<>();
        lines.add(
                "Numbers to take for 1, 3 or 10 new plants, nine times in ten: "
                        + String.join(", ", each)
                        + ".");
        warnings(s).forEach(lines::add);
        return Optional.of(
                Amount.of(
                                first,
                                first == 1 ? "cutting" : "cuttings",
                                "for each plant you want, fewer for several: "
                                        + String.join(", ", each),
                                arithmetic(course),
                                List.of(sources(course)))
                        .withLines(lines));
    }

    private List<String> warnings(Situation s) {
        return s.subject().plants().stream()
                .flatMap(
                        plant ->
                                book(s).health(plant).map(ParentHealth::warnings).stream()
                                        .flatMap(List::stream)
                                        .map(it -> plant.plant().id() + ": " + it.words()))
                .distinct()
                .limit(3)
                .toList();
    }

    private static List<String> arithmetic(Course course) {
        List<String> lines = new ArrayList<>();
        course.method()
                .phases()
                .figures()
                .forEach(
                        pair ->
                                lines.add(
                                        pair.phase().words()
                                                + ": "
                                                + pair.percent().inWords()
                                                + " ("
                                                + pair.percent().seen().words()
                                                + "), worth "
                                                + pair.weight().inWords()));
        return lines;
    }

    private Optional<Amount> expected(LotState lot, Situation s) {
        return book(s).forecast(lot)
                .map(
                        forecast -> {
                            double rooted = forecast.rooted().mean();
                            return Amount.of(
                                            forecast.alive(),
                                            "cuttings",
                                            "of "
                                                    + lot.struck()
                                                    + " struck; about "
                                                    + one(rooted)
                                                    + " should root",
                                            arithmetic(forecast.course()),
                                            List.of(sources(forecast.course())))
                                    .withLines(outlook(forecast));
                        });
    }

    private Optional<Amount> standing(LotState lot, Situation s, String what) {
        LotCounts counts = book(s).counts(lot);
        if (counts.alive() == 0) {
            return Optional.empty();
        }
        return book(s).forecast(lot)
                .map(
                        forecast ->
                                Amount.of(
                                                counts.alive(),
                                                counts.alive() == 1 ? "plant" : "plants",
                                                what
                                                        + (counts.wasCounted()
                                                                ? ", by the last count"
                                                                : "; never counted, so as many as were struck"),
                                                arithmetic(forecast.course()),
                                                List.of(sources(forecast.course())))
                                        .withLines(outlook(forecast)));
    }

    private static List<String> outlook(Forecast forecast) {
        return List.of(
                "Expected in the end: "
                        + one(forecast.plants().mean())
                        + " plants (nine times in ten "
                        + forecast.plants().quantile(1 - SURE)
                        + " or more); first pick in season "
                        + forecast.line().firstPick().label()
                        + ", full crop in "
                        + forecast.line().fullCrop().label()
                        + ", if "
                        + forecast.course().cut().words()
                        + ".");
    }

    private static String one(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
