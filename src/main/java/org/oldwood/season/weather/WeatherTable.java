package org.oldwood.season.weather;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * The cells of a text table as spreadsheets write them: commas, semicolons (then with decimal commas) or tabs between,
 * quotes around or not, any line end, a byte order mark or not. Lines that are empty or begin with # are left out.
 *
 * @param separator the character between cells
 * @param rows the cells of each line that holds any
 * @param lines the line numbers of the rows, from 1
 */
record WeatherTable(char separator, List<List<String>> rows, List<Integer> lines) {

    static WeatherTable of(byte[] bytes) {
        String text = decode(bytes);
        List<List<String>> rows = new ArrayList<>();
        List<Integer> lines = new ArrayList<>();
        char separator = 0;
        int number = 0;
        for (String line : text.lines().toList()) {
            number++;
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            separator = separator == 0 ? separator(line) : separator;
            rows.add(cells(line, separator));
            lines.add(number);
        }
        return new WeatherTable(separator, rows, lines);
    }

    private static String decode(byte[] bytes) {
        String text;
        if (startsWith(bytes, 0xFF, 0xFE)) {
            text = new String(bytes, StandardCharsets.UTF_16LE);
        } else if (startsWith(bytes, 0xFE, 0xFF)) {
            text = new String(bytes, StandardCharsets.UTF_16BE);
        } else {
            text = utf8OrLatin(bytes);
        }
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static String utf8OrLatin(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            return new String(bytes, StandardCharsets.ISO_8859_1);
        }
    }

    private static boolean startsWith(byte[] bytes, int first, int second) {
        return bytes.length > 1 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
    }

    private static char separator(String line) {
        if (line.indexOf(';') >= 0) {
            return ';';
        }
        return line.indexOf('\t') >= 0 ? '\t' : ',';
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

    /** The names of the first row's columns in small letters, with their positions. */
    Map<String, Integer> columns() {
        Map<String, Integer> columns = new TreeMap<>();
        if (!rows.isEmpty()) {
            for (int i = 0; i < rows.get(0).size(); i++) {
                columns.putIfAbsent(rows.get(0).get(i).toLowerCase(Locale.ROOT), i);
            }
        }
        return columns;
    }

    /** The cell of a row; empty where there is no such column. */
    String cell(int row, int column) {
        List<String> cells = rows.get(row);
        return column >= 0 && column < cells.size() ? cells.get(column) : "";
    }
}
