package org.oldwood.cli.record;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.garden.GardenReader;
import org.oldwood.store.Csv;
import org.oldwood.store.Nearest;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;

/** Reads what stands in a new garden, from {@code --plants} or from a stock list. */
final class Stock {
    private static final int MOST = 2000;
    private static final List<String> COLUMNS = List.of("crop", "number", "bed", "cultivar", "form");

    private final Crops crops;
    private final Problems problems;
    private final List<Planting> plantings = new ArrayList<>();

    Stock(Crops crops, Problems problems) {
        this.crops = crops;
        this.problems = problems;
    }

    /** From {@code blackcurrant=4,gooseberry=2}. */
    List<Planting> words(String text) {
        Place place = Place.of("--plants");
        for (String part : text.strip().split("[, ]+", -1)) {
            int sign = part.indexOf('=');
            Map<String, String> cells = new HashMap<>();
            cells.put("crop", sign < 0 ? part : part.substring(0, sign));
            cells.put("number", sign < 0 ? "1" : part.substring(sign + 1));
            add(new Csv.Row(place, cells));
        }
        return plantings;
    }

    /** From a table with the columns crop, number, bed, cultivar and form; crop alone must be there. */
    List<Planting> table(Csv table, String file) {
        for (String column : table.columns()) {
            if (!column.isEmpty() && !COLUMNS.contains(column)) {
                problems.add(
                        "unknown-key",
                        Place.of(file, 1),
                        "has a column that is not known here: \"" + column + "\"",
                        Nearest.hint(column, COLUMNS));
            }
        }
        table.rows().forEach(this::add);
        if (table.rows().isEmpty() && problems.isEmpty()) {
            problems.add("empty-file", Place.of(file), "lists no plants", "");
        }
        return plantings;
    }

    private void add(Csv.Row row) {
        int before = problems.count();
        String crop = crop(row);
        int number = number(row);
        Optional<String> bed = row.cell("bed");
        bed.filter(id -> !GardenReader.isId(id))
                .ifPresent(id -> problems.add(
                        "not-an-id",
                        row.place().at("bed"),
                        "must be made of small letters, digits and hyphens but is \"" + id + "\"",
                        ""));
        if (problems.count() == before) {
            checkForm(row, crops.get(crop));
            plantings.add(new Planting(crop, number, bed, row.cell("cultivar"), row.cell("form"), row.place()));
        }
    }

    private String crop(Csv.Row row) {
        String crop = row.cell("crop").orElse("");
        if (!crops.ids().contains(crop)) {
            problems.add(
                    "unknown-crop",
                    row.place(),
                    crop.isEmpty() ? "names no crop" : "there is no crop \"" + crop + "\"",
                    Nearest.hint(crop, crops.ids()));
        }
        return crop;
    }

    private int number(Csv.Row row) {
        String text = row.cell("number").orElse("1");
        boolean whole = text.matches("[0-9]{1,4}");
        int number = whole ? Integer.parseInt(text) : 0;
        if (number < 1 || number > MOST) {
            problems.add(
                    "number-out-of-range",
                    row.place().at("number"),
                    "must be a whole number from 1 to " + MOST + " but is \"" + text + "\"",
                    "Write for example: blackcurrant=4");
        }
        return number;
    }

    private void checkForm(Csv.Row row, Crop crop) {
        row.cell("form")
                .filter(form -> !crop.forms().contains(form))
                .ifPresent(form -> problems.add(
                        "unknown-form",
                        row.place().at("form"),
                        crop.name() + " is not grown as \"" + form + "\"",
                        Nearest.hint(form, crop.forms())));
    }
}
