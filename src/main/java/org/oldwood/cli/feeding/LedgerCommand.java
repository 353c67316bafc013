package org.oldwood.cli.feeding;

import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.GardenPlan;
import org.oldwood.facts.Subject;
import org.oldwood.facts.feeding.Applications;
import org.oldwood.facts.feeding.BedLedger;
import org.oldwood.facts.feeding.FeedingBooks;
import org.oldwood.facts.feeding.StandFeed;
import org.oldwood.garden.Bed;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.report.LedgerJson;
import org.oldwood.report.LedgerWords;
import org.oldwood.season.Season;
import org.oldwood.words.Dates;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Lists all that the beds were given, with the nutrients that it brings, season by season. */
@Command(name = "ledger")
public final class LedgerCommand extends GardenCommand {
    @Parameters(arity = "0..1", paramLabel = "BED")
    Optional<String> bed = Optional.empty();

    @Override
    public int run() throws IOException {
        GardenFolder folder = folder();
        GardenState state = state();
        mustKnow("bed", bed, state.beds().keySet());
        FeedingBooks books = new FeedingBooks(folder.documents());
        List<BedLedger> ledgers = BedLedger.all(books, state, folder.crops()).stream()
                .filter(ledger -> bed.isEmpty() || ledger.bed().id().equals(bed.get())).toList();
        return answer(() -> LedgerJson.of(ledgers), () -> {
            GardenPlan garden = GardenPlan.of(this, folder);
            ledgers.forEach(ledger -> {
                print(ledger);
                budgets(ledger.bed(), garden, books);
                out().line();
            });
        });
    }

    private void print(BedLedger ledger) {
        out().line(GroundSheet.heading(ledger.bed()));
        if (ledger.lines().isEmpty()) {
            out().paragraph(2, "Nothing was noted as given. Note fed, limed, acidified, mulched.");
        }
        Set<String> notRead = new LinkedHashSet<>();
        for (BedLedger.Sum sum : ledger.seasons()) {
            out().line("  Season " + sum.season().label());
            List<Applications.Given> lines = ledger.lines().stream().filter(line -> line.season().equals(sum.season()))
                    .toList();
            lines.forEach(line -> line.notRead().forEach(each -> notRead.add(line.name() + ": " + each)));
            out().columns(4, LedgerWords.alike(lines.stream()).stream()
                    .map(alike -> List.of(Dates.shortDay(alike.get(0).date()), LedgerWords.inWords(alike))).toList());
            LedgerWords.sums(sum).forEach(line -> out().hanging("    = ", 6, line));
        }
        notRead.forEach(line -> out().hanging("  * ", 4, line));
    }

    /** How this season's sum stands for what grows in a bed. */
    private void budgets(Bed bed, GardenPlan garden, FeedingBooks books) {
        Season season = garden.state().season();
        for (Subject stand : garden.planner().subjects().ofKind("stand")) {
            if (stand.bed().filter(in -> in.bed().id().equals(bed.id())).isPresent()) {
                StandFeed.of(books, garden.situation(stand, season))
                        .ifPresent(food -> out().hanging("  ", 4, "%s, season %s: %s".formatted(stand.words(),
                                season.label(), food.budget(books, season).inWords())));
            }
        }
    }
}
