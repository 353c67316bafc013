package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.oldwood.crop.Crop;
import org.oldwood.season.Hemisphere;

/** A caution is told where it concerns the crop and the time of year, and nowhere else. */
class CautionsTest {
    private final Cautions cautions = Cautions.read(TestGarden.DOCUMENTS);

    private List<String> lines(String id, String crop, String from, String to, Hemisphere where) {
        Optional<Crop> of = TestGarden.CROPS.find(crop);
        Window window = new Window(LocalDate.parse(from), LocalDate.parse(to), 0, "");
        return cautions.lines(List.of(id), of, window, where);
    }

    private boolean told(String id, String crop) {
        return !lines(id, crop, "2026-12-01", "2027-02-01", Hemisphere.NORTH).isEmpty();
    }

    private boolean nests(String from, String to, Hemisphere where) {
        return !lines("nesting-birds", "blackcurrant", from, to, where).isEmpty();
    }

    @Test
    void a_caution_of_some_crops_is_not_told_of_others() {
        assertThat(told("thorns", "gooseberry")).isTrue();
        assertThat(told("thorns", "summer-raspberry")).isTrue();
        assertThat(told("thorns", "blackcurrant")).isFalse();
        assertThat(told("silver-leaf", "redcurrant")).isTrue();
        assertThat(told("silver-leaf", "blueberry")).isFalse();
        assertThat(told("ribes-law", "haskap")).isFalse();
        assertThat(told("raspberry-replant", "autumn-raspberry")).isTrue();
        assertThat(told("raspberry-replant", "erect-blackberry")).isFalse();
        assertThat(told("blades", "haskap")).isTrue();
        assertThat(told("no-such-caution", "haskap")).isFalse();
    }

    @Test
    void where_no_crop_is_named_all_are_told() {
        Window winter = new Window(LocalDate.of(2026, 12, 1), LocalDate.of(2027, 2, 1), 0, "");

        assertThat(cautions.lines(List.of("thorns"), Optional.empty(), winter, Hemisphere.NORTH))
                .hasSize(1);
    }

    @Test
    void nesting_birds_are_told_from_march_to_august_and_half_a_year_later_in_the_south() {
        assertThat(nests("2026-11-15", "2027-02-28", Hemisphere.NORTH)).isFalse();
        assertThat(nests("2026-11-15", "2027-03-01", Hemisphere.NORTH)).isTrue();
        assertThat(nests("2027-08-31", "2027-09-20", Hemisphere.NORTH)).isTrue();
        assertThat(nests("2027-09-01", "2027-09-20", Hemisphere.NORTH)).isFalse();
        assertThat(nests("2027-03-01", "2027-08-31", Hemisphere.SOUTH)).isFalse();
        assertThat(nests("2027-09-01", "2027-09-20", Hemisphere.SOUTH)).isTrue();
        assertThat(nests("2027-02-28", "2027-03-20", Hemisphere.SOUTH)).isTrue();
    }

    @Test
    void a_remembered_caution_says_so() {
        assertThat(cautions.find("silver-leaf").orElseThrow().line()).endsWith("(From memory.)");
        assertThat(cautions.find("eyes").orElseThrow().line()).doesNotContain("memory");
    }

    @Test
    void the_worn_out_plant_of_a_crop_is_told_its_own_cautions_only() {
        List<String> ids =
                Rules.read(TestGarden.DOCUMENTS).find("grub-old").orElseThrow().cautions();
        Window winter = new Window(LocalDate.of(2026, 12, 1), LocalDate.of(2027, 2, 1), 0, "");
        Optional<Crop> blueberry = TestGarden.CROPS.find("blueberry");

        assertThat(cautions.lines(ids, blueberry, winter, Hemisphere.NORTH))
                .noneMatch(line -> line.contains("raspberr") || line.contains("blackberr"))
                .noneMatch(line -> line.contains("currants") || line.contains("Thorny"))
                .isNotEmpty();
    }
}
