package org.oldwood.store;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.net.MalformedURLException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * The bundled documents: packed in one piece in the program as it is built ({@link Packing}), or else the JSON files
 * themselves. Those are opened beside the one that was found first, since a class loader that is asked for each looks
 * through all modules of the Java runtime before its own jar, every time.
 */
final class Bundle {
    static final String PACKED = "documents.packed";

    /**
     * Where the launcher says that the same piece lies beside the program: a file is soon read, but a jar of some
     * thousand classes takes as long to open as all documents to read.
     */
    private static final String BESIDE = "oldwood.documents";

    private static final String ROOT = "/org/oldwood/";
    private static final String KNOWN = "rules/index.json";

    private final @Nullable Packed packed;
    private final @Nullable URL root;

    Bundle() {
        packed = packed();
        URL known = packed == null ? Bundle.class.getResource(ROOT + KNOWN) : null;
        try {
            root = known == null ? null : new URL(known, "../");
        } catch (MalformedURLException e) {
            throw new IllegalStateException("the bundled documents cannot be found", e);
        }
    }

    private static @Nullable Packed packed() {
        Path beside = Path.of(System.getProperty(BESIDE, ""));
        try {
            Packed packed = Files.isRegularFile(beside) ? Packed.of(Files.readAllBytes(beside)) : null;
            return packed == null ? packedInside() : packed;
        } catch (IOException e) {
            return packedInside();
        }
    }

    private static @Nullable Packed packedInside() {
        try (InputStream in = Bundle.class.getResourceAsStream(ROOT + PACKED)) {
            return in == null ? null : Packed.of(in.readAllBytes());
        } catch (IOException e) {
            throw new IllegalStateException("the bundled documents cannot be read", e);
        }
    }

    /** A document, {@code rules/pruning.json}; null where there is none, or it is not JSON. */
    @Nullable
    Json read(String name, Problems problems) {
        if (packed != null) {
            return packed.read(name);
        }
        try (InputStream in = open(name)) {
            return in == null ? null : JsonReader.read(in, name, problems).orElse(null);
        } catch (IOException e) {
            throw new IllegalStateException("the bundled document " + name + " cannot be read", e);
        }
    }

    /** The bytes of a JSON file, {@code rules/pruning.json}; null where there is none. */
    @Nullable
    InputStream open(String name) throws IOException {
        if (root == null || !isPlain(name)) {
            return Bundle.class.getResourceAsStream(ROOT + name);
        }
        try {
            return new URL(root, name).openStream();
        } catch (FileNotFoundException e) {
            return null;
        }
    }

    /** Names are made from words of users' files too, and a mark has a meaning of its own here. */
    private static boolean isPlain(String name) {
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            boolean letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
            boolean plain = letter || (c >= '0' && c <= '9') || c == '-' || c == '.' || c == '/';
            if (!plain) {
                return false;
            }
        }
        return true;
    }
}
