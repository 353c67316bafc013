package org.oldwood.calendar.format;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Some lines that an item says beneath its title, fit for a calendar as {@link Hygiene} has it. */
public final class Text {
    public static final Text NONE = new Text(new Passage[0]);

    private final Passage[] lines;

    private Text(Passage[] lines) {
        this.lines = lines;
    }

    public static Text of(String text) {
        return text.isEmpty() ? NONE : new Text(new Passage[] {new Passage(Hygiene.text(text))});
    }

    public boolean isEmpty() {
        return lines.length == 0 || (lines.length == 1 && lines[0].text().isEmpty());
    }

    /** Escaped, without folds; the lines stand after one another with {@code \n} between. */
    public Passage[] lines() {
        return lines;
    }

    public long addTo(long hash) {
        long h = hash;
        for (int i = 0; i < lines.length; i++) {
            h = lines[i].addTo(i == 0 ? h : Fnv.character(h, '\n'));
        }
        return Fnv.end(h);
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < lines.length; i++) {
            text.append(i == 0 ? "" : "\n").append(lines[i].text());
        }
        return text.toString();
    }

    /** Makes texts, and keeps the lines that they may have in common. */
    public static final class Maker {
        /** Lines kept. Items that say the same come near each other, so few are made twice. */
        private static final int MOST = 4096;

        private final Map<String, Passage> known = new HashMap<>();

        public Text of(List<String> lines) {
            Passage[] made = new Passage[lines.size()];
            boolean isFit = true;
            for (int i = 0; i < made.length; i++) {
                made[i] = passage(lines.get(i));
                isFit &= made[i].isFit();
            }
            return isFit && !isBlankAtAnEnd(made) ? new Text(made) : Text.of(String.join("\n", lines));
        }

        private static boolean isBlankAtAnEnd(Passage[] lines) {
            return lines.length == 0 || lines[0].beginsBlank() || lines[lines.length - 1].endsBlank();
        }

        private Passage passage(String line) {
            Passage passage = known.get(line);
            if (passage == null) {
                passage = new Passage(line);
                if (known.size() == MOST) {
                    known.clear();
                }
                known.put(line, passage);
            }
            return passage;
        }
    }
}
