package org.oldwood.craft.pruning;

import java.util.List;
import java.util.Optional;
import org.oldwood.crop.Checked;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Key;
import org.oldwood.crop.Seen;
import org.oldwood.store.Fields;

/**
 * One piece of pruning work told in words, with its measure.
 *
 * @param at when: {@code planting}, {@code winter}, {@code summer}, {@code canes} (after picking, cane fruit) or
 *     {@code renovation}
 * @param lives the stages of life that it is for; all where empty
 * @param text what to do; {@code {}} stands for the figure
 * @param ownSources where a step without a figure comes from
 */
public record Step(@Key(words = {
        "planting", "winter", "summer", "canes", "renovation"}) String at, List<String> lives,
        @Key("words") String text, Optional<Figure> figure, @Key("source") List<String> ownSources,
        @Key("seen") Optional<Seen> ownSeen) implements Checked{

    @Override
    public void check(Fields fields) {
        fields.tellIf(text.contains("{}") != figure.isPresent(), "words", "step-without-figure");
        fields.tellIf(sources().isEmpty() || ownSeen.isPresent() == figure.isPresent(), "source",
                "missing-source of-step");
    }

    public List<String> sources() { return figure.map(Figure::sources).orElse(ownSources); }

    boolean suits(String time, StageOfLife life) {
        return at.equals(time) && (lives.isEmpty() || lives.contains(life.words()));
    }

    /** What to do, with its measure and range: {@code Cut side shoots to 2 buds (1 to 3).} */
    public String inWords() {
        return figure.map(measure -> text.replace("{}", Measures.inWords(measure))).orElse(text);
    }
}
