package org.oldwood.craft.feeding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import org.oldwood.crop.Figure;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.RecordException;
import org.oldwood.words.Words;

/**
 * What a crop needs in a year, g/m², by one published school.
 *
 * <p>The tables stand in {@code feeding.json} and carry their sources. They hold for established plants; a young
 * plant's nitrogen is cut, and growth that was noted raises or lowers it. Checked against
 * {@code reference/need-british.csv} and {@code reference/need-american.csv}.
 *
 * @param gPerM2 the need, g/m²
 * @param known the nutrients for which the school gives a need; the others are 0 and not known
 * @param lines the arithmetic, a line for each step
 * @param sources source keys of all tables used
 */
public record Need(Nutrients gPerM2, Set<Nutrient> known, String school, List<String> lines, List<String> sources) {

    /** The need of a year for plants that stand. */
    public static Need of(FeedingTables tables, FeedingProfile profile, FeedingProfile.School school, NeedCase asked) {
        return new Reckoning(tables, asked).year(profile, school);
    }

    /** The nitrogen of a season for plants in tubs; phosphate and potash come with it in the measure of the trial. */
    public static Need inTub(FeedingTables tables, double litres, NeedCase.Ground ground) {
        Figure perLitre = tables.tub().nPerLitre();
        double n = perLitre.is() * litres / ground.areaM2();
        return new Need(Nutrients.NONE.withN(n), EnumSet.of(Nutrient.N), "a trial in pots",
                List.of("nitrogen %s g in %s l of mix: %s; read of blueberries only"
                        .formatted(Words.amount(perLitre.is() * litres), Words.amount(litres), perLitre.inWords())),
                perLitre.sources());
    }

    /** Whether what a school reckons by is known of the ground: bushes, or metres of row. */
    static boolean fits(FeedingTables tables, FeedingProfile.School school, NeedCase.Ground ground) {
        return school.tables().values().stream().map(id -> tables.table(id).unit()).allMatch(unit -> switch (unit) {
            case "g/bush" -> ground.bushes() > 0;
            case "g/m row" -> ground.rowM() > 0;
            default -> true;
        });
    }

    /** What the other schools of the crop ask for, of those that fit the ground, a line each. */
    public static List<String> others(FeedingTables tables, FeedingProfile profile, FeedingProfile.School school,
            NeedCase asked) {
        return profile.schools().stream().filter(other -> !other.equals(school) && fits(tables, other, asked.ground()))
                .map(other -> of(tables, profile, other, asked).inWords()).toList();
    }

    /** {@code Cornell, per bush by age: N 4.2 g/m², nothing of potash}. */
    public String inWords() {
        List<String> untold = untold();
        return "%s: %s g/m²%s".formatted(school, FeedPlan.inWords(gPerM2),
                untold.isEmpty() ? "" : "; of %s it tells nothing".formatted(Words.list(untold)));
    }

    /** The nutrients of which the school tells no need. */
    public List<String> untold() {
        return Arrays.stream(Nutrient.values()).filter(nutrient -> !known.contains(nutrient)).map(Nutrient::words)
                .toList();
    }

    /** What to work in before planting. Nitrogen is not among it. */
    public static Need beforePlanting(FeedingTables tables, FeedingProfile profile, NeedCase asked) {
        return new Reckoning(tables, asked).sum("before planting", profile.planting().keySet(),
                nutrient -> tables.table(profile.planting().getOrDefault(nutrient, "")));
    }

    private record Reckoning(FeedingTables tables, NeedCase asked, List<String> lines, Set<String> sources) {
        Reckoning(FeedingTables tables, NeedCase asked) {
            this(tables, asked, new ArrayList<>(), new LinkedHashSet<>());
        }

        Need year(FeedingProfile profile, FeedingProfile.School school) {
            Need read = sum(school.name(), school.tables().keySet(), nutrient -> table(profile, school, nutrient));
            double n = adjusted(read.gPerM2.n(), nitrogenByAge(profile, school));
            return new Need(read.gPerM2.withN(n), read.known, school.name(), List.copyOf(lines), List.copyOf(sources));
        }

        private NeedTable table(FeedingProfile profile, FeedingProfile.School school, Nutrient nutrient) {
            NeedTable usual = tables.table(school.tables().getOrDefault(nutrient, ""));
            return nutrient == Nutrient.N && usual.by().equals("soil")
                    ? asked.cultivar().flatMap(profile::nitrogenTableFor).map(tables::table).orElse(usual)
                    : usual;
        }

