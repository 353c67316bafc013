package org.oldwood.crop;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.oldwood.store.Fields;
import org.oldwood.store.IsoDate;

/**
 * Reads a record from an object of the data: each component from the key of its name ({@code sources} from
 * {@code source}), as {@link Key} says otherwise. What is missing, of another kind, out of range or not known is a
 * problem of the document. A {@code note} is empty and a flag false where absent; any object may say {@code source},
 * {@code seen}, {@code unit} and {@code note}. A type with a static
 * {@code read(Fields)} is read by that.
 */
public final class RecordReader {
    private static final String SEEN = "seen";
    private static final Set<String> GROUNDS = Set.of("source", SEEN, "note", "unit");

    /** What is known of each kind of record; looked up by reflection once, since a garden has hundreds of objects. */
    private static final ClassValue<Shape> SHAPES = new ClassValue<>() {
        @Override
        protected Shape computeValue(Class<?> kind) { return Shape.of(kind); }
    };

    private RecordReader() {}

    /** How a kind of record is made. */
    private record Shape(Constructor<?> constructor, List<Part> parts, List<String> notes) {
        static Shape of(Class<?> kind) {
            RecordComponent[] parts = kind.getRecordComponents();
            Class<?>[] types = Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new);
            Notes notes = kind.getAnnotation(Notes.class);
            try {
                Constructor<?> constructor = kind.getDeclaredConstructor(types);
                constructor.setAccessible(true);
                return new Shape(constructor, Arrays.stream(parts).map(Part::of).toList(),
                        notes == null ? List.of() : List.of(notes.value()));
            } catch (NoSuchMethodException e) {
                throw new IllegalStateException(kind + " cannot be read", e);
            }
        }
    }

    /** A component: its name, its key, and what {@link Key} says of it. */
    private record Part(String name, String key, Type type, Said said) {
        static Part of(RecordComponent part) {
            Said said = Said.of(part.getAnnotation(Key.class));
            String name = part.getName().equals("sources") ? "source" : part.getName();
            return new Part(part.getName(), said.key.isEmpty() ? name : said.key, part.getGenericType(), said);
        }
    }

    private record Said(String key, double least, double most, double otherwise, List<String> words, boolean maybe) {
        private static final Said NOTHING = new Said("", -1e9, 1e9, Double.NaN, List.of(), false);

        static Said of(@Nullable Key as) {
            return as == null ? NOTHING
                    : new Said(as.value(), as.least(), as.most(), as.otherwise(), List.of(as.words()), as.maybe());
        }
    }

    /** A whole document, with the number of its format. */
    public static <R extends Record> R document(Fields fields, Class<R> kind) {
        fields.count("format", 1, 1);
        return read(fields, kind);
    }

    public static <R extends Record> R read(Fields fields, Class<R> kind) { return read(fields, kind, Map.of()); }

    public static <R extends Record> R read(Fields fields, Class<R> kind, Map<String, ?> given) {
        R read = part(fields, kind, given);
        List<String> wanted = SHAPES.get(kind).notes;
        wanted.forEach(fields::raw);
        end(fields, wanted.contains(SEEN));
        return read;
    }

    /** Ends the reading of an object: what grounds it is judged, and other keys are told. */
    private static void end(Fields fields, boolean marked) {
        fields.texts("source");
        fields.text("note", "");
        fields.text("unit", "");
        if (marked || fields.has(SEEN)) { fields.oneOf(SEEN, Seen.keys()); }
        fields.done();
    }

    /** The records of a list by their ids. */
    public static <R extends Record> Map<String, R> byId(Fields fields, String key, Class<R> kind,
            Function<R, String> id) {
        Map<String, R> all = new LinkedHashMap<>();
        fields.objects(key).stream().map(each -> read(each, kind)).forEach(each -> all.put(id.apply(each), each));
        return all;
    }

    private static <R extends Record> R part(Fields fields, Class<R> kind, Map<String, ?> given) {
        Shape shape = SHAPES.get(kind);
        Object[] values = new Object[shape.parts.size()];
        for (int i = 0; i < values.length; i++) {
            Part part = shape.parts.get(i);
            Object known = given.get(part.name);
            values[i] = known != null ? known : new Component(fields, part.key, part.said).of(part.type);
        }
        try {
            R made = kind.cast(shape.constructor.newInstance(values));
            if (made instanceof Checked checked) { checked.check(fields); }
            return made;
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(kind + " cannot be read", e);
        }
    }

    /** One key of an object. */
    private record Component(Fields fields, String key, Said said) {
        Object of(Type type) {
            if (type instanceof ParameterizedType of) {
                Type[] inner = of.getActualTypeArguments();
                return of.getRawType() == Optional.class ? fields.raw(key).map(there -> of(inner[0]))
                        : of.getRawType() == Map.class ? map((Class<?>) inner[0], inner[1]) : list(inner[0]);
            }
            return single((Class<?>) type);
        }

        private Object single(Class<?> type) {
            if (type == Figure.class) {
                return Figure.read(fields, key);
            } else if (type == String.class) {
                return text();
            } else if (type == boolean.class) {
                return fields.flag(key, false);
            } else if (type == OptionalInt.class) {
                return fields.raw(key).isPresent() ? OptionalInt.of(whole()) : OptionalInt.empty();
            } else if (type == OptionalDouble.class) {
                return fields.raw(key).isPresent() ? OptionalDouble.of(number()) : OptionalDouble.empty();
            } else if (type == int.class || type == Integer.class) {
                return whole();
            } else if (type == double.class || type == Double.class) {
                return number();
            } else if (type == MonthDay.class) {
                return monthDay(fields, key);
            } else if (type.isEnum()) { return constant(type); }
            return said.key.equals(Key.HERE) ? part(fields, type.asSubclass(Record.class), Map.of())
                    : object(fields.part(key), type);
        }

        private String text() {
            if ((key.equals("note") || said.maybe) && fields.raw(key).isEmpty()) { return ""; }
            return said.words.isEmpty() ? fields.text(key) : fields.oneOf(key, said.words);
        }

        private double number() {
            return Double.isNaN(said.otherwise) ? fields.number(key, said.least, said.most)
                    : fields.number(key, said.least, said.most, said.otherwise);
        }

        private int whole() {
            double number = number();
            fields.tellIf(number != Math.rint(number), key, "not-whole", number);
            return (int) Math.rint(number);
        }

        private Object constant(Class<?> type) {
            List<String> keys = Arrays.stream(type.getEnumConstants()).map(RecordReader::word).toList();
            return type.getEnumConstants()[keys.indexOf(fields.oneOf(key, keys))];
        }

        private Object list(Type of) {
            if (of == String.class) {
                return List.copyOf(fields.texts(key));
            } else if (of == Double.class) {
                return List.copyOf(fields.numbers(key));
            } else if (of == Integer.class) { return fields.numbers(key).stream().map(Double::intValue).toList(); }
            return fields.objects(key).stream().map(each -> object(each, (Class<?>) of)).toList();
        }

        /** In the order of the file, or in that of the constants by which it goes. */
        private Object map(Class<?> by, Type of) {
            Map<Object, Object> all = new LinkedHashMap<>();
            Fields inner = fields.object(key).orElse(null);
            if (inner == null) { return all; }
            BiConsumer<Object, String> put = (id, name) -> all.put(id, new Component(inner, name, said).of(of));
            if (by == String.class) {
                inner.keys().stream().filter(name -> !GROUNDS.contains(name)).forEach(name -> put.accept(name, name));
            } else {
                Arrays.stream(by.getEnumConstants()).filter(id -> inner.has(word(id)))
                        .forEach(id -> put.accept(id, word(id)));
            }
            end(inner, false);
            return all;
        }
    }

    private static Object object(Fields fields, Class<?> type) {
        if (type == Figure.class) { return Figure.of(fields); }
        for (Method method : type.getDeclaredMethods()) {
            if (method.getName().equals("read") && method.getParameterCount() == 1
                    && method.getParameterTypes()[0] == Fields.class) {
                return invoked(method, fields);
            }
        }
        return read(fields, type.asSubclass(Record.class));
    }

    private static Object invoked(Method read, Fields fields) {
        try {
            read.setAccessible(true);
            return read.invoke(null, fields);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException(read + " cannot read", e);
        }
    }

    /** A constant as the data writes it: {@code leaf-fall-done}. */
    private static String word(Object constant) {
        return ((Enum<?>) constant).name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** A day of any year, {@code 11-20}. */
    public static MonthDay monthDay(Fields fields, String key) {
        String text = fields.text(key);
        return IsoDate.monthDay(text).orElseGet(() -> {
            fields.tell(key, "not-a-month-day", text);
            return MonthDay.of(1, 1);
        });
    }
}
