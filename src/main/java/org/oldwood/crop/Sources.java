package org.oldwood.crop;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;

/** All sources by key, gathered from the files {@code sources/*.json}. */
public record Sources(Map<String, Source> byKey) {
    private static final String FOLDER = "sources";

    public static Sources read(Documents documents) {
        Map<String, Source> byKey = new TreeMap<>();
        for (String name : documents.names(FOLDER)) {
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
