package org.oldwood.cli.record;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryField;
import org.oldwood.store.Documents;
import org.oldwood.store.Json;
import org.oldwood.store.Nearest;
import org.oldwood.store.Problems;

/** The ids of all materials, bundled and the garden's own, and whether entries name one of them. */
final class MaterialNames {
    private final Set<String> ids = new TreeSet<>();

    MaterialNames(Documents documents) {
        for (String name : documents.names("materials")) {
            documents.read("materials/" + name + ".json").ifPresent(this::addAll);
        }
    }

    Set<String> ids() {
        return ids;
    }

    private void addAll(Json document) {
        if (document instanceof Json.Obj object) {
            object.members().values().forEach(this::addList);
        }
    }

    private void addList(Json value) {
        if (value instanceof Json.Arr list) {
            for (Json item : list.items()) {
                if (item instanceof Json.Obj material && material.members().get("id") instanceof Json.Text id) {
                    ids.add(id.value());
                }
            }
        }
    }

    /** Adds a problem for each entry that names a material which is not known. */
    void check(List<Entry> entries, Problems problems) {
        for (Entry entry : entries) {
            for (EntryField field : entry.kind().fields()) {
                if (field.type() == EntryField.Holds.MATERIAL) {
                    Optional.ofNullable(entry.values().get(field.key())).ifPresent(id -> check(id, problems));
                }
            }
        }
    }

    /** Adds a problem for each material that garden.json keeps and nothing knows. */
    void checkKept(Json garden, Problems problems) {
        if (garden instanceof Json.Obj object && object.members().get("materials") instanceof Json.Arr kept) {
            for (Json item : kept.items()) {
                check(item, problems);
            }
        }
    }

    private void check(Json name, Problems problems) {
        if (name instanceof Json.Text id && !ids.contains(id.value())) {
            problems.add(
                    "unknown-material",
                    id.place(),
                    "names no material that is known: \"" + id.value() + "\"",
                    Nearest.hint(id.value(), ids));
        }
    }
}
