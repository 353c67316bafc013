package org.oldwood.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StemsTest {
    @Test
    void reads_classes_as_people_write_them() {
        Stems stems = Stems.parse("1=5, 2=4,3=4,4+=3");

        assertThat(stems).isEqualTo(Stems.ofOpen(5, 4, 4, 3)).hasToString("1=5,2=4,3=4,4+=3");
        assertThat(stems.label(4)).isEqualTo("4+");
        assertThat(stems.label(3)).isEqualTo("3");
        assertThat(stems.total()).isEqualTo(16);
        assertThat(stems.from(3)).isEqualTo(7);
        assertThat(stems.between(2, 3)).isEqualTo(8);
    }

    @Test
    void a_class_that_is_not_named_is_unknown_and_not_none() {
        Stems stems = Stems.parse("2=4,3=0");

        assertThat(stems.knows(1)).isFalse();
        assertThat(stems.knows(3)).isTrue();
        assertThat(stems.knows(4)).isTrue();
        assertThat(stems.isComplete()).isFalse();
        assertThat(stems.firstUnknown()).hasValue(1);
        assertThat(stems).isNotEqualTo(Stems.of(0, 4, 0)).hasToString("2=4,3=0");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|',
            value = {"five | is not an age", "1=5,1=4 | given twice", "1=-2 | from 0 to 10000",
                    "0=2 | an age of stems must be a whole number from 1 to 60", "1=x | the number of stems must be",
                    "2+=3,4=1 | only the oldest class may be open", "4+=1,4=2 | ge 4", "=4 | is not an age",})
    void says_what_is_wrong_with_a_count(String line, String message) {
        assertThatThrownBy(() -> Stems.parse(line)).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(message);
    }

    @Test
    void a_season_makes_every_stem_a_year_older() {
        assertThat(Stems.of(5, 4, 3).aged(7, 4)).isEqualTo(Stems.of(7, 5, 4, 3));
        assertThat(Stems.of(5, 4, 3, 2).aged(7, 4)).isEqualTo(Stems.ofOpen(7, 5, 4, 5));
        assertThat(Stems.ofOpen(5, 4).aged(7, 6)).isEqualTo(Stems.ofOpen(7, 5, 4));
        assertThat(Stems.of(5, 4).aged(7, 3)).isEqualTo(Stems.of(7, 5, 4));
        assertThat(Stems.NONE.aged(6, 4)).isEqualTo(Stems.of(6));
    }

    @Test
    void what_was_unknown_stays_unknown_a_year_on() {
        Stems older = Stems.parse("2=4,3=3").aged(8, 4);

        assertThat(older.knows(1)).isTrue();
        assertThat(older.knows(2)).isFalse();
        assertThat(older).hasToString("1=8,3=4,4=3");
    }

    @Test
    void no_more_can_be_taken_than_there_is() {
        assertThat(Stems.of(5, 4).without(2, 4)).isEqualTo(Stems.of(5, 0));
        assertThatThrownBy(() -> Stems.of(5, 4).without(2, 5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Stems.of(1, -1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void what_was_not_counted_is_reckoned_as_new_shoots_or_none() {
        assertThat(Stems.parse("2=4,4+=3").reckoned(8)).isEqualTo(Stems.ofOpen(8, 4, 0, 3));
        assertThat(Stems.parse("1=0,3=3").reckoned(8)).isEqualTo(Stems.of(0, 0, 3));
        assertThat(Stems.NONE.reckoned(8)).isEqualTo(Stems.NONE);
    }

    @Test
    void counts_outside_the_classes_are_none() {
        Stems stems = Stems.of(5, 4);

        assertThat(stems.at(0)).isZero();
        assertThat(stems.at(2)).isEqualTo(4);
        assertThat(stems.at(3)).isZero();
        assertThat(stems.between(0, 9)).isEqualTo(9);
        assertThat(stems.oldest()).isEqualTo(2);
        assertThat(stems.isOpen()).isFalse();
        assertThat(Stems.of(5, 4)).hasSameHashCodeAs(stems).isNotEqualTo(Stems.ofOpen(5, 4));
    }

    @Test
    void the_greatest_age_and_number_may_be_written() {
        assertThat(Stems.parse("60=10000").at(60)).isEqualTo(10_000);
        assertThatThrownBy(() -> Stems.parse("61=1")).hasMessageContaining("from 1 to 60");
        assertThatThrownBy(() -> Stems.parse("1=10001")).hasMessageContaining("10000");
    }
}
