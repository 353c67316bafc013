package org.oldwood.craft.feeding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Whole years of one bed as print has them: the need, the material, the grams. */
class PublishedYearsTest {
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/bed-years.csv", useHeadersInDisplayName = true)
    void a_year_is_within_print_or_the_miss_is_told(ArgumentsAccessor row) {
        String material = row.getString(9);
        Budget year = year(row, material);
        double grams = year.dressings().stream().flatMap(dressing -> dressing.parts().stream())
                .mapToDouble(Recipe.Part::amount).sum();
        double tolerance = row.getDouble(12) / 100;
        boolean within = grams >= row.getDouble(10) * (1 - tolerance) && grams <= row.getDouble(11) * (1 + tolerance);

        assertThat(grams).as("%s, %s g", row.getString(14), grams).isPositive();
        assertThat(within ? "within" : "misses").as("%s: %s g", row.getString(14), grams).isEqualTo(row.getString(13));
    }

    private static Budget year(ArgumentsAccessor row, String material) {
        FeedingProfile profile = Data.profile(row.getString(1));
        NeedCase asked = new NeedCase(Data.soil(NeedCase.Soil.UNKNOWN, row.getString(3)),
                OptionalInt.of(row.getInteger(4)), Optional.empty(), "normal",
                new NeedCase.Ground(row.getDouble(7), row.getInteger(5), row.getDouble(6)));
        Need need = Need.of(Data.TABLES, profile, profile.school(row.getString(2)).orElseThrow(), asked);
        double n = need.gPerM2().n() + row.getDouble(8);
        return Budget.of(Data.TABLES,
                new Need(need.gPerM2().withN(n), need.known(), need.school(), List.of(), List.of()),
                Budget.Counting.NOTHING, Data.TABLES.timing(profile.timing()), asked.soil().texture(), 0,
                new Choice(List.of(feed(material)), List.of()), asked.ground());
    }

    private static Feed feed(String material) {
        if (!Character.isDigit(material.charAt(0))) { return Data.feed(material); }
        String[] percent = material.split("-");
        return Feed.ofLabel(new Nutrients(Double.parseDouble(percent[0]), Double.parseDouble(percent[1]),
                Double.parseDouble(percent[2]), 0));
    }

    /**
     * Ontario Ministry 2019: no more than 25 kg N/ha in one dressing of haskap; Agroscope: halves of 20 to 60 for
     * currants.
     */
    @Test
    void single_dressings_are_within_print() {
        for (FeedPlan dressing : dressings("haskap", "own")) {
            assertThat(dressing.gives().n()).isCloseTo(2.5, within(0.06));
        }
        for (FeedPlan dressing : dressings("redcurrant", "rb209")) {
            assertThat(dressing.gives().n()).isBetween(2.0, 6.0);
        }
    }

    private static List<FeedPlan> dressings(String crop, String school) {
        FeedingProfile profile = Data.profile(crop);
        NeedCase asked = NeedCase.of(new NeedCase.Ground(100, 0, 0)).withSoil(Data.soil(NeedCase.Soil.UNKNOWN, "loam"))
                .withAge(5);
        List<FeedPlan> dressings = Budget
                .of(Data.TABLES, Need.of(Data.TABLES, profile, profile.school(school).orElseThrow(), asked),
                        Budget.Counting.NOTHING, Data.TABLES.timing(profile.timing()), Optional.empty(), 0,
                        new Choice(List.of(Data.feed("ammonium-nitrate")), List.of()), asked.ground())
                .dressings();
        assertThat(dressings).hasSize(2);
        return dressings;
    }
}
