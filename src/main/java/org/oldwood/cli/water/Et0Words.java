package org.oldwood.cli.water;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.oldwood.cli.command.Out;
import org.oldwood.craft.water.evapotranspiration.EvapotranspirationDay;

/** Words a day's reference evapotranspiration, with its terms as FAO-56 names them. */
final class Et0Words {
    private Et0Words() {}

    static void print(Out out, LocalDate date, EvapotranspirationDay day, List<String> alsoTaken) {
        out.line("%s: %s mm reference evapotranspiration (Penman-Monteith, FAO-56 eq. 6)"
                .formatted(date, fixed(day.penmanMonteith(), 2)));
        out.line();
        out.columns(2, terms(day));
        out.line();
        for (String words : basis(day, alsoTaken)) {
            out.hanging("  - ", 4, words);
        }
        out.paragraph(
                0,
                "Hargreaves' equation (eq. 52), from the temperatures alone, gives %s mm."
                        .formatted(fixed(day.hargreaves(), 2)));
    }

    /** What the arguments leave open and what was taken for it, before what the day's did. */
    private static List<String> basis(EvapotranspirationDay day, List<String> alsoTaken) {
        List<String> basis = new ArrayList<>(alsoTaken);
        basis.addAll(day.basis());
        return basis;
    }

    private static List<List<String>> terms(EvapotranspirationDay day) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(row("Ra", day.extraterrestrial(), 2, "MJ/m²", "above the air (eq. 21)"));
        rows.add(row("N", day.daylightHours(), 1, "h", "daylight (eq. 34)"));
        rows.add(row("Rs", day.solar(), 2, "MJ/m²", "solar radiation"));
        rows.add(row("Rso", day.clearSky(), 2, "MJ/m²", "under a clear sky (eq. 37)"));
        rows.add(row("Rns", day.netSolar(), 2, "MJ/m²", "kept of it (eq. 38)"));
        rows.add(row("Rnl", day.netLongwave(), 2, "MJ/m²", "lost to the sky (eq. 39)"));
        rows.add(row("Rn", day.netRadiation(), 2, "MJ/m²", "net radiation (eq. 40)"));
        rows.add(row("es", day.saturation(), 3, "kPa", "saturation vapour pressure (eq. 12)"));
        rows.add(row("ea", day.vapour(), 3, "kPa", "actual vapour pressure"));
        rows.add(row("slope", day.slope(), 3, "kPa/°C", "of the vapour pressure curve (eq. 13)"));
        rows.add(row("gamma", day.gamma(), 4, "kPa/°C", "psychrometric constant (eq. 8)"));
        rows.add(row("u2", day.wind(), 2, "m/s", "wind at 2 m"));
        rows.add(row("", day.fromRadiation(), 2, "mm", "driven by radiation"));
        rows.add(row("", day.fromAir(), 2, "mm", "driven by wind and dry air"));
        return rows;
    }

    private static List<String> row(String name, double value, int digits, String unit, String words) {
        return List.of(name, fixed(value, digits) + " " + unit, words);
    }

    private static String fixed(double value, int digits) {
        return String.format(Locale.ROOT, "%." + digits + "f", value);
    }

    /** The two answers for a day. */
    record Day(LocalDate date, double et0Mm, double hargreavesMm) {
        static Day of(LocalDate date, EvapotranspirationDay day) {
            return new Day(date, round(day.penmanMonteith()), round(day.hargreaves()));
        }
    }

    /** The same with all terms. */
    record Terms(
            LocalDate date,
            double et0Mm,
            double hargreavesMm,
            double raMj,
            double daylightHours,
            double rsMj,
            double rsoMj,
            double rnsMj,
            double rnlMj,
            double rnMj,
            double esKpa,
            double eaKpa,
            double slopeKpaPerC,
            double gammaKpaPerC,
            double windMs,
            double fromRadiationMm,
            double fromAirMm,
            List<String> basis) {
        static Terms of(LocalDate date, EvapotranspirationDay day, List<String> alsoTaken) {
            return new Terms(
                    date,
                    round(day.penmanMonteith()),
                    round(day.hargreaves()),
                    round(day.extraterrestrial()),
                    round(day.daylightHours()),
                    round(day.solar()),
                    round(day.clearSky()),
                    round(day.netSolar()),
                    round(day.netLongwave()),
                    round(day.netRadiation()),
                    round(day.saturation()),
                    round(day.vapour()),
                    round(day.slope()),
                    round(day.gamma()),
                    round(day.wind()),
                    round(day.fromRadiation()),
                    round(day.fromAir()),
                    Et0Words.basis(day, alsoTaken));
        }
    }

    private static double round(double value) {
        return Math.rint(value * 10_000) / 10_000;
    }
}
