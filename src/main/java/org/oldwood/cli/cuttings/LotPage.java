package org.oldwood.cli.cuttings;

import java.util.ArrayList;
import java.util.List;
import org.oldwood.cli.command.Out;
import org.oldwood.craft.cuttings.Forecast;
import org.oldwood.craft.cuttings.LotCounts;
import org.oldwood.craft.cuttings.MeasureWords;
import org.oldwood.craft.cuttings.Method;
import org.oldwood.craft.cuttings.Propagation;
import org.oldwood.craft.cuttings.parent.HealthSigns;
import org.oldwood.craft.cuttings.survival.Survival;
import org.oldwood.crop.Crop;
import org.oldwood.report.LotWords;
import org.oldwood.words.Words;

/** Prints a lot of cuttings, in short or in full. */
final class LotPage {
    private LotPage() {}

    static void summary(Out out, Forecast forecast) { out.paragraph(2, "expected: " + expected(forecast)); }

    /** Plants, first pick and full crop. */
    static String expected(Forecast forecast) {
        return "%s; first pick %s, full crop %s, about %s kg".formatted(LotWords.plants(forecast),
                forecast.line().firstPick().label(), forecast.line().fullCrop().label(),
                Words.one(forecast.expectedKg(forecast.line().fullCrop())));
    }

    static void full(Out out, Crop crop, LotCounts counts, Forecast forecast, Survival survival, List<String> more) {
        out.paragraph(0, forecast.course().method().name() + ", " + crop.name());
        out.paragraph(2, LotWords.stands(counts));
        summary(out, forecast);
        out.line().columns(2, LotWords.timeline(forecast));
        out.line().columns(2, LotWords.crops(forecast)).line();
        measures(forecast.course().method()).forEach(line -> out.hanging("  - ", 4, line));
        LotWords.grounds(forecast, survival).forEach(line -> out.hanging("  - ", 4, line));
        more.forEach(line -> out.hanging("  - ", 4, line));
        LotWords.warnings(forecast).forEach(line -> out.hanging("  ! ", 4, line));
        local(crop).forEach(line -> out.hanging("  ! ", 4, line));
    }

    /** What local rules to check. */
    static List<String> local(Crop crop) {
        return Propagation.of(crop).map(Propagation::health).map(HealthSigns::local).orElse(List.of());
    }

    /** The method's measures, and those that are not known. */
    static List<String> measures(Method method) {
        List<String> lines = new ArrayList<>();
        MeasureWords.known(method).ifPresent(words -> lines.add("Cuttings: " + words + "."));
        List<String> unknown = MeasureWords.unknown(method);
        if (!unknown.isEmpty()) { lines.add("Not known, no figure was found: " + String.join(", ", unknown) + "."); }
        return lines;
    }
}
