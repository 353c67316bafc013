package org.oldwood.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Packs the bundled documents into one piece when the program is built; {@link Packed} takes them out again. The same
 * documents give the same bytes.
 *
 * <p>All numbers are of two octets ("small") or four, highest octet first. The piece begins with a mark, where the keys
 * are, where the documents are and how long it all is. A value is its kind (one octet), its line and column (small),
 * and then: a text, its length (small) and octets; a number, its eight octets as IEEE 754 and its digits as a text; an
 * object, how many members (small) and for each the number of its key (small) and where its value is; a list, how many
 * items (small) and where each is. The keys are how many (small) and where the text of each is; the documents are how
 * many (small), and for each its name as a text and where its value is.
 */
public final class Packing {
    private static final int MOST_SMALL = 0xFFFF;

    private ByteBuffer out = ByteBuffer.allocate(1 << 20).position(Packed.HEAD);
    private final Map<String, Integer> keys = new LinkedHashMap<>();

    private Packing() {}

    /**
     * Packs all documents in a folder into its file {@code documents.packed}, and takes them away.
     *
     * @param arguments the folder
     */
    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        List<Path> files = documents(folder);
        Files.write(folder.resolve(Bundle.PACKED), pack(folder, files));
        for (Path file : files) {
            Files.delete(file);
        }
    }

    /** All documents of a folder, packed. */
    static byte[] pack(Path folder) throws IOException {
        return pack(folder, documents(folder));
    }

    private static List<Path> documents(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }

    private static byte[] pack(Path folder, List<Path> files) throws IOException {
        Packing packing = new Packing();
        Map<String, Integer> documents = new TreeMap<>();
        for (Path file : files) {
            String name = folder.relativize(file).toString().replace('\\', '/');
            documents.put(name, packing.value(read(file, name)));
        }
        return packing.ended(documents);
    }

    private static Json read(Path file, String name) throws IOException {
        Problems problems = new Problems();
        try (InputStream in = Files.newInputStream(file)) {
            Optional<Json> json = JsonReader.read(in, name, problems);
            return json.orElseThrow(() -> new RecordException(problems.list()));
        }
    }

    private byte[] ended(Map<String, Integer> documents) {
        int[] texts = keys.keySet().stream().mapToInt(this::textAt).toArray();
        out.putInt(4, out.position());
        small(texts.length);
        for (int at : texts) {
            number(at);
        }
        out.putInt(8, out.position());
        small(documents.size());
        documents.forEach((name, at) -> {
            text(name);
            number(at);
        });
        out.putInt(0, Packed.MARK).putInt(12, out.position());
        return Arrays.copyOf(out.array(), out.position());
    }

    private int textAt(String text) {
        int at = out.position();
        text(text);
        return at;
    }

    /** Writes a value with all that is in it; returns where it is. */
    private int value(Json value) {
        int at = out.position();
        room(Packed.BEFORE_VALUE);
        out.put((byte) kind(value));
        small(value.place().line());
        small(value.place().column());
        if (value instanceof Json.Text text) {
            text(text.value());
        } else if (value instanceof Json.Num num) {
            room(8);
            out.putDouble(num.value());
            text(num.written());
        } else if (value instanceof Json.Obj object) {
            members(object.members());
        } else if (value instanceof Json.Arr array) {
            items(array.items());
        }
        return at;
    }

    private static int kind(Json value) {
        if (value instanceof Json.Text text) {
            return text.value().chars().allMatch(c -> c <= 0x7F) ? Packed.LATIN_TEXT : Packed.TEXT;
        }
        if (value instanceof Json.Bool bool) {
            return bool.value() ? Packed.TRUE : Packed.FALSE;
        }
        if (value instanceof Json.Num) {
            return Packed.NUMBER;
        }
        if (value instanceof Json.Obj) {
            return Packed.OBJECT;
        }
        return value instanceof Json.Arr ? Packed.ARRAY : Packed.NOTHING;
    }

    private void members(Map<String, Json> members) {
        small(members.size());
        int place = out.position();
        skip(Packed.MEMBER * members.size());
        for (Map.Entry<String, Json> member : members.entrySet()) {
            int key = keys.computeIfAbsent(member.getKey(), any -> keys.size());
            int at = value(member.getValue());
            out.putShort(place, (short) checked(key)).putInt(place + 2, at);
            place += Packed.MEMBER;
        }
    }

    private void items(List<Json> items) {
        small(items.size());
        int place = out.position();
        skip(4 * items.size());
        for (Json item : items) {
            int at = value(item);
            out.putInt(place, at);
            place += 4;
        }
    }

    private void text(String text) {
        byte[] octets = text.getBytes(StandardCharsets.UTF_8);
        small(octets.length);
        room(octets.length);
        out.put(octets);
    }

    private void small(int number) {
        room(2);
        out.putShort((short) checked(number));
    }

    private static int checked(int number) {
        if (number < 0 || number > MOST_SMALL) {
            throw new IllegalArgumentException("beyond two octets: " + number);
        }
        return number;
    }

    private void number(int number) {
        room(4);
        out.putInt(number);
    }

    private void skip(int octets) {
        room(octets);
        out.position(out.position() + octets);
    }

    private void room(int octets) {
        if (out.remaining() < octets) {
            byte[] more = Arrays.copyOf(out.array(), 2 * (out.capacity() + octets));
            out = ByteBuffer.wrap(more).position(out.position());
        }
    }
}
