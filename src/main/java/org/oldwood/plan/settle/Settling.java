package org.oldwood.plan.settle;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.oldwood.facts.Subject;
import org.oldwood.garden.BedState;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;

/** Decides what the journal's entries settle of a task: the one place where that is decided. */
public final class Settling {
    /** Rounding, and a row's last half metre, leave nothing to do. */
    private static final double WHOLE = 0.95;

    /** Of what a craft reckons so much is enough once its time is past; a pinch of potash is no dressing. */
    private static final double MOST = 0.5;

    private final IdentityHashMap<Subject, List<Share>> untouched = new IdentityHashMap<>();
    private final IdentityHashMap<Subject, List<Share>> untouchedTogether = new IdentityHashMap<>();
    private final IdentityHashMap<BedState, Set<EntryKind>> notedOfBeds = new IdentityHashMap<>();

    /** Asks the task's craft about a part of its subject. */
    public interface Amounts {
        /** How much is to be done now. */
        Wanted now(Subject part);

        /** How much was to be done before an entry. */
        Wanted before(Subject part, Entry entry);

        /** How much was left when some work was done, whatever came after it. */
        Wanted after(Subject part, List<Entry> work);
    }

    /**
     * How much a craft wants done.
     *
     * @param due by this task and all that are to follow it: a second dressing is no rest of the first
     */
    public record Wanted(double now, double due) {
        public static final Wanted NOTHING = new Wanted(0, 0);

        /** A piece of work that no figure is put to. */
        public static final Wanted ONE = new Wanted(1, 1);
    }

    /**
     * One task, as far as what was done of it hangs on it.
     *
     * @param by what counts as doing it
     * @param belongs whether an entry of such a kind could have been this work, by its day and what it says
     * @param named the entries that name the task by its id, oldest first
     * @param over whether its time is past, so that whatever was done was all
     * @param amounts asks the craft
     */
    public record Job(DoneBy by, Predicate<Entry> belongs, List<Entry> named, boolean over, Amounts amounts) {}

    /** How far the subject's task has come. */
    public Settled of(Subject subject, Job job) {
        if (job.named.isEmpty() && nothingNoted(subject, job)) {
            boolean together = job.by.together();
            return new Settled((together ? untouchedTogether : untouched).computeIfAbsent(subject,
                    each -> untouched(each, together)));
        }
        boolean alike = subject.plants().stream()
                .allMatch(plant -> plant.entries().stream().noneMatch(entry -> counts(entry, job)));
        List<Share> shares = new ArrayList<>();
        Optional<OptionalDouble> ofAll = Optional.empty();
        for (Subject part : parts(subject, job.by.together())) {
            List<Entry> did = entries(part).filter(entry -> counts(entry, job)).toList();
            if (!did.isEmpty() && alike && asks(job) && ofAll.isEmpty()) {
                ofAll = Optional.of(OptionalDouble.of(measured(subject, did, job)));
            }
            shares.add(share(part, did, job, ofAll.orElse(OptionalDouble.empty())));
        }
        return new Settled(shares);
    }

    /** The first entry that may have done some of it, but for those that name it. */
    public Optional<Entry> first(Subject subject, Job job) {
        return nothingNoted(subject, job) ? Optional.empty()
                : entries(subject).filter(entry -> counts(entry, job)).findFirst();
    }

    /** Asked of most subjects for most rules: so without a list of its own. */
    private boolean nothingNoted(Subject subject, Job job) {
        for (Entry entry : subject.entries()) {
            if (counts(entry, job)) { return false; }
        }
        if (subject instanceof Subject.OnePlant one) {
            Set<EntryKind> noted = notedOfBeds.computeIfAbsent(one.in(), Settling::kinds);
            return job.by.kinds().stream().noneMatch(noted::contains)
                    || entries(subject).noneMatch(entry -> counts(entry, job));
        }
        return true;
    }

    private static Set<EntryKind> kinds(BedState bed) {
        Set<EntryKind> kinds = EnumSet.noneOf(EntryKind.class);
        bed.entries().forEach(entry -> kinds.add(entry.kind()));
        return kinds;
    }

    private static boolean asks(Job job) {
        return job.by.measure().filter(measure -> measure.sum().isEmpty()).isPresent();
    }

    private static boolean counts(Entry entry, Job job) {
        return job.by.kinds().contains(entry.kind()) && job.belongs.test(entry);
    }

