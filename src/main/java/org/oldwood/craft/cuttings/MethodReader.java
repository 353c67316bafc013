package org.oldwood.craft.cuttings;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.craft.cuttings.survival.Phase;
import org.oldwood.craft.cuttings.survival.Survival;
import org.oldwood.craft.cuttings.survival.UncertainRate;
import org.oldwood.crop.Figure;
import org.oldwood.store.Fields;

/** Reads the methods of a crop's {@code cuttings} section. */
final class MethodReader {
    static final List<String> IDS =
            List.of("hardwood", "disbudded", "tip-layer", "layer", "sucker", "root", "softwood", "division");

    private MethodReader() {}

    static Method read(Fields fields) {
        Method method = new Method(
                fields.oneOf("id", IDS),
                fields.text("name"),
                fields.texts("forms"),
                fields.flag("inPlace", false),
                fields.oneOf("from", List.of("shoot", "tip", "branch", "root", "sucker", "crown")),
                measures(fields),
                times(fields),
                fields.object("survival").map(MethodReader::phases).orElseGet(() -> noSurvival(fields)),
                fields.texts("steps"),
                fields.texts("cautions"));
        fields.done();
        return method;
    }

    private static Method.Measures measures(Fields fields) {
        return new Method.Measures(
                Figure.optional(fields, "lengthCm"),
                Figure.optional(fields, "budsKept"),
                Figure.optional(fields, "budsAboveSoil"),
                Figure.optional(fields, "depthCm"),
                Figure.optional(fields, "spacingCm"),
                Figure.optional(fields, "rowGapCm"),
                Figure.optional(fields, "softTipPercent"));
    }

    private static Method.Times times(Fields fields) {
        Fields rooted = need(fields, "rooted");
        Fields lift = need(fields, "lift");
        Fields window = need(fields, "window");
        Method.Times times = new Method.Times(
                window(window),
                Anchor.read(rooted, "tellsFrom"),
                Sourced.read(rooted, Anchor.read(rooted, "at")),
                window(lift),
                lift.count("orSeasonsLater", 0, 3, 0));
        window.done();
        rooted.done();
        lift.done();
        return times;
    }

    private static Sourced<Method.Window> window(Fields fields) {
        return Sourced.read(fields, new Method.Window(Anchor.read(fields, "from"), Anchor.read(fields, "to")));
    }

    static Fields need(Fields fields, String key) {
        Optional<Fields> inner = fields.object(key);
        if (inner.isEmpty()) {
            fields.wrong(key, "missing-key", "is missing; it must be an object {…}", "");
        }
        return inner.orElse(fields);
    }

    private static Method.Phases phases(Fields fields) {
        Map<Phase, UncertainRate> rates = new EnumMap<>(Phase.class);
        List<Method.PhaseFigures> figures = new ArrayList<>();
        for (Phase phase : Phase.values()) {
            fields.object(phase.key()).ifPresent(inner -> {
                Method.PhaseFigures pair = phaseFigures(phase, inner);
                figures.add(pair);
                rates.put(phase, rate(pair));
            });
        }
        fields.done();
        return new Method.Phases(new Survival(rates), List.copyOf(figures));
    }

    private static Method.PhaseFigures phaseFigures(Phase phase, Fields fields) {
        Method.PhaseFigures pair =
                new Method.PhaseFigures(phase, Figure.read(fields, "rate"), Figure.read(fields, "weight"));
        if (!(pair.percent().is() > 0 && pair.percent().is() <= 100)) {
            fields.wrong("rate", "rate-out-of-range", "must be above 0 and at most 100 %", "");
        }
        if (!(pair.weight().is() > 0)) {
            fields.wrong("weight", "weight-out-of-range", "must be above 0 plants", "");
        }
        fields.done();
        return pair;
    }

    private static UncertainRate rate(Method.PhaseFigures pair) {
        double percent = Math.min(100, Math.max(1e-6, pair.percent().is()));
        return UncertainRate.of(percent / 100, Math.max(1e-6, pair.weight().is()));
    }

    private static Method.Phases noSurvival(Fields fields) {
        fields.wrong("survival", "missing-key", "is missing; it must give the rooting rate", "");
        return new Method.Phases(new Survival(Map.of()), List.of());
    }
}
