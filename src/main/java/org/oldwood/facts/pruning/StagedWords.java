package org.oldwood.facts.pruning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.oldwood.craft.pruning.StagedRenovation;
import org.oldwood.words.Texts;
import org.oldwood.words.Words;

/** The renovation of a crowded plant in words. */
public final class StagedWords {
    private static final Texts TEXTS = Texts.of("pruning");

    private StagedWords() {}

    /** {@code 45 stems are too many or too old: winter 1 of 4 of the renovation half-first}. */
    public static String inShort(StagedRenovation.Part part) {
        StagedRenovation staged = part.renovation();
        return TEXTS.get("staged", part.due(), staged.from().unit(), part.winter(), staged.number(), staged.id());
    }

    /** Which renovation, this winter's part, what it costs, what to choose instead. */
    static List<String> of(StagedRenovation.Part part) {
        StagedRenovation staged = part.renovation();
        List<String> all = new ArrayList<>();
        all.add(
                part.winter() == 1
                        ? TEXTS.get("staged.begins", staged.number(), staged.id(), lower(staged.words()))
                        : TEXTS.get("staged.goesOn", staged.number(), staged.id()));
        all.add(TEXTS.get(
                "staged.now",
                part.winter(),
                staged.number(),
                part.due(),
                staged.from().unit(),
                part.now(),
                part.now() == 1 ? "goes" : "go",
                part.later().isEmpty()
                        ? TEXTS.get("staged.last")
                        : TEXTS.get(
                                "staged.later",
                                Words.list(part.later().stream()
                                        .map(String::valueOf)
                                        .toList()))));
        all.add(staged.meanwhile());
        if (!staged.instead().isEmpty()) {
            all.add(TEXTS.get(
                    "staged.instead",
                    staged.instead().stream()
                            .map(other -> TEXTS.get("staged.way", other.way(), other.words()))
                            .collect(Collectors.joining("; or "))));
        }
        return all;
    }

    private static String lower(String sentence) {
        return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
    }
}
