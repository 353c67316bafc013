package org.oldwood.craft.cuttings;

import java.util.List;
import java.util.Optional;
import org.oldwood.crop.Figure;

/**
 * How young plants of a crop are planted to stay, and what that means for the first crop.
 *
 * @param cuts what may be cut at planting; the first that suits the form is the default
 */
public record PlantingOut(List<Cut> cuts) {
    public PlantingOut {
        cuts = List.copyOf(cuts);
    }

    /** The cuts that suit a form; the first is the default. */
    public List<Cut> cutsFor(String form) {
        return cuts.stream().filter(cut -> cut.suits(form)).toList();
    }

    /**
     * A cut at planting.
     *
     * @param id {@code hard}, {@code light} or {@code none}
     * @param words what is done
     * @param deeperCm how much deeper than in the nursery the plant is set, cm
     * @param flowersOff seasons, from planting out, in which the trade takes the flowers off; absent where it does not
     * @param seasonsAhead by how many seasons the crop comes sooner than the yield series says
     */
    public record Cut(
            String id,
            String words,
            List<String> forms,
            Optional<Figure> deeperCm,
            Optional<Figure> flowersOff,
            Figure seasonsAhead,
            List<String> sources) {
        public Cut {
            forms = List.copyOf(forms);
            sources = List.copyOf(sources);
        }

        boolean suits(String form) {
            return forms.isEmpty() || forms.contains(form);
        }
    }
}
