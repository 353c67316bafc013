package org.oldwood.craft.pruning;

import java.util.List;
import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Seen;
import org.oldwood.store.Fields;

/**
 * One piece of pruning work told in words, with its measure.
 *
 * @param at when: {@code planting}, {@code winter}, {@code summer}, {@code canes} (after picking, cane fruit) or
 *     {@code renovation}
 * @param lives the stages of life that it is for; all where empty
 * @param text what to do; {@code {}} stands for the figure
 * @param figure the measure, if there is one
 * @param sources where it comes from
 * @param seen how it was seen
 */
public record Step(
        String at, List<String> lives, String text, Optional<Figure> figure, List<String> sources, Seen seen) {

    static final List<String> TIMES = List.of("planting", "winter", "summer", "canes", "renovation");

    static Step read(Fields fields) {
        Optional<Figure> figure = Figure.optional(fields, "figure");
        Step step = new Step(
                fields.oneOf("at", TIMES),
                fields.texts("lives"),
                fields.text("words"),
                figure,
                figure.isPresent() ? figure.get().sources() : fields.texts("source"),
                figure.isPresent() ? figure.get().seen() : Seen.parse(fields.oneOf("seen", Seen.keys())));
        if (step.text.contains("{}") != figure.isPresent()) {
            fields.wrong("words", "step-without-figure", "must hold {} where there is a figure", "");
        }
        if (step.sources.isEmpty()) {
            fields.wrong("source", "missing-source", "is missing; every step names its source", "");
        }
        fields.done();
        return step;
    }

    boolean suits(String time, StageOfLife life) {
        return at.equals(time) && (lives.isEmpty() || lives.contains(life.words()));
    }

    /** What to do, with its measure and range: {@code Cut side shoots to 2 buds (1 to 3).} */
    public String inWords() {
        return figure.map(measure -> text.replace("{}", Measures.inWords(measure)))
                .orElse(text);
    }
}
