package org.oldwood.craft.feeding.liming;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.oldwood.craft.feeding.Doses;
import org.oldwood.craft.feeding.FeedingProfile;
import org.oldwood.craft.feeding.Need;
import org.oldwood.craft.feeding.SoilClasses;
import org.oldwood.crop.Figure;
import org.oldwood.words.Words;

/**
 * How much of a liming material a piece of ground needs, split into doses that do no harm.
 *
 * <p>The requirement is a factor for the texture times the gap in pH, for ground limestone worked into 20 cm; then come
 * stones, what the test does not show yet, the neutralising value of the material, and the largest single dose. Ground is
 * never limed without a test, nor from pH 7; a crop of acid soils only below its floor.
 *
 * <p>Source: RB209 section 1 (AHDB 2023), Table 1.2 and pages 12-15; checked against
 * {@code reference/lime-requirement.csv}. Print differs by a factor of two and more: garden tables, for a shallower
 * layer, ask about half.
 */
public final class LimePlan {
    /** A tonne on a hectare. */
    private static final double G_PER_M2 = 100;

    /** What two pH written with one decimal differ by is not quite a tenth in binary. */
    private static final double ROUNDING = 1e-9;

    private static final String NOT_FOR_GARDENS = "not-for-gardens";

    private final Liming tables;
    private final SoilClasses soils;
    private final LimeCase asked;
    private final Lime lime;
    private final boolean acidSoil;
    private final List<String> lines = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final Set<String> sources = new LinkedHashSet<>();

    private LimePlan(Liming tables, SoilClasses soils, LimeCase asked, Lime lime, boolean acidSoil) {
        this.tables = tables;
        this.soils = soils;
        this.asked = asked;
        this.lime = lime;
        this.acidSoil = acidSoil;
    }

    /** The plan for ground with that crop on it, or with none of acid soils. */
    public static PhPlan of(Liming tables, SoilClasses soils, LimeCase asked, Lime lime,
            Optional<FeedingProfile> profile) {
        boolean acidSoil = profile.filter(FeedingProfile::acidSoil).isPresent();
        return profile.flatMap(each -> acidRefusal(asked, each))
                .orElseGet(() -> new LimePlan(tables, soils, asked, lime, acidSoil).plan());
    }

    private static Optional<PhPlan> acidRefusal(LimeCase asked, FeedingProfile profile) {
        if (!profile.acidSoil() || profile.limeOnlyBelow().isEmpty()) { return Optional.empty(); }
        double floor = profile.limeOnlyBelow().get().is();
        if (asked.measuredPh().isPresent() && asked.measuredPh().getAsDouble() < floor) { return Optional.empty(); }
        return Optional.of(PhPlan.refused(
                "This crop wants acid soil: no lime unless a test shows a pH below %s%s.".formatted(Words.amount(floor),
                        asked.measuredPh().isPresent()
                                ? "; yours showed %s".formatted(Words.amount(asked.measuredPh().getAsDouble()))
                                : "; there is no test"),
                profile.limeOnlyBelow().get().sources()));
    }

    private PhPlan plan() {
        Optional<PhPlan> refusal = refusal();
        if (refusal.isPresent()) { return refusal.get(); }
        double limestone = Math.max(0, requirement() - asked.notShown());
        if (asked.notShown() > 0) {
            lines.add("less %s g/m² given and not shown by the test = %s g/m²".formatted(Words.amount(asked.notShown()),
                    Words.amount(limestone)));
        }
        boolean slight = target() - asked.measuredPh().getAsDouble() < tables.figure("leastGap").is() - ROUNDING;
        if (limestone > 0 && (slight || limestone < tables.figure("leastUseful").is())) {
            notes.add(0, "That little is within the error of a test: leave it, and test again.");
            limestone = 0;
        }
        return doses(ofMaterial(limestone));
    }

    private Optional<PhPlan> refusal() {
        if (lime.is(NOT_FOR_GARDENS)) { return Optional.of(refused(lime.avoid().orElse("Not for gardens."))); }
        if (asked.measuredPh().isEmpty()) {
            return Optional.of(refused("No lime without a test: measure the pH and note it as a soil test."));
        }
        double never = tables.neverFrom();
        if (asked.measuredPh().getAsDouble() >= never) {
            sources.addAll(tables.figure("neverLimeFrom").sources());
            return Optional.of(refused(
                    "No lime at pH %s or above. Leaves that yellow between green veins lack iron or manganese, which such soil locks up: bark as mulch, no ash (common practice)."
                            .formatted(Words.amount(never))));
        }
        return Optional.empty();
    }

    private PhPlan refused(String why) { return PhPlan.refused(why, List.copyOf(sources)); }

    /** g/m² of ground limestone for the layer, stones taken off. */
    private double requirement() {
        double ph = asked.measuredPh().getAsDouble();
        double factor = factor();
        sources.addAll(tables.factorSources());
        double tonnes = factor * Math.max(0, target() - ph);
        double gPerM2 = tonnes * G_PER_M2;
        lines.add("%s t/ha per pH unit × (%s − %s) = %s t/ha = %s g/m² of ground limestone".formatted(
                Words.amount(factor), Words.amount(target()), Words.amount(ph), Words.amount(tonnes),
                Words.amount(gPerM2)));
        otherTable(ph, gPerM2);
        double stones = asked.layer().stonesPercent();
        if (stones <= 0 || gPerM2 <= 0) { return gPerM2; }
        double less = gPerM2 * (1 - stones / 100);
        lines.add("less " + Words.amount(stones) + " % stones = " + Words.amount(less) + " g/m²");
        return less;
    }

