package org.oldwood.cli.cuttings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.Out;
import org.oldwood.craft.cuttings.Forecast;
import org.oldwood.craft.cuttings.LotCounts;
import org.oldwood.craft.cuttings.parent.ParentHealth;
import org.oldwood.craft.cuttings.survival.Survival;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.facts.cuttings.LotBook;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.LotState;
import org.oldwood.garden.PlantState;
import org.oldwood.report.LotWords;
import org.oldwood.report.SeasonTable;
import org.oldwood.season.Season;
import org.oldwood.words.Dates;

/** Prints a garden's lots of cuttings. */
final class LotList {
    private final GardenCommand command;
    private final Out out;
    private final LotBook book;
    private final Crops crops;

    LotList(GardenCommand command, LotBook book, Crops crops) {
        this.command = command;
        this.out = command.out();
        this.book = book;
        this.crops = crops;
    }

    /** Each lot in short, then all by season. */
    void all(List<LotState> lots, Season season) {
        if (lots.isEmpty()) {
            out.paragraph(0, "No cuttings are noted. Note some with: oldwood note struck …");
            return;
        }
        Map<String, Forecast> known = new LinkedHashMap<>();
        for (LotState lot : lots) {
            Optional<Forecast> forecast = brief(lot);
            forecast.ifPresent(found -> known.put(lot.id(), found));
        }
        SeasonTable.of(known, season).ifPresent(table -> out.line().columns(0, table.rows()).paragraph(0,
                "Kilograms are what is expected of plants that live; oldwood cuttings LOT tells how sure that is, and all seasons."));
    }

    private Optional<Forecast> brief(LotState lot) {
        heading(lot);
        LotCounts counts = book.counts(lot);
        out.paragraph(2, LotWords.stands(counts));
        Optional<Forecast> forecast = forecast(lot);
        if (forecast.isPresent() && counts.alive() > 0) {
            out.paragraph(2, LotWords.next(forecast.get(), command.today()));
            LotPage.summary(out, forecast.get());
        }
        if (counts.plantedOutOn().isEmpty()) {
            forecast.flatMap(LotWords::outOfSeason).ifPresent(line -> out.hanging("  ! ", 4, line));
            parent(lot);
        }
        return counts.alive() > 0 ? forecast : Optional.empty();
    }

    private Optional<Forecast> forecast(LotState lot) {
        Optional<Forecast> forecast = book.forecast(lot);
        if (forecast.isEmpty()) { out.paragraph(2, "Nothing is known of that method for this crop: no forecast."); }
        return forecast;
    }

    private void heading(LotState lot) {
        out.line("%s  %s, %s%s".formatted(lot.id(), crops.get(lot.crop()).name(), lot.method(),
                lot.parent().map(parent -> " from " + parent).orElse("")));
    }

    /** One lot with all that is known of it. */
    void full(LotState lot, GardenState state) {
        Crop crop = crops.get(lot.crop());
        heading(lot);
        List<String> more = new ArrayList<>(lost(lot));
        plants(lot, state).ifPresent(more::add);
        Optional<Forecast> forecast = forecast(lot);
        if (forecast.isPresent()) {
            Survival survival = book.survival(lot.crop(), forecast.get().course());
            LotPage.full(out, crop, book.counts(lot), forecast.get(), survival, more);
            unknownCut(lot, forecast.get());
        } else {
            out.paragraph(2, LotWords.stands(book.counts(lot)));
            more.forEach(line -> out.hanging("  - ", 4, line));
        }
        parent(lot);
    }

    private void unknownCut(LotState lot, Forecast forecast) {
        lot.cut().filter(cut -> !cut.equals(forecast.course().cut().id())).ifPresent(cut -> out.hanging("  ! ", 4,
                "The cut noted at the strike, " + cut + ", is not one that is known for this form."));
    }

    private static List<String> lost(LotState lot) {
        return lot.entries().stream().filter(entry -> entry.kind() == EntryKind.LOST).map(entry -> "Lost %s, %s: %s."
                .formatted(number(entry), Dates.shortDay(entry.date()), entry.text("cause").orElse("cause not noted")))
                .toList();
    }

    /** The plants that it became, and those of them that are gone. */
    private static Optional<String> plants(LotState lot, GardenState state) {
        String plants = lot
                .entries().stream().flatMap(entry -> entry.ids("plants").stream()).map(id -> id + state.plant(id)
                        .flatMap(PlantState::gone).map(gone -> " (gone %s)".formatted(gone.date())).orElse(""))
                .collect(Collectors.joining(", "));
        return plants.isEmpty() ? Optional.empty() : Optional.of("Its plants: %s.".formatted(plants));
    }

    private void parent(LotState lot) {
        book.parentHealth(lot).map(ParentHealth::warnings).orElse(List.of())
                .forEach(it -> out.hanging("  ! ", 4, "Parent " + lot.parent().orElse("") + ": " + it.words()));
    }

    private static String number(Entry entry) {
        return entry.count("number").isPresent() ? Integer.toString(entry.count("number").getAsInt()) : "some";
    }
}
