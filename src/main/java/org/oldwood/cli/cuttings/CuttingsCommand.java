package org.oldwood.cli.cuttings;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.oldwood.cli.command.AnyPlace;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.Planning;
import org.oldwood.craft.cuttings.Course;
import org.oldwood.craft.cuttings.Forecast;
import org.oldwood.craft.cuttings.LotCounts;
import org.oldwood.craft.cuttings.PlantingOut;
import org.oldwood.craft.cuttings.Propagation;
import org.oldwood.craft.cuttings.StrikePlan;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.facts.cuttings.LotBook;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.LotState;
import org.oldwood.report.LotJson;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.Season;
import org.oldwood.store.Documents;
import org.oldwood.store.Nearest;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells what becomes of cuttings, and how many to strike. */
@Command(name = "cuttings")
public final class CuttingsCommand extends GardenCommand {
    @Parameters(arity = "0..1", paramLabel = "ID")
    Optional<String> lotId = Optional.empty();

    @Option(names = "--crop", paramLabel = "CROP")
    Optional<String> cropId = Optional.empty();

    @Option(names = "--form", paramLabel = "FORM")
    Optional<String> form = Optional.empty();

    @Option(names = "--method", paramLabel = "METHOD")
    Optional<String> method = Optional.empty();

    @Option(names = "--cut", paramLabel = "CUT")
    Optional<String> cut = Optional.empty();

    @Mixin
    AnyPlace place = new AnyPlace();

    @Option(names = "--struck", paramLabel = "N")
    Optional<Integer> struck = Optional.empty();

    @Option(names = "--on", paramLabel = "DATE")
    Optional<LocalDate> on = Optional.empty();

    @Option(names = "--want", paramLabel = "N")
    Optional<Integer> want = Optional.empty();

    @Option(names = "--want-kg", paramLabel = "KG")
    Optional<Double> wantKg = Optional.empty();

    @Option(names = "--by", paramLabel = "SEASON")
    Optional<String> by = Optional.empty();

    @Option(names = "--sure", paramLabel = "CHANCE")
    Optional<Double> sure = Optional.empty();

    @Override
    public int run() throws IOException {
        checkOptions();
        if (want.isPresent() || wantKg.isPresent()) { return plan(); }
        return struck.isPresent() ? single() : lots();
    }

    /** Options that do not go together, or would do nothing, are told and not passed over. */
    private void checkOptions() {
        long asked = Stream.of(lotId, struck, want, wantKg).filter(Optional::isPresent).count();
        refuseIf(asked > 1, "Ask one thing: LOT, --struck, --want or --want-kg");
        boolean wanted = want.isPresent() || wantKg.isPresent();
        refuseIf(!wanted && (by.isPresent() || sure.isPresent()), "--by and --sure belong to --want N or --want-kg KG");
        refuseIf(struck.isEmpty() && on.isPresent(), "--on belongs to --struck N");
        boolean course = form.isPresent() || method.isPresent() || cut.isPresent();
        refuseIf(struck.isEmpty() && !wanted && (course || place.isGiven()),
                "Say what to reckon: --struck N --on DATE, or --want N --by SEASON");
        refuseIf(place.isGiven() && gardenDir.isPresent(), "Give either --garden or a place, --at or --climate");
    }

    private CuttingsGround ground(LocalDate day) {
        Optional<GardenFolder> folder = place.isGiven() ? Optional.empty() : folderIfAny();
        Crops crops = folder.map(GardenFolder::crops).orElseGet(() -> new Crops(Documents.bundled()));
        Crop crop = crop(crops);
        if (folder.isPresent()) {
            GardenState state = state();
            LotBook book = book(folder.get(), state);
            stopOnProblems(folder.get());
            Course course = course(crop);
            return new CuttingsGround(crop, course, book.survival(crop.id(), course), book.setting(crop.id()),
                    Optional.of(new CuttingsGround.Own(state, book)));
        }
        Course course = course(crop);
        return new CuttingsGround(crop, course, course.method().survival(), place.setting(crop, day, this),
                Optional.empty());
    }

    private Crop crop(Crops crops) {
        return Planning.crop(cropId.orElseThrow(() -> usage("Say which crop: --crop blackcurrant")), crops, this);
    }

