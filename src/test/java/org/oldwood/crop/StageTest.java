package org.oldwood.crop;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The codes are those of the BBCH Monograph, 2nd edition 2001, currants; 93 and 97 are remembered. */
class StageTest {
    @ParameterizedTest
    @CsvSource({"DORMANT,00", "BUD_SWELL,03", "BUD_BURST,07", "FIRST_FLOWER,60", "FULL_FLOWER,65", "PETAL_FALL,69",
            "RIPE,87", "LEAF_FALL_BEGINS,93", "LEAF_FALL_DONE,97"})
    void carries_the_printed_code_and_is_found_by_it(Stage stage, String printed) {
        assertThat(stage.bbch()).isEqualTo(printed);
        assertThat(Stage.find(printed)).contains(stage);
        assertThat(Stage.find(stage.key())).contains(stage);
    }
}
