package org.oldwood.garden;

import static org.oldwood.garden.EntryField.count;
import static org.oldwood.garden.EntryField.number;
import static org.oldwood.garden.EntryField.planned;
import static org.oldwood.garden.EntryField.says;
import static org.oldwood.garden.EntryField.some;
import static org.oldwood.garden.EntryField.tick;
import static org.oldwood.garden.EntryField.word;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.oldwood.garden.EntryField.Holds;

/**
 * The kinds of journal entry and what each says. Everything that reads, writes, asks for or describes an entry works
 * from this table, so a new kind of entry is a row here.
 */
public enum EntryKind {
    PLANTED(
            "a bush, or a row of canes, was set in a bed",
            says("plant", Holds.NEW_ID, "the new plant's id").must(),
            says("crop", Holds.CROP, "the crop").must(),
            says("bed", Holds.BED, "the bed it stands in").must(),
            says("form", Holds.TEXT, "how it is grown: stool, leg, cordon, cane-row, trained"),
            says("cultivar", Holds.TEXT, "the variety"),
            number("lengthM", 0.1, 1000, "length of a row, m"),
            count("bushes", 1, 10_000, "how many alike bushes this entry stands for"),
            word("about", "how exact the date is", "day", "month", "year")),
    COUNTED(
            "stems were counted by age",
            says("plant", Holds.PLANT, "the plant").must(),
            says("stems", Holds.STEMS, "stems by completed growing seasons: 1=5,2=4,3=4,4+=3")
                    .must(),
            some("dead", "of these, dead or diseased stems, how many or by age: 1=1,4+=2"),
            some("weak", "of these, weak stems, how many or by age"),
            some("damaged", "of these, broken or damaged stems, how many or by age"),
            some("low", "of these, stems that lie on the ground, how many or by age"),
            count("shoots", 0, 5000, "good one-year shoots to spare for cuttings")),
    CANES(
            "canes of a row were counted",
            says("plant", Holds.PLANT, "the row").must(),
            count("fresh", 0, 5000, "canes that grew this season and have not fruited"),
            count("fruited", 0, 5000, "canes that have fruited"),
            count("dead", 0, 5000, "of the fresh ones, dead or diseased canes"),
            count("weak", 0, 5000, "of the fresh ones, weak or broken canes")),
    PRUNED(
            "wood was cut out",
            says("plant", Holds.PLANT, "the plant").must(),
            says("stems", Holds.STEMS, "stems taken out by age: 4+=3"),
            count("tips", 0, 500, "stems shortened at the tip"),
            count("diseased", 0, 500, "of the stems taken out, diseased ones"),
            count("minutes", 1, 1000, "how long it took, min"),
            number("metres", 0.1, 1000, "of a row, how many metres of it were done, m"),
            word("cut", "which cut", "winter", "summer", "planting", "canes", "renovation", "down"),
            tick(),
            planned()),
    STRUCK(
            "cuttings were set to root",
            says("lot", Holds.NEW_ID, "a new id for these cuttings").must(),
            says("parent", Holds.PLANT, "the bush they came from"),
            says("crop", Holds.CROP, "the crop, where the parent is not yours"),
            word(
                            "method",
                            "how; hardwood keeps all buds for a stool, disbudded clears a leg",
                            "hardwood",
                            "disbudded",
                            "tip-layer",
                            "layer",
                            "sucker",
                            "root",
                            "softwood",
                            "division")
                    .must(),
            count("number", 1, 100_000, "how many were struck").must(),
            says("bed", Holds.BED, "the bed they stand in"),
            says("form", Holds.TEXT, "how the plants will be grown; the parent's form if not said"),
            word("cut", "what will be cut at planting out", "hard", "light", "none")),
    CHECKED(
            "living cuttings were counted",
            says("lot", Holds.LOT, "the id of the cuttings").must(),
            count("alive", 0, 100_000, "how many are alive").must()),
    LIFTED(
            "rooted cuttings were lifted",
            says("lot", Holds.LOT, "the id of the cuttings").must(),
            count("rooted", 0, 100_000, "how many had rooted").must(),
            count("good", 0, 100_000, "of these, good enough to plant out")),
    PLANTED_OUT(
            "rooted cuttings were planted to stay",
            says("lot", Holds.LOT, "the id of the cuttings").must(),
            says("bed", Holds.BED, "the bed they were planted in").must(),
            says("plants", Holds.NEW_IDS, "the new plants' ids, with commas between")
                    .must(),
            says("form", Holds.TEXT, "how they will be grown")),
    LOST(
            "cuttings, or a plant, died",
            says("lot", Holds.LOT, "the id of the cuttings"),
            says("plant", Holds.PLANT, "the plant"),
            count("number", 1, 100_000, "how many of the cuttings"),
            says("cause", Holds.TEXT, "drought, frost, waterlogging, vine weevil, unknown …")),
    GRUBBED(
            "a plant was taken out for good",
            says("plant", Holds.PLANT, "the plant").must(),
            says("cause", Holds.TEXT, "why")),
    INSPECTED(
            "a plant's health was looked at",
            says("plant", Holds.PLANT, "the plant").must(),
            word(
                            "finding",
                            "what was found",
                            "healthy",
                            "big-bud",
                            "reversion",
                            "virus",
                            "canker",
                            "mildew",
                            "poor-crop",
                            "other")
                    .must()),
    VIGOUR(
            "how strongly the plants grow",
            says("bed", Holds.BED, "the bed"),
            says("plant", Holds.PLANT, "the plant"),
            word("growth", "how strong", "weak", "normal", "strong").must()),
    FED(
            "plant food was given",
            says("bed", Holds.BED, "the whole bed"),
            says("plant", Holds.PLANT, "one plant only"),
            says("material", Holds.MATERIAL, "what was given").must(),
            number("grams", 0.1, 5_000_000, "how much in all, g").must(),
            tick(),
            planned()),
    LIMED(
            "lime was given",
            says("bed", Holds.BED, "the bed").must(),
            says("material", Holds.MATERIAL, "what was given").must(),
            number("grams", 0.1, 50_000_000, "how much in all, g").must(),
            tick(),
            planned()),
    ACIDIFIED(
            "sulphur or another acidifier was given",
            says("bed", Holds.BED, "the bed").must(),
            says("material", Holds.MATERIAL, "what was given").must(),
            number("grams", 0.1, 5_000_000, "how much in all, g").must(),
            tick(),
            planned()),
    MULCHED(
            "mulch was laid",
            says("bed", Holds.BED, "the bed").must(),
            says("material", Holds.MATERIAL, "what was laid").must(),
            number("depthCm", 0.1, 60, "how deep it lies now, cm").must(),
            word("under", "what was laid under it", "nothing", "paper", "card"),
            tick(),
            planned()),
    WATERED(
            "a bed or plant was watered",
            says("bed", Holds.BED, "the bed"),
            says("plant", Holds.PLANT, "one plant only"),
            number("litres", 0.1, 1_000_000, "how much in all, l"),
            number("minutes", 0.1, 10_000, "how long the tap ran, min"),
            tick(),
            planned()),
    MOISTURE(
            "the soil's moisture was felt or measured",
            says("bed", Holds.BED, "the bed").must(),
            word(
                    "feel",
                    "how it felt a hand deep",
                    "dry",
                    "slightly-moist",
                    "moist",
                    "very-moist",
                    "field-capacity",
                    "waterlogged"),
            number("percent", 0, 70, "water by volume on a probe, %"),
            number("depthCm", 1, 120, "how deep, cm")),
    SOIL_TEST(
            "the soil was tested",
            says("bed", Holds.BED, "the bed").must(),
            number("ph", 3, 10, "pH in water"),
            number("phosphorus", 0, 2000, "extractable P, mg/l"),
            number("potassium", 0, 5000, "extractable K, mg/l"),
            number("magnesium", 0, 5000, "extractable Mg, mg/l"),
            count("phosphorusIndex", 0, 9, "index of P"),
            count("potassiumIndex", 0, 9, "index of K"),
            count("magnesiumIndex", 0, 9, "index of Mg"),
            says("freeLime", Holds.FLAG, "true where vinegar makes it fizz"),
            word("by", "who measured", "laboratory", "kit", "meter")),
    SEEN(
            "a crop or plant reached a stage of growth",
            says("crop", Holds.CROP, "the crop"),
            says("plant", Holds.PLANT, "the plant, where it is not the whole crop"),
            says("stage", Holds.STAGE, "the stage, by name or BBCH code").must()),
    PICKED(
            "fruit was picked",
            says("plant", Holds.PLANT, "the plant"),
            says("crop", Holds.CROP, "the crop, where the plants were picked together"),
            says("bed", Holds.BED, "the bed, where the plants were picked together"),
            number("kg", 0.001, 100_000, "how much, kg").must()),
    BEGUN(
            "a task was begun, and more of it is left to do",
            says("task", Holds.TASK, "the task's id").must(),
            count("percent", 1, 99, "how much of it is done, %")),
    DONE(
            "a task was done",
            says("task", Holds.TASK, "the task's id").must(),
            number("amount", 0, 1e9, "how much was done, in the task's unit"),
            says("only", Holds.PLANTS, "the plants it was done to, with commas between, where not to all")),
    SKIPPED(
            "a task was left out on purpose",
            says("task", Holds.TASK, "the task's id").must(),
            says("only", Holds.PLANTS, "the plants that it was left out for, with commas between, where not for all"),
            says("cause", Holds.TEXT, "why")),
    LATER(
            "a task was put off",
            says("task", Holds.TASK, "the task's id").must(),
            count("days", 1, 366, "for how many days from that day; 14 where not said")),
    NEVER(
            "a kind of work is never wanted",
            says("kind", Holds.TEXT, "the kind of work: strike for example").must()),
    WITHDRAWN(
            "an earlier entry was wrong and counts no more",
            says("wrong", Holds.ENTRY, "the id of the wrong entry").must(),
            says("cause", Holds.TEXT, "why"));