    /** The course chosen, with the defaults of the crop's usual form, or of the one that the method makes. */
    private Course course(Crop crop) {
        Propagation all = Propagation.of(crop)
                .orElseThrow(() -> usage("Nothing is known of raising " + crop.plural() + " from cuttings"));
        check("method", method, all.methods().stream().map(it -> it.id()).toList());
        check("form", form, crop.forms());
        List<String> made = method.map(all::formsOf).orElse(List.of());
        String usual = made.isEmpty() || made.contains(crop.form()) ? crop.form() : made.get(0);
        String grown = form.orElse(usual);
        check("cut", cut, all.plantingOut().cutsFor(grown).stream().map(PlantingOut.Cut::id).toList());
        return Course.of(crop, grown, method, cut)
                .orElseThrow(() -> usage("No yields or no cut at planting are known of %s grown as %s. Forms: %s"
                        .formatted(crop.plural(), grown, String.join(", ", crop.forms()))));
    }

    private void check(String option, Optional<String> said, List<String> known) {
        refuseIf(said.isPresent() && !known.contains(said.get()), "--%s is not known here: \"%s\". %s", option,
                said.orElse(""), Nearest.hint(said.orElse(""), known.stream().distinct().toList()));
    }

    private static LotBook book(GardenFolder folder, GardenState state) {
        return new LotBook(state, folder.crops(), Planning.stages(folder, state));
    }

    private int single() {
        LocalDate day = on.orElseThrow(() -> usage("Say when they were struck: --on 2026-11-20"));
        int number = within("--struck", struck.orElse(1));
        CuttingsGround ground = ground(day);
        LotCounts counts = LotCounts.struck(number, day);
        Forecast forecast = Forecast.of(counts, ground.course(), ground.survival(), ground.setting());
        return answer(() -> LotJson.lot(ground.crop().id(), counts, forecast),
                () -> LotPage.full(out(), ground.crop(), counts, forecast, ground.survival(), basis(ground)));
    }

    /** What the days were made from, where that is no garden. */
    private List<String> basis(CuttingsGround ground) {
        return ground.garden().isEmpty() ? List.of(place.basis(this)) : List.of();
    }

    private int within(String option, int number) {
        refuseIf(number < 1 || number > StrikePlan.MOST, "%s must be from 1 to %s but is %s", option, StrikePlan.MOST,
                number);
        return number;
    }

    private int lots() {
        GardenFolder folder = folder();
        GardenState state = state();
        LotBook book = book(folder, state);
        List<LotState> chosen = chosen(state, folder.crops());
        stopOnProblems(folder);
        LotList list = new LotList(today(), out(), book, folder.crops());
        return answer(() -> LotJson.lots(book, chosen),
                lotId.isPresent() ? () -> list.full(chosen.get(0), state) : () -> list.all(chosen, state.season()));
    }

    private List<LotState> chosen(GardenState state, Crops crops) {
        if (lotId.isPresent() && !state.lots().containsKey(lotId.get())) {
            throw usage("There are no cuttings \"%s\" in this garden. %s".formatted(lotId.get(),
                    Nearest.hint(lotId.get(), state.lots().keySet())));
        }
        cropId.ifPresent(any -> crop(crops));
        return state.lots().values().stream().filter(lot -> lotId.isEmpty() || lot.id().equals(lotId.get()))
                .filter(lot -> cropId.isEmpty() || lot.crop().equals(cropId.get())).toList();
    }

    private int plan() {
        double chance = sure.orElse(0.9);
        refuseIf(!(chance > 0 && chance < 1), "--sure must lie between 0 and 1 but is %s", chance);
        want.ifPresent(number -> within("--want", number));
        if (wantKg.isPresent() && !(wantKg.get() > 0 && wantKg.get() <= 100_000)) {
            throw usage("--want-kg must be above 0 and at most 100000 but is " + wantKg.get());
        }
        CuttingsGround ground = ground(today());
        Season season = season(ground.setting().hemisphere());
        StrikePlan.Want wanted = new StrikePlan.Want(want.map(OptionalInt::of).orElse(OptionalInt.empty()),
                wantKg.map(OptionalDouble::of).orElse(OptionalDouble.empty()), season, chance);
        PlanPage page = PlanPage.of(wanted, ground);
        return answer(page::answer, () -> {
            page.tell(out());
            basis(ground).forEach(line -> out().hanging("  - ", 4, line));
        });
    }

    private Season season(Hemisphere hemisphere) {
        String example = new Season(2030, hemisphere).label();
        String text = by.orElseThrow(() -> usage("Say by which season: --by " + example));
        return IntStream.rangeClosed(1900, 2200).mapToObj(year -> new Season(year, hemisphere))
                .filter(season -> season.label().equals(text) || Integer.toString(season.year()).equals(text))
                .findFirst().orElseThrow(() -> usage("--by must be a season, " + example
                        + " for example, or the year in which it ends, but is " + text));
    }
}
