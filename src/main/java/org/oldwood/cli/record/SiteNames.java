package org.oldwood.cli.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.craft.water.Soils;
import org.oldwood.craft.water.Surfaces;
import org.oldwood.plan.Rules;
import org.oldwood.plan.round.Rounds;
import org.oldwood.season.Climate;
import org.oldwood.store.Documents;
import org.oldwood.store.Json;
import org.oldwood.store.Nearest;
import org.oldwood.store.Problems;

/** Whether garden.json names climate, soil textures, roof coverings and kinds of rounds that are known. */
final class SiteNames {
    private SiteNames() {}

    /** Adds a problem for each name in {@code garden} that nothing knows. */
    static void check(Json garden, Documents documents, Problems problems) {
        member(garden, "climate").ifPresent(climate -> Climate.of(climate, documents, problems));
        if (member(garden, "wishes").flatMap(wishes -> member(wishes, "never")).orElse(null)
                instanceof Json.Arr never) {
            List<String> kinds = new ArrayList<>(Rounds.read(documents).kinds());
            kinds.addAll(Rules.read(documents).ids());
            never.items().forEach(kind -> known(Optional.of(kind), kinds, "kind of round", "kind", problems));
        }
        if (member(garden, "beds").orElse(null) instanceof Json.Arr beds) {
            List<String> textures = Soils.read(documents).ids();
            List<String> surfaces = Surfaces.read(documents).ids();
            for (Json bed : beds.items()) {
                known(member(bed, "texture"), textures, "soil texture", "texture", problems);
                Optional<Json> roof = member(bed, "roof");
                known(roof.flatMap(r -> member(r, "surface")), surfaces, "roof covering", "surface", problems);
            }
        }
    }

    private static Optional<Json> member(Json parent, String key) {
        return parent instanceof Json.Obj object
                ? Optional.ofNullable(object.members().get(key))
                : Optional.empty();
    }

    private static void known(Optional<Json> value, List<String> ids, String what, String code, Problems problems) {
        if (value.orElse(null) instanceof Json.Text name && !ids.contains(name.value())) {
            problems.add(
                    "unknown-%s".formatted(code),
                    name.place(),
                    "is not a " + what + " that is known: \"" + name.value() + "\"",
                    Nearest.hint(name.value(), ids));
        }
    }
}
