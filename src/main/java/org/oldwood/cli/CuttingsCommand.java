package org.oldwood.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.cuttings.Course;
import org.oldwood.cuttings.Forecast;
import org.oldwood.cuttings.LotBook;
import org.oldwood.cuttings.LotCounts;
import org.oldwood.cuttings.NurseryBed;
import org.oldwood.cuttings.ParentHealth;
import org.oldwood.cuttings.Propagation;
import org.oldwood.cuttings.Setting;
import org.oldwood.cuttings.StrikePlan;
import org.oldwood.cuttings.Survival;
import org.oldwood.cuttings.Want;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.Hemisphere;
import org.oldwood.garden.LotState;
import org.oldwood.garden.Season;
import org.oldwood.report.LotJson;
import org.oldwood.report.LotWords;
import org.oldwood.season.CalendarStages;
import org.oldwood.season.Stages;
import org.oldwood.store.Documents;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells what becomes of lots of cuttings, and how many to strike. */
@Command(
        name = "cuttings",
        description = "what becomes of lots of cuttings, and how many to strike",
        footer = {
            "",
            "Example:",
            "  oldwood cuttings --crop blackcurrant --struck 12 --on 2026-11-20 --at 52,-2"
        })
final class CuttingsCommand extends GardenCommand {
    @Parameters(arity = "0..1", paramLabel = "LOT", description = "one lot, in full")
    Optional<String> lotId = Optional.empty();

    @Option(
            names = "--crop",
            paramLabel = "CROP",
            description = "the crop, blackcurrant for example")
    Optional<String> cropId = Optional.empty();

    @Option(names = "--form", paramLabel = "FORM", description = "stool, leg, cordon …")
    Optional<String> form = Optional.empty();

    @Option(names = "--method", paramLabel = "METHOD", description = "hardwood, layer, sucker …")
    Optional<String> method = Optional.empty();

    @Option(names = "--cut", paramLabel = "CUT", description = "at planting: hard, light or none")
    Optional<String> cut = Optional.empty();

    @Option(
            names = "--struck",
            paramLabel = "N",
            description = "cuttings struck, for a lot not noted")
    Optional<Integer> struck = Optional.empty();

    @Option(names = "--on", paramLabel = "DATE", description = "the day they were struck")
    Optional<LocalDate> on = Optional.empty();

    @Option(names = "--at", paramLabel = "LAT,LON", description = "where, without a garden: 52,-2")
    Optional<String> at = Optional.empty();

    @Option(names = "--want", paramLabel = "N", description = "plants wanted that bear by --by")
    Optional<Integer> want = Optional.empty();

    @Option(names = "--want-kg", paramLabel = "KG", description = "kilograms wanted in --by")
    Optional<Double> wantKg = Optional.empty();

    @Option(names = "--by", paramLabel = "SEASON", description = "2030, or 2029-30 in the south")
    Optional<String> by = Optional.empty();

    @Option(names = "--sure", paramLabel = "CHANCE", description = "how sure, 0.9 otherwise")
    double sure = 0.9;

    /** What a forecast is made from: with a garden, or without. */
    private record Ground(Crop crop, Course course, Survival survival, Setting setting) {}

    @Override
    int run() throws IOException {
        if (want.isPresent() || wantKg.isPresent()) {
            return plan();
        }
        return struck.isPresent() ? single() : lots();
    }

    private Ground ground(LocalDate day) throws IOException {
        Optional<GardenFolder> folder = at.isPresent() ? Optional.empty() : folderIfAny();
        Crops crops =
                folder.map(GardenFolder::crops).orElseGet(() -> new Crops(Documents.bundled()));
        Crop crop = crop(crops);
        String grown = form.orElse(crop.form());
        Course course = Course.of(crop, grown, method, cut).orElseThrow(() -> unknown(crop, grown));
        if (folder.isPresent()) {
            LotBook book = book(folder.get());
            return new Ground(
                    crop, course, book.survival(crop.id(), course), book.setting(crop.id()));
        }
        Stages stages = new CalendarStages();
        Setting setting =
                new Setting(hemisphere(), (season, stage) -> stages.date(crop, season, stage), day);
        return new Ground(crop, course, course.method().phases().survival(), setting);
    }

    private Crop crop(Crops crops) {
        String id = cropId.orElseThrow(() -> usage("Say which crop: --crop blackcurrant"));
        return crops.find(id)
                .orElseThrow(
                        () ->
                                usage(
                                        "There is no crop \""
                                                + id
                                                + "\". There are: "
                                                + String.join(", ", crops.ids())));
    }

    private RuntimeException unknown(Crop crop, String grown) {
        String methods =
                Propagation.of(crop)
                        .map(
                                all ->
                                        String.join(
                                                ", ",
                                                all.methods().stream()
                                                        .map(it -> it.id())
                                                        .distinct()
                                                        .toList()))
                        .orElse("none");
        return usage(
                "Nothing is known of "
                        + crop.plural()
                        + " grown as "
                        + grown
                        + " by that method and cut. Methods: "
                        + methods
                        + "; forms: "
                        + String.join(", ", crop.forms())
                        + "; cuts: hard, light, none as the form has them.");
    }

