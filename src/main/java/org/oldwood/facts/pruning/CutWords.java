package org.oldwood.facts.pruning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.oldwood.craft.pruning.Bush;
import org.oldwood.craft.pruning.Cut;
import org.oldwood.craft.pruning.FormPruning;
import org.oldwood.craft.pruning.Outlook;
import org.oldwood.craft.pruning.School;
import org.oldwood.craft.pruning.StageOfLife;
import org.oldwood.craft.pruning.Stems;
import org.oldwood.craft.pruning.Taken;
import org.oldwood.craft.pruning.Why;

/** A cut in words. */
public final class CutWords {
    private CutWords() {}

    /**
     * {@code take out 5 of 17 stems: 3 of age 4+ (spent), 2 of age 1 (more than its age needs)}.
     *
     * @param what stems, canes or branches
     */
    public static String taken(Cut cut, String what) {
        if (cut.taken().isEmpty()) {
            return "take none of the " + cut.before().total() + " " + what + " out";
        }
        List<String> parts = new ArrayList<>();
        for (Taken one : cut.taken()) {
            parts.add("%s of age %s (%s)"
                    .formatted(
                            one.number(),
                            cut.before().label(one.age()),
                            one.why().words()));
        }
        return "take out %s of %s %s: %s".formatted(cut.number(), cut.before().total(), what, String.join(", ", parts));
    }

    /**
     * What each other way of pruning would take from this bush, a line each with its sources.
     *
     * @param chosen the way that is followed
     */
    public static List<String> others(FormPruning form, School chosen, Bush bush) {
        return form.schools().stream()
                .filter(other -> !other.id().equals(chosen.id()))
                .map(other -> "%s would take %s (%s: %s)"
                        .formatted(
                                other.id(),
                                inShort(other.winter(bush)),
                                other.teaching().seen().words(),
                                String.join(", ", other.teaching().sources())))
                .toList();
    }

    private static String inShort(Cut cut) {
        List<String> parts = new ArrayList<>();
        for (int age = cut.before().oldest(); age >= 1; age--) {
            if (cut.of(age) > 0) {
                parts.add(cut.of(age) + " of age " + cut.before().label(age));
            }
        }
        return parts.isEmpty() ? "none" : cut.number() + ": " + String.join(", ", parts);
    }

    /** {@code 5 of age 1, 2 of age 2}; empty for no stems. */
    public static String byAge(Stems stems) {
        return IntStream.rangeClosed(1, stems.oldest())
                .filter(age -> stems.at(age) > 0)
                .mapToObj(age -> "%s of age %s".formatted(stems.at(age), stems.label(age)))
                .collect(Collectors.joining(", "));
    }

    /** What stands before and after: {@code 1=9,4+=3 → 1=5,4+=0}. */
    public static String beforeAndAfter(Cut cut) {
        return cut.before() + " before, " + cut.after() + " after";
    }

    /** What else was decided, a sentence each. */
    public static List<String> remarks(Cut cut) {
        List<String> all = new ArrayList<>();
        for (Cut.Remark remark : cut.remarks()) {
            all.add(remark(remark, cut));
        }
        cut.staged().ifPresent(part -> all.addAll(StagedWords.of(part)));
        return all;
    }

    private static String remark(Cut.Remark remark, Cut cut) {
        return switch (remark) {
            case LIMITED ->
                cut.heldBack() > 0
                        ? "%s more are spent but wait for a later winter: too much at once costs the next crop."
                                .formatted(cut.heldBack())
                        : "More could go, but not in one winter.";
            case NONE_SOUND ->
                "No stem is sound: find out what ails it before you build it anew. Sound shoots may come from below;"
                        + " virus and reversion have no cure.";
            case NO_MORE_THAN_CAME_UP ->
                "More could go, but no more bearing stems go than young ones came up in the last seasons.";
            case LAST_BEARING_WOOD ->
                "Old wood stays because it is the last that bears; it goes when young stems" + " have grown.";
            case FILLED_UP -> "The bush is short of stems, so more new shoots than usual stay.";
            case NOT_ALL_COUNTED ->
                "Not every age was counted; what was not counted is taken as none.%s"
                        .formatted(
                                cut.before().knows(1) || cut.youngToLeave() == 0
                                        ? ""
                                        : " Of last summer's growth leave the " + cut.youngToLeave() + " strongest.");
            case OPEN_CLASS ->
                "Stems of %s are of several ages: take the thickest and darkest of them."
                        .formatted(cut.before().label(cut.before().oldest()));
            case TOO_YOUNG -> "Too young for pruning: only dead, damaged and diseased wood goes.";
            case HARD -> "This is a hard cut: expect little or no crop next summer.";
            case NO_SUCCESSOR -> "An old branch stays until a young low shoot can follow it; leave one to grow.";
        };
    }

    /** The parts of a neglected bush's spent wood, winter by winter: {@code 4, then 3, then 3}. */
    public static String parts(Outlook outlook) {
        List<String> parts = new ArrayList<>();
        boolean last = false;
        for (Outlook.Winter winter : outlook.winters()) {
            int spent = winter.cut().of(Why.SPENT);
            last = winter.cut().life() != StageOfLife.NEGLECTED && !parts.isEmpty();
            if (!last || spent > 0) {
                parts.add(Integer.toString(spent));
            }
            if (last) {
                break;
            }
        }
        return String.join(", then ", parts);
    }

    /** One line a class: {@code 4+ ███}, the stems that go as {@code x}, those that stay as {@code |}. */
    public static List<String> bars(Cut cut) {
        List<String> all = new ArrayList<>();
        for (int age = 1; age <= cut.before().oldest(); age++) {
            int goes = cut.of(age);
            int stays = cut.after().at(age);
            String count = cut.before().knows(age) ? cut.before().at(age) + " -> " + stays : "not counted";
            all.add(String.format(
                    Locale.ROOT,
                    "%4s  %-11s %s%s",
                    cut.before().label(age),
                    count,
                    "|".repeat(Math.min(50, stays)),
                    "x".repeat(Math.min(50, goes))));
        }
        return all;
    }
}
