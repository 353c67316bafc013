package org.oldwood.craft.cuttings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Stage;
import org.oldwood.season.Season;

/**
 * A step of a lot's life and when it comes.
 *
 * @param to the last day; the same as {@code from} for a single day
 */
public record Milestone(Step step, Season season, LikelyDay from, LikelyDay to, List<String> sources) {

    /** All steps, in order of time as far as they are known to follow. */
    public static List<Milestone> of(Timeline line, Course course) {
        List<Milestone> steps = new ArrayList<>();
        Method method = course.method();
        Season first = line.growth().first();
        steps.add(day(Step.STRIKE, first, new LikelyDay(line.struckOn(), 0, "struck"), method.window().sources()));
        steps.add(new Milestone(Step.KEEP_MOIST, first, line.moistFrom(), line.moistTo(), List.of("common-practice")));
        steps.add(day(Step.CHECK, first, line.rooted(), method.rooted().sources()));
        if (!method.inPlace()) {
            List<String> sources = method.lift().sources();
            Season lifting = line.inPlace();
            boolean heeledIn = line.lifted() && line.plantOut().equals(line.liftFrom());
            steps.add(new Milestone(Step.LIFT, lifting, line.liftFrom(),
                    line.lifted() ? line.liftFrom() : line.liftBy(), sources));
            steps.add(new Milestone(Step.PLANT_OUT, lifting, line.plantOut(),
                    heeledIn ? line.liftBy() : line.plantOut(), sources));
        }
        steps.addAll(afterPlanting(line, course));
        return List.copyOf(steps);
    }

    private static List<Milestone> afterPlanting(Timeline line, Course course) {
        List<Milestone> steps = new ArrayList<>();
        PlantingOut.Cut cut = course.cut();
        Season inPlace = line.inPlace();
        if (!cut.id().equals("none")) { steps.add(day(Step.CUT_BACK, inPlace, line.plantOut(), cut.sources())); }
        int flowersOff = cut.flowersOff().map(figure -> (int) Math.round(figure.is())).orElse(0);
        for (int season = 0; season < flowersOff; season++) {
            steps.add(new Milestone(Step.FLOWERS_OFF, inPlace.plus(season),
                    stage(line, inPlace.plus(season), Stage.FIRST_FLOWER),
                    stage(line, inPlace.plus(season), Stage.PETAL_FALL),
                    cut.flowersOff().map(Figure::sources).orElse(List.of())));
        }
        List<String> sources = course.bears().sources();
        steps.add(day(Step.FIRST_PICK, line.firstPick(), line.ripe(line.firstPick()), sources));
        if (!line.fullCrop().equals(line.firstPick())) {
            steps.add(day(Step.FULL_CROP, line.fullCrop(), line.ripe(line.fullCrop()), sources));
        }
        return steps;
    }

    private static LikelyDay stage(Timeline line, Season season, Stage stage) {
        return LikelyDay.of(line.growth().stages().date(season, stage));
    }

    private static Milestone day(Step step, Season season, LikelyDay day, List<String> sources) {
        return new Milestone(step, season, day, day, sources);
    }

    /** What happens to a lot, in the usual order. */
    public enum Step {
        STRIKE("strike"),
        KEEP_MOIST("keep moist"),
        CHECK("count the living"),
        LIFT("lift"),
        PLANT_OUT("plant out"),
        CUT_BACK("cut back"),
        FLOWERS_OFF("take the flowers off"),
        FIRST_PICK("first pick"),
        FULL_CROP("full crop");

        private final String words;

        Step(String words) { this.words = words; }

        public String words() { return words; }

        /** For programs: {@code plant-out}. */
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}
