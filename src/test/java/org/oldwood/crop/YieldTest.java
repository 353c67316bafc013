package org.oldwood.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.oldwood.store.Documents;

class YieldTest {
    private final Documents documents = Documents.bundled();
    private final Crops crops = new Crops(documents);

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/crop-share.csv", useHeadersInDisplayName = true)
    void the_share_of_a_year_is_that_of_print(String id, String crop, String series, int year, double thatYear,
            double fullYears, double tolerance, String why, String source) {
        Yield.Series shares = series(crop, series);

        assertThat(shares.share(year)).isCloseTo(thatYear / fullYears, within(tolerance + 1e-9));
        assertThat(shares.sources()).contains(source);
    }

    @Test
    void every_crop_says_what_each_of_its_forms_bears() {
        for (String id : crops.ids()) {
            Crop crop = crops.get(id);
            Yield yield = Yield.read(crop).orElseThrow();
            for (String form : crop.forms()) {
                assertThat(yield.mature()).as(id).containsKey(form);
                Range full = yield.expected(form, 20).orElseThrow();
                assertThat(full.is()).as(id + " " + form).isBetween(0.4, 6.0);
                assertThat(yield.expected(form, 1).orElseThrow().is()).isLessThan(full.is() / 2);
            }
        }
        assertThat(documents.problems().list()).isEmpty();
    }

    @Test
    void the_crop_rises_to_the_full_crop_and_stays() {
        for (String id : crops.ids()) {
            for (Yield.Series series : Yield.read(crops.get(id)).orElseThrow().series()) {
                for (int year = 0; year < 15; year++) {
                    assertThat(series.share(year)).isLessThanOrEqualTo(series.share(year + 1));
                }
                assertThat(series.share(15)).as(id).isEqualTo(1);
            }
        }
    }

    @Test
    void a_form_has_the_series_that_suits_it() {
        Yield redcurrant = Yield.read(crops.get("redcurrant")).orElseThrow();

        assertThat(redcurrant.series("stool").orElseThrow().share(4)).isEqualTo(0.9);
        assertThat(redcurrant.series("leg").orElseThrow().share(4)).isEqualTo(0.65);
        assertThat(redcurrant.expected("hedge", 4)).isEmpty();
    }

    @Test
    void every_form_has_a_spacing_and_a_life() {
        for (String id : crops.ids()) {
            Crop crop = crops.get(id);
            for (String form : crop.forms()) {
                Crop.Spacing spacing = crop.spacing(form).orElseThrow();
                assertThat(spacing.inRow().is()).isLessThanOrEqualTo(spacing.betweenRows().is());
                assertThat(spacing.areaM2()).as(id + " " + form).isBetween(0.5, 5.5);
                assertThat(crop.life(form).orElseThrow().is()).isBetween(8.0, 45.0);
            }
        }
        assertThat(documents.problems().list()).isEmpty();
    }

    @Test
    void a_crop_like_another_borrows_its_spacing_and_life() {
        assertThat(crops.get("whitecurrant").spacing("leg")).isEqualTo(crops.get("redcurrant").spacing("leg"))
                .isNotEqualTo(Optional.empty());
        assertThat(crops.get("erect-blackberry").life("trained"))
                .isEqualTo(crops.get("trailing-blackberry").life("trained"));
    }

    @Test
    void old_wood_bears_less_than_the_best_and_the_last_number_goes_on() {
        WoodAge wood = Yield.read(crops.get("blackcurrant")).orElseThrow().wood().orElseThrow();

        assertThat(wood.weight(4, 1)).isLessThan(wood.weight(3, 1));
        for (int which = 0; which < 3; which++) {
            assertThat(wood.weight(9, which)).isEqualTo(wood.weight(5, which));
        }
    }

    private Yield.Series series(String crop, String id) {
        return Yield.read(crops.get(crop)).orElseThrow().series().stream().filter(one -> one.id().equals(id))
                .findFirst().orElseThrow();
    }
}
