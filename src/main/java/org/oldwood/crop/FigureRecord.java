package org.oldwood.crop;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.time.DateTimeException;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.Map;
import org.oldwood.store.Fields;
import org.oldwood.store.IsoDate;
import org.oldwood.store.Json;

/** Reads a record of figures, month-days, texts and such records from an object that has its components' names. */
public final class FigureRecord {
    private FigureRecord() {}

    /** What is missing or wrong is a problem of the document. */
    public static <R extends Record> R read(Fields fields, Class<R> kind) {
        RecordComponent[] parts = kind.getRecordComponents();
        try {
            Constructor<R> made = kind.getDeclaredConstructor(
                    Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new));
            made.setAccessible(true);
            return made.newInstance(Arrays.stream(parts)
                    .map(part -> value(fields, part.getName(), part.getType()))
                    .toArray());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(kind + " cannot be read", e);
        }
    }

    private static Object value(Fields fields, String key, Class<?> type) {
        if (type == Figure.class) {
            return Figure.read(fields, key);
        }
        if (type == MonthDay.class) {
            return monthDay(fields, key);
        }
        if (!type.isRecord()) {
            return fields.text(key);
        }
        Fields inner = fields.object(key).orElseGet(() -> {
            fields.wrong(key, "missing-part", "is missing; it must be an object {…}", "");
            return Fields.of(new Json.Obj(fields.place(), Map.of()), fields.problems());
        });
        return read(inner, type.asSubclass(Record.class));
    }

    /** A day of any year, {@code 11-20}. */
    public static MonthDay monthDay(Fields fields, String key) {
        String text = fields.text(key);
        try {
            return IsoDate.monthDay(text);
        } catch (DateTimeException e) {
            fields.wrong(key, "not-a-month-day", "must be month-day, 03-15 for example, but is " + text, "");
            return MonthDay.of(1, 1);
        }
    }
}
