package org.oldwood;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * Writes the folder of a garden of any size: beds of up to {@value #PLANTS_A_BED} plants of one crop each, every plant
 * with a few years of notes. Always the same for the same number of plants. Run it with the number of plants and a
 * folder to write to.
 */
public final class LargeGarden {
    static final int PLANTS_A_BED = 250;
    private static final List<String> CROPS = List.of("blackcurrant", "redcurrant", "gooseberry", "blueberry");
    private static final List<String> TEXTURES = List.of("sandy-loam", "loam", "clay-loam");
    private static final int FIRST_YEAR = 2021;
    private static final int LAST_YEAR = 2025;

    private final int plants;
    private int entries;

    private LargeGarden(int plants) { this.plants = plants; }

    public static void main(String[] arguments) { write(Integer.parseInt(arguments[0]), Path.of(arguments[1])); }

    /** Writes garden.json and journal.jsonl; returns the number of entries. */
    static int write(int plants, Path folder) {
        try {
            Files.createDirectories(folder);
            LargeGarden garden = new LargeGarden(plants);
            try (Writer out = Files.newBufferedWriter(folder.resolve("garden.json"))) {
                garden.declare(out);
            }
            try (Writer out = Files.newBufferedWriter(folder.resolve("journal.jsonl"))) {
                garden.note(out);
            }
            return garden.entries;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private int beds() { return (plants + PLANTS_A_BED - 1) / PLANTS_A_BED; }

    private static String bed(int bed) { return "bed-" + bed; }

    private void declare(Writer out) throws IOException {
        out.write("""
                {"format": 1, "name": "Long Rows", "id": "3f0e6c1a-5b0d-4d8e-9c53-77a1c2b40d11",
                 "site": {"latitude": 51.8, "longitude": -1.2, "heightM": 80, "zone": "Europe/London"},
                 "beds": [
                """);
        for (int bed = 0; bed < beds(); bed++) {
            out.write(String.format(Locale.ROOT,
                    "  {\"id\": \"%s\", \"name\": \"row %d\", \"areaM2\": %d, \"texture\": \"%s\", \"rootableDepthCm\": 60}%s\n",
                    bed(bed), bed, 3 * Math.min(PLANTS_A_BED, plants - bed * PLANTS_A_BED),
                    TEXTURES.get(bed % TEXTURES.size()), bed + 1 < beds() ? "," : ""));
        }
        out.write(" ]}\n");
    }

    private void note(Writer out) throws IOException {
        for (int plant = 0; plant < plants; plant++) {
            int bed = plant / PLANTS_A_BED;
            String crop = CROPS.get(bed % CROPS.size());
            entry(out, (FIRST_YEAR - 1) + "-11-15", "planted",
                    ", \"plant\": \"p-%d\", \"crop\": \"%s\", \"bed\": \"%s\"", plant, crop, bed(bed));
        }
        for (int year = FIRST_YEAR; year <= LAST_YEAR; year++) {
            for (int bed = 0; bed < beds(); bed++) {
                year(out, year, bed);
            }
        }
        for (int plant = 0; plant < plants; plant++) {
            entry(out, "2026-11-10", "counted",
                    ", \"plant\": \"p-%d\", \"stems\": {\"1\": %d, \"2\": %d, \"3\": 2, \"4\": %d}", plant,
                    2 + plant % 3, 2 + plant % 2, plant % 4);
        }
    }

    private void year(Writer out, int year, int bed) throws IOException {
        String crop = CROPS.get(bed % CROPS.size());
        int last = Math.min(plants, (bed + 1) * PLANTS_A_BED);
        for (int plant = bed * PLANTS_A_BED; plant < last; plant++) {
            if ((plant + year) % 2 == 0) {
                entry(out, year + "-01-20", "pruned",
                        ", \"plant\": \"p-%d\", \"stems\": {\"4\": 1}, \"minutes\": 8, \"cut\": \"winter\"", plant);
            }
        }
        entry(out, year + "-03-15", "seen", ", \"crop\": \"%s\", \"stage\": \"bud-burst\"", crop);
        entry(out, year + "-03-20", "fed", ", \"bed\": \"%s\", \"material\": \"blood-fish-bone\", \"grams\": 9000",
                bed(bed));
        entry(out, year + "-06-20", "moisture", ", \"bed\": \"%s\", \"feel\": \"moist\", \"depthCm\": 20", bed(bed));
        entry(out, year + "-07-18", "picked", ", \"bed\": \"%s\", \"crop\": \"%s\", \"kg\": 350", bed(bed), crop);
    }

    private void entry(Writer out, String date, String kind, String rest, Object... values) throws IOException {
        entries++;
        out.write(String.format(Locale.ROOT, "{\"id\": \"e-%d\", \"date\": \"%s\", \"entry\": \"%s\"%s}\n", entries,
                date, kind, String.format(Locale.ROOT, rest, values)));
    }
}
