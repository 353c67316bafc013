package org.oldwood.craft.feeding.liming;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.oldwood.craft.feeding.Doses;
import org.oldwood.craft.feeding.Need;
import org.oldwood.craft.feeding.SoilClasses;
import org.oldwood.words.Words;

/**
 * How much sulphur, or another acidifier, brings a piece of ground down to the pH of a crop of acid soils; split so
 * that no dose does harm. Refused where the soil holds free lime, where there is no test, and outside the table.
 */
public final class SulphurPlan {
    private static final double DAYS_PER_MONTH = 30;
    private static final int MONTHS_PER_YEAR = 12;

    private final SulphurTable table;
    private final SoilClasses soils;
    private final LimeCase asked;
    private final Acidifier acidifier;
    private final List<String> lines = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final Set<String> sources = new LinkedHashSet<>();

    private SulphurPlan(SulphurTable table, SoilClasses soils, LimeCase asked, Acidifier acidifier) {
        this.table = table;
        this.soils = soils;
        this.asked = asked;
        this.acidifier = acidifier;
    }

    /**
     * The plan.
     *
     * @param freeLime whether the soil fizzes with vinegar
     */
    public static PhPlan of(SulphurTable table, SoilClasses soils, LimeCase asked, Acidifier acidifier,
            boolean freeLime) {
        return new SulphurPlan(table, soils, asked, acidifier).plan(freeLime);
    }

    private PhPlan plan(boolean freeLime) {
        sources.addAll(table.sources());
        Optional<String> why = refusal(freeLime);
        if (why.isPresent()) { return PhPlan.refused(why.get(), List.copyOf(sources)); }
        double ph = asked.measuredPh().getAsDouble();
        String soilClass = soilClass();
        OptionalDouble read = table.gPerM2(soilClass, ph, asked.targetPh());
        double sulphur = read.isEmpty() ? 0 : Math.max(0, read.getAsDouble() - asked.notShown());
        if (read.isPresent() && read.getAsDouble() > 0) { explain(ph, soilClass, read.getAsDouble()); }
        return doses(sulphur);
    }

    private Optional<String> refusal(boolean freeLime) {
        if (freeLime) {
            sources.addAll(table.freeLimeSources());
            return Optional.of("The soil holds free lime (it fizzes with vinegar): sulphur will not bring its pH"
                    + " down. Grow this crop in a tub of acid compost.");
        }
        if (asked.measuredPh().isEmpty()) {
            return Optional.of("No sulphur without a test: measure the pH and note it.");
        }
        if (asked.measuredPh().getAsDouble() > table.highestStart()) {
            return Optional.of("The table ends at pH %s; above it no amount is told. Choose another place, or a tub."
                    .formatted(Words.amount(table.highestStart())));
        }
        return asked.targetPh() < table.target() ? Optional.of(
                "The table reaches down to pH %s; a lower target is not told.".formatted(Words.amount(table.target())))
                : Optional.empty();
    }

    private String soilClass() {
        if (asked.texture().isEmpty()) {
            notes.add("Texture not known: reckoned as sand, which needs least. Note the texture.");
            return "sand";
        }
        String texture = asked.texture().get();
        return soils.of(texture).orElseThrow(() -> Need.unknownTexture(soils, texture)).sulphur();
    }

    private void explain(double ph, String soilClass, double gPerM2) {
        lines.add("from pH %s to %s on %s: %s g/m² of sulphur".formatted(Words.amount(ph),
                Words.amount(asked.targetPh()), soilClass, Words.amount(gPerM2)));
        if (asked.notShown() > 0) {
            lines.add("less " + Words.amount(asked.notShown()) + " g/m² given and not shown by the test");
        }
        double other = table.perUnit(soilClass) * (ph - asked.targetPh()) - asked.notShown();
        if (other > 0) {
            notes.add("Print disagrees: US Extension asks " + Words.amount(other) + " g/m² here, by pH unit.");
        }
        if (ph > table.figure("hardAbove").is()) {
            notes.add("Above pH %s it is hard: much peat or bark is needed as well, and patience."
                    .formatted(Words.amount(table.figure("hardAbove").is())));
            sources.addAll(table.figure("hardAbove").sources());
        }
    }

    private PhPlan doses(double sulphur) {
        double times = acidifier.timesSulphur().is();
        if (times != 1 && sulphur > 0) {
            lines.add("× " + Words.amount(times) + " as " + acidifier.name());
            sources.addAll(acidifier.timesSulphur().sources());
        }
        List<Double> perM2 = asked.standing() ? aroundBushes(sulphur) : beforePlanting(sulphur);
        double months = asked.standing() ? MONTHS_PER_YEAR : table.figure("retestAfter").is() / DAYS_PER_MONTH;
        asked.retest(sulphur).ifPresent(notes::add);
        if (sulphur > 0) {
            notes.add("Give it on moist soil below %s °C; it works over %s to %s months.".formatted(
                    Words.amount(table.figure("coolerThan").is()), Words.amount(table.figure("leadMonths").low()),
                    Words.amount(table.figure("leadMonths").high())));
            sources.addAll(table.figure("coolerThan").sources());
            sources.addAll(table.figure("leadMonths").sources());
        }
        return new PhPlan(Optional.empty(), sulphur * times,
                perM2.stream().map(each -> each * times * asked.areaM2()).toList(),
                mostAtOnce() * times * asked.areaM2(), months, true, List.copyOf(lines), List.copyOf(notes),
                List.copyOf(sources));
    }

    private List<Double> aroundBushes(double sulphur) {
        double most = mostAtOnce();
        sources.addAll(table.figure("yearlyMostAroundBushes").sources());
        if (sulphur > most) { lines.add("at most " + Words.amount(most) + " g/m² a year round standing bushes"); }
        return Doses.largestFirst(sulphur, most);
    }

    private double mostAtOnce() {
        return asked.standing() ? table.figure("yearlyMostAroundBushes").is() : Double.MAX_VALUE;
    }

    private List<Double> beforePlanting(double sulphur) {
        if (sulphur <= table.figure("splitAbove").is()) { return Doses.equal(sulphur, Double.MAX_VALUE); }
        double first = table.figure("firstShare").is();
        sources.addAll(table.figure("firstShare").sources());
        lines.add("above %s g/m² two thirds first, then a new test after %s days, then the rest".formatted(
                Words.amount(table.figure("splitAbove").is()), Words.amount(table.figure("retestAfter").is())));
        return List.of(sulphur * first, sulphur * (1 - first));
    }
}
