package org.oldwood.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Amounts in people's own units: factors of NIST SP 811, and rows as bulletins print them. */
class UnitsTest {
    /** A row that misses stays, with what is said instead. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/own-units.csv", numLinesToSkip = 1)
    void rows_come_out_as_printed(String id, String metric, String units, String printed, String source,
            String missed) {
        String said = Units.of(units).orElseThrow().said(metric);

        assertThat(said).as("%s, %s", id, source).isEqualTo(missed == null ? printed : missed.split(":")[0]);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"between 5 and 10 cm deep | between 2 and 4 in deep",
            "from -2.2 °C | from 28 °F", "2.5 °C colder | 4.5 °F colder",
            "N 5, P2O5 1.1, K2O 12 g/m² | N 1.6, P2O5 0.36, K2O 3.9 oz per 100 sq ft",
            "8 canes a metre | 2.4 canes per ft", "180 mm a metre for roots | 2.2 in per ft for roots",
            "12 mm × 3 m² = 36 l (1 mm on 1 m² is 1 l) | 0.47 in × 32 sq ft = 9.5 gal (1 in on 1 sq ft is 0.62"
                    + " gal)",
            "grams 500, litres 190 | grams 1 lb 2 oz, litres 50 gal",
            "e-0525 of season 2026, pH 6.2 to 5.5, 10 % of 7 bushes | e-0525 of season 2026, pH 6.2 to 5.5, 10 %"
                    + " of 7 bushes",
            "taken as 0 m, 0 cm of mulch, 0 kg, 0 mm | taken as 0 ft, 0 in of mulch, 0 lb, 0 in",
            "rc-5 m2-row in 5-10-5 | rc-5 m2-row in 5-10-5"})
    void numbers_with_a_unit_are_told_and_others_left(String metric, String us) {
        assertThat(Units.US.said(metric)).isEqualTo(us);
        assertThat(Units.METRIC.said(metric)).isEqualTo(metric);
    }

    @Test
    void tags_of_a_page_are_left() {
        assertThat(Units.US.saidOnPage("<style>p{width:5 cm}</style><p title=\"5 cm\">5 cm</p>"))
                .isEqualTo("<style>p{width:5 cm}</style><p title=\"5 cm\">2 in</p>");
    }

    @Test
    void days_are_told_in_the_persons_order() {
        Wording american = Wording.METRIC.in(Units.US);

        assertThat(american.said("Sat 28 Nov, from 3 to 12 March 2027, 5 May"))
                .isEqualTo("Sat Nov 28, from March 3 to 12, 2027, May 5");
        assertThat(Wording.METRIC.said("28 Nov 2026, 5 cm")).isEqualTo("28 Nov 2026, 5 cm");
    }

    /** Half a year apart, as the seasons are: June there is December here. */
    @Test
    void months_are_told_by_the_readers_half_of_the_earth() {
        String text = "In early June (December in the south), no later than 31 May (30 November in the south). Look. (In the south look where you saw it.) Bag it.";

        assertThat(Wording.METRIC.said(text)).isEqualTo(text);
        assertThat(Wording.METRIC.inSouth(false).said(text))
                .isEqualTo("In early June, no later than 31 May. Look. Bag it.");
        assertThat(Wording.METRIC.inSouth(true).in(Units.US).said(text))
                .isEqualTo("In early December, no later than November 30. Look. Look where you saw it. Bag it.");
    }

    /** Exact values of NIST SP 811, appendix B. */
    @ParameterizedTest
    @CsvSource({"4 oz, g, us, 113.3980925", "2 lb 8 oz, g, us, 1133.980925", "250, g, us, 250", "1.5 kg, g, us, 1500",
            "3 gal, l, us, 11.35624", "3 gal, l, imperial, 13.63827", "2 pt, l, imperial, 1.136523",
            "1 cup, l, us, 0.236588", "2 us gal, l, metric, 7.570824", "5 ft, m, us, 1.524", "5 ft 6 in, m, us, 1.6764",
            "3 in, cm, us, 7.62", "12 sq yd, m², imperial, 10.03353", "100 sq ft, m², us, 9.290304",
            "45F, °C, us, 7.22222", "-4 °F, °C, us, -20", "7 C, °C, us, 7"})
    void what_is_typed_is_read_into_metric(String typed, String metric, String units, double value) {
        assertThat(Typed.of(typed, metric, metric, Units.of(units).orElseThrow())).isCloseTo(value, within(1e-5));
    }

    @Test
    void a_bare_number_is_in_the_gardens_own_units() {
        assertThat(Typed.of("10", "m²", Typed.own("m²", Units.US), Units.US)).isCloseTo(0.9290304, within(1e-9));
        assertThat(Typed.of("10", "cm", Typed.own("cm", Units.IMPERIAL), Units.IMPERIAL)).isCloseTo(25.4, within(1e-9));
        assertThat(Typed.of("10", "°C", Typed.own("°C", Units.METRIC), Units.METRIC)).isEqualTo(10);
    }

    @ParameterizedTest
    @CsvSource({"4 ft, g", "4 oz oz, g", "ounces, g", "2 lb x, g", "3 gal, l", "45F 3F, °C", "1 cup, l"})
    void what_cannot_be_is_told(String typed, String metric) {
        assertThatIllegalArgumentException().isThrownBy(() -> Typed.of(typed, metric, metric, Units.METRIC))
                .withMessageContaining("must be a").withMessageContaining(typed);
    }
}
