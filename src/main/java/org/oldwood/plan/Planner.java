package org.oldwood.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import org.oldwood.crop.Crops;
import org.oldwood.facts.Advisor;
import org.oldwood.facts.Amount;
import org.oldwood.facts.KeepApart;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.facts.Subjects;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.LeafFalls;
import org.oldwood.plan.settle.Settled;
import org.oldwood.season.Season;
import org.oldwood.season.Stages;
import org.oldwood.store.Documents;

/**
 * Makes a year's plan: holds every rule against every subject it concerns, in the season of the day asked for and in
 * the next one as far as a year reaches, and places what is due. The same record and day give the same plan. Linear in
 * subjects.
 */
public final class Planner {
    /** A plan reaches a year ahead: windows that open later belong to the next plan. */
    private static final int HORIZON_MONTHS = 12;

    private final Situation.World world;
    private final Advisor advisors;
    private final Rules rules;
    private final Subjects subjects;
    private final Judge judge;
    private final Settler settler;
    private final Forgotten forgotten;
    private final TaskMaker maker;

    private final List<Season> thisAndNext;
    private final List<Season> lastToNext;

    /**
     * What was found so far of a subject.
     *
     * @param ahead what will have been done
     * @param before what the last pass thought would have been done
     * @param plain the tasks on the subject as it is; empty while they are being found
     * @param last the tasks that the last pass found
     */
    private record Gathered(LocalDate until, List<Task> tasks, Ahead ahead, Ahead before, Optional<List<Task>> plain,
            List<Task> last) {
        /** Takes a rule's tasks of a season as the last pass found them. */
        void again(Rule rule, Season season) {
            last.stream().filter(task -> task.rule().id().equals(rule.id()) && task.season().equals(season))
                    .forEach(tasks::add);
        }
    }

    public Planner(GardenState state, Stages stages, Crops crops, Documents documents, Advisor advisors) {
        this.world = new Situation.World(state, stages, crops, documents);
        this.advisors = advisors;
        this.rules = Rules.read(documents);
        this.subjects = new Subjects(state, crops);
        this.judge = new Judge(world, advisors);
        this.settler = new Settler(world, judge, advisors, rules.all());
        this.forgotten = new Forgotten(world, judge, settler, advisors);

        this.maker = new TaskMaker(world);
        Season now = state.season();
        this.thisAndNext = List.of(now, now.plus(1));
        this.lastToNext = List.of(now.plus(-1), now, now.plus(1));
    }

    public Rules rules() { return rules; }

    public Subjects subjects() { return subjects; }

    /** Which ids can be a task's in this garden. */
    public TaskIds taskIds() {
        return new TaskIds(rules, subjects, world.state());
    }

    /**
     * The year's plan from the state's own day on. All rules are held against one subject before the next, bed by bed,
     * so that what the crafts found of it serves them all.
     */
    public Plan plan() {
        LocalDate until = world.today().plusMonths(HORIZON_MONTHS).minusDays(1);
        LeafFalls falls = world.state().leafFalls();
        Ahead ahead = Ahead.nothing(falls);
        Found found = new Found(new IdentityHashMap<>(), new IdentityHashMap<>());
        Plan plan = pass(ahead, ahead, until, found);
        // twice more at most: what is planned changes what comes after it, and that what comes after that
        for (int again = 0; again < 2; again++) {
            Ahead next = Ahead.of(plan, falls);
            if (next.isSame(ahead)) { break; }
            plan = pass(next, ahead, until, found);
            ahead = next;
        }
        return plan;
    }

    /** The tasks on each subject as it is, and as the last pass had them. */
    private record Found(IdentityHashMap<Subject, List<Task>> plain, IdentityHashMap<Subject, List<Task>> last) {}

    /** All tasks on the garden as it is, or as it will be once those planned before are done. */
    private Plan pass(Ahead ahead, Ahead before, LocalDate until, Found known) {
        List<Task> all = new ArrayList<>();
        for (Subject subject : subjects.bedByBed()) {
            Optional<List<Task>> plain = Optional.ofNullable(known.plain.get(subject));
            if (plain.isEmpty() || !ahead.isSame(before, subject, LocalDate.MAX)) {
                List<Task> found = new ArrayList<>();
                for (Rule rule : rules.concerning(subject)) {
                    tasks(rule, subject, new Gathered(until, found, ahead, before, plain,
                            known.last.getOrDefault(subject, List.of())));
                }
                known.plain.putIfAbsent(subject, found);
                known.last.put(subject, found);
            }
            all.addAll(known.last.get(subject));
        }
        return Placement.place(world, () -> KeepApart.read(world.documents(), world.state().beds().values()), all,
                until, forgotten.all(all));
    }

