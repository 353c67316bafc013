package org.oldwood.craft.cuttings;

import java.time.LocalDate;
import java.util.Optional;
import org.oldwood.crop.Stage;
import org.oldwood.store.Fields;

/**
 * A day in a lot's life, told by the plant and not by the month: so many days after a stage of growth in the lot's
 * first growing season or one near it, or after striking.
 *
 * @param stage the stage; empty for days after striking
 * @param season seasons from the lot's first growing season: −1 the one before, 0 the first
 * @param plusDays days after the stage or the striking; below 0 for days before
 */
record Anchor(Optional<Stage> stage, int season, int plusDays) {

    static Anchor read(Fields parent, String key) {
        return parent.object(key).map(Anchor::of).orElseGet(() -> {
            parent.wrong(key, "missing-key", "is missing; it must name a stage", "");
            return new Anchor(Optional.empty(), 0, 0);
        });
    }

    private static Anchor of(Fields fields) {
        Optional<Stage> stage = fields.optionalOneOf("stage", Stage.keys()).flatMap(Stage::find);
        Anchor anchor = new Anchor(stage, fields.count("season", -2, 5, 0), fields.count("plusDays", -200, 400, 0));
        fields.done();
        return anchor;
    }

    /** The day, with its ±, for a lot struck on {@code struck} whose seasons are {@code growth}. */
    LikelyDay day(LocalDate struck, Growth growth, int laterSeasons) {
        return stage.map(
                        s -> LikelyDay.of(growth.date(season + laterSeasons, s)).plusDays(plusDays))
                .orElseGet(() -> new LikelyDay(struck.plusDays(plusDays), 0, "days after striking"));
    }
}
