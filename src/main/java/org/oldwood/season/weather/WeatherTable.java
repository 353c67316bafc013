package org.oldwood.season.weather;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.oldwood.store.Documents;

/**
 * A text table as spreadsheets and services write them: commas, semicolons (then with decimal commas) or tabs between,
 * quotes around or not, any line end, a byte order mark or not, and any lines before the one that names the columns.
 * Lines that are empty or begin with # are left out.
 *
 * @param columns the columns, where a line names them
 * @param separator the character between cells
 * @param rows the lines below
 */
record WeatherTable(Optional<WeatherColumns> columns, char separator, List<Row> rows) {
    private static final List<Character> SEPARATORS = List.of(';', '\t', ',');
    private static final int PREAMBLE = 100;

    /** The cells of a line, and its number from 1. */
    record Row(int line, List<String> cells) {
        String cell(int at) { return at < cells.size() ? cells.get(at) : ""; }
    }

    static WeatherTable of(byte[] bytes, WeatherHints hints) {
        Documents documents = Documents.bundled();
        List<String> lines = decode(bytes).lines().toList();
        for (int i = 0; i < Math.min(PREAMBLE, lines.size()); i++) {
            String line = lines.get(i).replaceFirst("^#", "");
            for (char separator : SEPARATORS) {
                Optional<WeatherColumns> columns = line.indexOf(separator) < 0 ? Optional.empty()
                        : WeatherColumns.of(cells(line, separator), hints, documents);
                if (columns.isPresent()) { return new WeatherTable(columns, separator, rows(lines, i + 1, separator)); }
            }
        }
        char most = SEPARATORS.stream()
                .max(Comparator.comparingLong(
                        each -> lines.stream().limit(PREAMBLE).filter(line -> line.indexOf(each) >= 0).count()))
                .orElse(',');
        return new WeatherTable(Optional.empty(), most, rows(lines, 0, most));
    }

    private static List<Row> rows(List<String> lines, int from, char separator) {
        return IntStream.range(from, lines.size()).filter(i -> !lines.get(i).isBlank() && !lines.get(i).startsWith("#"))
                .mapToObj(i -> new Row(i + 1, cells(lines.get(i), separator))).toList();
    }

    private static String decode(byte[] bytes) {
        String text = startsWith(bytes, 0xFF, 0xFE) ? new String(bytes, StandardCharsets.UTF_16LE)
                : startsWith(bytes, 0xFE, 0xFF) ? new String(bytes, StandardCharsets.UTF_16BE) : utf8OrLatin(bytes);
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static String utf8OrLatin(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException e) {
            return new String(bytes, StandardCharsets.ISO_8859_1);
        }
    }

    private static boolean startsWith(byte[] bytes, int first, int second) {
        return bytes.length > 1 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
    }

    private static List<String> cells(String line, char separator) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == separator && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString().strip());
        return cells;
    }
}
