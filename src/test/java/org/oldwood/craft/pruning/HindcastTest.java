package org.oldwood.craft.pruning;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.oldwood.crop.Range;
import org.oldwood.crop.Stems;
import org.oldwood.crop.Yield;

/** The reckoned crops beside published ones; a row that misses must go on missing until its reason is mended. */
class HindcastTest {
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/crop-hindcast.csv", useHeadersInDisplayName = true)
    void the_reckoning_is_held_against_what_was_published(String id, String crop, String form, String kind,
            Integer season, Double from, Double to, double least, double most, String verdict) {
        Yield yield = Yield.read(Schools.CROPS.get(crop)).orElseThrow();

        boolean within;
        if (kind.equals("ratio")) {
            double k = yield.crowding(1);
            double ratio = WoodCrop.crowded(to, k) / WoodCrop.crowded(from, k);
            within = least <= ratio && ratio <= most;
        } else {
            Range kg = yield.expected(form, season).orElseThrow();
            within = kg.low() <= least && most <= kg.high();
        }

        assertThat(within).as(verdict).isEqualTo(!verdict.equals("misses"));
    }

    @org.junit.jupiter.api.Test
    void shoots_after_a_cut_are_those_of_print() {
        Regrowth regrowth = Schools.form("blackcurrant", "stool").regrowth().orElseThrow();
        Cut all = Schools.stool("blackcurrant", "cut-down").winter(Bush.of(Stems.of(4, 4, 3)));
        Cut none = Cut.nothing(StageOfLife.BEARING, Stems.of(4, 4, 3));

        // jardinfavori-currants: eight to ten after everything was cut
        assertThat(regrowth.shoots(4, all, 11)).isBetween(8, 10);
        assertThat(regrowth.shoots(6.7, all, 11)).isEqualTo(10);
        // sasnauskas-2006: as many as were counted on bushes that were not cut
        assertThat(regrowth.shoots(4, none, 11)).isEqualTo(4);
        // half as many on a bush twice as full
        assertThat(regrowth.shoots(4, Cut.nothing(StageOfLife.BEARING, Stems.of(10, 12)), 11)).isEqualTo(2);
        assertThat(regrowth.living(Stems.of(1, 2, 10, 10, 10))).isEqualTo(Stems.of(1, 2, 10, 7, 7));
    }
}
