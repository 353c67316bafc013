package org.oldwood.facts.pruning;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.oldwood.craft.pruning.Stems;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Seen;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.LeafFalls;
import org.oldwood.garden.PlantState;
import org.oldwood.garden.StemAges;

/**
 * What the grower did to a plant in past seasons, as the journal tells: stems cut out by age, new shoots that had
 * grown.
 *
 * @param taken stems cut out by age, by season: as noted with {@code pruned}; where only counts were noted, what is
 *     missing from one season's count to the next
 * @param newShoots shoots of age 1 at a count, one for each season, before anything was cut
 */
public record PastPruning(SortedMap<Integer, Stems> taken, List<Integer> newShoots) {

    static PastPruning of(PlantState state, Crop crop, LeafFalls falls) {
        SortedMap<Integer, Map<String, Integer>> noted = new TreeMap<>();
        SortedMap<Integer, StemAges> counts = new TreeMap<>();
        Set<Integer> cutIn = new HashSet<>();
        List<Integer> shoots = new ArrayList<>();
        for (Entry entry : state.entries()) {
            int season = falls.seasonYear(crop.id(), entry.date());
            if (entry.kind() == EntryKind.PRUNED) {
                cutIn.add(season);
                add(entry.stems(), noted.computeIfAbsent(season, year -> new TreeMap<>()));
            } else if (!cutIn.contains(season) && !counts.containsKey(season)) {
                if (entry.kind() == EntryKind.COUNTED) {
                    counts.put(season, entry.stems());
                    Integer young = entry.stems().counts().get(1);
                    shoots.addAll(young == null ? List.of() : List.of(young));
                } else if (entry.kind() == EntryKind.CANES) {
                    counts.put(season, StemAges.NONE);
                    entry.count("fresh").ifPresent(shoots::add);
                }
            }
        }
        SortedMap<Integer, Stems> taken = new TreeMap<>();
        missing(counts, cutIn, taken);
        noted.forEach((season, stems) -> put(stems, season, taken));
        return new PastPruning(taken, List.copyOf(shoots));
    }

    private static void put(Map<String, Integer> stems, int season, SortedMap<Integer, Stems> taken) {
        if (!stems.isEmpty()) {
            taken.put(season, Stems.from(stems));
        }
    }

    private static void add(StemAges cut, Map<String, Integer> stems) {
        cut.counts().forEach((age, number) -> {
            boolean open = cut.openFrom().isPresent() && cut.openFrom().getAsInt() == age;
            if (age >= 1 && age <= Stems.OLDEST_CLASS) {
                stems.merge(age + (open ? "+" : ""), number, Integer::sum);
            }
        });
        lump(stems);
    }

    /** Two cuts of one season may have lumped the old ones differently: the youngest lump holds. */
    private static void lump(Map<String, Integer> stems) {
        int from = Stems.OLDEST_CLASS + 1;
        for (String name : stems.keySet()) {
            from = name.endsWith("+") ? Math.min(from, age(name)) : from;
        }
        int lumped = 0;
        for (String name : List.copyOf(stems.keySet())) {
            if (age(name) >= from) {
                lumped += stems.getOrDefault(name, 0);
                stems.remove(name);
            }
        }
        if (from <= Stems.OLDEST_CLASS) {
            stems.put(from + "+", lumped);
        }
    }

    private static int age(String name) {
        return Integer.parseInt(name.endsWith("+") ? name.substring(0, name.length() - 1) : name);
    }

    /** Where nothing was noted as cut between two counts, the second tells what is missing. */
    private static void missing(
            SortedMap<Integer, StemAges> counts, Set<Integer> cutIn, SortedMap<Integer, Stems> taken) {
        counts.forEach((season, then) -> {
            StemAges now = counts.getOrDefault(season + 1, StemAges.NONE);
            if (!then.isEmpty() && !now.isEmpty() && !cutIn.contains(season)) {
                put(gone(then, now), season, taken);
            }
        });
    }

    private static Map<String, Integer> gone(StemAges then, StemAges now) {
        Map<String, Integer> gone = new TreeMap<>();
        int lump = Math.min(
                then.openFrom().orElse(Stems.OLDEST_CLASS), now.openFrom().orElse(Stems.OLDEST_CLASS) - 1);
        for (Map.Entry<Integer, Integer> each : then.counts().entrySet()) {
            int age = each.getKey();
            if (age >= 1 && age < lump && now.counts().containsKey(age + 1)) {
                int left = now.counts().getOrDefault(age + 1, 0);
                gone.put(Integer.toString(age), Math.max(0, each.getValue() - left));
            }
        }
        if (lump >= 1 && lump < Stems.OLDEST_CLASS && now.counts().lastKey() > lump) {
            gone.put(lump + "+", Math.max(0, then.atLeast(lump) - now.atLeast(lump + 1)));
        }
        return gone;
    }

    /**
     * New shoots in a year by the grower's own counts, in place of {@code printed}: their mean, and the least and the
     * most of them. One count alone keeps the printed range about it.
     */
    public Figure shoots(Figure printed) {
        if (newShoots.isEmpty()) {
            return printed;
        }
        IntSummaryStatistics all =
                newShoots.stream().mapToInt(Integer::intValue).summaryStatistics();
        boolean once = newShoots.size() == 1;
        return new Figure(
                all.getAverage(),
                once ? Math.min(all.getMin(), printed.low()) : all.getMin(),
                once ? Math.max(all.getMax(), printed.high()) : all.getMax(),
                OWN,
                printed.sources(),
                Seen.COMPUTED,
                "your own counts: " + newShoots.size());
    }

    private static final String OWN = "new stems a year, by your counts";
}
