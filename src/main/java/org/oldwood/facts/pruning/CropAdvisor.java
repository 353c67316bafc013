package org.oldwood.facts.pruning;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.oldwood.craft.pruning.WoodCrop;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Range;
import org.oldwood.crop.Yield;
import org.oldwood.facts.Advisor;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Situation;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.PlantState;
import org.oldwood.season.Season;
import org.oldwood.words.Words;

/**
 * What a stand should bear in a season: the crop of a mature plant, times the share of its age, times that of its wood
 * where the stems were counted. See {@code docs/method-pruning.md}, Outlook.
 */
public final class CropAdvisor extends Advisor {
    public CropAdvisor() { measures("crop", this::amount); }

    private Optional<Amount> amount(Situation s) {
        Optional<Crop> crop = s.subject().crop();
        Optional<Yield> yield = crop.flatMap(Yield::read);
        if (crop.isEmpty() || yield.isEmpty()) { return Optional.empty(); }
        double low = 0;
        double is = 0;
        double high = 0;
        Set<String> forms = new LinkedHashSet<>();
        List<String> arithmetic = new ArrayList<>(s.subject().plants().size());
        for (PlantState plant : s.subject().plants()) {
            Optional<Borne> borne = borne(plant, crop.get(), yield.get(), s);
            if (borne.isEmpty()) { return Optional.empty(); }
            low += borne.get().kg().low();
            is += borne.get().kg().is();
            high += borne.get().kg().high();
            arithmetic.add(plant.plant().id() + borne.get().arithmetic());
            forms.add(plant.plant().form());
        }
        List<String> sources = forms.stream().flatMap(form -> sources(form, yield.get())).distinct().toList();
        String words = is == 0 ? "no crop to speak of yet"
                : kg(is) + " kg expected over the season (" + kg(low) + " to " + kg(high) + " kg)";
        return Optional.of(Amount.of(is, "kg", words, arithmetic, sources).withLines(lines(s)));
    }

    private static Stream<String> sources(String form, Yield yield) {
        return Stream.concat(Optional.ofNullable(yield.mature().get(form)).stream().map(Figure::sources),
                yield.series(form).stream().map(Yield.Series::sources)).flatMap(List::stream);
    }

    /**
     * What a plant bears.
     *
     * @param arithmetic how that was worked out, to follow the plant's id
     */
    private record Borne(Range kg, String arithmetic) {}

    private Optional<Borne> borne(PlantState plant, Crop crop, Yield yield, Situation s) {
        String form = plant.plant().form();
        Figure mature = yield.mature().get(form);
        if (mature == null) { return Optional.empty(); }
        int year = plant.plant().seasonsOld(s.season());
        double parts = parts(plant, crop, mature);
        Optional<Range> wood = wood(plant, crop, yield, s);
        String arithmetic = ": %s when mature (%s to %s %s) x %s %% in its season %s x %s x %s".formatted(
                mature.inWords(), kg(mature.low()), kg(mature.high()), mature.unit(),
                Math.round(100 * yield.series(form).map(it -> it.share(year)).orElse(0.0)), year,
                wood.map(WoodCrop::banded)
                        .map(it -> "%s to %s %% for its wood, by weights that are assumed"
                                .formatted(Math.round(100 * it.low()), Math.round(100 * it.high())))
                        .orElse("100 % for its wood, which was not counted"),
                kg(parts));
        return yield.expected(form, year)
                .map(each -> WoodCrop.banded(each.times(wood.orElse(new Range(1, 1, 1))).times(parts)))
                .map(kg -> new Borne(kg, arithmetic));
    }

    /** Bushes, or metres of row where the crop is told by the metre. */
    private static double parts(PlantState plant, Crop crop, Figure mature) {
        int bushes = Math.max(1, plant.plant().bushes());
        if (!mature.unit().equals("kg/m")) { return bushes; }
        return plant.plant().lengthM().orElseGet(() -> bushes * crop.inRowM(plant.plant().form()));
    }

    /** Share of the crop of a bush in order that the wood after this winter's cut bears; empty where not counted. */
    private Optional<Range> wood(PlantState plant, Crop crop, Yield yield, Situation s) {
        return PruningCases.of(plant, crop, s.season(), s.world())
                .filter(one -> one.bush().filter(bush -> bush.stems().isComplete()).isPresent())
                .map(one -> WoodCrop.share(one.cut().after(), one.form().inOrder(one.blank()),
                        one.blank().seasons().orElse(0), plant.plant().form(), yield));
    }

    private static List<String> lines(Situation s) {
        List<String> lines = new ArrayList<>();
        lines.add("Printed crops differ widely: note what you pick, and go by that.");
        Season before = s.season().plus(-1);
        double picked = s.subject().entries().stream().filter(entry -> entry.kind() == EntryKind.PICKED)
                .filter(entry -> before.contains(entry.date())).mapToDouble(entry -> entry.number("kg").orElse(0))
                .sum();
        if (picked > 0) { lines.add("Picked the season before: " + kg(picked) + " kg."); }
        return lines;
    }

    private static String kg(double value) {
        return value >= 10 || value == Math.rint(value) ? Long.toString(Math.round(value)) : Words.one(value);
    }
}
