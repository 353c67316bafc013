package org.oldwood.garden;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** What to ask back about an entry on a lot of cuttings, which is taken all the same. */
final class LotQuestions {
    private LotQuestions() {}

    static List<String> about(LotState lot, Entry entry) {
        List<String> questions = new ArrayList<>();
        for (String key : List.of("alive", "rooted", "number")) {
            int number = entry.count(key).orElse(0);
            if (number > lot.struck()) {
                questions.add(entry.place()
                        + ": "
                        + number
                        + " cuttings "
                        + key
                        + " in "
                        + lot.id()
                        + ", but only "
                        + lot.struck()
                        + " were struck. Which is right?");
            }
        }
        OptionalInt good = entry.count("good");
        if (good.isPresent() && good.getAsInt() > entry.count("rooted").orElse(0)) {
            questions.add(entry.place()
                    + ": "
                    + good.getAsInt()
                    + " good cuttings in lot "
                    + lot.id()
                    + ", but only "
                    + entry.count("rooted").orElse(0)
                    + " rooted. Which is right?");
        }
        if (entry.kind() == EntryKind.LOST && entry.count("number").isEmpty()) {
            questions.add(entry.place()
                    + ": cuttings of "
                    + lot.id()
                    + " were lost, but not how many, so none is taken off. How many?");
        }
        return questions;
    }
}
