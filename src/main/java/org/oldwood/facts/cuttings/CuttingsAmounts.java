package org.oldwood.facts.cuttings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.oldwood.craft.cuttings.Course;
import org.oldwood.craft.cuttings.Forecast;
import org.oldwood.craft.cuttings.LotCounts;
import org.oldwood.craft.cuttings.MeasureWords;
import org.oldwood.craft.cuttings.Method;
import org.oldwood.craft.cuttings.NurseryBed;
import org.oldwood.craft.cuttings.parent.ParentHealth;
import org.oldwood.craft.cuttings.survival.Phase;
import org.oldwood.craft.cuttings.survival.Survival;
import org.oldwood.craft.water.CropWater;
import org.oldwood.craft.water.RootZone;
import org.oldwood.craft.water.WaterFigures;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Figure;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.facts.pruning.PruningCases;
import org.oldwood.garden.LotState;
import org.oldwood.garden.Plant;
import org.oldwood.season.Season;
import org.oldwood.words.Dates;
import org.oldwood.words.Words;

/** How many cuttings to take, to expect, to lift; and how much water a lot needs. */
record CuttingsAmounts(LotBook book, CuttingsAdvisor facts) {
    private static final double SURE = 0.9;
    private static final List<Integer> WANTED = List.of(1, 3, 10);

    Optional<Amount> expected(Situation s) { return lot(s, this::expected); }

    Optional<Amount> water(Situation s) { return lot(s, (lot, forecast) -> water(s, forecast)); }

    Optional<Amount> standing(Situation s) { return lot(s, this::standing); }

    /** Nothing is to be done for a lot of which none is alive. */
    private Optional<Amount> lot(Situation s, BiFunction<LotState, Forecast, Amount> amount) {
        if (!(s.subject() instanceof Subject.Lot lot) || book.counts(lot.state()).alive() == 0) {
            return Optional.empty();
        }
        return book.forecast(lot.state()).map(forecast -> amount.apply(lot.state(), forecast));
    }

    Optional<Amount> take(Situation s, Optional<String> method) {
        if (s.subject().crop().isEmpty() || facts.fitParents(s).isEmpty()) { return Optional.empty(); }
        Plant plant = s.subject().plants().get(0).plant();
        return book.course(plant.crop(), plant.form(), method, Optional.empty()).flatMap(
                course -> take(course, book.survival(plant.crop(), course), lines(course, s, facts.warnings(s))));
    }

    private Optional<Amount> take(Course course, Survival survival, List<String> more) {
        List<String> each = WANTED.stream()
                .flatMap(wanted -> book.fewest(wanted, survival).stream().mapToObj(number -> number + " for " + wanted))
                .toList();
        if (each.isEmpty()) { return Optional.empty(); }
        int first = book.fewest(1, survival).orElse(1);
        List<String> lines = new ArrayList<>();
        lines.add("Numbers to take for 1, 3 or 10 new plants, nine times in ten: " + String.join(", ", each) + ".");
        lines.addAll(more);
        return Optional.of(Amount.of(first, first == 1 ? "cutting" : "cuttings",
                "for each plant you want, fewer for several: " + String.join(", ", each), arithmetic(course, survival),
                CuttingsAdvisor.sources(course)).withLines(lines));
    }

    /** What the parents' wood gives, and what speaks against them. */
    private List<String> lines(Course course, Situation s, List<String> warnings) {
        Crop crop = s.subject().crop().orElseThrow();
        Season winter = book
                .strikeWindow(crop.id(), s.subject().plants().get(0).plant().form(), course.method().id(), s.season())
                .orElseThrow().first();
        ParentStock stock = ParentStock.of(s.subject().plants(),
                plant -> PruningCases.of(plant, crop, winter, s.world()), book, course, winter);
        List<String> lines = new ArrayList<>();
        MeasureWords.known(course.method()).ifPresent(words -> lines.add("Measures: " + words + "."));
        if (stock.bushes().stream().anyMatch(bush -> bush.cuttings().isPresent())) {
            lines.add("Cuttings that the wood to spare gives: " + stock.each() + ".");
            stock.forTwo().ifPresent(lines::add);
        }
        lines.addAll(warnings);
        return lines;
    }