    private static final List<EntryKind> ALL = List.of(values());
    private static final List<String> KEYS = ALL.stream().map(EntryKind::key).toList();

    private final String key;
    private final String meaning;

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of, and never changed
    private final List<EntryField> fields;

    EntryKind(String meaning, EntryField... fields) {
        this.key = name().toLowerCase(Locale.ROOT).replace('_', '-');
        this.meaning = meaning;
        this.fields = List.of(fields);
    }

    /** What happened, as the end of a sentence. */
    public String meaning() {
        return meaning;
    }

    /** What an entry of this kind says, in the order in which it is written. */
    public List<EntryField> fields() {
        return fields;
    }

    public Optional<EntryField> field(String key) {
        for (EntryField known : fields) {
            if (known.key().equals(key)) {
                return Optional.of(known);
            }
        }
        return Optional.empty();
    }

    /** As it stands in the journal: {@code planted-out}. */
    public String key() {
        return key;
    }

    public static List<String> keys() {
        return KEYS;
    }

    /** What an entry that takes another back was called before: too near to cuttings that were struck. */
    private static final String FORMER_WITHDRAWN = "struck-out";

    /** The names that journals may hold: the kind's own, and one it had before. */
    public List<String> keysInJournals() {
        return this == WITHDRAWN ? List.of(key, FORMER_WITHDRAWN) : List.of(key);
    }

    public static Optional<EntryKind> find(String key) {
        int at = KEYS.indexOf(key.equals(FORMER_WITHDRAWN) ? WITHDRAWN.key : key);
        return at < 0 ? Optional.empty() : Optional.of(ALL.get(at));
    }

    /** Of these fields an entry must have at least one; empty where there is no such demand. */
    public List<String> oneNeeded() {
        return switch (this) {
            case LOST -> List.of("lot", "plant");
            case FED, VIGOUR -> List.of("bed", "plant");
            case WATERED -> List.of("litres", "minutes");
            case MOISTURE -> List.of("feel", "percent");
            case SEEN -> List.of("crop", "plant");
            case PICKED -> List.of("plant", "bed");
            case STRUCK -> List.of("parent", "crop");
            case CANES -> List.of("fresh", "fruited");
            default -> List.of();
        };
    }
}
