package org.oldwood.garden;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.oldwood.store.Json;
import org.oldwood.store.Place;
import org.oldwood.words.Typed;
import org.oldwood.words.Units;
import org.oldwood.words.Words;

/**
 * Turns what someone types on a command line or in a table's cell into the value that the journal holds, and back. What
 * cannot be turned stays a text; reading the entry then says what is wrong with it.
 */
public final class EntryText {
    private EntryText() {}

    /**
     * The value of a field, in the record's own units; {@code place} is the entry's.
     *
     * @param units whose gallons and pints a measure with its unit is in
     * @throws IllegalArgumentException where it is a number with a unit that does not fit, or one for names
     */
    public static Json value(EntryField field, String text, Place place, Supplier<Units> units) {
        if (field.type() == EntryField.Holds.NEW_IDS && text.matches("[0-9]+")) {
            throw new IllegalArgumentException("names each new plant, bc-7,bc-8, and not how many there are");
        }
        return field.unit().isPresent() && text.matches(".*[0-9].*[A-Za-z\"'²°]+.*") ? value(field,
                Words.fixed(Typed.of(text, field.unit().get(), field.unit().get(), units.get()), 4), place)
                : value(field, text, place);
    }

    /** The value of a field as the record has it; {@code place} is the entry's. */
    public static Json value(EntryField field, String text, Place place) {
        Place here = place.at(field.key());
        return switch (field.type()) {
            case NUMBER, COUNT -> number(text, here);
            case FLAG -> flag(text, here);
            case STEMS -> stems(text, here);
            case SOME_STEMS -> text.contains("=") ? stems(text, here) : number(text, here);
            case NEW_IDS, PLANTS -> new Json.Arr(here, parts(text).map(id -> (Json) new Json.Text(here, id)).toList());
            default -> new Json.Text(here, text);
        };
    }

    /** Numbers as JSON has them: no exponent, no sign but the minus, a point before decimals. */
    private static Json number(String text, Place place) {
        return text.matches("-?(0|[1-9][0-9]{0,14})(\\.[0-9]{1,15})?")
                ? new Json.Num(place, Double.parseDouble(text), text)
                : new Json.Text(place, text);
    }

    private static Json flag(String text, Place place) {
        return text.equals("true") || text.equals("false") ? new Json.Bool(place, text.equals("true"))
                : new Json.Text(place, text);
    }

    /** From {@code 1=5,2=4,4+=3}; spaces or semicolons may stand instead of commas. */
    private static Json stems(String text, Place place) {
        Map<String, Json> counts = new LinkedHashMap<>();
        for (String part : parts(text).toList()) {
            int sign = part.indexOf('=');
            if (sign < 1 || counts.containsKey(part.substring(0, sign))) { return new Json.Text(place, text); }
            String age = part.substring(0, sign);
            counts.put(age, number(part.substring(sign + 1), place.at(age)));
        }
        return new Json.Obj(place, counts);
    }

    private static Stream<String> parts(String text) {
        return Stream.of(text.split("[,; ]+")).filter(part -> !part.isEmpty());
    }

    /** What an entry says by key, its note too, each as one would type it. */
    public static Map<String, String> cells(Entry entry) {
        Map<String, String> cells = cells(entry.kind(), entry.values());
        if (!entry.note().isEmpty()) { cells.put("note", entry.note()); }
        return cells;
    }

    /** Values by key, in the kind's order, each as one would type it. */
    public static Map<String, String> cells(EntryKind kind, Map<String, Json> values) {
        Map<String, String> cells = new LinkedHashMap<>();
        Stream.concat(kind.fields().stream().map(EntryField::key), Stream.of("note"))
                .forEach(key -> Optional.ofNullable(values.get(key)).ifPresent(value -> cells.put(key, typed(value))));
        return cells;
    }

    /** What an entry says, as one would type it: {@code plant bc-1, stems 1=5,2=4,4+=3}. */
    public static String inWords(Entry entry) {
        String words = cells(entry.kind(), entry.values()).entrySet().stream()
                .map(cell -> cell.getKey() + " " + cell.getValue()).collect(Collectors.joining(", "));
        return entry.note().isEmpty() ? words : words + " (" + entry.note() + ")";
    }

    private static String typed(Json value) {
        if (value instanceof Json.Obj object) {
            List<String> parts = object.members().entrySet().stream()
                    .map(member -> member.getKey() + "=" + typed(member.getValue())).toList();
            return String.join(",", parts);
        }
        if (value instanceof Json.Arr array) {
            return String.join(",", array.items().stream().map(EntryText::typed).toList());
        }
        return value instanceof Json.Text text ? text.value() : value.shown();
    }
}
