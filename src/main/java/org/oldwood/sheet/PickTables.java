package org.oldwood.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Range;
import org.oldwood.crop.Yield;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.Plant;
import org.oldwood.garden.PlantState;
import org.oldwood.season.Season;

/** Picks by season and crop, beside what plants of that age are expected to bear. */
final class PickTables {
    private static final int BACK = 5;

    private final Ground ground;
    private final Scope scope;
    private final Season now;

    PickTables(Ground ground, Scope scope) {
        this.ground = ground;
        this.scope = scope;
        this.now = ground.state().season();
    }

    /** A table for each crop that was ever picked. */
    List<PickTable> all() {
        Map<String, Map<Integer, Double>> picked = new TreeMap<>();
        for (Entry entry : ground.state().entries()) {
            if (entry.kind() == EntryKind.PICKED) {
                note(entry, picked);
            }
        }
        List<PickTable> tables = new ArrayList<>();
        picked.forEach((crop, byYear) -> tables.add(table(crop, byYear)));
        return tables;
    }

    private void note(Entry entry, Map<String, Map<Integer, Double>> picked) {
        Optional<PlantState> plant = entry.text("plant").flatMap(ground.state()::plant);
        Optional<String> crop =
                entry.text("crop").or(() -> plant.map(it -> it.plant().crop()));
        boolean here = plant.map(scope::holds)
                .orElse(scope.plant().isEmpty()
                        && (scope.bed().isEmpty() || scope.bed().equals(entry.text("bed"))));
        if (here && crop.isPresent()) {
            int year = Season.containing(entry.date(), now.hemisphere()).year();
            picked.computeIfAbsent(crop.get(), id -> new TreeMap<>())
                    .merge(year, entry.number("kg").orElse(0), Double::sum);
        }
    }

    private PickTable table(String id, Map<Integer, Double> picked) {
        Crop crop = ground.world().crops().get(id);
        Optional<Yield> yield = Yield.read(crop);
        Map<Season, Optional<Range>> expected = new LinkedHashMap<>();
        double most = picked.values().stream().mapToDouble(it -> it).max().orElse(0);
        for (int back = -BACK; back <= 0; back++) {
            Season season = now.plus(back);
            Optional<Range> range = yield.flatMap(it -> expected(id, it, season));
            expected.put(season, range);
            most = Math.max(most, range.map(Range::high).orElse(0.0));
        }
        List<PickTable.Season> rows = new ArrayList<>();
        for (Map.Entry<Season, Optional<Range>> each : expected.entrySet()) {
            double end = most;
            Double kg = picked.get(each.getKey().year());
            if (kg != null || each.getValue().isPresent()) {
                rows.add(new PickTable.Season(
                        each.getKey().label(),
                        Optional.ofNullable(kg).map(it -> new KgBar(it, it, it, end)),
                        each.getValue().map(it -> KgBar.of(it, end))));
            }
        }
        String name = crop.plural();
        return new PickTable(name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1), rows);
    }

    /** The sum over all plants that stood in that season; empty where none did. */
    private Optional<Range> expected(String crop, Yield yield, Season season) {
        Range sum = new Range(0, 0, 0);
        boolean any = false;
        for (PlantState state : ground.state().plants().values()) {
            Plant plant = state.plant();
            boolean stood = plant.crop().equals(crop)
                    && scope.holds(state)
                    && !plant.planted().isAfter(season.end())
                    && state.gone().map(it -> it.date().isAfter(season.end())).orElse(true);
            Optional<Range> one = stood ? yield.expected(plant.form(), plant.seasonsOld(season)) : Optional.empty();
            if (one.isPresent()) {
                Range all = one.get().times(parts(plant, yield));
                sum = new Range(sum.low() + all.low(), sum.is() + all.is(), sum.high() + all.high());
                any = true;
            }
        }
        return any ? Optional.of(sum) : Optional.empty();
    }

    private static double parts(Plant plant, Yield yield) {
        boolean perMetre = Optional.ofNullable(yield.mature().get(plant.form()))
                .map(figure -> figure.unit().equals("kg/m"))
                .orElse(false);
        return perMetre ? plant.lengthM().orElse(1) : plant.bushes();
    }
}