    /** A task's title by its id, also of one that the plan no longer has; empty where it is none of this garden's. */
    public Optional<String> title(String task) {
        String[] parts = task.split("@", -1);
        return rules.find(parts[0]).filter(rule -> parts.length > 1).flatMap(rule -> subjects
                .find(parts[1], rule.subject())
                .map(subject -> Titles.of(rule, new Situation(world, subject, world.state().season(), world.today()))));
    }

    /** The answers of this season and the next, the one that plans a task first, for {@code why}. */
    public List<Verdict> explain(Rule rule, Subject subject) {
        Season now = world.state().season();
        return List.of(judge.explain(rule, subject, now), judge.explain(rule, subject, now.plus(1)));
    }

    /** This season's task, or where it is past or done the next one's, as far as the plan reaches. */
    private void tasks(Rule rule, Subject subject, Gathered gathered) {
        int before = gathered.tasks.size();
        if (gathered.plain.isEmpty()) { forgotten.lastSeason(rule, subject); }
        boolean settled = false;
        for (Season season : rule.isBySeason() && !reachesToday(rule, subject) ? thisAndNext : lastToNext) {
            LocalDate day = day(rule, subject, season, gathered);
            if (gathered.plain.isPresent() && rule.isBySeason()
                    && gathered.ahead.isSame(gathered.before, subject, day)) {
                gathered.again(rule, season);
            } else {
                Verdict verdict = verdict(rule, subject, gathered.ahead.on(subject, day), season);
                if (verdict.due() && belongs(rule, verdict, season, gathered.until)) {
                    repeats(rule, subject, verdict, gathered);
                }
                settled = verdict.window().isEmpty() && rule.hangsOnEntries();
            }
            if (gathered.tasks.size() > before ? !rule.isBySeason() || isPlanned(gathered.tasks, before) : settled) {
                break;
            }
        }
    }

    /** Whether last season's work is not too late yet, though the season is over. */
    private boolean reachesToday(Rule rule, Subject subject) {
        // a window that closes by an entry closes on the same day in every season: it is this season's
        return !rule.closes().by().equals("entry") && forgotten.reachesToday(rule, subject, lastToNext.get(0));
    }

    private static boolean isPlanned(List<Task> tasks, int from) {
        return tasks.subList(from, tasks.size()).stream().anyMatch(task -> task.state() == Task.State.OPEN);
    }

    /** On the subject as it is; where an entry this season may have done the work, as it was before it. */
    private Verdict verdict(Rule rule, Subject subject, Subject ahead, Season season) {
        Verdict now = judge.judge(rule, ahead, season);
        if (now.due() || now.window().isEmpty() || rule.repeatDays() > 0) { return now; }
        Situation noted = with(subject, now.situation());
        return settler.first(rule, noted, now.window().get())
                .map(done -> judge.judge(rule, SubjectHistory.before(subject, done, world.state().leafFalls()), season))
                // what was done lies in the window that the subject had before it
                .filter(then -> then.due() && settler.first(rule, noted, then.window().orElseThrow()).isPresent())
                .map(then -> new Verdict(rule, new Situation(world, subject, season, then.situation().day()),
                        then.window(), then.reasons(), ""))
                .orElse(now);
    }

    /** The rule's time, up to which the subject will have been worked on. */
    private LocalDate day(Rule rule, Subject subject, Season season, Gathered gathered) {
        if (!gathered.ahead.touches(subject) && !gathered.before.touches(subject)) { return LocalDate.MIN; }
        return rule.opens().by().equals("entry") ? LocalDate.MAX
                : judge.time(rule, subject, season).map(Window::first).orElse(LocalDate.MIN);
    }

    private Situation with(Subject subject, Situation of) {
        return new Situation(world, subject, of.season(), of.day());
    }

    private boolean belongs(Rule rule, Verdict verdict, Season season, LocalDate until) {
        Window window = verdict.window().orElseThrow();
        boolean inPast = season.compareTo(world.state().season()) < 0;
        return !window.first().isAfter(until) && (rule.isBySeason() || season.contains(window.first()))
                && (rule.isBySeason() || !(inPast && window.last().isBefore(world.today())));
    }

