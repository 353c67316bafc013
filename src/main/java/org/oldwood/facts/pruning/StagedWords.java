package org.oldwood.facts.pruning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.oldwood.craft.pruning.StagedRenovation;

/** The renovation of a crowded plant in words. */
public final class StagedWords {
    private StagedWords() {}

    /** {@code 45 stems are too many or too old, more than the limit of a winter brings back}. */
    public static String inShort(StagedRenovation.Part part) {
        return part.due()
                + " "
                + part.renovation().from().unit()
                + " are too many or too old: winter "
                + part.winter()
                + " of "
                + part.renovation().number()
                + " of the renovation "
                + part.renovation().id();
    }

    /** Which renovation, this winter's part, what it costs, what to choose instead. */
    static List<String> of(StagedRenovation.Part part) {
        StagedRenovation staged = part.renovation();
        List<String> all = new ArrayList<>();
        all.add(
                part.winter() == 1
                        ? "So crowded that the limit of a winter would need more than ten"
                                + " winters, so it is renewed in "
                                + staged.number()
                                + " ("
                                + staged.id()
                                + "): "
                                + lower(staged.words())
                        : "The renovation in " + staged.number() + " winters goes on (" + staged.id() + ").");
        all.add("Winter "
                + part.winter()
                + " of "
                + staged.number()
                + ": "
                + part.due()
                + " "
                + staged.from().unit()
                + " are too many or too old; "
                + part.now()
                + (part.now() == 1 ? " goes now" : " go now")
                + later(part.later()));
        all.add(staged.meanwhile());
        if (!staged.instead().isEmpty()) {
            all.add(instead(staged.instead()));
        }
        return all;
    }

    private static String later(List<Integer> later) {
        return later.isEmpty()
                ? ", and then it is done."
                : ", then "
                        + and(later.stream().map(String::valueOf).toList())
                        + ", and with them what grows too old meanwhile.";
    }

    private static String instead(List<StagedRenovation.Instead> others) {
        List<String> ways = others.stream()
                .map(other -> "the way " + other.way() + ", which " + other.words())
                .toList();
        return "You may choose instead: "
                + String.join("; or ", ways)
                + ". prune --variant shows a way, \"choices\" in garden.json keeps it.";
    }

    /** {@code 8, 7 and 7}. */
    private static String and(List<String> parts) {
        int last = parts.size() - 1;
        return last == 0 ? parts.get(0) : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
    }

    private static String lower(String sentence) {
        return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
    }
}
