package org.oldwood.plan;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.oldwood.crop.Crop;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.plan.settle.Settled;

/** Fills a rule's title with its subject's names. */
final class Titles {
    /** What may stand in braces in a title. */
    static final List<String> NAMES = List.of("subject", "crop", "crops", "bed", "count", "season");

    /** A name in braces. */
    static final Pattern PLACEHOLDER = Pattern.compile("\\{([^{}]*)}");

    private Titles() {}

    static String of(Rule rule, Situation situation) {
        return PLACEHOLDER.matcher(rule.title())
                .replaceAll(found -> Matcher.quoteReplacement(name(found, rule, situation)));
    }

    /** With what is left of the work, where some of it is done. */
    static String of(Rule rule, Situation situation, Settled settled) {
        String title = of(rule, situation);
        return settled.partly() ? title + ": " + Left.inWords(settled) : title;
    }

    /** What is not known stands as it is written. */
    private static String name(MatchResult found, Rule rule, Situation situation) {
        Subject subject = situation.subject();
        return switch (found.group(1)) {
            case "subject" -> subject.words();
            case "crop" -> subject.crop().map(Crop::name).orElse("bush");
            case "crops" -> subject instanceof Subject.Stand stand ? stand.crops(rule.forms().size() == 1)
                    : subject.crop().map(Crop::plural).orElse("bushes");
            case "bed" -> subject.bed().map(bed -> bed.bed().name()).orElse("the garden");
            case "count" -> Integer.toString(subject.bushes());
            case "season" -> situation.season().label();
            default -> found.group();
        };
    }
}
