package org.oldwood.facts.pruning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.oldwood.craft.pruning.StagedRenovation;
import org.oldwood.words.Words;

/** The renovation of a crowded plant in words. */
public final class StagedWords {
    private StagedWords() {}

    /** {@code 45 stems are too many or too old: winter 1 of 4 of the renovation half-first}. */
    public static String inShort(StagedRenovation.Part part) {
        StagedRenovation staged = part.renovation();
        return "%s %s are too many or too old: winter %s of %s of the renovation %s"
                .formatted(part.due(), staged.from().unit(), part.winter(), staged.number(), staged.id());
    }

    /** Which renovation, this winter's part, what it costs, what to choose instead. */
    static List<String> of(StagedRenovation.Part part) {
        StagedRenovation staged = part.renovation();
        List<String> all = new ArrayList<>();
        String begins = "So crowded that the limit of a winter would need more than ten winters, so it is renewed in"
                + " %s (%s): %s";
        all.add(
                part.winter() == 1
                        ? begins.formatted(staged.number(), staged.id(), lower(staged.words()))
                        : "The renovation in %s winters goes on (%s).".formatted(staged.number(), staged.id()));
        all.add("Winter %s of %s: %s %s are too many or too old; %s %s now%s"
                .formatted(
                        part.winter(),
                        staged.number(),
                        part.due(),
                        staged.from().unit(),
                        part.now(),
                        part.now() == 1 ? "goes" : "go",
                        later(part.later())));
        all.add(staged.meanwhile());
        if (!staged.instead().isEmpty()) {
            all.add(staged.instead().stream()
                    .map(other -> "the way " + other.way() + ", which " + other.words())
                    .collect(Collectors.joining(
                            "; or ",
                            "You may choose instead: ",
                            ". prune --variant shows a way, \"choices\" in garden.json keeps it.")));
        }
        return all;
    }

    private static String later(List<Integer> later) {
        return later.isEmpty()
                ? ", and then it is done."
                : ", then %s, and with them what grows too old meanwhile."
                        .formatted(
                                Words.list(later.stream().map(String::valueOf).toList()));
    }

    private static String lower(String sentence) {
        return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
    }
}
