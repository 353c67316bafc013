package org.oldwood.plan.round;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.oldwood.crop.Crop;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Purchase;
import org.oldwood.garden.Wishes;
import org.oldwood.plan.Cautions;
import org.oldwood.plan.Task;
import org.oldwood.words.Words;

/**
 * One outing's worth of one kind of work.
 *
 * @param id {@code cut@2027.blackcurrant}: kind, season, and what else tells its rounds apart. It outlives changes of
 *     the day, of what is in it and of how far it has come
 * @param day the day on which to go out; of a finished one the first day on which something was done
 * @param tasks those with something left to do, bed by bed in the order of work; none where it is finished
 * @param finished those that are done or skipped
 */
public record Round(String id, RoundKind kind, LocalDate day, List<Task> tasks, List<Task> finished) {
    private static final int LONGEST_TITLE = 40;

    Round on(LocalDate other) { return new Round(id, kind, other, tasks, finished); }

    /** Whether something is left to do. */
    public boolean open() { return !tasks.isEmpty(); }

    /** All its tasks, those to do first. */
    public List<Task> all() {
        return Stream.concat(tasks.stream(), finished.stream()).toList();
    }

    /** Those whose time has not come on its day: what waits for a later visit, after which the round moves on. */
    public List<Task> later() {
        return tasks.stream().filter(task -> task.window().first().isAfter(day)).toList();
    }

    /** The tasks whose time has come by its day: what is done where it is done. */
    public List<Task> due() {
        return tasks.stream().filter(task -> !task.window().first().isAfter(day)).toList();
    }

    /** What is done on its day: what is due, or all that is left where nothing is yet. */
    public List<Task> toDo() {
        return due().isEmpty() ? tasks : due();
    }

