package org.oldwood.care;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.store.Documents;

/** The short warnings by id, from {@code cautions.json}. */
public final class Cautions {
    private final Map<String, Caution> byId = new LinkedHashMap<>();

    /** A warning's line and the keys of its sources. */
    public record Caution(String line, List<String> sources) {}

    public static Cautions read(Documents documents) {
        Cautions cautions = new Cautions();
        documents
                .fields("cautions.json")
                .objects("cautions")
                .forEach(
                        fields ->
                                cautions.byId.put(
                                        fields.text("id"),
                                        new Caution(fields.text("line"), fields.texts("source"))));
        return cautions;
    }

    public Optional<Caution> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }
}
