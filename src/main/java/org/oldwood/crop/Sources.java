package org.oldwood.crop;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;

/** All sources by key, gathered from the files {@code sources/*.json}. */
public final class Sources {
    private static final String FOLDER = "sources";

    /** The bundled sources that were not read in print stand together, so that few are read. */
    private static final String NOT_READ = "not-read";

    private final Map<String, Source> byKey;

    private Sources(Map<String, Source> byKey) { this.byKey = byKey; }

    public static Sources read(Documents documents) { return read(documents, documents.names(FOLDER)); }

    /** How the figures of sources came into the data, by key, where they were not read in print. */
    public static Map<String, Seen> notRead(Documents documents) {
        List<String> names = documents.hasOwn(FOLDER) ? documents.names(FOLDER) : List.of(NOT_READ);
        Map<String, Seen> notRead = new HashMap<>();
        for (Source source : read(documents, names).byKey.values()) {
            if (source.seen() != Seen.READ) { notRead.put(source.key(), source.seen()); }
        }
        return notRead;
    }

    private static Sources read(Documents documents, List<String> names) {
        Map<String, Source> byKey = new TreeMap<>();
        for (String name : names) {
            String file = FOLDER + "/" + name + ".json";
            for (Fields fields : documents.fields(file).objects("sources")) {
                Source source = RecordReader.read(fields, Source.class);
                fields.tellIf(byKey.put(source.key(), source) != null, "key", "duplicate-source", source.key());
            }
        }
        return new Sources(byKey);
    }

    public Optional<Source> find(String key) { return Optional.ofNullable(byKey.get(key)); }

    /** All sources in the order of their keys. */
    public List<Source> all() { return List.copyOf(byKey.values()); }
}
