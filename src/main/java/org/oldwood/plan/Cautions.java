package org.oldwood.plan;

import java.time.Period;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Key;
import org.oldwood.crop.RecordReader;
import org.oldwood.crop.Seen;
import org.oldwood.garden.Site;
import org.oldwood.season.Hemisphere;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;

/**
 * The short warnings, from {@code cautions.json}. A caution reaches a piece of work by the task, the tools and
 * materials in hand, the crops, the country and the time of year; which of several is the gravest is data too.
 */
public final class Cautions {
    private static final int MONTHS = 12;
    private static final Comparator<Caution> GRAVEST_FIRST = Comparator.comparingInt(Caution::gravity).reversed()
            .thenComparingInt(Caution::place);

    private final Map<String, Caution> byId = new LinkedHashMap<>();
    private final Map<String, Set<String>> countries = new LinkedHashMap<>();

    /**
     * A warning. What is empty does not narrow it, except {@code tasks}: without them it is told by name alone.
     *
     * @param gravity 1 a nuisance or an office's rule, 2 first aid or the crop, 3 can kill, blind or maim
     * @param place its place in the file: the graver first among equals
     * @param line what it says; one that was never seen in print says so
     * @param tasks the kinds of work that it concerns
     * @param tags the tools and materials, one of which must be in hand
     * @param crops the crops that it concerns, beside those of {@code groups}
     * @param countries ISO 3166 codes, {@code EU}, or parts of a country; all but these where a minus is before each
     * @param months the months of the north in which it holds
     */
    public record Caution(String id, @Key(least = 1, most = 3, otherwise = 2) int gravity, int place, String line,
            List<String> tasks, List<String> tags, List<String> crops, List<String> groups, List<String> countries,
            Optional<Months> months) {

        private static Caution read(Fields fields, int place) {
            String seen = fields.text("seen", "").equals(Seen.MEMORY.key()) ? " (From memory.)" : "";
            return RecordReader.read(fields, Caution.class, Map.of("place", place, "line", fields.text("line") + seen));
        }

        private boolean isFor(Job job) {
            return job.named.contains(id) || (meets(tasks, job.work) && (tags.isEmpty() || meets(tags, job.tags)));
        }

        private boolean grows(Collection<Crop> grown) {
            return (crops.isEmpty() && groups.isEmpty()) || grown.isEmpty()
                    || grown.stream().anyMatch(crop -> crop.isAmong(crops) || groups.contains(crop.group()));
        }

        private boolean holdsIn(Set<String> here) {
            boolean allBut = countries.stream().anyMatch(code -> code.startsWith("-"));
            return countries.isEmpty()
                    || allBut == here.stream().map(code -> allBut ? "-" + code : code).noneMatch(countries::contains);
        }

        private boolean holdsBetween(Window window, Hemisphere hemisphere) {
            return months.isEmpty()
                    || window.first().withDayOfMonth(1).datesUntil(window.last().plusDays(1), Period.ofMonths(1))
                            .anyMatch(month -> isIn(month.getMonthValue(), hemisphere));
        }

        private boolean isIn(int month, Hemisphere hemisphere) {
            int shift = hemisphere == Hemisphere.NORTH ? 0 : MONTHS / 2;
            int northern = (month - 1 + shift) % MONTHS + 1;
            return northern >= months.orElseThrow().from() && northern <= months.orElseThrow().to();
        }
    }

    /** The first and the last of some months, both included. */
    public record Months(@Key(least = 1, most = MONTHS) int from, @Key(least = 1, most = MONTHS) int to) {}

    /** The time zones of each country. */
    private record Countries(Map<String, List<String>> zones) {}

    /**
     * What is done, as far as cautions hang on it.
     *
     * @param work the kinds of work, {@code prune} for example
     * @param tags tools and materials in hand
     * @param named cautions that are told by name, whatever the work
     * @param crops the crops it is done to; empty where that is not known, and then cautions of any crop hold
     * @param site where; where that is not known, cautions of any country hold
     * @param window when; where that is not known, cautions of any month hold
     */
    public record Job(Collection<String> work, Collection<String> tags, Collection<String> named,
            Collection<Crop> crops, Optional<Site> site, Optional<Window> window) {

        /** Work of a kind on any crop, somewhere, some time. */
        public static Job of(String work, Collection<String> tags, Collection<String> named) {
            return new Job(List.of(work), tags, named, List.of(), Optional.empty(), Optional.empty());
        }

        public Job at(Optional<Site> place) { return new Job(work, tags, named, crops, place, window); }
    }

    public static Cautions read(Documents documents) {
        Cautions cautions = new Cautions();
        for (Fields fields : documents.fields("cautions.json").objects("cautions")) {
            Caution caution = Caution.read(fields, cautions.byId.size());
            cautions.byId.put(caution.id(), caution);
        }
        RecordReader.document(documents.fields("countries.json"), Countries.class).zones
                .forEach((country, zones) -> zones.forEach(
                        zone -> cautions.countries.computeIfAbsent(zone, any -> new HashSet<>()).add(country)));
        return cautions;
    }

    /** Every caution, in the order of the file. */
    public Collection<Caution> all() {
        return Collections.unmodifiableCollection(byId.values());
    }

    /** The codes of all countries and parts of one that are known. */
    Set<String> countries() {
        return countries.values().stream().flatMap(Set::stream).collect(Collectors.toCollection(TreeSet::new));
    }

    public Optional<Caution> find(String id) { return Optional.ofNullable(byId.get(id)); }

    /** All that hold for a job, the gravest first. */
    public List<Caution> of(Job job) {
        Optional<Set<String>> here = job.site.map(site -> countries.get(site.zoneName()));
        return ranked(byId.values().stream().filter(caution -> caution.isFor(job) && caution.grows(job.crops))
                .filter(caution -> here.map(caution::holdsIn).orElse(true)).filter(caution -> job.window.isEmpty()
                        || job.site.isEmpty() || caution.holdsBetween(job.window.get(), job.site.get().hemisphere()))
                .toList());
    }

    /** The gravest first; those that say the same, once. */
    public static List<Caution> ranked(Collection<Caution> cautions) {
        Set<String> told = new HashSet<>();
        return cautions.stream().sorted(GRAVEST_FIRST).filter(caution -> told.add(caution.line())).toList();
    }

    /** The lines of all, the gravest first, each once. */
    public static List<String> lines(Collection<Caution> cautions) {
        return ranked(cautions).stream().map(Caution::line).toList();
    }

    private static boolean meets(Collection<String> some, Collection<String> others) {
        return !Collections.disjoint(some, others);
    }
}
