package org.oldwood.cli.year;

import java.io.IOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.GardenPlan;
import org.oldwood.cli.command.Planning;
import org.oldwood.crop.Sources;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.RecordFiles;
import org.oldwood.sheet.Ground;
import org.oldwood.sheet.Scope;
import org.oldwood.sheet.SheetPage;
import org.oldwood.sheet.round.RoundPage;
import org.oldwood.sheet.round.RoundPages;
import org.oldwood.store.Output;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the year sheet: one page to look at and to pin up. */
@Command(name = "sheet")
public final class SheetCommand extends GardenCommand {
    @Option(names = "--out", paramLabel = "FILE")
    Optional<Path> file = Optional.empty();

    @Option(names = "--bed", paramLabel = "BED")
    Optional<String> bed = Optional.empty();

    @Option(names = "--plant", paramLabel = "PLANT")
    Optional<String> plant = Optional.empty();

    @Option(names = "--month", paramLabel = "MONTH")
    Optional<String> month = Optional.empty();

    @Option(names = "--full")
    boolean full;

    private static final String YEAR = "year";

    @Option(names = "--replace")
    boolean replace;

    @Override
    public int run() throws IOException {
        GardenFolder folder = folder();
        GardenState state = state();
        mustKnow("bed", bed, state.beds().keySet());
        mustKnow("plant", plant, state.plants().keySet());
        refuseIf(full && month.isPresent(), "--full is of the whole year; give it or --month, not both");
        Scope scope = new Scope(bed, plant);
        Optional<String> asked = month.map(text -> text.equals(YEAR) ? YEAR : month(text).toString());
        String page = page(ground(folder, state), scope, asked);
        stopOnProblems(folder);
        Path out = file.map(this::path).orElseGet(() -> folder.path().resolve(name(scope, asked)));
        RecordFiles.mayReplace(folder.path(), out, replace || SheetPage.isOf(state.garden(), out));
        Output.write(out, wording().saidOnPage(page));
        tell("Wrote " + out);
        return 0;
    }

    private String page(Ground ground, Scope scope, Optional<String> asked) {
        RoundPages pages = new RoundPages(ground.world(), scope.part(ground.plan()));
        List<RoundPage> chosen = asked.isEmpty() ? List.of(pages.now())
                : asked.get().equals(YEAR) ? pages.year() : List.of(pages.month(YearMonth.parse(asked.get())));
        boolean all = full || (plant.isPresent() && asked.isEmpty());
        return SheetPage.of(ground, chosen, chosen.size() > 1 ? "The year ahead" : chosen.get(0).title(),
                all ? Optional.of(scope) : Optional.empty());
    }

    private Ground ground(GardenFolder folder, GardenState state) {
        GardenPlan planned = GardenPlan.of(this, folder);
        return new Ground(planned.world(), planned.plan(), planned.planner().subjects(), Planning.water(folder, state),
                Sources.read(folder.documents()));
    }

    /** A month by year and number, or by number alone: the next such month, today's included. */
    private YearMonth month(String text) {
        try {
            if (text.length() > 2) { return YearMonth.parse(text); }
            LocalDate today = today();
            YearMonth now = YearMonth.from(today);
            YearMonth same = YearMonth.of(today.getYear(), Integer.parseInt(text));
            return same.isBefore(now) ? same.plusYears(1) : same;
        } catch (DateTimeException | NumberFormatException e) {
            throw usage("--month must be a year and month, 2027-02, or a month's number, 2, but is \"" + text + "\"");
        }
    }

    /** A smaller sheet does not take the place of the whole one. */
    private static String name(Scope scope, Optional<String> month) {
        return Stream.of(Optional.of("sheet"), scope.bed(), scope.plant(), month).flatMap(Optional::stream)
                .collect(Collectors.joining("-", "", ".html"));
    }
}
