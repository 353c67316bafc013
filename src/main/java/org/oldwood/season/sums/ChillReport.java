package org.oldwood.season.sums;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.words.Words;

/**
 * The chill of a place in one winter beside what a crop wants. Sources give one crop wants that differ by a factor of
 * two, so there is a grey stretch between their least and their usual figure.
 *
 * @param from the first day that counts, included
 * @param to the last day that counts, included
 * @param portions the winter in chill portions of the Dynamic model
 * @param need what the crop wants; empty where no source was found that says
 */
public record ChillReport(LocalDate from, LocalDate to, double portions, Optional<Need> need) {

    /** How the winter stands to what the crop wants. */
    public enum Answer {
        /** The usual figure is reached. */
        MET,
        /** Above the least that a source gives, below the usual figure. */
        DOUBTFUL,
        /** Not even the least that a source gives is reached. */
        SHORT,
        /** What the crop wants is not known. */
        UNKNOWN;

        public String words() { return name().toLowerCase(Locale.ROOT); }
    }

    /**
     * What a crop wants, and the winter by the same model.
     *
     * @param model the chill model's key
     * @param total the chill of the winter
     * @param wants what the crop wants, in the model's unit
     */
    public record Need(String model, String name, double total, Figure wants) {
        public Answer answer() {
            if (total >= wants.is()) { return Answer.MET; }
            return total >= wants.low() ? Answer.DOUBTFUL : Answer.SHORT;
        }

        /** {@code , by source 800 to 1000}; nothing where sources agree. */
        public String range() {
            return wants.low() < wants.high()
                    ? ", by source %s to %s".formatted(Words.whole(wants.low()), Words.whole(wants.high()))
                    : "";
        }

        private String inWords() {
            return "this climate gives %s %s, the crop wants %s%s (%s)".formatted(Words.whole(total), name,
                    wants.inWords(), range(), wants.seen().words());
        }
    }

    public Answer answer() { return need.map(Need::answer).orElse(Answer.UNKNOWN); }

    /** What the winter gives and what the crop wants, without a full stop. */
    public String inWords() {
        return need.map(each -> each.inWords() + "; in chill portions this climate gives " + Math.round(portions))
                .orElse("this climate gives %s chill portions; how many the crop wants is not known"
                        .formatted(Words.whole(portions)));
    }

    /** The same with what follows from it, without a full stop. */
    public String verdict() {
        return inWords() + switch (answer()) {
            case MET -> ": enough";
            case DOUBTFUL -> ": enough by some sources, short by others; a mild winter may fall short";
            case SHORT -> ": too little, so buds may open late and unevenly";
            case UNKNOWN -> ". Note the days of bud burst and flower, and the dates will follow them";
        };
    }
}
