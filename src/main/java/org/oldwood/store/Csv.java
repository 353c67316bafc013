package org.oldwood.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A table written as comma-separated values (RFC 4180): the first line names the columns; a cell in double quotes may
 * hold commas, line ends and doubled quotes. Blank lines and lines that begin with {@code #} are passed over. Where the
 * columns are parted by semicolons, as spreadsheets do in countries that write 1,5 for one and a half, so are the
 * cells, and a comma in a number is its decimal sign.
 *
 * @param columns the names in the first line
 * @param rows the lines after it
 * @param semicolons whether semicolons part the cells
 */
public record Csv(List<String> columns, List<Row> rows, boolean semicolons) {
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    /**
     * One line.
     *
     * @param cells by column; blank ones are left out
     */
    public record Row(Place place, Map<String, String> cells) {
        public Optional<String> cell(String column) { return Optional.ofNullable(cells.get(column)); }
    }

    /** Reads the text of a file; lines that do not fit the columns become problems. */
    public static Csv read(String text, String file, Problems problems) {
        List<Line> lines = new Scan(text, file, problems).lines();
        if (lines.isEmpty()) {
            problems.tell("empty-file", Place.of(file));
            return new Csv(List.of(), List.of(), false);
        }
        List<String> columns = lines.get(0).cells.stream().map(String::strip).toList();
        checkColumns(columns, Place.of(file, lines.get(0).number), problems);
        List<Row> rows = lines.stream().skip(1).map(line -> row(line, columns, file, problems)).toList();
        return new Csv(columns, rows, separatedBySemicolons(text));
    }

    /** Whether the line that names the columns has semicolons between them. */
    private static boolean separatedBySemicolons(String text) {
        String first = text.lines().map(line -> line.replace(BYTE_ORDER_MARK, ""))
                .filter(line -> !line.isBlank() && !line.startsWith("#")).findFirst().orElse("");
        return first.contains(";") && !first.contains(",");
    }

    private static void checkColumns(List<String> columns, Place place, Problems problems) {
        for (int i = 0; i < columns.size(); i++) {
            String column = columns.get(i);
            if (columns.indexOf(column) < i || column.isEmpty()) {
                problems.tell(column.isEmpty() ? "bad-column nameless" : "bad-column twice", place,
                        column.isEmpty() ? i + 1 : column);
            }
        }
    }

    private static Row row(Line line, List<String> columns, String file, Problems problems) {
        Place place = Place.of(file, line.number);
        Map<String, String> cells = new LinkedHashMap<>();
        for (int i = 0; i < line.cells.size(); i++) {
            String cell = line.cells.get(i).strip();
            if (i < columns.size() && !cell.isEmpty()) {
                boolean kept = cell.startsWith("'") && mustBeKept(cell.substring(1));
                cells.put(columns.get(i), kept ? cell.substring(1) : cell);
            }
        }
        if (line.cells.size() > columns.size()) {
            problems.tell("too-many-cells", place, line.cells.size(), columns.size());
        }
        return new Row(place, cells);
    }

    /**
     * The text of a table for a spreadsheet, with the mark by which it knows UTF-8. A text that a spreadsheet would
     * take for a formula has an apostrophe before it, which {@link #read} takes away.
     *
     * @param rows their keys, in the order in which they come, name the columns
     * @param semicolons whether semicolons part the cells and commas stand in decimal numbers
     */
    public static String text(List<Map<String, String>> rows, boolean semicolons) {
        List<String> columns = rows.stream().flatMap(row -> row.keySet().stream()).distinct().toList();
        Stream<List<String>> cells = rows.stream()
                .map(row -> columns.stream().map(column -> row.getOrDefault(column, "")).toList());
        StringBuilder text = new StringBuilder(BYTE_ORDER_MARK);
        Stream.concat(Stream.of(columns), cells).map(row -> row.stream().map(cell -> cell(cell, semicolons)))
                .forEach(row -> text.append(row.collect(Collectors.joining(semicolons ? ";" : ","))).append('\n'));
        return text.toString();
    }

    private static String cell(String value, boolean semicolons) {
        String cell = mustBeKept(value) ? "'" + value : value;
        if (semicolons && cell.matches("-?[0-9]+\\.[0-9]+")) { cell = cell.replace('.', ','); }
        boolean plain = cell.chars().noneMatch(c -> c == '"' || c == '\n' || c == '\r' || c == ',' || c == ';');
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }

    /** Whether a spreadsheet would reckon with a text, and not show it. */
    private static boolean mustBeKept(String text) {
        boolean number = text.matches("-[0-9][0-9.,]*");
        return !number && !text.isEmpty() && "=+-@'".indexOf(text.charAt(0)) >= 0;
    }

    /** The text of a number in a cell, with a point before its decimals. */
    public static String number(String cell, boolean semicolons) {
        // 1,250 is a quarter more than one, or a thousand more: only a table with semicolons tells
        String decimals = semicolons ? "[0-9]+" : "([0-9]{1,2}|[0-9]{4,})";
        return cell.matches("-?[0-9]+," + decimals) ? cell.replace(',', '.') : cell;
    }

    private record Line(int number, List<String> cells) {}

    /** Cuts a text into lines and cells. */
    private static final class Scan {
        private final String text;
        private final String file;
        private final char separator;
        private final Problems problems;
        private final List<Line> lines = new ArrayList<>();
        private final StringBuilder cell = new StringBuilder();
        private List<String> cells = new ArrayList<>();
        private int number = 1;
        private int began = 1;
        private boolean quoted;

        Scan(String text, String file, Problems problems) {
            this.text = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
            this.separator = separatedBySemicolons(this.text) ? ';' : ',';
            this.file = file;
            this.problems = problems;
        }

        List<Line> lines() {
            for (int i = 0; i < text.length(); i++) {
                if (quoted) {
                    i = inQuotes(i);
                } else {
                    outside(text.charAt(i));
                }
            }
            if (quoted) { problems.tell("open-quote", Place.of(file, began)); }
            if (!cells.isEmpty() || !cell.isEmpty()) { endLine(); }
            return lines;
        }

        private int inQuotes(int i) {
            char c = text.charAt(i);
            if (c == '\n') { number++; }
            if (c != '"') {
                cell.append(c);
                return i;
            }
            boolean doubled = i + 1 < text.length() && text.charAt(i + 1) == '"';
            if (doubled) {
                cell.append('"');
                return i + 1;
            }
            quoted = false;
            return i;
        }

        private void outside(char c) {
            quoted = c == '"' && cell.toString().isBlank();
            if (c == separator) {
                endCell();
            } else if (c == '\n') {
                endLine();
            } else if (!quoted && c != '\r') {
                // a carriage return is part of a line end
                cell.append(c);
            }
        }

        private void endCell() {
            cells.add(cell.toString());
            cell.setLength(0);
        }

        private void endLine() {
            endCell();
            boolean blank = cells.stream().allMatch(String::isBlank);
            if (!blank && !cells.get(0).startsWith("#")) { lines.add(new Line(began, cells)); }
            cells = new ArrayList<>();
            number++;
            began = number;
        }
    }
}
