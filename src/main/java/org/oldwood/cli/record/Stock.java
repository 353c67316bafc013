package org.oldwood.cli.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.garden.GardenReader;
import org.oldwood.store.Csv;
import org.oldwood.store.IsoDate;
import org.oldwood.store.Nearest;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;

/** Reads what stands in a new garden, from {@code --plants} or from a stock list. */
final class Stock {
    private static final int MOST = 2000;
    private static final List<String> COLUMNS = List.of("plant", "crop", "number", "bed", "cultivar", "form", "planted",
            "lengthM");

    /**
     * Plants of one crop in one bed, as a new garden's owner tells them.
     *
     * @param number how many plants; of a crop grown in rows, how many stand in the row
     * @param bed the bed's id; empty for a bed of the crop's own
     * @param id its id, where it has one already; several bushes under one id are noted together
     * @param planted the day it was planted; empty where only the year is known
     * @param year the year it was planted; empty for that of the whole garden
     * @param lengthM the length of a row, m; empty to take it from the plants' spacing
     */
    record Planting(String crop, int number, Optional<String> bed, Optional<String> cultivar, Optional<String> form,
            Optional<String> id, Optional<LocalDate> planted, Optional<Integer> year, Optional<Double> lengthM) {
        String bedId() { return bed.orElse(crop + "-bed"); }
    }

    private final Crops crops;
    private final Problems problems;
    private final List<Planting> plantings = new ArrayList<>();
    private final Set<String> seen = new HashSet<>();

    Stock(Crops crops, Problems problems) {
        this.crops = crops;
        this.problems = problems;
    }

    /** From {@code blackcurrant=4,gooseberry=2}. */
    List<Planting> words(String text) {
        Place place = Place.of("--plants");
        for (String part : text.strip().split("\\s*,\\s*|(?<=\\d)\\s+", -1)) {
            int sign = part.indexOf('=');
            Map<String, String> cells = new HashMap<>();
            cells.put("crop", sign < 0 ? part : part.substring(0, sign));
            cells.put("number", sign < 0 ? "1" : part.substring(sign + 1));
            add(new Csv.Row(place, cells), false);
        }
        return plantings;
    }

    /**
     * From a table with some of the columns plant, crop, number, bed, cultivar, form, planted and lengthM; crop must be
     * there.
     */
    List<Planting> table(Csv table, String file) {
        for (String column : table.columns()) {
            if (!column.isEmpty() && !COLUMNS.contains(column)) {
                problems.tell("unknown-key of-stock", Place.of(file, 1), column, Nearest.hint(column, COLUMNS));
            }
        }
        table.rows().forEach(row -> add(row, table.semicolons()));
        if (table.rows().isEmpty() && problems.isEmpty()) { problems.tell("empty-file stock", Place.of(file)); }
        return plantings;
    }

    private void add(Csv.Row row, boolean semicolons) {
        int before = problems.count();
        String crop = crop(row);
        int number = number(row);
        Optional<String> bed = id(row, "bed");
        Optional<String> plant = id(row, "plant");
        Optional<Integer> year = row.cell("planted").filter(cell -> cell.matches("[0-9]{4}")).map(Integer::valueOf);
        Optional<LocalDate> planted = year.isPresent() ? Optional.empty() : planted(row);
        Optional<Double> length = row.cell("lengthM").map(text -> length(row, Csv.number(text, semicolons)));
        if (problems.count() == before) {
            checkForm(row, crops.get(crop));
            plant.filter(id -> !seen.add(id)).ifPresent(id -> problems.tell("id-taken", row.place().at("plant"), id));
            plantings.add(new Planting(crop, number, bed, row.cell("cultivar"), row.cell("form"), plant, planted, year,
                    length));
        }
    }

    private Optional<String> id(Csv.Row row, String column) {
        Optional<String> id = row.cell(column);
        id.filter(text -> !GardenReader.isId(text))
                .ifPresent(text -> problems.tell("not-an-id in-table", row.place().at(column), text));
        return id;
    }

    private Optional<LocalDate> planted(Csv.Row row) {
        Optional<String> cell = row.cell("planted");
        Optional<LocalDate> day = cell.flatMap(IsoDate::find);
        cell.filter(text -> day.isEmpty())
                .ifPresent(text -> problems.tell("bad-date", row.place().at("planted"), text));
        return day;
    }

    private double length(Csv.Row row, String text) {
        double length = text.matches("[0-9]{1,4}(\\.[0-9]{1,6})?") ? Double.parseDouble(text) : 0;
        if (length < 0.1 || length > 1000) {
            problems.tell("number-out-of-range length", row.place().at("lengthM"), text);
        }
        return length;
    }

    private String crop(Csv.Row row) {
        String crop = row.cell("crop").orElse("");
        if (!crops.ids().contains(crop)) {
            problems.add("unknown-crop", row.place(),
                    crop.isEmpty() ? "names no crop" : "there is no crop \"" + crop + "\"", crops.hint(crop));
        }
        return crop;
    }

    private int number(Csv.Row row) {
        String text = row.cell("number").orElse("1");
        boolean whole = text.matches("[0-9]{1,4}");
        int number = whole ? Integer.parseInt(text) : 0;
        if (number < 1 || number > MOST) {
            problems.tell("number-out-of-range many", row.place().at("number"), MOST, text);
        }
        return number;
    }

    private void checkForm(Csv.Row row, Crop crop) {
        row.cell("form").filter(form -> !crop.forms().contains(form)).ifPresent(
                form -> problems.tell("unknown-form", row.place().at("form"), crop.name(), form, crop.formHint(form)));
    }
}
