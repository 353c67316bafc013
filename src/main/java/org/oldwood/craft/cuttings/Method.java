package org.oldwood.craft.cuttings;

import java.util.List;
import java.util.Optional;
import org.oldwood.craft.cuttings.survival.Phase;
import org.oldwood.craft.cuttings.survival.Survival;
import org.oldwood.crop.Figure;

/**
 * One way of raising young plants of a crop, with its measures, its times and its survival.
 *
 * @param id {@code hardwood}, {@code disbudded}, {@code layer}, {@code tip-layer}, {@code sucker}, {@code root},
 *     {@code softwood} or {@code division}
 * @param name in words
 * @param forms the forms of bush it suits; empty for all
 * @param inPlace whether it is set at once where it is to stay, with no lifting
 * @param from what it is cut from: {@code shoot}, {@code tip}, {@code branch}, {@code root}, {@code sucker} or
 *     {@code crown}
 * @param measures length, depth, buds and distances
 * @param times window, rooting and lifting
 * @param phases the source's survival rate of each phase
 * @param steps what to do and look for, one line each
 * @param cautions what to beware of, one line each
 */
public record Method(
        String id,
        String name,
        List<String> forms,
        boolean inPlace,
        String from,
        Measures measures,
        Times times,
        Phases phases,
        List<String> steps,
        List<String> cautions) {
    public Method {
        forms = List.copyOf(forms);
        steps = List.copyOf(steps);
        cautions = List.copyOf(cautions);
    }

    public boolean suits(String form) {
        return forms.isEmpty() || forms.contains(form);
    }

    /**
     * The measures of a cutting; each is absent where it has no meaning or no figure was found.
     *
     * @param lengthCm length, cm
     * @param budsKept buds left on the cutting
     * @param budsAboveSoil buds above the soil
     * @param depthCm how deep it is set, cm
     * @param spacingCm distance in the row, cm
     * @param rowGapCm distance between rows of the nursery bed, cm
     * @param softTipPercent share of a shoot, at its tip, that is too soft to use, %
     */
    public record Measures(
            Optional<Figure> lengthCm,
            Optional<Figure> budsKept,
            Optional<Figure> budsAboveSoil,
            Optional<Figure> depthCm,
            Optional<Figure> spacingCm,
            Optional<Figure> rowGapCm,
            Optional<Figure> softTipPercent) {}

    /**
     * The days of a lot.
     *
     * @param window when to strike
     * @param tells from when losses show, so that a count of the living tells something
     * @param rooted when rooting is over
     * @param lift from when to when it may be lifted and planted out
     * @param orSeasonsLater the lifting may wait so many seasons more; 0 where no source says so
     */
    record Times(
            Sourced<Window> window, Anchor tells, Sourced<Anchor> rooted, Sourced<Window> lift, int orSeasonsLater) {}

    /** From one day to another. */
    record Window(Anchor from, Anchor to) {}

    /**
     * How many live.
     *
     * @param survival the rates to reckon with
     * @param figures where each rate comes from, in the order of the phases
     */
    public record Phases(Survival survival, List<PhaseFigures> figures) {}

    /** The rate of a phase, in percent, and the number of plants that it is worth. */
    public record PhaseFigures(Phase phase, Figure percent, Figure weight) {}
}
