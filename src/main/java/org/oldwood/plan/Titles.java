package org.oldwood.plan;

import java.util.List;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;

/** Fills a rule's title with its subject's names. */
final class Titles {
    /** What may stand in braces in a title. */
    static final List<String> NAMES = List.of("subject", "crop", "crops", "bed", "count", "season");

    private Titles() {}

    static String of(Rule rule, Situation situation) {
        String title = rule.title();
        StringBuilder filled = new StringBuilder();
        int done = 0;
        for (int open = title.indexOf('{'); open >= 0; open = title.indexOf('{', open + 1)) {
            int close = title.indexOf('}', open);
            Optional<String> name = close < 0 ? Optional.empty()
                    : name(title.substring(open + 1, close), rule, situation);
            if (name.isPresent()) {
                filled.append(title, done, open).append(name.get());
                done = close + 1;
            }
        }
        return filled.append(title, done, title.length()).toString();
    }

    private static Optional<String> name(String key, Rule rule, Situation situation) {
        Subject subject = situation.subject();
        return switch (key) {
            case "subject" -> Optional.of(subject.words());
            case "crop" -> Optional.of(subject.crop().map(Crop::name).orElse("bush"));
            case "crops" -> Optional.of(crops(rule, subject));
            case "bed" -> Optional.of(subject.bed().map(bed -> bed.bed().name()).orElse("the garden"));
            case "count" -> Optional.of(Integer.toString(bushes(subject)));
            case "season" -> Optional.of(situation.season().label());
            default -> Optional.empty();
        };
    }

    private static int bushes(Subject subject) {
        return subject.plants().stream().mapToInt(plant -> plant.plant().bushes()).sum();
    }

    private static String crops(Rule rule, Subject subject) {
        if (subject instanceof Subject.Stand stand) { return stand.crops(rule.forms().size() == 1); }
        return subject.crop().map(Crop::plural).orElse("bushes");
    }
}