    private void repeats(Rule rule, Subject subject, Verdict verdict, Gathered gathered) {
        Window whole = verdict.window().orElseThrow();
        if (rule.repeatDays() == 0) {
            one(rule, subject, verdict, whole, 1, gathered);
            return;
        }
        int ordinal = rule.firstOrdinal(verdict.situation().season(), whole);
        LocalDate last;
        for (LocalDate first = whole.first(); !first.isAfter(whole.last()); first = last.plusDays(1)) {
            last = lastOfRepeat(first, whole, rule.repeatDays());
            Window part = whole.part(first, last);
            if (!part.last().isBefore(world.today()) && !first.isAfter(gathered.until)) {
                one(rule, subject, verdict, part, ordinal, gathered);
            }
            ordinal++;
        }
    }

    /** A rest of half a repeat or less is no job of its own: it goes with the one before it. */
    private static LocalDate lastOfRepeat(LocalDate first, Window whole, int days) {
        LocalDate last = first.plusDays(days - 1L);
        return last.plusDays(days / 2L).isBefore(whole.last()) ? last : whole.last();
    }

    private Reason late(Rule rule, Window window, Window later) {
        String past = window.last().isBefore(world.today()) ? "its time was until %s and it is not noted as done"
                : "by the climate's means frost holds until its time ends on %s";
        String words = (past + "; it is still good until %s. %s").formatted(window.last(), later.last(),
                rule.ifMissed().words());
        return new Reason(true, words.strip(), List.of());
    }

    /** Whether it can be done on no day that is left. */
    private boolean isOver(Rule rule, Window window) {
        LocalDate from = window.first().isAfter(world.today()) ? window.first() : world.today();
        return Placement.thaw(world, rule, from, window.last()).isEmpty();
    }

    @SuppressWarnings("ReferenceEquality") // the very same subject means that nothing is planned before
    private void one(Rule rule, Subject subject, Verdict verdict, Window time, int ordinal, Gathered gathered) {
        Situation situation = rule.onThoseOldEnough(with(subject, verdict.situation()));
        Window window = time;
        Optional<Reason> late = Optional.empty();
        Settled settled = settler.of(rule, situation, window, ordinal);
        if (settled.open() && isOver(rule, window)) {
            Optional<Window> later = forgotten.stillGood(rule, situation, window);
            if (later.isPresent()) {
                late = Optional.of(late(rule, window, later.get()));
                window = later.get();
            } else if (window.last().isBefore(world.today())) {
                if (gathered.plain.isEmpty()) { forgotten.tell(rule, situation, window, settled, ordinal); }
                return;
            }
        }
        if (settled.open() && late.isEmpty()) {
            late = forgotten.before(rule, situation.subject(), situation.season());
        }
        if (!settled.open() && isWorkOfAnother(rule, situation, window, settled)) { return; }
        Optional<Amount> amount = settled.open()
                ? rule.amount().flatMap(
                        name -> advisors.amount(name, Left.of(rule.onThoseOldEnough(verdict.situation()), settled)))
                : Optional.empty();
        if (!settled.open() || amount.isPresent() || rule.amount().filter(advisors.amountNames()::contains).isEmpty()) {
            Verdict noted = new Verdict(rule, situation, verdict.window(), verdict.reasons(), verdict.because());
            Task task = maker.task(late.map(noted::with).orElse(noted), window, ordinal, amount, settled);
            boolean changed = verdict.situation().subject() != subject && !isPlain(task, gathered);
            gathered.tasks
                    .add(changed ? maker.task(noted.with(STANDS_ON_ITSELF), window, ordinal, amount, settled) : task);
        }
    }

    /**
     * Whether work was noted before this was due: once a bush's old stems are out, nothing is spent, and only then.
     * What names the task was meant for it.
     */
    private boolean isWorkOfAnother(Rule rule, Situation situation, Window window, Settled settled) {
        if (rule.repeatDays() > 0 || settled.named()) { return false; }
        return settler.first(rule, situation, window)
                .map(did -> SubjectHistory.before(situation.subject(), did, world.state().leafFalls()))
                .filter(then -> !judge.judge(rule, then, situation.season()).due()).isPresent();
    }

    private static final Reason STANDS_ON_ITSELF = new Reason(true,
            "reckoned as if what is planned before it were done as planned", List.of());

    /** Whether the task would be the same without what is planned before it. */
    private static boolean isPlain(Task task, Gathered gathered) {
        return gathered.plain.orElse(List.of()).stream().anyMatch(plain -> plain.id().equals(task.id())
                && plain.amount().map(Amount::words).equals(task.amount().map(Amount::words)));
    }
}
