package org.oldwood.care;

/** Fills a rule's title with its subject's names. */
final class Titles {
    private Titles() {}

    static String of(Rule rule, Situation situation) {
        Subject subject = situation.subject();
        int bushes = subject.plants().stream().mapToInt(plant -> plant.plant().bushes()).sum();
        return rule.title()
                .replace("{subject}", subject.words())
                .replace("{crop}", subject.crop().map(crop -> crop.name()).orElse("bush"))
                .replace("{crops}", crops(rule, subject))
                .replace("{bed}", subject.bed().map(bed -> bed.bed().name()).orElse("the garden"))
                .replace("{count}", Integer.toString(bushes))
                .replace("{season}", situation.season().label());
    }

    private static String crops(Rule rule, Subject subject) {
        if (subject instanceof Subject.Stand stand) {
            return stand.crops(rule.forms().size() == 1);
        }
        return subject.crop().map(crop -> crop.plural()).orElse("bushes");
    }
}
