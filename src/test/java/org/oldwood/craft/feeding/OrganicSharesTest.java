package org.oldwood.craft.feeding;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The first season's shares of organic materials, our own beside those in print. */
class OrganicSharesTest {
    @ParameterizedTest(name = "{0} {1}: {5}")
    @CsvFileSource(resources = "/reference/organic-shares.csv", useHeadersInDisplayName = true)
    void our_share_lies_in_print_or_is_told_to_differ(String material, String nutrient, double low, double high,
            String ours, String source, String seen, String why) {
        double share = Data.feed(material).shares().of(Nutrient.valueOf(nutrient));

        assertThat(share >= low && share <= high).as(source).isEqualTo(ours.equals("agrees"));
        assertThat(why == null).as("a row that differs tells why").isEqualTo(ours.equals("agrees"));
    }
}
