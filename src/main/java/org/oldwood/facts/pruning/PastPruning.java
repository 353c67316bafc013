package org.oldwood.facts.pruning;

import java.util.ArrayList;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Seen;
import org.oldwood.crop.Stems;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.LeafFalls;

/**
 * What the grower did to a plant in past seasons, as the journal tells: stems cut out by age, new shoots that had
 * grown.
 *
 * @param taken stems cut out by age, by season: as noted with {@code pruned}; where only counts were noted, what is
 *     missing from one season's count to the next
 * @param newShoots shoots of age 1 at a count, one for each season, before anything was cut
 */
public record PastPruning(SortedMap<Integer, Stems> taken, List<Integer> newShoots) {

    static PastPruning of(List<Entry> entries, Crop crop, LeafFalls falls) {
        SortedMap<Integer, Gone> noted = new TreeMap<>();
        SortedMap<Integer, Stems> counts = new TreeMap<>();
        List<Integer> shoots = new ArrayList<>();
        for (Entry entry : entries) {
            int season = falls.seasonYear(crop.id(), entry.date());
            if (entry.kind() == EntryKind.PRUNED) {
                noted.computeIfAbsent(season, year -> new Gone()).cut(entry.stems());
            } else if (!noted.containsKey(season) && !counts.containsKey(season)) {
                if (entry.kind() == EntryKind.COUNTED) {
                    counts.put(season, entry.stems());
                    Optional.ofNullable(entry.stems().byAge().get(1)).ifPresent(shoots::add);
                } else if (entry.kind() == EntryKind.CANES) {
                    counts.put(season, Stems.NONE);
                    entry.count("fresh").ifPresent(shoots::add);
                }
            }
        }
        // where nothing was noted as cut between two counts, the second tells what is missing
        counts.forEach((season, then) -> {
            Stems now = counts.getOrDefault(season + 1, Stems.NONE);
            if (!then.isEmpty() && !now.isEmpty() && !noted.containsKey(season)) {
                noted.put(season, new Gone().between(then, now));
            }
        });
        SortedMap<Integer, Stems> taken = new TreeMap<>();
        noted.forEach((season, gone) -> gone.stems().ifPresent(stems -> taken.put(season, stems)));
        return new PastPruning(taken, List.copyOf(shoots));
    }

    /** Stems of a season that are gone, by age; of those that were lumped differently the youngest lump holds. */
    private static final class Gone {
        private final SortedMap<Integer, Integer> byAge = new TreeMap<>();
        private int lump = Stems.OLDEST_CLASS + 1;

        void cut(Stems cut) {
            cut.byAge().subMap(1, Stems.OLDEST_CLASS + 1).forEach((age, number) -> {
                byAge.merge(age, number, Integer::sum);
                lump = cut.openFrom().orElse(0) == age ? Math.min(lump, age) : lump;
            });
        }

        Gone between(Stems then, Stems now) {
            int from = Math.min(then.openFrom().orElse(Stems.OLDEST_CLASS),
                    now.openFrom().orElse(Stems.OLDEST_CLASS) - 1);
            then.byAge().forEach((age, number) -> {
                if (age >= 1 && age < from && age < now.oldest() && now.knows(age + 1)) {
                    byAge.put(age, Math.max(0, number - now.at(age + 1)));
                }
            });
            if (from >= 1 && from < Stems.OLDEST_CLASS && now.oldest() > from) {
                lump = from;
                byAge.put(from, Math.max(0, then.from(from) - now.from(from + 1)));
            }
            return this;
        }

        /** Empty where no number was told. */
        Optional<Stems> stems() {
            if (byAge.isEmpty()) { return Optional.empty(); }
            SortedMap<Integer, Integer> all = new TreeMap<>(byAge.headMap(lump));
            SortedMap<Integer, Integer> lumped = byAge.tailMap(lump);
            if (!lumped.isEmpty()) { all.put(lump, lumped.values().stream().mapToInt(Integer::intValue).sum()); }
            return Optional.of(Stems.from(all, lumped.isEmpty() ? OptionalInt.empty() : OptionalInt.of(lump)));
        }
    }

    /**
     * New shoots in a year by the grower's own counts, in place of {@code printed}: their mean, and the least and the
     * most of them. One count alone keeps the printed range about it.
     */
    public Figure shoots(Figure printed) {
        if (newShoots.isEmpty()) { return printed; }
        IntSummaryStatistics all = newShoots.stream().mapToInt(Integer::intValue).summaryStatistics();
        boolean once = newShoots.size() == 1;
        return new Figure(all.getAverage(), once ? Math.min(all.getMin(), printed.low()) : all.getMin(),
                once ? Math.max(all.getMax(), printed.high()) : all.getMax(), OWN, printed.sources(), Seen.COMPUTED,
                "your own counts: " + newShoots.size());
    }

    private static final String OWN = "new stems a year, by your counts";
}
