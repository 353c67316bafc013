package org.oldwood.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.oldwood.facts.Subject;
import org.oldwood.facts.Subjects;
import org.oldwood.garden.GardenState;
import org.oldwood.season.Hemisphere;
import org.oldwood.store.Nearest;

/**
 * Tells ids of tasks that can be from those that cannot: the rule, the subject and the season must be known, whether or
 * not such a task is planned. One of a season long past is known.
 */
public record TaskIds(Rules rules, Subjects subjects, GardenState state) {
    /**
     * What is wrong with an id, and what may have been meant; empty where it can be a task's.
     *
     * @param planned the ids that a plan holds, to find the nearest among
     */
    public Optional<String> wrong(String id, List<String> planned) {
        String[] parts = id.split("@", -1);
        if (parts.length != 3) { return Optional.of("is no task's id: \"%s\". %s".formatted(id, hint(id, planned))); }
        Optional<Rule> rule = rules.find(parts[0]);
        if (rule.isEmpty()) {
            return Optional.of("names no job that is known: \"%s\". %s".formatted(parts[0], job(id, parts[0])));
        }
        if (!isSubject(parts[1], rule.get().subject())) {
            return Optional.of("names no %s of this garden: \"%s\". %s".formatted(words(rule.get().subject()), parts[1],
                    hint(id, planned)));
        }
        return isSeason(parts[2].split("#", 2)[0]) ? Optional.empty()
                : Optional.of("names no season: \"%s\". Seasons are written like %s.".formatted(parts[2],
                        state.season().label()));
    }

    private static String words(String subject) {
        return switch (subject) {
            case "stand" -> "planting";
            case "lot" -> "cuttings";
            default -> subject;
        };
    }

    private String job(String id, String rule) {
        return Nearest.to(rule, rules.ids())
                .map(near -> "Did you mean \"%s\"?".formatted(near + id.substring(rule.length())))
                .orElse("\"oldwood tasks --each\" lists them.");
    }

    /** The nearest of the same job, if there is any of it. */
    private static String hint(String id, List<String> planned) {
        String job = id.split("@", 2)[0] + "@";
        List<String> same = planned.stream().filter(each -> each.startsWith(job)).toList();
        return Nearest.to(id, same.isEmpty() ? planned : same).map("Did you mean \"%s\"?"::formatted)
                .orElse("\"oldwood tasks --each\" lists them.");
    }

    /** Plants and cuttings that are gone had tasks, too. */
    private boolean isSubject(String id, String kind) {
        return switch (kind) {
            case "plant" -> state.plants().containsKey(id);
            case "lot" -> state.lots().containsKey(id);
            case "bed" -> state.beds().containsKey(id);
            case "stand" -> subjects.find(id, kind).isPresent() || wasStand(id);
            default -> subjects.ofKind(kind).stream().map(Subject::id).anyMatch(id::equals);
        };
    }

    private boolean wasStand(String id) {
        return state.plants().values().stream().anyMatch(
                plant -> id.equals(String.join(".", plant.plant().bed(), plant.plant().crop(), plant.plant().form())));
    }

    private boolean isSeason(String label) {
        return state.garden().hemisphere() == Hemisphere.NORTH ? label.matches("(19|20|21)[0-9]{2}")
                : label.matches("(19|20|21)[0-9]{2}-[0-9]{2}");
    }

    /** Those of a list that name no plant of a task, each with the nearest. */
    public static Optional<String> notOf(Task task, List<String> plants) {
        Set<String> known = new TreeSet<>(Booking.plants(task));
        return plants.stream().filter(plant -> !known.contains(plant))
                .map(plant -> known.isEmpty() ? "%s is not done plant by plant".formatted(task.id())
                        : "\"%s\" is no plant of %s. %s".formatted(plant, task.id(), Nearest.hint(plant, known)))
                .findFirst();
    }

    /** The ids of a list typed with commas between. */
    public static List<String> listed(String text) {
        return Stream.of(text.split("[,; ]+")).filter(part -> !part.isEmpty()).toList();
    }
}
