package org.oldwood.cli.feeding;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.GardenPlan;
import org.oldwood.facts.Purchase;
import org.oldwood.garden.GardenFolder;
import org.oldwood.plan.Cautions;
import org.oldwood.plan.ShoppingList;
import org.oldwood.report.LedgerJson;
import org.oldwood.words.Dates;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists the materials that the coming year's tasks take, with totals and packs. */
@Command(name = "shopping")
public final class ShoppingCommand extends GardenCommand {
    @Option(names = "--uses")
    boolean uses;

    @Override
    public int run() throws IOException {
        GardenFolder folder = folder();
        ShoppingList list = ShoppingList.of(GardenPlan.of(this, folder).plan(), folder.garden());
        return answer(() -> LedgerJson.of(list), () -> {
            print(list);
            Cautions.read(folder.documents()).find("store")
                    .ifPresent(caution -> out().paragraph(0, "Take care: " + caution.line()));
        });
    }

    private void print(ShoppingList list) {
        String span = Dates.shortDay(list.from()) + " to " + Dates.shortDay(list.until());
        if (list.items().isEmpty()) {
            out().paragraph(0, "No task from " + span + " takes any material.");
        } else {
            out().paragraph(0,
                    "What the tasks from %s take; look in the shed first, and take off what is there.".formatted(span));
        }
        list.items().forEach(this::print);
        if (!list.lacking().isEmpty()) {
            out().line("Not brought by any material that you keep:");
            list.lacking().forEach(line -> out().hanging("  - ", 4, line));
        }
    }

    private void print(ShoppingList.Item item) {
        String packs = item.total().packsInWords();
        out().hanging("  ", 4, "%s: %s%s; first on %s%s.".formatted(item.total().name(),
                Purchase.measured(item.total().amount(), item.total().unit()), packs.isEmpty() ? "" : ", " + packs,
                Dates.shortDay(item.neededBy()), item.kept() ? "" : "; not among your materials, taken as usual"));
        item.total().notRead().forEach(line -> out().hanging("    * ", 6, line));
        if (uses) {
            out().columns(6, item.uses().stream().map(use -> List.of(Dates.shortDay(use.day()),
                    Purchase.measured(use.amount(), item.total().unit()), use.task())).toList());
        } else {
            Map<String, Double> byBed = new LinkedHashMap<>();
            item.uses().forEach(use -> byBed.merge(use.bed(), use.amount(), Double::sum));
            byBed.forEach(
                    (bed, sum) -> out().hanging("    - ", 6, bed + " " + Purchase.measured(sum, item.total().unit())));
        }
    }
}