    /** The rate of each phase from the sources, and where the garden's own lots have moved it. */
    private static List<String> arithmetic(Course course, Survival survival) {
        List<String> lines = new ArrayList<>();
        for (Map.Entry<Phase, Method.PhaseFigures> each : course.method().phases().entrySet()) {
            Method.PhaseFigures pair = each.getValue();
            long learnt = Math.round(survival.rate(each.getKey()).mean() * 100);
            lines.add("%s: %s (%s), worth %s%s".formatted(each.getKey().words(), pair.rate().plain(),
                    pair.rate().seen().words(), pair.weight().inWords(), learnt == Math.round(pair.rate().is()) ? ""
                            : "; with this garden's own cuttings " + learnt + " %"));
        }
        return lines;
    }

    private List<String> chain(LotState lot, Forecast forecast) {
        List<String> lines = new ArrayList<>(
                arithmetic(forecast.course(), book.survival(lot.crop(), forecast.course())));
        lines.add("%s alive, of whom %s should root and %s become plants".formatted(forecast.alive(),
                Words.one(forecast.rooted().mean()), Words.one(forecast.plants().mean())));
        return lines;
    }

    private Amount expected(LotState lot, Forecast forecast) {
        return Amount
                .of(forecast.alive(), "cuttings",
                        "%s struck, %s; about %s should root%s".formatted(lot.struck(),
                                book.counts(lot).wasCounted() ? forecast.alive() + " alive at the last count"
                                        : "none counted yet",
                                Words.one(forecast.rooted().mean()), unsound(lot)),
                        chain(lot, forecast), CuttingsAdvisor.sources(forecast.course()))
                .withLines(outlook(lot, forecast));
    }

    private Amount standing(LotState lot, Forecast forecast) {
        LotCounts counts = book.counts(lot);
        String number = counts.alive() + (counts.alive() == 1 ? " plant" : " plants");
        return Amount.of(counts.alive(), "plants",
                number + (counts.wasCounted() ? ", counted " + Dates.shortDay(counts.countedOn())
                        : " at most; never counted") + unsound(lot),
                chain(lot, forecast), CuttingsAdvisor.sources(forecast.course())).withLines(outlook(lot, forecast));
    }

    private Amount water(Situation s, Forecast forecast) {
        Optional<Figure> week = s.subject().crop()
                .flatMap(crop -> CropWater.of(crop, WaterFigures.read(s.world().documents())))
                .map(CropWater::weeklyNeed);
        Optional<Double> area = NurseryBed.of(forecast.alive(), forecast.course().method().measures())
                .flatMap(NurseryBed::areaM2);
        if (week.isEmpty() || area.isEmpty()) {
            return Amount.of(0, "l", "as much as wets the soil to the foot of the cuttings",
                    List.of("the room that these cuttings take, or the crop's need, is not known"), List.of());
        }
        double litres = RootZone.litres(week.get().is(), area.get());
        return Amount.of(Math.max(1, Words.nearest(litres, 1)), "l",
                "about " + Math.max(1, Math.round(litres)) + " l in a week without rain",
                List.of("%s cuttings on %s m² × %s = %s l a week".formatted(forecast.alive(), Words.one(area.get()),
                        week.get().inWords(), Words.one(litres))),
                week.get().sources());
    }

    /** What bars the bush that the cuttings are of: found after the strike, it bars them too. */
    private List<ParentHealth.Warning> bars(LotState lot) {
        return book.parentHealth(lot).filter(health -> !health.fit()).map(ParentHealth::warnings).orElse(List.of());
    }

    private String unsound(LotState lot) {
        return bars(lot).isEmpty() ? "" : "; their parent %s is not sound".formatted(lot.parent().orElse(""));
    }

    private List<String> outlook(LotState lot, Forecast forecast) {
        List<String> lines = new ArrayList<>();
        bars(lot).stream().limit(1).forEach(bar -> lines.add("Parent %s: %s These may carry it: plant none of them out."
                .formatted(lot.parent().orElse(""), bar.words())));
        lines.add(
                "Expected in the end: %s plants (nine times in ten %s or more); first pick in season %s, full crop in %s, if %s."
                        .formatted(Words.one(forecast.plants().mean()), forecast.plants().quantile(1 - SURE),
                                forecast.line().firstPick().label(), forecast.line().fullCrop().label(),
                                forecast.course().cut().words()));
        return lines;
    }
}
