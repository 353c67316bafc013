package org.oldwood.sheet;

import java.util.ArrayList;
import java.util.List;
import org.oldwood.pruning.Cut;
import org.oldwood.pruning.Stems;

/**
 * A bush drawn as its stems, class by class from the young to the old: one stroke a stem. Age shows
 * in the stroke's thickness, texture and tone; a stem that comes out is hollow and cut through.
 *
 * @param ages the classes
 * @param each how many stems one stroke stands for; 1 for all but long rows
 */
record Wood(List<Age> ages, int each) {
    /** Strokes in one class at most, so that the picture fits the narrowest page. */
    private static final int MOST = 40;

    private static final int ROOMY = 16;
    private static final int ROOM = 11;
    private static final int TIGHT = 7;
    private static final int MARGIN = 9;

    /** Drawings that stems of different ages have: beyond that all look alike. */
    private static final int LOOKS = 5;

    private static final int LEANS = 3;

    /**
     * One class of stems.
     *
     * @param label its age as the count has it, {@code 4+} for example
     * @param total how many stand
     * @param out how many of them come out
     * @param width how wide the drawing is
     * @param strokes the strokes from the left
     */
    record Age(String label, int total, int out, int width, List<Stroke> strokes) {}

    /**
     * A stroke.
     *
     * @param drawing the name of the drawing
     * @param x where it stands
     */
    record Stroke(String drawing, int x) {}

    /** The bush now, with what comes out. */
    static Wood before(Cut cut) {
        return of(cut.before(), cut, scale(cut.before()));
    }

    /** The bush after the cut, at the same scale. */
    static Wood after(Cut cut) {
        return of(cut.after(), null, scale(cut.before()));
    }

    private static int scale(Stems stems) {
        int most = 0;
        for (int age = 1; age <= stems.oldest(); age++) {
            most = Math.max(most, stems.at(age));
        }
        return Math.max(1, (most + MOST - 1) / MOST);
    }

    private static Wood of(Stems stems, @org.jspecify.annotations.Nullable Cut cut, int each) {
        List<Age> ages = new ArrayList<>();
        for (int age = 1; age <= stems.oldest(); age++) {
            int total = stems.at(age);
            int out = cut == null ? 0 : cut.of(age);
            if (total > 0) {
                ages.add(age(stems.label(age), age, total, out, each));
            }
        }
        return new Wood(List.copyOf(ages), each);
    }

    private static Age age(String label, int age, int total, int out, int each) {
        int strokes = (total + each - 1) / each;
        int hollow = (out + each - 1) / each;
        int room = strokes > ROOMY ? TIGHT : ROOM;
        List<Stroke> all = new ArrayList<>();
        for (int i = 0; i < strokes; i++) {
            String look = Math.min(age, LOOKS) + "abc".substring(i % LEANS, i % LEANS + 1);
            all.add(new Stroke((i >= strokes - hollow ? "out" : "stem") + look, MARGIN + i * room));
        }
        return new Age(label, total, out, 2 * MARGIN + (strokes - 1) * room, all);
    }

    boolean isEmpty() {
        return ages.isEmpty();
    }

    /** How many stems stand. */
    int total() {
        return ages.stream().mapToInt(Age::total).sum();
    }
}
