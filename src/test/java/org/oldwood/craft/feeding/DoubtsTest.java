package org.oldwood.craft.feeding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Questions about what was noted, on 10 m², on both sides of each bound of the data. */
class DoubtsTest {
    private static final Doubts DOUBTS = Data.TABLES.doubts();

    private static String about(Feed feed, double grams) { return DOUBTS.about(feed, grams, 10).orElse(""); }

    @ParameterizedTest
    @CsvSource({"5, ", "4.9, 4.9 g here is 0.49 g a square metre: next to nothing. Was it 4.9 kg?", "5000, ",
            "5010, 5.01 kg here is 501 g a square metre: more than anybody gives. Was it 5.01 g?",})
    void a_feed_without_nitrogen_is_questioned_by_its_weight(double grams, String question) {
        assertThat(about(Data.plain("potash", 0, 0, 50), grams))
                .isEqualTo(question == null ? "" : question + " Grams and kilograms are easily mixed up.");
    }

    /** 400 g/m² of 10 % hold 40 g of nitrogen. */
    @Test
    void a_feed_with_nitrogen_is_questioned_by_its_nitrogen() {
        Feed feed = Data.plain("nitrogen", 10, 0, 0);

        assertThat(about(feed, 4000)).isEmpty();
        assertThat(about(feed, 4100)).contains("that would be 41 g N/m². Was it 4.1 g?");
    }

    @Test
    void a_heap_is_given_by_the_barrow() {
        Feed heap = FeedingEdgesTest.heap("\"tags\": [\"compost\"], \"firstYear\": {\"N\": 0}}");

        assertThat(about(heap, 1e6)).isEmpty();
        assertThat(about(heap, 1.01e6)).contains("101 kg a square metre: more than anybody gives");
    }

    @ParameterizedTest
    @CsvSource({"49, nothing", "50, ", "30000, ", "30100, anybody"})
    void lime_has_bounds_of_its_own(double grams, String word) {
        Optional<String> question = DOUBTS.about(Data.lime("ground-limestone"), grams, 10);

        assertThat(question.isPresent()).isEqualTo(word != null);
        assertThat(question.orElse("")).contains(word == null ? "" : word);
    }
}
