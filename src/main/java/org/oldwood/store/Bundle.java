package org.oldwood.store;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.net.MalformedURLException;
import java.net.URL;
import org.jspecify.annotations.Nullable;

/**
 * Opens the bundled documents beside the one that was found first. A class loader that is asked for
 * each looks through all modules of the Java runtime before its own jar, every time: half of what
 * reading a document takes at the start of a run.
 */
final class Bundle {
    private static final String ROOT = "/org/oldwood/";
    private static final String KNOWN = "rules/index.json";

    private final @Nullable URL root;

    Bundle() {
        URL known = Bundle.class.getResource(ROOT + KNOWN);
        try {
            root = known == null ? null : new URL(known, "../");
        } catch (MalformedURLException e) {
            throw new IllegalStateException("the bundled documents cannot be found", e);
        }
    }

    /** The bytes of a document, {@code rules/pruning.json}; null where there is none. */
    @Nullable InputStream open(String name) throws IOException {
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
