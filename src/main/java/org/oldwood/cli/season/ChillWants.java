package org.oldwood.cli.season;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Figure;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.season.CropStages;
import org.oldwood.season.CropStages.ChillNeed;
import org.oldwood.season.sums.ChillModels;
import org.oldwood.season.sums.ChillReport;
import org.oldwood.season.sums.ChillReport.Answer;
import org.oldwood.season.sums.HourlySeries;

/**
 * What a crop wants of chill beside what some winters gave.
 *
 * @param need what it wants; empty where it is not known
 * @param model the name of the model it is told in
 * @param least the chill of the poorest winter, in that model's unit
 * @param answers how many winters gave enough, perhaps enough, too little
 */
record ChillWants(Crop crop, Optional<ChillNeed> need, String model, double least, Map<Answer, Integer> answers) {

    /** For each crop that grows in a garden, in the order of their names. */
    static List<ChillWants> of(
            GardenFolder folder, GardenState state, HourlySeries series, List<SumCommand.Line> winters) {
        ChillModels models = ChillModels.read(folder.documents());
        return state.standing().stream()
                .map(each -> each.plant().crop())
                .distinct()
                .sorted()
                .map(id -> of(folder.crops().get(id), models, series, winters))
                .toList();
    }

    private static ChillWants of(Crop crop, ChillModels models, HourlySeries series, List<SumCommand.Line> winters) {
        Optional<ChillNeed> need = CropStages.of(crop).chill();
        Map<Answer, Integer> answers = new EnumMap<>(Answer.class);
        if (need.isEmpty()) {
            return new ChillWants(crop, need, "", 0, answers);
        }
        ChillModels.ChillModel model = models.get(need.get().model());
        double[][] totals = series.sums(
                List.of(model.begin()),
                winters.stream().map(each -> each.stretch().days()).toList());
        double least = Double.POSITIVE_INFINITY;
        for (double total : totals[0]) {
            least = Math.min(least, total);
            answers.merge(
                    new ChillReport.Need(
                                    model.key(), model.name(), total, need.get().need())
                            .answer(),
                    1,
                    Integer::sum);
        }
        return new ChillWants(crop, need, model.name(), least, answers);
    }

    private int count(Answer answer) {
        return answers.getOrDefault(answer, 0);
    }

    String inWords() {
        if (need.isEmpty()) {
            return crop.name() + ": what it wants is not known.";
        }
        var wants = need.get().need();
        String range = wants.low() < wants.high()
                ? String.format(Locale.ROOT, ", by source %.0f to %.0f", wants.low(), wants.high())
                : "";
        return "%s wants %s (%s%s; %s): %s."
                .formatted(
                        crop.name(), wants.plain(), model, range, wants.seen().words(), given());
    }

    private String given() {
        int all = count(Answer.MET) + count(Answer.DOUBTFUL) + count(Answer.SHORT);
        String poorest = String.format(Locale.ROOT, "%.0f", least);
        if (all == 1) {
            return "%s here, %s"
                    .formatted(
                            poorest,
                            count(Answer.MET) == 1
                                    ? "enough"
                                    : count(Answer.SHORT) == 1
                                            ? "too little"
                                            : "enough by some sources, short by others");
        }
        List<String> parts = new ArrayList<>();
        parts.add("enough in " + count(Answer.MET) + " of " + all + " winters");
        if (count(Answer.DOUBTFUL) > 0) {
            parts.add("enough by some sources only in " + count(Answer.DOUBTFUL));
        }
        if (count(Answer.SHORT) > 0) {
            parts.add("too little in " + count(Answer.SHORT));
        }
        return String.join(", ", parts) + "; the poorest gave " + poorest;
    }

    /** As JSON has it. */
    record Told(
            String crop,
            Optional<String> model,
            Optional<Double> wanted,
            Optional<Double> wantedLeast,
            Optional<Double> wantedMost,
            Optional<String> seen,
            Optional<List<String>> sources,
            Optional<Double> poorestWinter,
            @JsonAnyGetter Map<String, Integer> winters) {}

    Told told() {
        Optional<Figure> wants = need.map(ChillNeed::need);
        Map<String, Integer> winters = new LinkedHashMap<>();
        if (need.isPresent()) {
            for (Answer answer : List.of(Answer.MET, Answer.DOUBTFUL, Answer.SHORT)) {
                winters.put(answer.words(), count(answer));
            }
        }
        return new Told(
                crop.id(),
                need.map(ChillNeed::model),
                wants.map(Figure::is),
                wants.map(Figure::low),
                wants.map(Figure::high),
                wants.map(figure -> figure.seen().key()),
                wants.map(Figure::sources),
                wants.map(any -> Math.round(10 * least) / 10.0),
                winters);
    }
}
