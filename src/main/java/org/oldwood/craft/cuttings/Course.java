package org.oldwood.craft.cuttings;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Range;
import org.oldwood.crop.Yield;

/**
 * What is chosen for a lot: how it is raised, what is cut at planting, what the plants then bear.
 *
 * @param crop what a plant bears in each season after planting
 */
public record Course(Method method, PlantingOut.Cut cut, CropCourse crop) {

    /**
     * The course of a crop; empty where the crop, the method, the cut or its yields are not known.
     *
     * @param method the method's id; empty for the default of the form
     * @param cut the cut's id; empty for the default of the form
     */
    public static Optional<Course> of(Crop crop, String form, Optional<String> method, Optional<String> cut) {
        Optional<Propagation> all = Propagation.of(crop);
        Optional<Method> raised = all
                .flatMap(known -> method.isPresent() ? known.method(method.get(), form) : known.methodFor(form));
        Optional<PlantingOut.Cut> planted = all.flatMap(known -> known.plantingOut().cutsFor(form).stream()
                .filter(it -> cut.isEmpty() || it.id().equals(cut.get())).findFirst());
        Optional<CropCourse> yields = CropCourse.of(crop, form);
        return raised.isPresent() && planted.isPresent() && yields.isPresent()
                ? Optional.of(new Course(raised.get(), planted.get(), yields.get()))
                : Optional.empty();
    }

    /** The share of a full crop in a season after planting, the first being 1. */
    public double share(int season) {
        return season < 1 ? 0 : crop.share(season + ahead());
    }

    /** The first season after planting that bears. */
    public int firstPick() {
        return Math.max(1, crop.firstPick() - ahead());
    }

    /** The first season after planting that bears a full crop. */
    public int fullCrop() {
        return Math.max(1, crop.fullCrop() - ahead());
    }

    private int ahead() { return (int) Math.round(cut.seasonsAhead().is()); }

    /**
     * How much a plant bears in each season after planting.
     *
     * @param percent percent of a full crop in season 1 (the first it grows where it is to stay), 2 and so on; the last
     *     holds for all that follow
     * @param perPlant the full crop of one plant, kg
     */
    public record CropCourse(List<Double> percent, Range perPlant, String words, List<String> sources) {
        public CropCourse {
            percent = List.copyOf(percent);
            sources = List.copyOf(sources);
            if (percent.isEmpty()) {
                throw new IllegalArgumentException("a course needs the percentage of one season");
            }
        }

        public static Optional<CropCourse> of(Crop crop, String form) {
            Optional<Yield> yield = Yield.read(crop);
            return yield.flatMap(all -> all.series(form)).flatMap(series -> perPlant(crop, yield.get(), form)
                    .map(kg -> new CropCourse(series.percent(), kg, series.words(), series.sources())));
        }

        /** A yield per metre of row is shared out by the distance of the plants. */
        private static Optional<Range> perPlant(Crop crop, Yield yield, String form) {
            return Optional.ofNullable(yield.mature().get(form))
                    .map(figure -> Range.of(figure).times(figure.unit().equals("kg/m") ? crop.inRowM(form) : 1));
        }

        /** The share of a full crop, from 0 to 1, in a season after planting, the first being 1. */
        public double share(int season) {
            return season < 1 ? 0 : percent.get(Math.min(season, percent.size()) - 1) / 100;
        }

        /** The first season after planting in which anything is borne. */
        public int firstPick() {
            return IntStream.range(1, percent.size()).filter(season -> share(season) > 0).findFirst()
                    .orElse(percent.size());
        }

        /** The first season after planting that bears as much as the last of the series. */
        public int fullCrop() {
            double full = share(percent.size());
            return IntStream.range(1, percent.size()).filter(season -> share(season) >= full).findFirst()
                    .orElse(percent.size());
        }
    }
}
