package org.oldwood.facts.pruning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.oldwood.craft.pruning.Bush;
import org.oldwood.craft.pruning.CaneSchool;
import org.oldwood.craft.pruning.Cut;
import org.oldwood.craft.pruning.FormPruning;
import org.oldwood.craft.pruning.Outlook;
import org.oldwood.craft.pruning.School;
import org.oldwood.craft.pruning.StageOfLife;
import org.oldwood.craft.pruning.StagedRenovation;
import org.oldwood.craft.pruning.Why;
import org.oldwood.crop.Stems;
import org.oldwood.words.Texts;
import org.oldwood.words.Words;

/** A cut in words. */
public final class CutWords {
    private static final Texts TEXTS = Texts.of("pruning");

    private CutWords() {}

    /**
     * {@code take out 5 of 17 stems: 3 of age 4+ (spent), 2 of age 1 (more than its age needs)}.
     *
     * @param what what is counted: stems, canes or branches
     */
    public static String taken(Cut cut, String what) {
        // where an age was not counted the bush has more than these
        String known = cut.before().isComplete() ? what : "counted " + what;
        if (cut.taken().isEmpty()) { return TEXTS.get("taken.none", cut.before().total(), known); }
        String parts = cut.taken().stream()
                .map(one -> TEXTS.get("taken.part", one.number(), cut.before().label(one.age()), why(one.why())))
                .collect(Collectors.joining(", "));
        return TEXTS.get("taken", cut.number(), cut.before().total(), known, parts);
    }

    /** Why a stem comes out. */
    public static String why(Why why) { return TEXTS.get("why." + why); }

    /** {@code 5 of last summer's, 3 of each age from 2 to 3}: a balance of ages in words. */
    public static String byAge(Stems stems) {
        List<String> parts = new ArrayList<>();
        for (int age = 1; age <= stems.oldest(); age++) {
            int from = age;
            int number = stems.at(age);
            while (age < stems.oldest() && stems.at(age + 1) == number) {
                age++;
            }
            if (number > 0) {
                parts.add(age > from ? TEXTS.get("age.run", number, from, stems.label(age))
                        : from == 1 ? TEXTS.get("age.first", number) : TEXTS.get("age.one", number, stems.label(from)));
            }
        }
        return Words.list(parts);
    }

    /**
     * What each other way of pruning would take from this bush, a line each with its sources.
     *
     * @param chosen the way that is followed
     */
    public static List<String> others(FormPruning form, School chosen, Bush bush) {
        return form.schools().stream().filter(other -> !other.id().equals(chosen.id()))
                .map(other -> TEXTS.get("others", other.id(), inShort(other.winter(bush)),
                        other.teaching().seen().words(), String.join(", ", other.teaching().sources())))
                .toList();
    }

    private static String inShort(Cut cut) {
        List<String> parts = new ArrayList<>();
        for (int age = cut.before().oldest(); age >= 1; age--) {
            if (cut.of(age) > 0) { parts.add(cut.of(age) + " of age " + cut.before().label(age)); }
        }
        return parts.isEmpty() ? "none" : cut.number() + ": " + String.join(", ", parts);
    }

    static String young() { return TEXTS.get("todo.young"); }

    /** What to do with a plant whose stems or canes were not counted, and of which so many are to stay. */
    static String uncounted(FormPruning form, School school, Stems target) {
        int stay = target.total();
        if (school instanceof CaneSchool canes && canes.all()) { return TEXTS.get("todo.canes.all"); }
        return switch (form.craft()) {
            case "canes" -> TEXTS.get("todo.canes", stay);
            case "spur" -> stay == 1 ? TEXTS.get("todo.spur.one") : TEXTS.get("todo.spur", stay);
            default -> stay == 0 ? TEXTS.get("todo.renewal.none", form.counted())
                    : TEXTS.get("todo.renewal", stay, byAge(target));
        };
    }

    /** What stands before and after: {@code 1=9,4+=3 → 1=5,4+=0}. */
    public static String beforeAndAfter(Cut cut) {
        return cut.before() + " before, " + cut.after() + " after";
    }

    /** What else was decided, a sentence each. */
    public static List<String> remarks(Cut cut) {
        List<String> all = new ArrayList<>();
        cut.remarks().forEach(remark -> all.add(remark(remark, cut)));
        cut.staged().ifPresent(part -> all.addAll(staged(part)));
        return all;
    }

    private static String remark(Cut.Remark remark, Cut cut) {
        String key = "remark." + remark;
        return switch (remark) {
            case LIMITED -> cut.heldBack() > 0 ? TEXTS.get(key + ".later", cut.heldBack()) : TEXTS.get(key);
            case NOT_ALL_COUNTED -> cut.before().knows(1) || cut.youngToLeave() == 0 ? TEXTS.get(key)
                    : TEXTS.get(key + ".young", cut.youngToLeave());
            case OPEN_CLASS -> TEXTS.get(key, cut.before().label(cut.before().oldest()));
            default -> TEXTS.get(key);
        };
    }

    /** The parts of a neglected bush's spent wood, winter by winter: {@code 4, then 3, then 3}. */
    public static String parts(Outlook outlook) {
        List<String> parts = new ArrayList<>();
        boolean last = false;
        for (Outlook.Winter winter : outlook.winters()) {
            int spent = winter.cut().of(Why.SPENT);
            last = winter.cut().life() != StageOfLife.NEGLECTED && !parts.isEmpty();
            if (!last || spent > 0) { parts.add(Integer.toString(spent)); }
            if (last) { break; }
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
            all.add(String.format(Locale.ROOT, "%4s  %-11s %s%s", cut.before().label(age), count,
                    "|".repeat(Math.min(50, stays)), "x".repeat(Math.min(50, goes))));
        }
        return all;
    }

    /** {@code 45 stems are too many or too old: winter 1 of 4 of the renovation half-first}. */
    public static String stagedInShort(StagedRenovation.Part part) {
        StagedRenovation staged = part.renovation();
        return TEXTS.get("staged", part.due(), staged.from().unit(), part.winter(), staged.number(), staged.id());
    }

    /** Which renovation, this winter's part, what it costs, what to choose instead. */
    static List<String> staged(StagedRenovation.Part part) {
        StagedRenovation staged = part.renovation();
        List<String> all = new ArrayList<>();
        all.add(part.winter() == 1 ? TEXTS.get("staged.begins", staged.number(), staged.id(), lower(staged.words()))
                : TEXTS.get("staged.goesOn", staged.number(), staged.id()));
        all.add(TEXTS.get("staged.now", part.winter(), staged.number(), part.due(), staged.from().unit(), part.now(),
                part.now() == 1 ? "goes" : "go", part.later().isEmpty() ? TEXTS.get("staged.last")
                        : TEXTS.get("staged.later", Words.list(part.later().stream().map(String::valueOf).toList()))));
        all.add(staged.meanwhile());
        if (!staged.instead().isEmpty()) {
            all.add(TEXTS.get("staged.instead",
                    staged.instead().stream().map(other -> TEXTS.get("staged.way", other.way(), other.words()))
                            .collect(Collectors.joining("; or "))));
        }
        return all;
    }

    private static String lower(String sentence) {
        return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
    }
}
