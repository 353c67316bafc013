package org.oldwood.craft.feeding;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.craft.feeding.liming.Lime;
import org.oldwood.craft.feeding.liming.Liming;
import org.oldwood.craft.feeding.liming.SulphurTable;
import org.oldwood.crop.Crops;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;
import org.oldwood.store.Json;
import org.oldwood.store.JsonReader;
import org.oldwood.store.Problem;
import org.oldwood.store.Problems;

/** The bundled data, read once for all tests of feeding. */
public final class Data {
    static final Documents DOCUMENTS = Documents.bundled();
    static final Crops CROPS = new Crops(DOCUMENTS);
    public static final FeedingTables TABLES = FeedingTables.read(DOCUMENTS);
    public static final Materials MATERIALS = Materials.read(DOCUMENTS);
    public static final Liming LIMING = Liming.read(DOCUMENTS);
    public static final SulphurTable SULPHUR = SulphurTable.read(DOCUMENTS);

    private Data() {}

    public static FeedingProfile profile(String crop) { return FeedingProfile.of(CROPS.get(crop)).orElseThrow(); }

    /** The same soil, of a texture; null for one that is not known. */
    static NeedCase.Soil soil(NeedCase.Soil other, String texture) {
        return new NeedCase.Soil(Optional.ofNullable(texture), other.phosphorus(), other.potassium(), other.magnesium(),
                other.organic());
    }

    static Feed feed(String id) { return MATERIALS.feed(id).orElseThrow(); }

    public static Lime lime(String id) { return MATERIALS.lime(id).orElseThrow(); }

    /** A feed that holds so many percent, all of it free in the first year. */
    static Feed plain(String id, double n, double p2o5, double k2o) {
        return shared(id, n, p2o5, k2o, 1, 1, 1);
    }

    static Feed shared(String id, double n, double p, double k, double shareN, double shareP, double shareK) {
        List<Problem> problems = new ArrayList<>();
        Feed feed = read("""
                {"id": "%s", "name": "%s", "tags": [],
                 "analysis": {"N": %s, "P2O5": %s, "K2O": %s},
                 "firstYear": {"N": %s, "P2O5": %s, "K2O": %s}}
                """.formatted(id, id, n, p, k, shareN, shareP, shareK), problems);
        if (!problems.isEmpty()) { throw new AssertionError(problems.toString()); }
        return feed;
    }

    static Feed read(String json, List<Problem> into) {
        Problems problems = new Problems();
        Feed feed = Feed.read(Fields.of(parsed(json, problems), problems));
        into.addAll(problems.list());
        return feed;
    }

    private static Json parsed(String json, Problems problems) {
        try {
            return JsonReader.read(new ByteArrayInputStream(json.getBytes(StandardCharsets.UTF_8)),
                    "materials/mine.json", problems).orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