    /** What waits for its counts, looks and tests, by what it is. */
    public Set<String> waiting() {
        return kind.jobs().stream().filter(job -> !job.opens().isEmpty())
                .filter(job -> due().stream().anyMatch(task -> job.rules().contains(task.rule().id())))
                .map(RoundKind.Job::opens).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The first day on which all that is done on its day is in time; with {@link #lastGoodDay()} its span. */
    public LocalDate firstGoodDay() {
        return due().stream().map(task -> task.from().isAfter(day) ? day : task.from()).max(LocalDate::compareTo)
                .orElse(day);
    }

    /** The last day on which all of it is still in time. */
    public LocalDate lastGoodDay() {
        return tasks.stream().map(task -> task.window().last()).min(LocalDate::compareTo).orElse(day);
    }

    /** Minutes of what is left, as far as the time is known; 0 where none is. */
    public double minutes() {
        return tasks.stream().mapToDouble(task -> task.minutes().orElse(0.0)).sum();
    }

    /** How many bushes and rows it goes to, each once; 0 where it is not about plants. */
    public int bushes() {
        return bushes(true) + bushes(false);
    }

    /** How many rows of canes, or how many bushes. */
    private int bushes(boolean rows) {
        Map<String, Integer> plants = new HashMap<>();
        for (Task task : left()) {
            if (Set.of("plant", "stand").contains(task.subject().kind())
                    && task.subject().crop().filter(Crop::inRows).isPresent() == rows) {
                task.subject().plants().forEach(plant -> plants.put(plant.plant().id(), plant.plant().bushes()));
            }
        }
        return plants.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** What its title counts: what is left, or all of one that is finished. */
    private List<Task> left() {
        return open() ? tasks : finished;
    }

    /** The names of the beds in which something is left, or of all where it is finished, in walking order. */
    public Set<String> beds() {
        Set<String> beds = new LinkedHashSet<>();
        left().forEach(task -> task.subject().bed().ifPresent(bed -> beds.add(bed.bed().name())));
        return beds;
    }

    /** The gravest caution of each job, as they are done, then those of all that are left, the gravest first. */
    public List<Cautions.Caution> cautions() {
        Map<Integer, List<Cautions.Caution>> byJob = new TreeMap<>();
        all().forEach(task -> byJob.computeIfAbsent(kind.order(task.rule()), job -> new ArrayList<>())
                .addAll(task.cautions()));
        Map<String, Cautions.Caution> byLine = new LinkedHashMap<>();
        byJob.values().stream().flatMap(job -> Cautions.ranked(job).stream().limit(1))
                .forEach(caution -> byLine.putIfAbsent(caution.line(), caution));
        Cautions.ranked(byJob.values().stream().flatMap(List::stream).toList())
                .forEach(caution -> byLine.putIfAbsent(caution.line(), caution));
        return List.copyOf(byLine.values());
    }

    /** The materials of what is left, each summed. */
    public List<Purchase> materials() { return materials(tasks); }

    /** The materials of some of its tasks, each summed. */
    public static List<Purchase> materials(List<Task> tasks) {
        Map<String, Purchase> totals = new LinkedHashMap<>();
        for (Task task : tasks) {
            for (Purchase each : task.amount().map(Amount::buys).orElse(List.of())) {
                totals.merge("%s %s".formatted(each.material(), each.unit()), each, Purchase::plus);
            }
        }
        return List.copyOf(totals.values());
    }

    /** What to take along, in words: the tools, then each material as it is weighed. */
    public List<String> takeAlong() {
        List<String> all = new ArrayList<>(kind.tools());
        materials().forEach(material -> all.add(material.told()));
        return all;
    }

    /** Whether the grower wants to be told of it. */
    public boolean wanted(Wishes wishes) {
        return kind.wanted(wishes);
    }

    /** {@code 7 bushes}, {@code 2 rows}, {@code 9 plants} for both; empty where it is not about plants. */
    public String bushesInWords() {
        int rows = bushes(true);
        return bushes() == 0 ? ""
                : rows == 0 ? Words.count(bushes(), "bush", "bushes")
                        : Words.count(bushes(), rows < bushes() ? "plant" : "row", rows < bushes() ? "plants" : "rows");
    }

    /** What, how many and where, in at most 40 characters: what does not fit is left to the text. */
    public String title() {
        String many = bushes() == 0 ? "" : ": %s".formatted(bushesInWords());
        String where = where();
        List<String> names = names();
        Stream<String> placed = names.stream().flatMap(name -> Stream.of(name + many + where, few(name, many, where)));
        Stream<String> all = names.stream().flatMap(
                name -> Stream.of(name + many + where, few(name, many, where), name + many, few(name, many, ""), name));
        // on a walk, what is done says more than where
        return (kind.by() == RoundKind.By.WEEK ? all : Stream.concat(placed, all))
                .filter(title -> title.length() <= LONGEST_TITLE).findFirst().orElseGet(() -> {
                    String brief = names.get(names.size() - 1);
                    return brief.substring(0, Math.min(brief.length(), LONGEST_TITLE));
                });
    }

    /**
     * A bare number says of what only behind the bushes' own name. How many beds says less than how many of what; which
     * bed, more.
     */
    private String few(String name, String many, String where) {
        boolean named = kind.by() != RoundKind.By.WEEK && bushes(true) == 0 && name.endsWith(crop());
        String count = named && (where.isEmpty() || beds().size() == 1) ? ": " + bushes() : many;
        return name + count + (beds().size() > 1 ? "" : where);
    }

    /** What is done, in all its steps, the first two of them, or by the kind's own title. */
    private List<String> names() {
        List<String> verbs = kind.jobs().stream().filter(job -> !job.title().isEmpty()).map(this::verb)
                .filter(verb -> !verb.isEmpty()).toList();
        String brief = kind.title().replace("{crop}", crop());
        boolean oneCrop = (kind.by() == RoundKind.By.CROP && !verbs.isEmpty()) || kind.by() == RoundKind.By.GROUP;
        String crop = oneCrop && all().stream().map(Round::crop).distinct().count() == 1 ? " %s".formatted(crop()) : "";
        List<String> names = new ArrayList<>();
        names.add((verbs.isEmpty() ? brief : Words.list(verbs)) + crop);
        if (kind.by() == RoundKind.By.WEEK && verbs.size() > 2) {
            names.add("%s, %s and more".formatted(verbs.get(0), verbs.get(1)));
        }
        if (kind.by() == RoundKind.By.WEEK && verbs.size() > 1) { names.add("%s and more".formatted(verbs.get(0))); }
        names.add(brief);
        return names.stream().map(Words::capital).toList();
    }

    /** A bed that is called after its crop tells nothing beside the crop. */
    private String where() {
        Set<String> beds = beds();
        boolean told = kind.by() == RoundKind.By.CROP && all().get(0).subject().crop()
                .filter(crop -> beds.iterator().next().startsWith(crop.id())).isPresent();
        return beds.size() == 1 && told ? "" : switch (beds.size()) {
            case 0 -> "";
            case 1 -> ", %s".formatted(beds.iterator().next());
            default -> ", " + beds.size() + " beds";
        };
    }

    /** Empty where nothing of that job is left; with the crop's name where the job asks for it and there is one. */
    private String verb(RoundKind.Job job) {
        List<String> crops = left().stream().filter(task -> job.rules().contains(task.rule().id())).map(Round::crop)
                .distinct().toList();
        return switch (crops.size()) {
            case 0 -> "";
            case 1 -> job.title().replace("{crop}", crops.get(0));
            default -> job.title().replace(" {crop}", "");
        };
    }

    private String crop() { return crop(all().get(0)); }

    private static String crop(Task task) { return task.subject().crop().map(Crop::plural).orElse("bushes"); }

    /** How urgent it is on a day: the harm of missing its worst task, 0 to 3, over the days that are left for it. */
    public double urgency(LocalDate today) {
        return tasks.stream().mapToDouble(task -> task.rule().ifMissed().harm()
                / (1.0 + Math.max(0, ChronoUnit.DAYS.between(today, task.window().last())))).max().orElse(0);
    }
}
