package org.oldwood.cli.water;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.oldwood.cli.command.Out;
import org.oldwood.craft.water.evapotranspiration.DayWeather;
import org.oldwood.craft.water.evapotranspiration.EvapotranspirationDay;
import org.oldwood.craft.water.evapotranspiration.Humidity;
import org.oldwood.craft.water.evapotranspiration.Sunshine;
import org.oldwood.season.place.Spot;
import org.oldwood.store.Csv;
import org.oldwood.store.Nearest;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;
import org.oldwood.words.Words;

/**
 * The days of a file with the columns {@code date,tmin,tmax} and any of {@code rhmin,rhmax,wind,sun,radiation}, in °C,
 * %, m/s at 2 m, hours and MJ/m², worked out. Empty cells are values that were not measured; days without temperatures
 * are passed over.
 */
record Et0Table(List<Et0Words.Day> days, double togetherMm, int withoutTemperatures, List<String> basis) {
    private static final List<String> NEEDED = List.of("date", "tmin", "tmax");
    private static final List<String> COLUMNS = List.of("date", "tmin", "tmax", "rhmin", "rhmax", "wind", "sun",
            "radiation", "rain");

    /**
     * Reads the table; every problem is added with its line.
     *
     * @param coast whether radiation that was not measured is that of a coast
     * @param alsoTaken what was taken where the arguments leave something open
     */
    static Et0Table read(String text, String file, Spot spot, boolean coast, List<String> alsoTaken,
            Problems problems) {
        Csv table = Csv.read(text.toLowerCase(Locale.ROOT), file, problems);
        table.columns().stream().filter(name -> !COLUMNS.contains(name))
                .forEach(name -> problems.tell("unknown-column", Place.of(file, 1), name, Nearest.hint(name, COLUMNS)));
        if (!table.columns().containsAll(NEEDED)) {
            problems.tell("missing-column", Place.of(file, 1), String.join(", ", NEEDED), String.join(",", COLUMNS));
            return new Et0Table(List.of(), 0, 0, List.of());
        }
        List<Et0Words.Day> days = new ArrayList<>();
        TreeSet<String> basis = new TreeSet<>();
        int passedOver = 0;
        double sum = 0;
        for (Csv.Row row : table.rows()) {
            if (row.cell("tmin").or(() -> row.cell("tmax")).isEmpty()) {
                passedOver++;
                continue;
            }
            try {
                LocalDate date = LocalDate.parse(row.cell("date").orElse(""));
                EvapotranspirationDay day = EvapotranspirationDay.of(spot.latitude(), spot.heightM(),
                        date.getDayOfYear(), weather(row, table.semicolons(), coast), 0);
                days.add(Et0Words.Day.of(date, day));
                basis.addAll(day.basis());
                sum += day.penmanMonteith();
            } catch (DateTimeException | IllegalArgumentException e) {
                problems.tell("impossible-weather", row.place(), String.valueOf(e.getMessage()));
            }
        }
        return new Et0Table(days, Math.rint(sum * 100) / 100, passedOver,
                Stream.concat(alsoTaken.stream(), basis.stream()).toList());
    }

    private static DayWeather weather(Csv.Row row, boolean semicolons, boolean coast) {
        Function<String, OptionalDouble> number = name -> row.cell(name).map(cell -> Csv.number(cell, semicolons))
                .map(Double::parseDouble).map(OptionalDouble::of).orElse(OptionalDouble.empty());
        if (row.cell("tmin").isEmpty() || row.cell("tmax").isEmpty()) {
            throw new IllegalArgumentException("tmin and tmax must both be given");
        }
        return new DayWeather(number.apply("tmin").getAsDouble(), number.apply("tmax").getAsDouble(),
                Humidity.of(number.apply("rhmin"), number.apply("rhmax")), number.apply("wind"),
                new Sunshine(number.apply("sun"), number.apply("radiation"), coast));
    }

    void print(Out out) {
        out.line("date        a day    Hargreaves");
        days.forEach(day -> out
                .line(String.format(Locale.ROOT, "%s  %.2f mm  %.2f mm", day.date(), day.et0Mm(), day.hargreavesMm())));
        out.line(String.format(Locale.ROOT, "together    %.1f mm in %s", togetherMm,
                Words.count(days.size(), "day", "days")));
        if (withoutTemperatures > 0) {
            out.paragraph(0, Words.count(withoutTemperatures, "day", "days") + " without temperatures left out.");
        }
        basis.forEach(words -> out.hanging("  - ", 4, words));
    }
}
