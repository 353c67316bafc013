package org.oldwood.craft.pruning;

import org.oldwood.crop.Figure;
import org.oldwood.crop.Stems;

/**
 * How the shoots of a summer go with what was cut in the winter before, and which old stems die.
 *
 * @param response how many times more shoots come for each share of the stems that was cut
 * @param most the most shoots in a year
 * @param die share of the stems of four years and more that dies in a year
 */
public record Regrowth(Figure response, Figure most, Figure die) {
    private static final int OLD = 4;

    /**
     * New shoots in the season after a cut.
     *
     * @param usual shoots of a bush that is not cut
     * @param room stems that a bush in order has; with more of them fewer shoots come
     */
    int shoots(double usual, Cut cut, int room) {
        double share = cut.before().total() == 0 ? 0 : (double) cut.number() / cut.before().total();
        double crowded = Math.min(1, (double) room / Math.max(1, cut.after().total()));
        return (int) Math.round(Math.min(most.is(), usual * (1 + response.is() * share) * crowded));
    }

    /** The stems without those that die of age. */
    Stems living(Stems stems) {
        Stems left = stems;
        for (int age = OLD; age <= stems.oldest(); age++) {
            left = left.without(age, (int) Math.round(die.is() * stems.at(age)));
        }
        return left;
    }
}
