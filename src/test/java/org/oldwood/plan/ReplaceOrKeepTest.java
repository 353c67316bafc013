package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who has decided to keep an old bush is left in peace for five years. */
class ReplaceOrKeepTest {
    private static boolean asked(SmallGarden garden, String day) {
        return garden.plan(day).tasks().stream().filter(task -> task.state() == Task.State.OPEN)
                .filter(task -> !task.window().first().isAfter(garden.on(day).date()))
                .anyMatch(task -> task.rule().id().equals("grub-old"));
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"north, skipped, 2027, 2027-01-10", "north, done, 2027, 2027-01-10",
            "south, skipped, 2026-27, 2026-07-10"})
    void a_bush_that_is_kept_is_asked_about_again_after_five_seasons(String half, String noted, String season,
            String day) {
        SmallGarden garden = (half.equals("north") ? SmallGarden.north() : SmallGarden.south()).note("1995-12-10",
                "'planted','plant':'bc-1','crop':'blackcurrant','bed':'a'");
        assertThat(asked(garden, day)).isTrue();

        garden.note(day, "'%s','task':'grub-old@bc-1@%s'".formatted(noted, season));

        int year = garden.on(day).date().getYear();
        String later = day.substring(4);
        for (int ago = 0; ago < 5; ago++) {
            assertThat(asked(garden, year + ago + later)).as(ago + " seasons after").isFalse();
        }
        assertThat(asked(garden, year + 5 + later)).isTrue();
    }
}
