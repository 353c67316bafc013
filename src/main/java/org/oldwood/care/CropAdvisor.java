package org.oldwood.care;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Decimals;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Range;
import org.oldwood.crop.Yield;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.PlantState;
import org.oldwood.garden.Season;
import org.oldwood.pruning.Bush;
import org.oldwood.pruning.WoodCrop;

/**
 * What a stand should bear in a season: the crop of a mature plant, times the share of its age,
 * times that of its wood where the stems were counted. See {@code docs/method-pruning.md}, Outlook.
 */
final class CropAdvisor implements Advisor {
    private final PruningCases cases;

    CropAdvisor(PruningCases cases) {
        this.cases = cases;
    }

    @Override
    public List<String> facts() {
        return List.of();
    }

    @Override
    public List<String> amounts() {
        return List.of("crop");
    }

    @Override
    public Fact fact(String name, Optional<String> of, Situation situation) {
        return Fact.unknown(name, "nothing here tells \"" + name + "\"");
    }

    @Override
    public Optional<Amount> amount(String name, Situation s) {
        Optional<Crop> crop = s.subject().crop();
        Optional<Yield> yield = crop.flatMap(Yield::read);
        if (crop.isEmpty() || yield.isEmpty()) {
            return Optional.empty();
        }
        double low = 0;
        double is = 0;
        double high = 0;
        Set<String> sources = new LinkedHashSet<>();
        List<String> arithmetic = new ArrayList<>();
        for (PlantState plant : s.subject().plants()) {
            Optional<Range> kg = kilograms(plant, crop.get(), yield.get(), s, arithmetic);
            if (kg.isEmpty()) {
                return Optional.empty();
            }
            low += kg.get().low();
            is += kg.get().is();
            high += kg.get().high();
            sources.addAll(sources(plant, yield.get()));
        }
        return Optional.of(
                Amount.of(is, "kg", words(low, is, high), arithmetic, List.copyOf(sources))
                        .withLines(lines(s)));
    }

    private static String words(double low, double is, double high) {
        return is == 0
                ? "no crop to speak of yet"
                : kg(is) + " kg expected over the season (" + kg(low) + " to " + kg(high) + ")";
    }

    private static Set<String> sources(PlantState plant, Yield yield) {
        String form = plant.plant().form();
        Set<String> sources = new LinkedHashSet<>();
        Optional.ofNullable(yield.mature().get(form))
                .ifPresent(figure -> sources.addAll(figure.sources()));
        yield.series(form).ifPresent(series -> sources.addAll(series.sources()));
        return sources;
    }

    private Optional<Range> kilograms(
            PlantState plant, Crop crop, Yield yield, Situation s, List<String> arithmetic) {
        String form = plant.plant().form();
        int year = plant.plant().seasonsOld(s.season());
        Optional<Range> each = yield.expected(form, year);
        Figure mature = yield.mature().get(form);
        if (each.isEmpty() || mature == null) {
            return Optional.empty();
        }
        double parts = parts(plant, crop, mature);
        Range wood = wood(plant, crop, yield, s);
        arithmetic.add(
                plant.plant().id()
                        + ": "
                        + mature.inWords()
                        + " when mature ("
                        + kg(mature.low())
                        + " to "
                        + kg(mature.high())
                        + ") x "
                        + Math.round(100 * yield.series(form).map(it -> it.share(year)).orElse(0.0))
                        + " % in its season "
                        + year
                        + " x "
                        + Math.round(100 * wood.is())
                        + " % for its wood x "
                        + kg(parts));
        return each.map(range -> range.times(wood).times(parts));
    }

    /** Bushes, or metres of row where the crop is told by the metre. */
    private static double parts(PlantState plant, Crop crop, Figure mature) {
        int bushes = Math.max(1, plant.plant().bushes());
        if (!mature.unit().equals("kg/m")) {
            return bushes;
        }
        return plant.plant()
                .lengthM()
                .orElseGet(
                        () ->
                                bushes
                                        * crop.spacing(plant.plant().form())
                                                .map(spacing -> spacing.inRow().is())
                                                .orElse(1.0));
    }

    /** Share of the full crop that the wood after this winter's cut bears; 1 where not counted. */
    private Range wood(PlantState plant, Crop crop, Yield yield, Situation s) {
        return cases.of(plant, crop, s.season(), s.world().state())
                .flatMap(
                        one ->
                                one.bush()
                                        .filter(bush -> bush.stems().isComplete())
                                        .map(bush -> wood(one, bush, yield)))
                .orElse(new Range(1, 1, 1));
    }

    private static Range wood(PruningCase one, Bush bush, Yield yield) {
        return WoodCrop.factor(one.cut().after(), one.aim().target(bush), yield.wood());
    }

    private static List<String> lines(Situation s) {
        List<String> lines = new ArrayList<>();
        lines.add("Printed crops differ widely: note what you pick, and go by that.");
        Season before = s.season().plus(-1);
        double picked =
                s.subject().entries().stream()
                        .filter(entry -> entry.kind() == EntryKind.PICKED)
                        .filter(entry -> before.contains(entry.date()))
                        .mapToDouble(entry -> entry.number("kg").orElse(0))
                        .sum();
        if (picked > 0) {
            lines.add("Picked the season before: " + kg(picked) + " kg.");
        }
        return lines;
    }

    private static String kg(double value) {
        return value >= 10 || value == Math.rint(value)
                ? Long.toString(Math.round(value))
                : Decimals.one(value);
    }
}