    private static Share share(Subject part, List<Entry> did, Job job, OptionalDouble ofAll) {
        List<Entry> named = job.named.stream().filter(entry -> names(entry, part)).toList();
        if (!named.isEmpty()) {
            Entry last = named.get(named.size() - 1);
            boolean skipped = last.kind() == EntryKind.SKIPPED;
            return new Share(part.id(), bushes(part), skipped ? 0 : 1, skipped, named);
        }
        if (did.isEmpty()) { return Share.untouched(part.id(), bushes(part)); }
        if (job.over && !asks(job)) { return new Share(part.id(), bushes(part), 1, false, did); }
        double done = ofAll.isPresent() ? ofAll.getAsDouble() : measured(part, did, job);
        return new Share(part.id(), bushes(part), job.over && done >= MOST ? 1 : done, false, did);
    }

    /** Where an entry that names a task says which plants, it speaks of no others. */
    private static boolean names(Entry entry, Subject part) {
        List<String> only = entry.ids("only");
        return only.isEmpty() || only.contains(part.id());
    }

    /** How much of a part was done, from 0 to 1. */
    private static double measured(Subject part, List<Entry> did, Job job) {
        double done = job.by.measure()
                .map(measure -> measure.sum().map(field -> summed(field, part, did, job.amounts))
                        .orElseGet(() -> asked(part, did, job)) * 100 / measure.percent())
                .orElseGet(() -> metres(part, did));
        return done >= WHOLE ? 1 : Math.max(0, done);
    }

    /** Of a row, the metres noted of its length; an entry that notes none is of the whole row. */
    private static double metres(Subject part, List<Entry> did) {
        double length = part.metres();
        double noted = did.stream().mapToDouble(entry -> entry.number("metres").orElse(length)).sum();
        return length > 0 ? noted / length : 1;
    }

    private static double summed(String field, Subject part, List<Entry> did, Amounts amounts) {
        double planned = amounts.before(part, did.get(0)).now();
        double sum = 0;
        for (Entry entry : did) {
            OptionalDouble noted = noted(field, entry, part);
            if (noted.isEmpty()) { return metres(part, did); }
            sum += noted.getAsDouble();
        }
        return planned <= 0 ? 1 : sum / planned;
    }

    /** What an entry of a whole bed says is spread over its bushes. */
    private static OptionalDouble noted(String field, Entry entry, Subject part) {
        double noted = field.equals("stems") ? entry.stems().total() : entry.number(field).orElse(0);
        if (noted == 0) { return OptionalDouble.empty(); }
        boolean whole = entry.text("plant").isEmpty() && part instanceof Subject.OnePlant;
        return OptionalDouble.of(whole ? noted * bushes(part) / inBed(entry, part) : noted);
    }

    private static int inBed(Entry entry, Subject part) {
        return part.bed().orElseThrow().plants().stream()
                .filter(plant -> entry.text("crop").map(plant.plant().crop()::equals).orElse(true))
                .mapToInt(plant -> plant.plant().bushes()).sum();
    }

    private static double asked(Subject part, List<Entry> did, Job job) {
        Wanted before = job.amounts.before(part, did.get(0));
        Wanted left = job.over ? job.amounts.after(part, did) : job.amounts.now(part);
        return left.due <= 0 ? 1 : before.now <= 0 ? 0 : (before.due - left.due) / before.now;
    }

    private static List<Share> untouched(Subject subject, boolean together) {
        return parts(subject, together).stream().map(part -> Share.untouched(part.id(), bushes(part))).toList();
    }

    private static int bushes(Subject part) { return Math.max(1, part.bushes()); }

    /** The parts that are done each for itself: the plants of a stand, else the whole. */
    public static List<Subject> parts(Subject subject, boolean together) {
        return subject instanceof Subject.Stand stand && !together
                ? stand.plants().stream().map(plant -> (Subject) new Subject.OnePlant(plant, stand.of(), stand.in()))
                        .toList()
                : List.of(subject);
    }

    /** All that was noted of a part; what was noted of the bed holds for the plants of the crop in it. */
    private static Stream<Entry> entries(Subject part) {
        if (!(part instanceof Subject.OnePlant one)) {
            return part.entries().stream().filter(entry -> isOfTheCrop(entry, part));
        }
        return Stream.concat(one.in().entries().stream().filter(entry -> isOfTheCrop(entry, part)),
                one.state().entries().stream()).sorted((a, b) -> a.date().compareTo(b.date()));
    }

    private static boolean isOfTheCrop(Entry entry, Subject part) {
        return !(part instanceof Subject.Stand || part instanceof Subject.OnePlant) || entry.text("plant").isPresent()
                || entry.text("crop").isEmpty()
                || part.crop().map(crop -> crop.id().equals(entry.needed("crop"))).orElse(true);
    }
}
