package org.oldwood.craft.cuttings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Seen;
import org.oldwood.words.Words;

/** Words a method's measures, and which of them are not known. */
public final class MeasureWords {
    private MeasureWords() {}

    /**
     * One line of what is known: {@code 22 cm long (13 to 30), 15 cm deep (10 to 17), …}. Figures that were not read
     * say so. Empty where nothing is.
     */
    public static Optional<String> known(Method method) {
        Method.Measures all = method.measures();
        List<String> parts = new ArrayList<>();
        all.lengthCm().ifPresent(it -> parts.add(words(it, "cm long")));
        all.budsKept().ifPresent(it -> parts.add(words(it, "buds kept")));
        all.depthCm().ifPresent(it -> parts.add(words(it, "cm deep")));
        all.budsAboveSoil().ifPresent(it -> parts.add(words(it, "buds above the soil")));
        all.spacingCm().ifPresent(it -> parts.add(words(it, "cm apart")));
        all.rowGapCm().ifPresent(it -> parts.add(words(it, "cm from row to row")));
        return parts.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", parts));
    }

    /** Measures that the method has, but for which no figure was found. */
    public static List<String> unknown(Method method) {
        Method.Measures all = method.measures();
        List<String> names = new ArrayList<>();
        boolean piece = List.of("shoot", "root").contains(method.from());
        add(names, "length", piece && all.lengthCm().isEmpty());
        add(names, "buds above the soil", method.from().equals("shoot") && all.budsAboveSoil().isEmpty());
        add(names, "depth", !method.inPlace() && all.depthCm().isEmpty());
        add(names, "distance", all.spacingCm().isEmpty() && piece);
        return names;
    }

    private static void add(List<String> names, String name, boolean missing) { if (missing) { names.add(name); } }

    private static String words(Figure figure, String what) {
        List<String> more = new ArrayList<>();
        if (figure.low() < figure.high()) {
            more.add(Words.fixed(figure.low(), 6) + " to " + Words.fixed(figure.high(), 6));
        }
        if (figure.seen() != Seen.READ) { more.add(figure.seen().words()); }
        return "%s %s%s".formatted(Words.fixed(figure.is(), 6), figure.is() == 1 ? what.replace("buds", "bud") : what,
                more.isEmpty() ? "" : " (" + String.join(", ", more) + ")");
    }
}
