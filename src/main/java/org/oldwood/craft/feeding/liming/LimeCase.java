package org.oldwood.craft.feeding.liming;

import java.util.Optional;
import java.util.OptionalDouble;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.RecordException;
import org.oldwood.words.Words;

/**
 * A piece of ground whose pH is to change.
 *
 * @param texture its texture by name, where known
 * @param measuredPh the pH of the last test, 3 to 10; absent where there is none
 * @param targetPh the pH wanted, 3 to 10
 * @param layer how deep to work, and how stony it is
 * @param areaM2 area, m²
 * @param standing whether bushes stand on it, so that nothing can be dug in
 * @param givenSinceTest g/m² given and not tested since, as ground limestone, or as sulphur
 * @param stillWorking g/m² given before and not shown yet, as the same
 */
public record LimeCase(Optional<String> texture, OptionalDouble measuredPh, double targetPh, Layer layer, double areaM2,
        boolean standing, double givenSinceTest, double stillWorking) {
    private static final double LEAST_PH = 3;
    private static final double MOST_PH = 10;

    /**
     * The layer of soil to put right.
     *
     * @param depthCm depth, cm
     * @param stonesPercent stones by volume, %
     */
    public record Layer(double depthCm, double stonesPercent) {}

    public LimeCase {
        measuredPh.ifPresent(ph -> checkPh(ph, "measured pH"));
        checkPh(targetPh, "target pH");
        if (!(areaM2 > 0)) { throw wrong("area-not-positive of-lime", "area", areaM2); }
        if (!(layer.depthCm > 0 && layer.stonesPercent >= 0 && layer.stonesPercent < 100)) {
            throw wrong("layer-out-of-range", "depth", layer.depthCm, layer.stonesPercent);
        }
    }

    double notShown() { return givenSinceTest + stillWorking; }

    /** What to do before more follows on what was given since the test. */
    Optional<String> retest(double more) {
        return more > 0 && givenSinceTest > 0
                ? Optional.of("What was given since the test may be enough: test again before you give more.")
                : Optional.empty();
    }

    /** Refuses a pH that no soil has. */
    public static void checkPh(double ph, String what) {
        if (!(ph >= LEAST_PH && ph <= MOST_PH)) { throw wrong("ph-out-of-range", what, Words.fixed(ph, 2)); }
    }

    private static RecordException wrong(String words, String what, Object... said) {
        return new RecordException(Problem.of(words, Place.of(what), said));
    }
}
