package org.oldwood;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes the folder of a garden with many lots of cuttings: four Ribes crops, forty parents, 12 to 51 cuttings a lot,
 * struck over seventeen autumns; every second lot counted in its first summer, every third lifted, with three of its
 * plants planted out. Always the same for the same number. Run it with the number of lots and a folder to write to.
 */
public final class ManyLots {
    private static final List<String> CROPS = List.of("blackcurrant", "redcurrant", "gooseberry", "jostaberry");
    private static final List<String> METHODS = List.of("hardwood", "disbudded", "disbudded", "hardwood");
    private static final int PARENTS = 40;
    private static final int FIRST_AUTUMN = 2010;
    private static final int AUTUMNS = 17;

    private final List<String> journal = new ArrayList<>();

    private ManyLots() {}

    public static void main(String[] arguments) { write(Integer.parseInt(arguments[0]), Path.of(arguments[1])); }

    /** Writes garden.json and journal.jsonl. */
    public static void write(int lots, Path folder) {
        ManyLots garden = new ManyLots();
        garden.parents();
        for (int lot = 0; lot < lots; lot++) {
            garden.lot(lot, FIRST_AUTUMN + lot * AUTUMNS / lots);
        }
        try {
            Files.createDirectories(folder);
            Files.writeString(folder.resolve("garden.json"), """
                    {"format": 1, "name": "Nursery Rows", "id": "5f0c9f0e-6b1d-4c55-9d11-0a4f7c3f2a17",
                     "site": {"latitude": 52, "longitude": -2, "heightM": 60, "zone": "Europe/London"},
                     "climate": "oxford",
                     "beds": [{"id": "n", "name": "nursery", "areaM2": 2000, "texture": "loam"}]}
                    """);
            Files.write(folder.resolve("journal.jsonl"), garden.journal);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void parents() {
        for (int parent = 0; parent < PARENTS; parent++) {
            note("2008-11-20", "planted", "\"plant\": \"p-%d\", \"crop\": \"%s\", \"bed\": \"n\"", parent,
                    CROPS.get(parent % CROPS.size()));
        }
    }

    private void lot(int lot, int year) {
        int parent = lot % PARENTS;
        int number = 12 + lot * 7 % 40;
        int alive = number / 2 + lot % (number / 2);
        note(year + "-11-" + (10 + lot % 15), "struck",
                "\"lot\": \"l-%d\", \"parent\": \"p-%d\", \"method\": \"%s\", \"number\": %d, \"bed\": \"n\"", lot,
                parent, METHODS.get(parent % METHODS.size()), number);
        if (lot % 2 == 0 && year < 2026) {
            note(year + 1 + "-06-01", "checked", "\"lot\": \"l-%d\", \"alive\": %d", lot, alive);
        }
        if (lot % 3 == 0 && year < 2025) {
            String after = year + 1 + "-11-25";
            note(after, "lifted", "\"lot\": \"l-%d\", \"rooted\": %d, \"good\": %d", lot, alive, alive - 2);
            note(after, "planted-out",
                    "\"lot\": \"l-%1$d\", \"bed\": \"n\", \"plants\": [\"l-%1$d-a\", \"l-%1$d-b\", \"l-%1$d-c\"]", lot);
        }
    }

    private void note(String date, String kind, String values, Object... with) {
        journal.add("{\"id\": \"e-%d\", \"date\": \"%s\", \"entry\": \"%s\", %s}".formatted(journal.size(), date, kind,
                values.formatted(with)));
    }
}
