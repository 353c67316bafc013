package org.oldwood.cli.record;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.oldwood.craft.water.Soils;
import org.oldwood.craft.water.Surfaces;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryField;
import org.oldwood.garden.EntryKind;
import org.oldwood.plan.Rules;
import org.oldwood.plan.round.Rounds;
import org.oldwood.season.Climate;
import org.oldwood.store.Documents;
import org.oldwood.store.Json;
import org.oldwood.store.Nearest;
import org.oldwood.store.Problems;

/** Whether entries and garden.json name materials, climate, textures, roof coverings and kinds of rounds that are known. */
record KnownNames(Documents documents, Problems problems) {
    private static final String NOT = "is not a %s that is known";

    /** The ids of all materials, bundled and the garden's own. */
    Set<String> materials() {
        Set<String> ids = new TreeSet<>();
        documents.names("materials").stream().flatMap(name -> documents.read("materials/" + name + ".json").stream())
                .flatMap(KnownNames::within).flatMap(KnownNames::within).flatMap(material -> member(material, "id"))
                .forEach(id -> ids.add(id instanceof Json.Text text ? text.value() : ""));
        return ids;
    }

    /** Adds a problem for each entry that names a material or a kind of round which is not known. */
    void check(List<Entry> entries) {
        Set<String> ids = materials();
        for (Entry entry : entries) {
            entry.kind().fields().stream().filter(field -> field.type() == EntryField.Holds.MATERIAL)
                    .forEach(field -> material(Stream.ofNullable(entry.values().get(field.key())), ids));
            if (entry.kind() == EntryKind.NEVER) { never(Stream.ofNullable(entry.values().get("kind"))); }
        }
    }

    private void material(Stream<Json> names, Set<String> ids) {
        known(names, () -> ids, "names no material that is known", "material");
    }

    /** Adds a problem for each name in {@code garden} that nothing knows. */
    void check(Json garden) {
        material(member(garden, "materials").flatMap(KnownNames::within), materials());
        member(garden, "climate").forEach(climate -> Climate.of(climate, documents, problems));
        never(member(garden, "wishes").flatMap(it -> member(it, "never")).flatMap(KnownNames::within));
        known(inBeds(garden, bed -> member(bed, "texture")), () -> Soils.read(documents).ids(),
                NOT.formatted("soil texture"), "texture");
        known(inBeds(garden, bed -> member(bed, "roof").flatMap(it -> member(it, "surface"))),
                () -> Surfaces.read(documents).ids(), NOT.formatted("roof covering"), "surface");
    }

    private void never(Stream<Json> names) {
        known(names, () -> Stream.concat(Rounds.read(documents).kinds().stream(), Rules.read(documents).ids().stream())
                .toList(), NOT.formatted("kind of round"), "kind");
    }

    private static Stream<Json> inBeds(Json garden, Function<Json, Stream<Json>> named) {
        return member(garden, "beds").flatMap(KnownNames::within).flatMap(named);
    }

    private static Stream<Json> member(Json parent, String key) {
        return parent instanceof Json.Obj object ? Stream.ofNullable(object.members().get(key)) : Stream.of();
    }

    private static Stream<Json> within(Json parent) {
        return parent instanceof Json.Obj object ? object.members().values().stream()
                : parent instanceof Json.Arr array ? array.items().stream() : Stream.of();
    }

    /** The ids are read only where there is a name to look for: most gardens have none of most kinds. */
    private void known(Stream<Json> names, Supplier<Collection<String>> known, String rule, String code) {
        List<Json.Text> texts = names.filter(Json.Text.class::isInstance).map(Json.Text.class::cast).toList();
        Collection<String> ids = texts.isEmpty() ? List.of() : known.get();
        texts.stream().filter(text -> !ids.contains(text.value())).forEach(text -> problems.add("unknown-" + code,
                text.place(), "%s: \"%s\"".formatted(rule, text.value()), Nearest.hint(text.value(), ids)));
    }
}
