package org.oldwood.cli.water;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.oldwood.cli.command.Out;
import org.oldwood.craft.water.evapotranspiration.EvapotranspirationDay;
import org.oldwood.craft.water.evapotranspiration.ThirstTable;
import org.oldwood.store.JsonWriter;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;

/**
 * The days of a file, worked out.
 *
 * @param days the days
 * @param passedOver lines without temperatures
 * @param alsoTaken what was taken where the arguments leave something open
 */
record Et0Table(List<Day> days, int passedOver, List<String> alsoTaken) {

    /** A day with its terms. */
    record Day(LocalDate date, EvapotranspirationDay terms) {}

    /** Works the days out; one that cannot have been is a problem with its line. */
    static Et0Table of(ThirstTable.Days read, Et0Place place, String file, List<String> alsoTaken, Problems problems) {
        List<Day> days = new ArrayList<>();
        for (ThirstTable.Row row : read.rows()) {
            try {
                days.add(new Day(row.date(), place.day(row.date(), row.weather())));
            } catch (IllegalArgumentException e) {
                problems.add(
                        "impossible-weather",
                        Place.of(file, row.line()),
                        String.valueOf(e.getMessage()),
                        "Look whether columns are swapped, or their units others than °C, %, m/s, h" + " and MJ/m².");
            }
        }
        return new Et0Table(days, read.passedOver(), alsoTaken);
    }

    void print(Out out) {
        out.line("date        mm/day  Hargreaves");
        double sum = 0;
        for (Day day : days) {
            sum += day.terms.penmanMonteith();
            out.line(String.format(
                    Locale.ROOT, "%s  %6.2f  %10.2f", day.date, day.terms.penmanMonteith(), day.terms.hargreaves()));
        }
        out.line(String.format(
                Locale.ROOT, "together    %6.1f mm in %s %s", sum, days.size(), days.size() == 1 ? "day" : "days"));
        if (passedOver > 0) {
            out.paragraph(0, passedOver + (passedOver == 1 ? " day" : " days") + " without temperatures left out.");
        }
        basis().forEach(words -> out.hanging("  - ", 4, words));
    }

    private List<String> basis() {
        Set<String> basis = new TreeSet<>();
        days.forEach(day -> basis.addAll(day.terms.basis()));
        List<String> all = new ArrayList<>(alsoTaken);
        all.addAll(basis);
        return all;
    }

    void json(JsonWriter json) {
        json.object();
        json.array("days");
        double sum = 0;
        for (Day day : days) {
            json.object();
            Et0Words.members(json, day.date, day.terms);
            json.endObject();
            sum += day.terms.penmanMonteith();
        }
        json.endArray();
        json.put("togetherMm", Math.rint(sum * 100) / 100)
                .put("withoutTemperatures", passedOver)
                .put("basis", basis());
        json.endObject();
    }
}
