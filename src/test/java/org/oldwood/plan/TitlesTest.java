package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.facts.OwnRules;

class TitlesTest {
    @TempDir
    private Path folder;

    private static SmallGarden garden() {
        return SmallGarden.north()
                .note("2020-11-15", "'planted','plant':'bc-1','crop':'blackcurrant','bed':'a','bushes':3")
                .note("2020-11-15", "'planted','plant':'bc-2','crop':'blackcurrant','bed':'a','bushes':2");
    }

    private String title(String subject, String title, SmallGarden garden) {
        return new OwnRules(folder).rule("r", subject, "'title':'" + title + "'," + OwnRules.span("03-01", "03-31"))
                .plan(garden, "2027-02-01").tasks().get(0).title();
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            plant | Cut {subject} | Cut blackcurrant bc-1
            plant | {crop}, {crops} in {bed} | blackcurrant, blackcurrants in Bed A
            plant | {count} bushes in {season} | 3 bushes in 2027
            stand | {count} {crops} | 5 blackcurrants
            bed | Weed {bed} | Weed Bed A
            garden | Walk through {bed} | Walk through the garden
            garden | {{season}} and {bushes} | {2027} and {bushes}
            garden | An open { and {season | An open { and {season
            garden | {}{season}{season} | {}20272027
            """)
    void names_are_filled_in_and_all_else_stays(String subject, String title, String filled) {
        assertThat(title(subject, title, garden())).isEqualTo(filled);
    }

    @Test
    void without_a_crop_they_are_bushes() {
        assertThat(title("bed", "{crop} {crops} {count}", SmallGarden.north())).isEqualTo("bush bushes 0");
    }
}
