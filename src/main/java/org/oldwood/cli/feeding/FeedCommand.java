package org.oldwood.cli.feeding;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.GardenPlan;
import org.oldwood.cli.command.Planning;
import org.oldwood.cli.year.NextTask;
import org.oldwood.craft.feeding.Budget;
import org.oldwood.facts.Subject;
import org.oldwood.facts.feeding.FeedingBooks;
import org.oldwood.facts.feeding.StandFeed;
import org.oldwood.garden.GardenFolder;
import org.oldwood.plan.Task;
import org.oldwood.season.Season;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Works out how much of which feed the plants of each bed need, with or without a garden. */
@Command(name = "feed")
public final class FeedCommand extends GardenCommand {
    private static final List<String> AMOUNTS = List.of("feed-first", "feed-second", "feed-tub");

    @Parameters(arity = "0..1", paramLabel = "BED")
    Optional<String> bed = Optional.empty();

    @Mixin
    FeedAsked asked = new FeedAsked();

    @Override
    public int run() throws IOException {
        refuseIf(asked.crop.isEmpty() && asked.any(),
                "--area, --soil and the like go with --crop; without it the beds are told");
        refuseIf(asked.crop.isPresent() && bed.isPresent(), "name a bed of the garden, or give --crop, not both");
        return GroundSheet.show(this,
                asked.crop.isPresent() ? List.of(asked.sheet(this, documents())) : ofGarden(folder()));
    }

    private List<FeedSheet> ofGarden(GardenFolder folder) {
        mustKnow("bed", bed, state().beds().keySet());
        GardenPlan garden = GardenPlan.of(this, folder);
        FeedingBooks books = new FeedingBooks(folder.documents());
        List<FeedSheet> sheets = new ArrayList<>();
        for (Subject stand : garden.planner().subjects().ofKind("stand")) {
            if (bed.isEmpty() || stand.bed().filter(it -> it.bed().id().equals(bed.get())).isPresent()) {
                NextTask next = garden.next(stand, AMOUNTS);
                Season season = next.task().map(Task::season).orElse(garden.state().season());
                StandFeed.of(books, garden.situation(stand, season)).ifPresentOrElse(
                        food -> sheets.add(sheet(stand, food, season, books, next)),
                        () -> tell("No figures of food are known for " + stand.words() + "."));
            }
        }
        if (sheets.isEmpty()) { tell("Nothing stands there that is fed."); }
        Planning.tellNotices(this,
                garden.plan().notices().stream().filter(notice -> notice.startsWith("Feed ")).toList());
        return sheets;
    }

    private static FeedSheet sheet(Subject stand, StandFeed food, Season season, FeedingBooks books, NextTask next) {
        // a first dressing that nobody gave in its time, or that lime keeps away, is not told as one to give
        Budget budget = next.task().filter(task -> task.rule().amount().filter("feed-second"::equals).isPresent())
                .map(task -> food.budget(books, 1)).orElseGet(() -> food.budget(books, season));
        return new FeedSheet(stand.words() + ", season " + season.label(),
                new FeedSheet.Of(Optional.of(stand.id()), food.crop().id(), stand.bed().map(bed -> bed.bed().id()),
                        Optional.of(season.label())),
                budget, Optional.empty(), food.lines(season), food.assumed(), food.otherSchools(books),
                Optional.of(next.words()));
    }
}