    private Hemisphere hemisphere() {
        String place =
                at.orElseThrow(
                        () -> usage("There is no garden here: say where with --at LAT,LON, 52,-2"));
        try {
            double latitude = Double.parseDouble(place.split(",", -1)[0].strip());
            if (Math.abs(latitude) <= 90) {
                return Hemisphere.of(latitude);
            }
        } catch (NumberFormatException e) {
            // told below, with the range
        }
        throw usage(
                "--at must be latitude,longitude in degrees, 52,-2 for example, but is " + place);
    }

    private LotBook book(GardenFolder folder) throws IOException {
        GardenState state = state();
        return new LotBook(state, folder.crops(), Planning.stages(folder, state));
    }

    private int single() throws IOException {
        LocalDate day = on.orElseThrow(() -> usage("Say when they were struck: --on 2026-11-20"));
        int number = struck.orElse(1);
        if (number < 1 || number > StrikePlan.MOST) {
            throw usage("--struck must be from 1 to " + StrikePlan.MOST + " but is " + number);
        }
        Ground ground = ground(day);
        LotCounts counts = LotCounts.struck(number, day);
        Forecast forecast =
                Forecast.of(counts, ground.course(), ground.survival(), ground.setting());
        if (json) {
            out().json(writer -> LotJson.lot(writer, "", ground.crop().id(), counts, forecast));
        } else {
            LotPage.full(out(), ground.crop(), counts, forecast);
        }
        return 0;
    }

    private int lots() throws IOException {
        GardenFolder folder = folder();
        LotBook book = book(folder);
        List<LotState> chosen =
                state().lots().values().stream()
                        .filter(lot -> lotId.isEmpty() || lot.id().equals(lotId.get()))
                        .toList();
        if (chosen.isEmpty() && lotId.isPresent()) {
            throw usage("There is no lot \"" + lotId.get() + "\" in this garden.");
        }
        stopOnProblems(folder);
        if (json) {
            out().json(writer -> LotJson.lots(writer, book, chosen));
            return 0;
        }
        if (chosen.isEmpty()) {
            out().paragraph(0, "No cuttings are noted. Note some with: oldwood note struck …");
        }
        for (LotState lot : chosen) {
            tell(folder.crops().get(lot.crop()), book, lot);
        }
        return 0;
    }

    private void tell(Crop crop, LotBook book, LotState lot) {
        Optional<Forecast> forecast = book.forecast(lot);
        out().line(lot.id() + "  " + crop.name() + ", " + lot.method());
        if (forecast.isEmpty()) {
            out().paragraph(2, "Nothing is known of that method for this crop: no forecast.");
            return;
        }
        if (lotId.isPresent()) {
            LotPage.full(out(), crop, book.counts(lot), forecast.get());
        } else {
            out().paragraph(2, LotWords.stands(book.counts(lot)));
            out().paragraph(2, "next: " + LotWords.next(forecast.get(), today()));
            LotPage.summary(out(), forecast.get());
        }
        book.parentHealth(lot)
                .map(ParentHealth::warnings)
                .orElse(List.of())
                .forEach(it -> tell("Parent " + lot.parent().orElse("") + ": " + it.words()));
    }

    private int plan() throws IOException {
        if (!(sure > 0 && sure < 1)) {
            throw usage("--sure must lie between 0 and 1 but is " + sure);
        }
        Ground ground = ground(today());
        Season season = season(ground.setting().hemisphere());
        Want wanted =
                new Want(
                        want.map(OptionalInt::of).orElse(OptionalInt.empty()),
                        wantKg.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                        season,
                        sure);
        StrikePlan plan =
                StrikePlan.of(wanted, ground.course(), ground.survival(), ground.setting());
        if (json) {
            out().json(writer -> LotJson.plan(writer, plan));
        } else {
            tell(plan, season, ground);
        }
        return 0;
    }

    private Season season(Hemisphere hemisphere) {
        String text = by.orElseThrow(() -> usage("Say by which season: --by 2030"));
        String[] parts = text.split("-", -1);
        try {
            int year = Integer.parseInt(parts[0]) + (parts.length > 1 ? 1 : 0);
            if (parts.length <= 2 && year >= 1900 && year <= 2200) {
                return new Season(year, hemisphere);
            }
        } catch (NumberFormatException e) {
            // told below
        }
        throw usage("--by must be a season, 2030 or 2029-30, but is " + text);
    }

    private void tell(StrikePlan plan, Season season, Ground ground) {
        out().paragraph(0, StrikeWords.answer(plan, season, sure));
        StrikeWords.why(plan, ground.course()).forEach(line -> out().hanging("  - ", 4, line));
        plan.number()
                .ifPresent(
                        number ->
                                NurseryBed.of(number, ground.course().method().measures())
                                        .ifPresent(
                                                bed ->
                                                        out().hanging(
                                                                        "  - ",
                                                                        4,
                                                                        StrikeWords.room(bed))));
        LotPage.local(ground.crop()).forEach(line -> out().hanging("  ! ", 4, line));
    }
}
