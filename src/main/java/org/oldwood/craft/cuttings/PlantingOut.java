package org.oldwood.craft.cuttings;

import java.util.List;
import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Key;
import org.oldwood.crop.Notes;

/**
 * How young plants of a crop are planted to stay, and what that means for the first crop.
 *
 * @param cuts what may be cut at planting; the first that suits the form is the default
 */
public record PlantingOut(List<Cut> cuts) {
    /** The cuts that suit a form; the first is the default. */
    public List<Cut> cutsFor(String form) {
        return cuts.stream().filter(cut -> cut.suits(form)).toList();
    }

    /**
     * A cut at planting.
     *
     * @param id {@code hard}, {@code light} or {@code none}
     * @param deeperCm how much deeper than in the nursery the plant is set, cm
     * @param flowersOff seasons, from planting out, in which the trade takes the flowers off; absent where it does not
     * @param seasonsAhead by how many seasons the crop comes sooner than the yield series says
     */
    @Notes("seen")
    public record Cut(@Key(words = {
            "hard", "light", "none"}) String id, String words, List<String> forms, Optional<Figure> deeperCm,
            @Key("flowersOffSeasons") Optional<Figure> flowersOff, Figure seasonsAhead, List<String> sources){
        boolean suits(String form) { return forms.isEmpty() || forms.contains(form); }
    }
}
