package org.oldwood.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;

/** A file, folder or link that nobody would expect in a garden's folder. Seeded: the same every time. */
final class HostileFile {
    private static final List<String> NAMES = List.of("garden.json", "journal.jsonl", "weather.csv",
            "calendar-state.jsonl", ".journal.jsonl.lock", "journal (1).jsonl", "garden.json~", "rules/README.md",
            "rules/mine.json~", "rules/mine.json", "rules/index.json", "materials/Thumbs.db", "materials/own.json",
            "crops/notes.txt", "crops/blackcurrant/crop.json", "crops/new/crop.json", "crops/new/picture.png",
            "climates/here.json", "season/season.json", "sources/own.json", "soils.json", "calendars", "sheet.html",
            "a\nb.txt", "\u202egnp.json");

    private static final List<byte[]> CONTENTS = List.of(new byte[0], new byte[]{0, 1, 2, (byte) 0xFF, (byte) 0xFE},
            text("{"), text("[]"), text("null"), text("{}"), text("\uFEFF{\"format\": 1}"),
            "{\"name\": \"grün\"}".getBytes(StandardCharsets.ISO_8859_1),
            "{\"name\": \"x\"}".getBytes(StandardCharsets.UTF_16), text("[".repeat(100_000)),
            text("{\"a\":".repeat(100_000)), text("\"" + "x".repeat(1_500_000) + "\""),
            text("date,tmin,tmax,rain\n0000-01-01,1,2,3\n9999-12-31,1,2,3\n"),
            text("{\"format\": 1, \"name\": \"\\u202e\\u0007\\u009b\"}\n"),
            text("{\"id\":\"e\",\"date\":\"-999999999-01-01\",\"entry\":\"watered\"}\n"), text("9".repeat(200_000)));

    private HostileFile() {}

    private static byte[] text(String text) { return text.getBytes(StandardCharsets.UTF_8); }

    /** Lays one in the folder, in the place of what stands there. */
    static void lay(Path folder, Random random) throws IOException {
        Path file = folder.resolve(NAMES.get(random.nextInt(NAMES.size())));
        Files.createDirectories(file.getParent());
        if (Files.isDirectory(file)) { return; }
        Files.deleteIfExists(file);
        switch (random.nextInt(9)) {
            case 0 -> Files.createDirectories(file);
            case 1 -> Files.createSymbolicLink(file, file.getFileName());
            case 2 -> Files.createSymbolicLink(file, folder);
            case 3 -> Files.createSymbolicLink(file, Path.of("nowhere", "at-all"));
            case 4 -> Files.createSymbolicLink(file, Path.of("/dev/zero"));
            default -> Files.write(file, CONTENTS.get(random.nextInt(CONTENTS.size())));
        }
    }
}
