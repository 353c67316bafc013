package org.oldwood.words;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;

/** Sentences that stand in a text file beside the program, so that they can be read and reworded without code. */
public final class Texts {
    private final Properties all = new Properties();
    private final String name;

    private Texts(String name) {
        this.name = name;
    }

    /** The sentences of {@code words/NAME.properties}. */
    public static Texts of(String name) {
        Texts texts = new Texts(name);
        try (Reader in = new InputStreamReader(
                Texts.class.getResourceAsStream("/org/oldwood/words/%s.properties".formatted(name)),
                StandardCharsets.UTF_8)) {
            texts.all.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return texts;
    }

    /** A sentence with what is put in. */
    public String get(String key, Object... with) {
        String text = all.getProperty(key);
        if (text == null) {
            throw new IllegalArgumentException("words/%s.properties has no %s".formatted(name, key));
        }
        return text.formatted(with);
    }
}
