package org.oldwood.sheet.round;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.oldwood.craft.pruning.Cut;
import org.oldwood.crop.Stems;

/**
 * A bush drawn as its stems, class by class from the young to the old: one stroke a stem, now and after the cut. Age
 * shows in the stroke's thickness, texture and tone; a stem that comes out is hollow and cut through.
 *
 * @param ages the classes that have stems
 * @param each how many stems one stroke stands for; 1 for all but long rows
 */
public record Wood(List<Age> ages, int each) {
    /** Strokes in one class at most, so that the picture fits the narrowest page. */
    private static final int MOST = 28;

    private static final int ROOMY = 14;
    private static final int ROOM = 11;
    private static final int TIGHT = 9;
    private static final int MARGIN = 10;

    /** Drawings that stems of different ages have: beyond that all look alike. */
    private static final int LOOKS = 5;

    private static final String LEANS = "abc";

    /**
     * One class of stems.
     *
     * @param label its age as the count has it, {@code 4+} for example
     * @param total how many stand
     * @param out how many of them come out
     * @param width how wide the drawing is, px
     * @param now the strokes from the left, those that come out last
     * @param then the strokes that are left
     */
    public record Age(String label, int total, int out, int width, List<Stroke> now, List<Stroke> then) {
        public int left() { return total - out; }
    }

    /**
     * A stroke.
     *
     * @param x where it stands, px
     */
    public record Stroke(String drawing, int x) {}

    public static Wood of(Cut cut) {
        Stems stems = cut.before();
        int each = scale(stems);
        List<Age> ages = new ArrayList<>();
        for (int age = 1; age <= stems.oldest(); age++) {
            if (stems.at(age) > 0) { ages.add(age(stems.label(age), age, stems.at(age), cut.of(age), each)); }
        }
        return new Wood(List.copyOf(ages), each);
    }

    private static int scale(Stems stems) {
        int most = IntStream.rangeClosed(1, stems.oldest()).map(stems::at).max().orElse(0);
        return Math.max(1, strokes(most, MOST));
    }

    /** Rounded up: what is there is never drawn as nothing. */
    private static int strokes(int stems, int each) {
        return (stems + each - 1) / each;
    }

    private static Age age(String label, int age, int total, int out, int each) {
        int all = strokes(total, each);
        int left = Math.min(all, strokes(total - out, each));
        int room = all > ROOMY ? TIGHT : ROOM;
        List<Stroke> now = new ArrayList<>();
        for (int i = 0; i < all; i++) {
            String look = Math.min(age, LOOKS) + "" + LEANS.charAt(i % LEANS.length());
            now.add(new Stroke((i < left ? "stem" : "out") + look, MARGIN + i * room));
        }
        return new Age(label, total, out, 2 * MARGIN + (all - 1) * room, List.copyOf(now),
                List.copyOf(now.subList(0, left)));
    }

    public boolean isEmpty() { return ages.isEmpty(); }
}