    /** In proportion down to the depth of the table, then the subsoil's factor for what lies below. */
    private double factor() {
        double top = textureFactor();
        double depth = Math.min(asked.layer().depthCm(), tables.figure("deepest").is());
        double tableDepth = tables.figure("tableDepth").is();
        double factor = top * Math.min(1, depth / tableDepth)
                + tables.figure("subsoilFactor").is() * Math.max(0, depth / tableDepth - 1);
        if (depth != tableDepth) {
            lines.add("factor for %s cm: %s (for %s cm: %s)".formatted(Words.amount(depth), Words.amount(factor),
                    Words.amount(tableDepth), Words.amount(top)));
        }
        return factor;
    }

    private double textureFactor() {
        if (asked.texture().isEmpty()) {
            notes.add("Texture not known: reckoned as sand, which needs least. Note the texture.");
            return tables.factor("sands");
        }
        double factor = tables.factor(row(asked.texture().get()).lime());
        return peat() ? factor * tables.figure("peatTimes").is() : factor;
    }

    private boolean peat() { return soils.organic(asked.texture()); }

    private double target() { return aim(tables, soils, asked); }

    /** The pH to aim at: peat need not be as sweet as mineral soil. */
    public static double aim(Liming tables, SoilClasses soils, LimeCase asked) {
        return soils.organic(asked.texture()) ? Math.min(asked.targetPh(), tables.figure("peatTarget").is())
                : asked.targetPh();
    }

    private SoilClasses.Row row(String texture) {
        return soils.of(texture).orElseThrow(() -> Need.unknownTexture(soils, texture));
    }

    private void otherTable(double ph, double gPerM2) {
        if (gPerM2 <= 0 || asked.texture().isEmpty()) { return; }
        String texture = asked.texture().get();
        if (target() == tables.gardenTarget()) {
            tables.gardenTableGPerM2(row(texture).gardenLime(), ph)
                    .ifPresent(other -> disagrees("an American garden table", other));
        }
        tables.southAfrica().gPerM2(texture, ph, target())
                .ifPresent(other -> disagrees("a South African table", other));
    }

    private void disagrees(String who, double gPerM2) {
        double left = gPerM2 - asked.notShown();
        if (left <= 0) { return; }
        notes.add("Print disagrees: " + who + " asks " + Words.amount(left) + " g/m² here, for a shallower layer.");
    }

    private double ofMaterial(double limestone) {
        double grams = lime.value().inPlaceOf(limestone, tables.reference());
        if (limestone > 0) {
            lines.add("as %s (neutralising value %s %% CaO = %s %% CaCO3): × %s / %s = %s g/m²".formatted(lime.name(),
                    Words.amount(lime.value().percentCaO()), Words.amount(lime.value().percentCaCO3()),
                    Words.amount(tables.reference().percentCaO()), Words.amount(lime.value().percentCaO()),
                    Words.amount(grams)));
            sources.addAll(lime.neutralising().sources());
        }
        return grams;
    }

    private PhPlan doses(double gPerM2) {
        double most = mostAtOnce();
        List<Double> doses = Doses.equal(gPerM2, most).stream().map(each -> each * asked.areaM2()).toList();
        if (doses.size() > 1) {
            lines.add("at most %s g/m² at once, so %s doses of %s g/m²".formatted(Words.amount(most), doses.size(),
                    Words.amount(gPerM2 / doses.size())));
        }
        if (acidSoil) { asked.retest(gPerM2).ifPresent(notes::add); }
        if (gPerM2 > 0 && peat()) {
            notes.add("Peat: pH %s is enough there; lime little and often, or the top goes soft."
                    .formatted(Words.amount(tables.figure("peatTarget").is())));
            sources.addAll(tables.figure("peatTarget").sources());
        }
        remarks(gPerM2);
        harm();
        return new PhPlan(Optional.empty(), gPerM2, doses, most * asked.areaM2(),
                tables.figure("monthsBetweenDoses").is(), acidSoil, List.copyOf(lines), List.copyOf(notes),
                List.copyOf(sources));
    }

    private double mostAtOnce() {
        String name = acidSoil ? "largestDoseAcidSoil" : asked.standing() ? "largestDoseSurface" : "largestDoseDugIn";
        sources.addAll(tables.figure(name).sources());
        double most = lime.value().inPlaceOf(tables.figure(name).is(), tables.reference());
        return lime.yearlyMost().isPresent() ? Math.min(most, lime.yearlyMost().get().is()) : most;
    }

    private void harm() {
        double ph = asked.measuredPh().orElse(0);
        Figure harmful = tables.figure("harmfulBelow");
        Figure over = tables.figure("overLimedAbove");
        if (ph < harmful.is() && target() >= harmful.is()) {
            notes.add("Below pH " + Words.amount(harmful.is()) + harmful.seen().beside()
                    + " manganese in the soil may harm some fruit.");
            sources.addAll(harmful.sources());
        }
        if (target() > over.is()) {
            notes.add("Above pH " + Words.amount(over.is()) + over.seen().beside()
                    + " iron and manganese fall short: aim lower.");
            sources.addAll(over.sources());
        }
    }

    private void remarks(double gPerM2) {
        if (gPerM2 <= 0) { return; }
        double mgo = lime.mgoIn(gPerM2);
        if (mgo > 0) { notes.add("It brings " + Words.amount(mgo) + " g/m² of magnesia (MgO) as well."); }
        lime.avoid().ifPresent(notes::add);
        if (!asked.standing() && gPerM2 > tables.figure("deepHalfAbove").is()) {
            notes.add("Dig half in deep, and work the other half into the top afterwards.");
        }
        if (asked.standing()) { notes.add("Lime on the surface takes a year or more to work downwards."); }
    }
}
