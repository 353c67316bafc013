package org.oldwood.craft.feeding;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * US organic rule 205.203(c)(1), as given to home gardeners by Utah State Extension (FAQ 518): 90 days, or 120 where
 * fruit touches the soil.
 */
class ManureWaitTest {
    @ParameterizedTest(name = "first picking {0}, touching soil: {1}")
    @CsvSource({"2027-07-05, false, 2027-04-06", "2027-07-05, true, 2027-03-07"})
    void raw_manure_comes_so_long_before_picking(LocalDate picking, boolean touches, LocalDate latest) {
        assertThat(Data.TABLES.limits().manure().latest(picking, touches)).isEqualTo(latest);
    }
}
