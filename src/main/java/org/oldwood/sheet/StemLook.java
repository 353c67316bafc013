package org.oldwood.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * How a stem is drawn: its line from the ground up, and the twigs on it. Three of each age, so that stems side by side
 * do not look stamped.
 *
 * @param name the age and a letter
 * @param line its line; the foot is at 0 0, up is negative
 * @param twigs short side shoots; more on older wood
 */
record StemLook(String name, String line, String twigs) {
    private static final int[] TALL = {36, 47, 56, 62, 66};
    private static final int[] LEAN = {-3, 1, 4};
    private static final int[] SHORTER = {0, 6, 3};

    /** The three drawings of an age from 1 to 5. */
    static List<StemLook> of(int age) {
        List<StemLook> looks = new ArrayList<>();
        for (int i = 0; i < LEAN.length; i++) {
            int tall = TALL[age - 1] - SHORTER[i];
            String line = "M0 0Q" + -LEAN[i] + " " + -tall / 2 + " " + LEAN[i] + " " + -tall;
            looks.add(new StemLook(age + "abc".substring(i, i + 1), line, twigs(age, tall, i)));
        }
        return looks;
    }

    private static String twigs(int age, int tall, int which) {
        return IntStream.range(0, age)
                .mapToObj(i -> "M0 %sl%s -6".formatted(-tall * (i + 2) / (age + 2), (i + which) % 2 == 0 ? 4 : -4))
                .collect(Collectors.joining());
    }
}
