package org.oldwood.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;

/** Sentences that stand in a text file beside the program, so that they can be read and reworded without code. */
public final class Texts {
    private final String file;
    private final Map<String, String> all;

    private Texts(String file) {
        this.file = file;
        this.all = sections(file);
    }

    /** The sentences of {@code words/NAME.txt}. */
    public static Texts of(String name) {
        return new Texts(name + ".txt");
    }

    /** A text that lies beside a class of the program. */
    public static String resource(Class<?> beside, String name) {
        try (InputStream in = beside.getResourceAsStream(name)) {
            if (in == null) { throw new IllegalStateException(name + " is missing from the program"); }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The lines of {@code words/FILE}. */
    static Stream<String> lines(String file) {
        return resource(Texts.class, file).lines();
    }

    /** The texts of {@code words/FILE}, each by the line in square brackets above it. */
    public static Map<String, String> sections(String file) {
        Map<String, String> sections = new HashMap<>();
        String[] name = {""};
        lines(file).forEach(line -> {
            if (line.startsWith("[")) {
                name[0] = line.substring(1, line.length() - 1);
            } else {
                sections.merge(name[0], line, "%s\n%s"::formatted);
            }
        });
        return sections;
    }

    /** A sentence with what is put in. */
    public String get(String key, Object... with) {
        String text = all.get(key);
        if (text == null) { throw new IllegalArgumentException("words/%s has no %s".formatted(file, key)); }
        return text.formatted(with);
    }
}
