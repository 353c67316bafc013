package org.oldwood.words;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Properties;
import java.util.stream.Stream;

/** Sentences that stand in a text file beside the program, so that they can be read and reworded without code. */
public final class Texts {
    private final Properties all = new Properties();
    private final String name;

    private Texts(String name) { this.name = name; }

    /** The sentences of {@code words/NAME.properties}. */
    public static Texts of(String name) {
        Texts texts = new Texts(name);
        try (Reader in = open(name + ".properties")) {
            texts.all.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return texts;
    }

    private static BufferedReader open(String file) {
        return new BufferedReader(new InputStreamReader(Texts.class.getResourceAsStream("/org/oldwood/words/" + file),
                StandardCharsets.UTF_8));
    }

    /** The lines of {@code words/FILE}. */
    static Stream<String> lines(String file) {
        try (BufferedReader in = open(file)) {
            return in.lines().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
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
        String text = all.getProperty(key);
        if (text == null) { throw new IllegalArgumentException("words/%s.properties has no %s".formatted(name, key)); }
        return text.formatted(with);
    }
}
