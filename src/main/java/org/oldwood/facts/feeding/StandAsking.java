package org.oldwood.facts.feeding;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.DoubleToIntFunction;
import java.util.stream.Stream;
import org.oldwood.craft.feeding.FeedingProfile;
import org.oldwood.craft.feeding.Need;
import org.oldwood.craft.feeding.NeedCase;
import org.oldwood.craft.mulching.Mulch;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Figure;
import org.oldwood.facts.Situation;
import org.oldwood.garden.BedState;
import org.oldwood.garden.Entries;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.PlantState;
import org.oldwood.words.Words;

/**
 * Gathers what the need depends on.
 *
 * @param assumed what it had to assume so far
 */
record StandAsking(FeedingBooks books, Situation s, BedState bed, Set<String> assumed) {
    private static final int SEASONS_OF_GROWTH = 1;

    public NeedCase about(List<PlantState> plants, NeedCase.Ground ground) {
        OptionalInt age = plants.stream().mapToInt(each -> each.plant().seasonsOld(s.season())).max();
        return new NeedCase(soil(), age, cultivar(plants), growth(), ground);
    }

    private NeedCase.Soil soil() {
        Optional<Entry> test = Entries.last(bed.entries(), EntryKind.SOIL_TEST);
        Optional<String> texture = bed.bed().texture();
        if (texture.isEmpty()) { assumed.add("The soil's texture is not known; add \"texture\" to the bed."); }
        if (texture.isPresent() && books.tables().soils().of(texture.get()).isEmpty()) {
            assumed.add("The texture " + texture.get() + " is in no table; a middle is taken.");
            texture = Optional.empty();
        }
        if (test.isEmpty()) {
            assumed.add("No soil test yet: phosphate, potash and magnesia as for index %s."
                    .formatted(books.tables().targetIndex().inWords()));
        }
        test.flatMap(each -> SoilRecord.tooOld(books, each.date(), s.day())).ifPresent(assumed::add);
        test.flatMap(this::potashAgainstMagnesium).ifPresent(assumed::add);
        var index = books.tables().index();
        return new NeedCase.Soil(texture, index(test, "phosphorus", index::ofPhosphorus),
                index(test, "potassium", index::ofPotassium), index(test, "magnesium", index::ofMagnesium),
                books.tables().soils().organic(texture)
                        || bed.bed().organicPercent().orElse(0) > books.tables().humus().richAbove().is());
    }

    /** Too much potassium in the soil keeps magnesium from the plants. */
    private Optional<String> potashAgainstMagnesium(Entry test) {
        double most = books.tables().limits().potashToMagnesiumMost().is();
        double k = test.number("potassium").orElse(0);
        double mg = test.number("magnesium").orElse(0);
        return mg > 0 && k / mg > most
                ? Optional.of("Soil K to Mg is %s to 1, wanted is at most %s to 1: give magnesia, and hold back potash."
                        .formatted(Words.amount(k / mg), Words.amount(most)))
                : Optional.empty();
    }

    /** Where the soil was tested: when, and how old that is. */
    List<String> tests() {
        return Entries.last(bed.entries(), EntryKind.SOIL_TEST).stream()
                .map(test -> "soil test of %s, %s%s".formatted(test.date(), SoilRecord.age(test.date(), s.day()),
                        SoilRecord.falsified(books, bed, test.date())
                                .map(last -> "; it reads wrong so soon after the bed was %s on %s: test again"
                                        .formatted(last.kind().key(), last.date()))
                                .orElse("")))
                .toList();
    }

    /** The last day on which a laboratory saw what the soil holds; long ago where none did. */
    LocalDate tested() {
        return bed.entries().stream().filter(each -> each.kind() == EntryKind.SOIL_TEST)
                .filter(each -> Stream.of("phosphorus", "potassium", "magnesium")
                        .anyMatch(element -> index(Optional.of(each), element, value -> 0).isPresent()))
                .map(Entry::date).max(Comparator.naturalOrder()).orElse(LocalDate.MIN);
    }

    private static OptionalInt index(Optional<Entry> test, String element, DoubleToIntFunction ofMgPerLitre) {
        if (test.isEmpty()) { return OptionalInt.empty(); }
        OptionalInt told = test.get().count(element + "Index");
        OptionalDouble measured = test.get().number(element);
        return told.isPresent() || measured.isEmpty() ? told
                : OptionalInt.of(ofMgPerLitre.applyAsInt(measured.getAsDouble()));
    }

    public OptionalDouble ph() {
        return SoilRecord.ph(bed).map(each -> OptionalDouble.of(each.ph())).orElse(OptionalDouble.empty());
    }

    private static Optional<String> cultivar(List<PlantState> plants) {
        List<Optional<String>> all = plants.stream().map(each -> each.plant().cultivar()).distinct().toList();
        return all.size() == 1 ? all.get(0) : Optional.empty();
    }

    /** The last note of growth, this season's or the last one's. */
    private String growth() {
        return Entries.last(s.subject().entries(), EntryKind.VIGOUR)
                .filter(entry -> !entry.date().isBefore(s.season().plus(-SEASONS_OF_GROWTH).start()))
                .flatMap(entry -> entry.text("growth")).orElse("normal");
    }

    /** Fresh wood and straw take nitrogen for some seasons; it is added to the need. */
    public Need withMulch(Need need, NeedCase.Ground ground, Crop crop) {
        Optional<Mulch> mulch = Entries.last(bed.entries(), EntryKind.MULCHED)
                .filter(entry -> !entry.date().isBefore(
                        s.season().plus(1 - (int) books.mulches().figure("extraNitrogenSeasons").is()).start()))
                .flatMap(entry -> entry.text("material")).flatMap(books.mulches()::mulch)
                .filter(Mulch::nitrogenDrawdown);
        if (mulch.isEmpty()) { return need; }
        boolean acid = books.profile(crop).map(FeedingProfile::acidSoil).orElse(false);
        Figure takes = books.mulches().figure(acid ? "extraNitrogenBlueberry" : "extraNitrogen");
        double extra = acid && ground.bushes() > 0 ? takes.is() * ground.bushes() / ground.areaM2()
                : books.mulches().figure("extraNitrogen").is();
        List<String> lines = new ArrayList<>(need.lines());
        lines.add("nitrogen + %s g/m², which %s takes where it touches the soil%s".formatted(Words.amount(extra),
                mulch.get().name(), takes.seen().beside()));
        return new Need(need.gPerM2().withN(need.gPerM2().n() + extra), need.known(), need.school(), lines,
                need.sources());
    }

    public List<String> assumed(boolean named) {
        if (!named) { assumed.add("No feed is named under \"materials\" in garden.json; usual ones are taken."); }
        return List.copyOf(assumed);
    }
}
