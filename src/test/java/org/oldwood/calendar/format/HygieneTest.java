package org.oldwood.calendar.format;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HygieneTest {
    @ParameterizedTest
    @CsvSource({"'a\r\nb','a\nb'", "'a\rb','a\nb'", "'a\u2028b\u0085c','a\nb\nc'",
            "'  leading and trailing\n','leading and trailing'", "'\uFEFFmark','mark'",
            "'bell\u0007 nul\u0000 del\u007F','bell nul del'", "'tab\tstays','tab\tstays'",
            "'half \uD83E bush','half \uFFFD bush'", "'whole \uD83E\uDED0 bush','whole \uD83E\uDED0 bush'",
            "'e\u0301 combined','e\u0301 combined'"})
    void text_is_made_fit(String raw, String fit) { assertThat(Hygiene.text(raw)).isEqualTo(fit); }

    @ParameterizedTest
    @CsvSource({"pruning,pruning", "'winter, cut;a\\b ',winter--cut-a-b", "größe,größe"})
    void a_category_is_one_plain_word(String raw, String word) { assertThat(Hygiene.word(raw)).isEqualTo(word); }
}
