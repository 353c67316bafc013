package org.oldwood.cli.water;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.oldwood.cli.command.Out;
import org.oldwood.craft.water.evapotranspiration.EvapotranspirationDay;
import org.oldwood.words.Words;

/** Words a day's reference evapotranspiration, with its terms as FAO-56 names them. */
final class Et0Words {
    private Et0Words() {}

    /** One term: its key in JSON, its name in print. */
    private record Term(String key, String name, double value, int digits, String unit, String words) {}

    static void print(Out out, LocalDate date, EvapotranspirationDay day, List<String> alsoTaken) {
        out.line("%s: %s mm reference evapotranspiration (Penman-Monteith, FAO-56 eq. 6)".formatted(date,
                fixed(day.penmanMonteith(), 2)));
        out.line();
        out.columns(2, terms(day).stream()
                .map(each -> List.of(each.name(), fixed(each.value(), each.digits()) + " " + each.unit(), each.words()))
                .toList());
        out.line();
        basis(day, alsoTaken).forEach(words -> out.hanging("  - ", 4, words));
        out.paragraph(0, "Hargreaves' equation (eq. 52), from the temperatures alone, gives %s mm."
                .formatted(fixed(day.hargreaves(), 2)));
    }

    /** What the arguments leave open and what was taken for it, before what the day's did. */
    private static List<String> basis(EvapotranspirationDay day, List<String> alsoTaken) {
        return Stream.concat(alsoTaken.stream(), day.basis().stream()).toList();
    }

    private static List<Term> terms(EvapotranspirationDay day) {
        return List.of(new Term("raMj", "Ra", day.extraterrestrial(), 2, "MJ/m²", "above the air (eq. 21)"),
                new Term("daylightHours", "N", day.daylightHours(), 1, "h", "daylight (eq. 34)"),
                new Term("rsMj", "Rs", day.solar(), 2, "MJ/m²", "solar radiation"),
                new Term("rsoMj", "Rso", day.clearSky(), 2, "MJ/m²", "under a clear sky (eq. 37)"),
                new Term("rnsMj", "Rns", day.netSolar(), 2, "MJ/m²", "kept of it (eq. 38)"),
                new Term("rnlMj", "Rnl", day.netLongwave(), 2, "MJ/m²", "lost to the sky (eq. 39)"),
                new Term("rnMj", "Rn", day.netRadiation(), 2, "MJ/m²", "net radiation (eq. 40)"),
                new Term("esKpa", "es", day.saturation(), 3, "kPa", "saturation vapour pressure (eq. 12)"),
                new Term("eaKpa", "ea", day.vapour(), 3, "kPa", "actual vapour pressure"),
                new Term("slopeKpaPerC", "slope", day.slope(), 3, "kPa/°C", "of the vapour pressure curve (eq. 13)"),
                new Term("gammaKpaPerC", "gamma", day.gamma(), 4, "kPa/°C", "psychrometric constant (eq. 8)"),
                new Term("windMs", "u2", day.wind(), 2, "m/s", "wind at 2 m"),
                new Term("fromRadiationMm", "", day.fromRadiation(), 2, "mm", "driven by radiation"),
                new Term("fromAirMm", "", day.fromAir(), 2, "mm", "driven by wind and dry air"));
    }

    private static String fixed(double value, int digits) {
        return String.format(Locale.ROOT, "%." + digits + "f", value);
    }

    /** The two answers for a day. */
    record Day(LocalDate date, double et0Mm, double hargreavesMm) {
        static Day of(LocalDate date, EvapotranspirationDay day) {
            return new Day(date, Words.rounded(day.penmanMonteith(), 4), Words.rounded(day.hargreaves(), 4));
        }
    }

    /** A day with all its terms, as JSON has it. */
    record Terms(LocalDate date, double et0Mm, double hargreavesMm, List<String> basis,
            @JsonAnyGetter Map<String, Double> terms) {
        static Terms of(LocalDate date, EvapotranspirationDay day, List<String> alsoTaken) {
            Map<String, Double> terms = new LinkedHashMap<>();
            Et0Words.terms(day).forEach(each -> terms.put(each.key(), Words.rounded(each.value(), 4)));
            Day answers = Day.of(date, day);
            return new Terms(date, answers.et0Mm(), answers.hargreavesMm(), Et0Words.basis(day, alsoTaken), terms);
        }
    }
}
