package org.oldwood.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.oldwood.words.Dates;

/**
 * One bed: its ground, what was given, what is due, the water it holds.
 *
 * @param facts area, soil and what else is declared
 * @param tests the last soil tests, the newest first
 * @param given what was given this season and last, the newest first
 * @param food what each stand needs and what of it is due
 * @param mulch what mulch lies there; may be empty
 * @param due what is due, from the plan
 * @param water the water it holds; absent where that cannot be said
 * @param waterWords the same in words, or why it cannot be said
 */
record BedCard(String name, String id, List<String> facts, List<Line> tests, List<Line> given, List<Food> food,
        String mulch, List<Line> due, Optional<Water> water, String waterWords) {

    /**
     * A day and what was or is to be.
     *
     * @param day year-month-day
     */
    record Line(String day, String dayWords, String words) {
        static Line of(LocalDate day, String words) { return new Line(day.toString(), Dates.shortDay(day), words); }
    }

    /**
     * The food of one stand.
     *
     * @param nutrients what is due of what is needed, nutrient by nutrient
     */
    record Food(String stand, List<Nutrient> nutrients) {}

    /** What is due of one nutrient, and what the season needs of it, g/m². */
    record Nutrient(String due, String need) {}

    /**
     * The water that the roots can reach, over the season, in mean weather from today on.
     *
     * @param line its outline, 0 to 100 across and down
     * @param today where today lies
     * @param share held today, per cent
     * @param from the first day
     * @param to the last day
     */
    record Water(String line, String today, long share, String from, String to) {}
}
