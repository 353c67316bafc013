package org.oldwood.garden;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.oldwood.crop.Stems;

/** What to ask back about an entry that does not fit those before it; it is taken all the same. */
final class Questions {
    private Questions() {}

    /** Of a plant that is no more. */
    static String gone(Plant plant, Entry gone, Entry entry) {
        return "%s: %s of %s on %s, but it was taken out on %s. Is it the right plant?".formatted(entry.place(),
                entry.kind().key(), plant.id(), entry.date(), gone.date());
    }

    /** Of a crop that nobody planted. */
    static String noneOf(String crop, Entry entry) {
        return "%s: %s of %s on %s, but none was planted here. Which crop is meant? oldwood undo %s takes this back."
                .formatted(entry.place(), entry.kind().key(), crop, entry.date(), entry.id());
    }

    /** Of cuttings. */
    static List<String> about(LotState lot, Entry entry) {
        List<String> questions = new ArrayList<>();
        for (String key : List.of("alive", "rooted", "number")) {
            int number = entry.count(key).orElse(0);
            if (number > lot.struck()) {
                questions.add(
                        "%s: %s cuttings %s in %s, but only %s were struck. Which is right? oldwood undo %s takes this back."
                                .formatted(entry.place(), number, key, lot.id(), lot.struck(), entry.id()));
            }
        }
        if (entry.kind() == EntryKind.LOST && entry.count("number").isEmpty()) {
            questions.add("%s: cuttings of %s were lost, but not how many, so none is taken off. How many?"
                    .formatted(entry.place(), lot.id()));
        }
        return questions;
    }

    /**
     * Of stems that were counted or cut out.
     *
     * @param before the stems as the notes before the entry leave them, in the entry's season
     */
    static List<String> about(String plant, Stems before, Entry entry) {
        List<String> questions = new ArrayList<>();
        Stems said = entry.stems();
        String words = entry.kind() == EntryKind.PRUNED
                ? "%s: %s stems of %s seasons were cut out of %s, but the notes before leave only %s. None of that age"
                        + " is taken to be left; count again, or strike out what is wrong."
                : "%1$s: %4$s has %2$s stems of %3$s seasons, but the notes before leave only %5$s. The new count is"
                        + " used; which is right?";
        said.byAge().forEach((age, number) -> {
            boolean open = said.openFrom().equals(OptionalInt.of(age));
            OptionalInt room = room(before, age, open);
            if (age > 0 && room.isPresent() && number > room.getAsInt()) {
                questions.add(words.formatted(entry.place(), number, age + (open ? "+" : ""), plant, room.getAsInt()));
            }
        });
        return questions;
    }

    /** How many stems of a class there can be; empty where the notes do not tell. */
    private static OptionalInt room(Stems before, int age, boolean open) {
        OptionalInt lumped = before.openFrom();
        if (lumped.isPresent() && age >= lumped.getAsInt()) { return OptionalInt.of(before.from(lumped.getAsInt())); }
        boolean told = age <= before.oldest();
        for (int each = age; told && each <= (open ? before.oldest() : age); each++) {
            told = before.knows(each);
        }
        return !told ? OptionalInt.empty() : OptionalInt.of(open ? before.from(age) : before.at(age));
    }
}
