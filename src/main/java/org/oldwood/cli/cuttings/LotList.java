package org.oldwood.cli.cuttings;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.oldwood.cli.command.Out;
import org.oldwood.craft.cuttings.Forecast;
import org.oldwood.craft.cuttings.LotCounts;
import org.oldwood.craft.cuttings.Timeline;
import org.oldwood.craft.cuttings.parent.ParentHealth;
import org.oldwood.craft.cuttings.survival.Survival;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.facts.cuttings.LotBook;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.LotState;
import org.oldwood.garden.PlantState;
import org.oldwood.report.LotWords;
import org.oldwood.season.Season;
import org.oldwood.words.Dates;
import org.oldwood.words.Words;

/** Prints a garden's lots of cuttings. */
record LotList(LocalDate today, Out out, LotBook book, Crops crops) {
    /** So many seasons fit a line. */
    private static final int MOST = 7;

    /** Each lot in short, then all by season. */
    void all(List<LotState> lots, Season season) {
        if (lots.isEmpty()) {
            out.paragraph(0, "No cuttings are noted. Note some with: oldwood note struck …");
            return;
        }
        Map<String, Forecast> known = new LinkedHashMap<>();
        lots.forEach(lot -> brief(lot).ifPresent(found -> known.put(lot.id(), found)));
        if (known.isEmpty()) { return; }
        out.line().columns(0, table(known, season)).paragraph(0,
                "Kilograms are what is expected of plants that live; oldwood cuttings LOT tells how sure that is, and all seasons.");
    }

    private Optional<Forecast> brief(LotState lot) {
        heading(lot);
        LotCounts counts = book.counts(lot);
        out.paragraph(2, LotWords.stands(counts));
        Optional<Forecast> forecast = forecast(lot);
        if (forecast.isPresent() && counts.alive() > 0) {
            out.paragraph(2, LotWords.next(forecast.get(), today));
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

    void full(LotState lot, GardenState state) {
        Crop crop = crops.get(lot.crop());
        heading(lot);
        List<String> more = new ArrayList<>(lost(lot));
        plants(lot, state).ifPresent(more::add);
        Optional<Forecast> forecast = forecast(lot);
        if (forecast.isPresent()) {
            Survival survival = book.survival(lot.crop(), forecast.get().course());
            LotPage.full(out, crop, book.counts(lot), forecast.get(), survival, more);
            lot.cut().filter(cut -> !cut.equals(forecast.get().course().cut().id()))
                    .ifPresent(cut -> out.hanging("  ! ", 4,
                            "The cut noted at the strike, " + cut + ", is not one that is known for this form."));
        } else {
            out.paragraph(2, LotWords.stands(book.counts(lot)));
            more.forEach(line -> out.hanging("  - ", 4, line));
        }
        parent(lot);
    }

    private static List<String> lost(LotState lot) {
        return lot.entries().stream().filter(entry -> entry.kind() == EntryKind.LOST)
                .map(entry -> "Lost %s, %s: %s.".formatted(
                        entry.count("number").stream().mapToObj(Integer::toString).findFirst().orElse("some"),
                        Dates.shortDay(entry.date()), entry.text("cause").orElse("cause not noted")))
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

    /** Lots side by side, a column a season: where each stands and what it bears; below them their sum. */
    private static List<List<String>> table(Map<String, Forecast> lots, Season now) {
        List<Season> seasons = seasons(lots, now);
        List<List<String>> rows = new ArrayList<>();
        List<String> heading = new ArrayList<>(List.of("season"));
        seasons.forEach(season -> heading.add(season.label()));
        rows.add(heading);
        double[] sums = new double[seasons.size()];
        lots.forEach((id, forecast) -> rows.add(row(id, forecast, seasons, sums)));
        if (lots.size() > 1) {
            Stream<String> all = Arrays.stream(sums).mapToObj(sum -> sum == 0 ? "" : kilograms(sum));
            rows.add(Stream.concat(Stream.of("all"), all).toList());
        }
        return rows;
    }

    private static List<Season> seasons(Map<String, Forecast> lots, Season now) {
        Season last = lots.values().stream().map(each -> each.line().fullCrop()).max(Comparator.naturalOrder())
                .orElse(now);
        return Stream.iterate(now, season -> season.plus(1)).limit(MOST)
                .filter(season -> season.equals(now) || season.compareTo(last) <= 0).toList();
    }

    private static List<String> row(String id, Forecast forecast, List<Season> seasons, double[] sums) {
        List<String> row = new ArrayList<>(List.of(id));
        for (int i = 0; i < seasons.size(); i++) {
            Season season = seasons.get(i);
            double kg = forecast.expectedKg(season);
            sums[i] += kg;
            row.add(kg > 0 ? kilograms(kg) : stand(forecast.line(), season));
        }
        return row;
    }

    /** What a lot does in a season without fruit. */
    private static String stand(Timeline line, Season season) {
        if (season.compareTo(line.inPlace()) >= 0) { return "grows"; }
        int since = season.compareTo(line.firstSeason());
        return since < 0 ? "" : since == 0 ? "roots" : "nursery";
    }

    private static String kilograms(double kg) { return Words.one(kg) + " kg"; }
}