        private boolean nitrogenByAge(FeedingProfile profile, FeedingProfile.School school) {
            return school.tables().containsKey(Nutrient.N) && table(profile, school, Nutrient.N).by().equals("age");
        }

        Need sum(String school, Set<Nutrient> nutrients, Function<Nutrient, NeedTable> tableOf) {
            Set<Nutrient> known = EnumSet.noneOf(Nutrient.class);
            known.addAll(nutrients);
            Nutrients need = Nutrients
                    .each(nutrient -> known.contains(nutrient) ? read(nutrient, tableOf.apply(nutrient)) : 0);
            return new Need(need, known, school, List.copyOf(lines), List.copyOf(sources));
        }

        private double read(Nutrient nutrient, NeedTable table) {
            sources.addAll(table.sources());
            Looked looked = look(nutrient, table);
            double gPerM2 = perM2(looked.value, table.unit());
            lines.add("%s %s g/m² %s: %s%s%s".formatted(nutrient.words(), Words.amount(gPerM2), nutrient.symbol(),
                    looked.words,
                    table.unit().equals("g/m2") ? ""
                            : ", " + Words.amount(looked.value) + " " + table.unit() + " in print",
                    table.seen().beside()));
            return gPerM2;
        }

        private record Looked(double value, String words) {}

        private Looked look(Nutrient nutrient, NeedTable table) {
            return switch (table.by()) {
                case "soil" -> bySoil(table);
                case "index" -> byStep(table, "soil index", asked.soil().index(nutrient));
                case "age" -> byStep(table, "season", asked.age());
                default -> new Looked(table.forAll(), "the same for all");
            };
        }

        private Looked bySoil(NeedTable table) {
            if (asked.soil().texture().isPresent()) {
                String texture = asked.soil().texture().get();
                SoilClasses.Row row = tables.soils().of(texture)
                        .orElseThrow(() -> unknownTexture(tables.soils(), texture));
                double value = table.forSoil(row.nitrogen()).orElseThrow();
                return new Looked(value, "soil " + texture + ", class " + row.nitrogen());
            }
            return new Looked(table.otherwise().orElseGet(table::forAll), "texture not known, a middle value");
        }

        private static Looked byStep(NeedTable table, String what, OptionalInt step) {
            return step.isPresent() ? new Looked(table.forStep(step.getAsInt()), what + " " + step.getAsInt())
                    : new Looked(table.otherwise().orElseGet(table::forAll), what + " not known, taken as usual");
        }

        private double perM2(double value, String unit) {
            NeedCase.Ground ground = asked.ground();
            return switch (unit) {
                case "lb/acre" -> FieldUnits.gPerM2FromLbPerAcre(value);
                case "g/bush" -> value * needed(ground.bushes(), "bushes") / ground.areaM2();
                case "g/m row" -> value * needed(ground.rowM(), "row") / ground.areaM2();
                default -> value;
            };
        }

        private static double needed(double count, String what) {
            if (count > 0) { return count; }
            throw new RecordException(Problem.of("plants-not-known", Place.of(what),
                    what.equals("bushes") ? "Say how many bushes share the ground, for example --bushes 4."
                            : "Say how many metres of row there are, for example --row 5."));
        }

        private double adjusted(double n, boolean byAge) {
            double now = n;
            if (!byAge && asked.age().isPresent() && asked.age().getAsInt() <= tables.young().seasons()) {
                now = times(now, tables.young().times(), "season " + asked.age().getAsInt() + ", young");
            }
            if (!byAge && asked.soil().organic()) {
                sources.addAll(tables.humus().nitrogenShare().sources());
                now = times(now, tables.humus().nitrogenShare().is(), "ground rich in humus");
            }
            double factor = tables.vigour().getOrDefault(asked.growth(), 1.0);
            if (factor != 1.0) { now = times(now, factor, "growth " + asked.growth()); }
            double most = tables.limits().plantingYearMostN().is();
            if (asked.age().isPresent() && asked.age().getAsInt() <= 1 && now > most) {
                lines.add("nitrogen held at " + Words.amount(most) + " g/m² in the planting year");
                now = most;
            }
            return now;
        }

        private double times(double n, double factor, String why) {
            if (n > 0) {
                lines.add("nitrogen %s × %s = %s g/m²: %s".formatted(Words.amount(n), Words.amount(factor),
                        Words.amount(n * factor), why));
            }
            return n * factor;
        }
    }

    public static RecordException unknownTexture(SoilClasses soils, String texture) {
        return new RecordException(Problem.of("unknown-texture one-of", Place.of("texture"),
                String.join(", ", soils.textures()), texture));
    }
}
