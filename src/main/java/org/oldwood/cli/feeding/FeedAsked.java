package org.oldwood.cli.feeding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.Planning;
import org.oldwood.craft.feeding.Budget;
import org.oldwood.craft.feeding.Choice;
import org.oldwood.craft.feeding.Feed;
import org.oldwood.craft.feeding.FeedingProfile;
import org.oldwood.craft.feeding.FeedingTables;
import org.oldwood.craft.feeding.Need;
import org.oldwood.craft.feeding.NeedCase;
import org.oldwood.craft.feeding.Nutrients;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.facts.feeding.FeedingBooks;
import org.oldwood.store.Documents;
import picocli.CommandLine.Option;

/** A piece of ground told on the command line, to be fed without a garden. */
final class FeedAsked {
    private static final List<String> GROWTH = List.of("weak", "normal", "strong");

    @Option(names = "--crop", paramLabel = "CROP", description = "work without a garden")
    Optional<String> crop = Optional.empty();

    @Option(names = "--area", paramLabel = "M2")
    Optional<Double> area = Optional.empty();

    @Option(names = "--material", paramLabel = "ID", split = ",")
    List<String> materials = new ArrayList<>();

    @Option(names = "--analysis", paramLabel = "N-P-K")
    Optional<String> analysis = Optional.empty();

    @Option(names = "--soil", paramLabel = "TEXTURE")
    Optional<String> soil = Optional.empty();

    @Option(names = "--ph", paramLabel = "PH")
    Optional<Double> ph = Optional.empty();

    @Option(names = "--index", paramLabel = "P=N,K=N,Mg=N", split = ",")
    Map<String, Integer> indices = new LinkedHashMap<>();

    @Option(names = "--age", paramLabel = "SEASONS")
    Optional<Integer> age = Optional.empty();

    @Option(names = "--growth", paramLabel = "HOW")
    Optional<String> growth = Optional.empty();

    @Option(names = "--cultivar", paramLabel = "NAME")
    Optional<String> cultivar = Optional.empty();

    @Option(names = "--bushes", paramLabel = "N")
    Optional<Integer> bushes = Optional.empty();

    @Option(names = "--row", paramLabel = "M")
    Optional<Double> row = Optional.empty();

    @Option(names = "--school", paramLabel = "ID")
    Optional<String> school = Optional.empty();

    @Option(names = "--before-planting")
    boolean beforePlanting;

    /** Whether anything was told of a piece of ground. */
    boolean any() {
        return beforePlanting || !materials.isEmpty() || !indices.isEmpty() || Stream
                .of(area, analysis, soil, ph, age, growth, cultivar, bushes, row, school).anyMatch(Optional::isPresent);
    }

    FeedSheet sheet(GardenCommand command, Documents documents) {
        FeedingBooks books = new FeedingBooks(documents);
        Crops crops = new Crops(documents);
        Crop of = Planning.crop(crop.orElse(""), crops, command);
        FeedingProfile profile = FeedingProfile.of(of)
                .orElseThrow(() -> command.usage("no figures of food are known for " + of.plural()));
        NeedCase asked = needCase(command, books.tables());
        Need need = beforePlanting ? Need.beforePlanting(books.tables(), profile, asked)
                : Need.of(books.tables(), profile, school(command, profile), asked);
        OptionalDouble measured = ph.map(OptionalDouble::of).orElse(OptionalDouble.empty());
        Choice choice = Choice.of(feeds(command, books, profile), profile, need.gPerM2().k2o(), measured,
                books.liming().neverFrom());
        Budget budget = Budget.of(books.tables(), need, Budget.Counting.NOTHING,
                books.tables().timing(profile.timing()), asked.soil().texture(), 0, choice, asked.ground());
        return new FeedSheet(of.plural(),
                new FeedSheet.Of(Optional.empty(), of.id(), Optional.empty(), Optional.empty()), budget,
                beforePlanting ? Optional.of("before planting, worked in") : Optional.empty(), need.lines(),
                assumed(asked),
                beforePlanting ? List.of() : Need.others(books.tables(), profile, school(command, profile), asked),
                Optional.empty());
    }

    private List<String> assumed(NeedCase asked) {
        List<String> assumed = new ArrayList<>();
        if (asked.soil().texture().isEmpty()) {
            assumed.add("The soil's texture: a middle value is taken; --soil tells it.");
        }
        if (indices.isEmpty()) {
            assumed.add("No soil test: phosphate, potash, magnesia as usual; --index tells them.");
        }
        if (age.isEmpty() && !beforePlanting) { assumed.add("The plants' age: taken as established; --age tells it."); }
        if (materials.isEmpty() && analysis.isEmpty()) {
            assumed.add("The feeds at hand: usual ones are taken; --material names yours.");
        }
        if (analysis.isPresent()) {
            assumed.add("In which form your feed holds nitrogen and potash: read the label. Blueberries"
                    + " want no nitrate; red currants, gooseberries and raspberries little chloride.");
        }
        return assumed;
    }

    private FeedingProfile.School school(GardenCommand command, FeedingProfile profile) {
        List<String> ids = profile.schools().stream().map(FeedingProfile.School::id).toList();
        return school.map(id -> profile.school(id).orElseThrow(() -> command.noSuch("school", id, ids)))
                .orElseGet(() -> profile.schools().get(0));
    }

    private List<Feed> feeds(GardenCommand command, FeedingBooks books, FeedingProfile profile) {
        List<Feed> feeds = new ArrayList<>();
        analysis.map(text -> label(command, text)).ifPresent(feeds::add);
        List<String> known = books.materials().feeds().stream().map(Feed::id).toList();
        boolean usual = materials.isEmpty() && analysis.isEmpty();
        for (String id : usual ? books.tables().usual().forCrop(profile.acidSoil()) : materials) {
            feeds.add(books.materials().feed(id).orElseThrow(() -> command.noSuch("feed", id, known)));
        }
        return feeds;
    }

    private static Feed label(GardenCommand command, String text) {
        String[] parts = text.split("-", -1);
        try {
            if (parts.length < 3 || parts.length > 4) { throw new NumberFormatException(); }
            double[] percent = Arrays.copyOf(Stream.of(parts).mapToDouble(Double::parseDouble).toArray(), 4);
            return Feed.ofLabel(new Nutrients(percent[0], percent[1], percent[2], percent[3]));
        } catch (NumberFormatException e) {
            throw command.usage("--analysis takes N-P2O5-K2O in %, 7-7-7 for example");
        }
    }

    private NeedCase needCase(GardenCommand command, FeedingTables tables) {
        command.refuseIf(area.isEmpty(), "--area is missing: how many square metres are to be fed");
        if (growth.isPresent() && !GROWTH.contains(growth.get())) {
            throw command.usage("--growth is weak, normal or strong, not \"" + growth.get() + "\"");
        }
        command.mustKnow("soil", soil, tables.soils().textures());
        command.refuseIf(!Set.of("P", "K", "Mg").containsAll(indices.keySet()),
                "--index takes P, K and Mg, as P=1,K=2,Mg=2");
        NeedCase.Soil known = new NeedCase.Soil(soil, index("P"), index("K"), index("Mg"),
                tables.soils().organic(soil));
        NeedCase asked = NeedCase.of(new NeedCase.Ground(area.get(), bushes.orElse(0), row.orElse(0.0))).withSoil(known)
                .withCultivar(cultivar).withGrowth(growth.orElse("normal"));
        return age.map(asked::withAge).orElse(asked);
    }

    private OptionalInt index(String element) {
        return Stream.ofNullable(indices.get(element)).mapToInt(value -> value).findFirst();
    }
}
