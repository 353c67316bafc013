package org.oldwood.craft.mulching;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.RecordException;
import org.oldwood.words.Words;

/**
 * How much mulch a bed needs now.
 *
 * @param coveredM2 the area to cover: the bed less the bare collars, m²
 * @param depthNowCm the depth that lies there, cm
 * @param depthWantedCm the depth wanted once settled, cm
 * @param layCm how deep to lay the new mulch, before it settles, cm
 * @param cubicMetres its volume as laid, m³
 * @param lines the arithmetic, a line for each step
 */
public record MulchPlan(Mulch mulch, double coveredM2, double depthNowCm, double depthWantedCm, double layCm,
        double cubicMetres, List<String> lines) {
    private static final double MOST_DEPTH_CM = 60;
    private static final double LITRES_PER_M3 = 1000;
    private static final double CM_PER_M = 100;

    /** Nobody measures a heap to the litre. */
    private static final long STEP = 10;

    /** A twentieth of a load is not worth another walk. */
    private static final double TRACE = 0.05;

    /**
     * What is asked.
     *
     * @param areaM2 area of the bed, m²
     * @param gapCm bare ring round each stem, cm
     * @param gapMark how the ring is known, as it stands beside the figure
     * @param depthNowCm depth that lies there, cm
     * @param depthWantedCm depth wanted once settled, cm
     */
    public record Asked(double areaM2, int bushes, double gapCm, String gapMark, double depthNowCm,
            double depthWantedCm) {
        public Asked {
            if (!(areaM2 > 0) || bushes < 0 || gapCm < 0) { throw wrong("area-not-positive of-mulch", "area", areaM2); }
            if (!(depthWantedCm > 0 && depthWantedCm <= MOST_DEPTH_CM && depthNowCm >= 0)) {
                throw wrong("depth-out-of-range", "depth", depthWantedCm);
            }
        }

        private static RecordException wrong(String words, String at, double seen) {
            return new RecordException(Problem.of(words, Place.of(at), seen));
        }
    }

    public static MulchPlan of(Mulch mulch, Asked asked) {
        double covered = MulchVolume.lessCollars(asked.areaM2, asked.bushes, asked.gapCm);
        double missing = Math.max(0, asked.depthWantedCm - asked.depthNowCm);
        double lay = missing * mulch.layFactor().is();
        double volume = MulchVolume.cubicMetres(covered, lay);
        List<String> lines = new ArrayList<>();
        lines.add(coveredLine(asked, covered));
        lines.add("%s cm wanted − %s cm there now = %s cm%s".formatted(Words.amount(asked.depthWantedCm),
                Words.amount(asked.depthNowCm), Words.amount(missing),
                mulch.layFactor().is() > 1 ? ", laid " + Words.amount(lay) + " cm deep because it settles" : ""));
        lines.add(Words.amount(covered) + " m² × " + Words.amount(lay) + " cm = " + Words.amount(volume) + " m³");
        return new MulchPlan(mulch, covered, asked.depthNowCm, asked.depthWantedCm, lay, volume, List.copyOf(lines));
    }

    private static String coveredLine(Asked asked, double covered) {
        return asked.bushes == 0 || asked.gapCm == 0 ? Words.amount(asked.areaM2) + " m² to cover"
                : "%s m² − %s%s%s cm%s round the stems = %s m² to cover".formatted(Words.amount(asked.areaM2),
                        asked.bushes, asked.bushes == 1 ? " collar of " : " collars of ", Words.amount(asked.gapCm),
                        asked.gapMark, Words.amount(covered));
    }

    /** Its weight as laid, kg. */
    public double kg() { return cubicMetres * mulch.density().is(); }

    /** The weight of what is missing of its depth, once settled, kg/m². */
    public double kgPerM2() {
        return Math.max(0, depthWantedCm - depthNowCm) / CM_PER_M * mulch.density().is();
    }

    public double litres() { return cubicMetres * LITRES_PER_M3; }

    /** {@code 850 l}, {@code 2.3 m³}; for a tub {@code 6 l}, and never none where some is wanted. */
    public String volumeWords() {
        if (litres() < 2 * STEP) { return (long) Math.ceil(litres() - TRACE) + " l"; }
        return litres() < LITRES_PER_M3 ? Math.round(litres() / STEP) * STEP + " l"
                : Words.amount(Math.round(cubicMetres * 10) / 10.0) + " m³";
    }

    /** Barrows or bags of so many litres, not rounded. */
    public double loads(double litresEach) {
        return litres() / litresEach;
    }

    /** Bales by weight, not rounded; empty where it does not come in bales. */
    public Optional<Double> bales() {
        return mulch.bale().map(bale -> kg() / bale.kg().is());
    }

    /** Whole barrows or bags of so many litres; a trace beyond the last goes on top of it. */
    public long wholeLoads(double litresEach) {
        return whole(loads(litresEach));
    }

    /** Whole bales by weight; empty where it does not come in bales. */
    public Optional<Long> wholeBales() {
        return bales().map(MulchPlan::whole);
    }

    private static long whole(double loads) { return (long) Math.ceil(loads < 1 ? loads : loads - TRACE); }

    /** Sheets of paper or card under it, rounded up. */
    public long sheets(Underlay underlay) {
        return (long) Math.ceil(coveredM2 * underlay.sheetsPerM2() - 1e-9);
    }
}
