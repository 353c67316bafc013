package org.oldwood.season.weather;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;

/**
 * Which column of a file holds what: by the names that weather services give them, or by those that a person gives.
 *
 * @param at our columns' positions
 * @param names the names of the file's columns, as it writes them
 * @param known the file's columns by the bare names that ours are looked up by
 * @param inTenths whether the names are those of a service that writes tenths
 */
record WeatherColumns(Map<String, Integer> at, List<String> names, Map<String, Integer> known, boolean inTenths) {
    static final String DATA = "season/weather-columns.json";
    static final List<String> OURS = List.of("date", "time", "year", "month", "day", "station", "tmin", "tmax",
            "temperature", "rain");
    private static final Pattern BRACKETS = Pattern.compile("[(\\[{][^)\\]}]*[)\\]}]");
    private static final Pattern UNIT = Pattern.compile("(?:[(\\[{]\\s*(?:deg(?:ree)?s?\\s*|°)?|[_"
            + " ](?:deg)?)(c|celsius|f|fahrenheit|mm|millimet\\w+|in|inch|inches)[)\\]}]?$");

    /** The columns that this line names; none where it names no day or nothing measured. */
    static Optional<WeatherColumns> of(List<String> names, WeatherHints hints, Documents documents) {
        Fields data = documents.fields(DATA);
        Map<String, Integer> known = new HashMap<>();
        Map<String, Integer> written = new HashMap<>();
        for (int i = 0; i < names.size(); i++) {
            known.putIfAbsent(bare(names.get(i)), i);
            written.putIfAbsent(names.get(i).toLowerCase(Locale.ROOT), i);
        }
        boolean inTenths = known.keySet().containsAll(data.texts("inTenths"));
        Map<String, Integer> at = new HashMap<>();
        for (String ours : OURS) {
            List<String> theirs = new ArrayList<>(data.texts(ours));
            if (inTenths && ours.equals("rain")) { theirs.addAll(data.texts("rainInTenths")); }
            String given = hints.columns().get(ours);
            Optional<Integer> found = given == null
                    ? theirs.stream().map(known::get).filter(each -> each != null && !at.containsValue(each))
                            .findFirst()
                    : Optional.ofNullable(written.get(given.toLowerCase(Locale.ROOT)));
            if (given != null && found.isEmpty()) { return Optional.empty(); }
            found.ifPresent(column -> at.put(ours, column));
        }
        boolean hasDay = at.containsKey("date") || at.keySet().containsAll(List.of("year", "month", "day"));
        boolean hasValues = List.of("tmin", "tmax", "rain").stream().anyMatch(at::containsKey)
                || (at.containsKey("temperature") && (at.containsKey("time") || at.containsKey("date")));
        return hasDay && hasValues ? Optional.of(new WeatherColumns(at, names, known, inTenths)) : Optional.empty();
    }

    /** The cell of our column in a row; empty where the file has none. */
    String cell(List<String> row, String ours) {
        int column = at.getOrDefault(ours, -1);
        return column >= 0 && column < row.size() ? row.get(column) : "";
    }

    /** The same of what was measured; empty where the attributes beside it say that it failed a check. */
    String value(List<String> row, String ours) {
        int column = at.getOrDefault(ours, -1);
        Integer attributes = column < 0 ? null : known.get(bare(names.get(column)) + "attributes");
        boolean failed = attributes != null && attributes < row.size() && row.get(attributes).matches("[^,]*,[^, ].*");
        return failed ? "" : cell(row, ours);
    }

    /** The unit that the name of our column ends with, as its first letter: c, f, m or i. */
    Optional<Character> unit(String ours) {
        int column = at.getOrDefault(ours, -1);
        Matcher unit = UNIT.matcher(column < 0 ? "" : names.get(column).toLowerCase(Locale.ROOT));
        return unit.find() ? Optional.of(unit.group(1).charAt(0)) : Optional.empty();
    }

    /** The columns that nothing is read from. */
    List<String> notUsed() {
        return IntStream.range(0, names.size()).filter(i -> !at.containsValue(i)).mapToObj(names::get)
                .filter(name -> !name.isEmpty()).map(name -> name.toLowerCase(Locale.ROOT)).toList();
    }

    private static String bare(String name) {
        String plain = BRACKETS.matcher(name.toLowerCase(Locale.ROOT)).replaceAll("");
        return plain.strip().replaceFirst("[_ ](deg)?(c|f|mm|in|inch|inches)$", "").replaceAll("[^\\p{L}\\p{N}]", "");
    }
}
