package org.oldwood.garden;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/** What to ask back about stems that were counted or cut out, which is taken all the same. */
final class StemQuestions {
    private StemQuestions() {}

    /** @param before the stems as the notes before the entry leave them, in the entry's season */
    static List<String> about(String plant, StemAges before, Entry entry) {
        List<String> questions = new ArrayList<>();
        StemAges said = entry.stems();
        for (Map.Entry<Integer, Integer> each : said.counts().entrySet()) {
            int age = each.getKey();
            boolean open = said.openFrom().isPresent() && said.openFrom().getAsInt() == age;
            OptionalInt room = room(before, age, open);
            if (age > 0 && room.isPresent() && each.getValue() > room.getAsInt()) {
                String number = each.getValue() + " stems of " + age + (open ? "+" : "");
                questions.add(entry.place()
                        + ": "
                        + (entry.kind() == EntryKind.PRUNED
                                ? cut(plant, number, room.getAsInt())
                                : counted(plant, number, room.getAsInt())));
            }
        }
        return questions;
    }

    private static String counted(String plant, String number, int room) {
        return plant
                + " has "
                + number
                + " seasons, but the notes before leave only "
                + room
                + ". The new count is used; which is right?";
    }

    private static String cut(String plant, String number, int room) {
        return number
                + " seasons were cut out of "
                + plant
                + ", but the notes before leave only "
                + room
                + ". None of that age is taken to be left; count again, or strike out what is"
                + " wrong.";
    }

    /** How many stems of a class there can be; empty where the notes do not tell. */
    private static OptionalInt room(StemAges before, int age, boolean open) {
        OptionalInt lumped = before.openFrom();
        if (lumped.isPresent() && age >= lumped.getAsInt()) {
            return OptionalInt.of(before.atLeast(lumped.getAsInt()));
        }
        if (!open) {
            Integer known = before.counts().get(age);
            return known == null ? OptionalInt.empty() : OptionalInt.of(known);
        }
        return allKnownFrom(before, age) ? OptionalInt.of(before.atLeast(age)) : OptionalInt.empty();
    }

    private static boolean allKnownFrom(StemAges before, int age) {
        if (before.isEmpty() || before.counts().lastKey() < age) {
            return false;
        }
        for (int each = age; each <= before.counts().lastKey(); each++) {
            if (!before.counts().containsKey(each)) {
                return false;
            }
        }
        return true;
    }
}
