package org.oldwood.craft.cuttings;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.craft.cuttings.survival.Phase;
import org.oldwood.craft.cuttings.survival.Survival;
import org.oldwood.craft.cuttings.survival.UncertainRate;
import org.oldwood.crop.Checked;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Key;
import org.oldwood.crop.Notes;
import org.oldwood.store.Fields;

/**
 * One way of raising young plants of a crop, with its measures, its times and its survival.
 *
 * @param id {@code hardwood}, {@code disbudded}, {@code layer}, {@code tip-layer}, {@code sucker}, {@code root},
 *     {@code softwood} or {@code division}
 * @param forms the forms of bush it suits; empty for all
 * @param from what it is cut from: {@code shoot}, {@code tip}, {@code branch}, {@code root}, {@code sucker} or
 *     {@code crown}
 * @param rooted when it shows what lives, and when rooting is over
 * @param phases the survival of each phase by its sources
 * @param steps what to do and look for, one line each
 * @param cautions what to beware of, one line each
 */
public record Method(@Key(words = {
        "hardwood", "disbudded", "tip-layer", "layer", "sucker", "root", "softwood", "division"}) String id,
        String name, List<String> forms, boolean inPlace,
        @Key(words = {"shoot", "tip", "branch", "root", "sucker", "crown"}) String from,
        @Key(Key.HERE) Measures measures, Window window, Rooted rooted, Window lift,
        @Key("survival") Map<Phase, PhaseFigures> phases, List<String> steps, List<String> cautions) implements Checked{

    @Override
    public void check(Fields fields) { fields.tellIf(phases.isEmpty(), "survival", "missing-key survival"); }

    public boolean suits(String form) { return forms.isEmpty() || forms.contains(form); }

    /**
     * The measures of a cutting; each is absent where it has no meaning or no figure was found.
     *
     * @param lengthCm length, cm
     * @param budsKept buds left on the cutting
     * @param depthCm how deep it is set, cm
     * @param spacingCm distance in the row, cm
     * @param rowGapCm distance between rows of the nursery bed, cm
     * @param softTipPercent share of a shoot, at its tip, that is too soft to use, %
     */
    public record Measures(Optional<Figure> lengthCm, Optional<Figure> budsKept, Optional<Figure> budsAboveSoil,
            Optional<Figure> depthCm, Optional<Figure> spacingCm, Optional<Figure> rowGapCm,
            Optional<Figure> softTipPercent) {}

    /** From one day to another. */
    @Notes({"orSeasonsLater", "seen", "note"})
    record Window(Anchor from, Anchor to, List<String> sources) {}

    /** From when losses show, so that a count of the living tells something, and when rooting is over. */
    @Notes({"seen", "note"})
    record Rooted(Anchor tellsFrom, Anchor at, List<String> sources) {}

    /** The rates to reckon with. */
    public Survival survival() {
        Map<Phase, UncertainRate> rates = new EnumMap<>(Phase.class);
        phases.forEach((phase, figures) -> rates.put(phase, UncertainRate
                .of(Math.min(100, Math.max(1e-6, figures.rate().is())) / 100, Math.max(1e-6, figures.weight().is()))));
        return new Survival(rates);
    }

    /** The rate of a phase, in percent, and the number of plants that it is worth. */
    public record PhaseFigures(Figure rate, Figure weight) implements Checked {
        @Override
        public void check(Fields fields) {
            fields.tellIf(!(rate.is() > 0 && rate.is() <= 100), "rate", "rate-out-of-range");
            fields.tellIf(!(weight.is() > 0), "weight", "weight-out-of-range");
        }
    }
}
