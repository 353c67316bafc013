package org.oldwood.cli.season;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Figure;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.season.CropStages;
import org.oldwood.season.sums.ChillModels;
import org.oldwood.season.sums.ChillModels.ChillModel;
import org.oldwood.season.sums.ChillReport.Answer;
import org.oldwood.season.sums.ChillReport.Need;
import org.oldwood.season.sums.HourlySeries;
import org.oldwood.season.sums.HourlySeries.Days;
import org.oldwood.words.Words;

/**
 * What a crop wants of chill beside what some winters gave.
 *
 * @param winters each winter beside what it wants; none where that is not known
 */
record ChillWants(Crop crop, List<Need> winters) {

    /** For each crop that grows in a garden, in the order of their names. */
    static List<ChillWants> of(GardenFolder folder, GardenState state, HourlySeries series, List<Days> winters) {
        ChillModels models = ChillModels.read(folder.documents());
        return state.standing().stream().map(each -> each.plant().crop()).distinct().sorted()
                .map(id -> of(folder.crops().get(id), models, series, winters)).toList();
    }

    private static ChillWants of(Crop crop, ChillModels models, HourlySeries series, List<Days> winters) {
        return new ChillWants(crop, CropStages.of(crop).chill().stream().flatMap(wants -> {
            ChillModel model = models.get(wants.model());
            return Arrays.stream(series.sums(List.of(model.begin()), winters)[0])
                    .mapToObj(total -> new Need(model.key(), model.name(), total, wants.need()));
        }).toList());
    }

    private int count(Answer answer) { return (int) winters.stream().filter(each -> each.answer() == answer).count(); }

    private double poorest() { return winters.stream().mapToDouble(Need::total).min().orElse(0); }

    String inWords() {
        if (winters.isEmpty()) { return crop.name() + ": what it wants is not known."; }
        Figure wants = winters.get(0).wants();
        return "%s wants %s (%s%s; %s): %s.".formatted(crop.name(), wants.plain(), winters.get(0).name(),
                winters.get(0).range(), wants.seen().words(), given());
    }

    private String given() {
        String poorest = Words.whole(poorest());
        if (winters.size() == 1) {
            return poorest + " here, " + switch (winters.get(0).answer()) {
                case MET -> "enough";
                case SHORT -> "too little";
                default -> "enough by some sources, short by others";
            };
        }
        List<String> parts = new ArrayList<>();
        parts.add("enough in %s of %s winters".formatted(count(Answer.MET), winters.size()));
        if (count(Answer.DOUBTFUL) > 0) { parts.add("enough by some sources only in " + count(Answer.DOUBTFUL)); }
        if (count(Answer.SHORT) > 0) { parts.add("too little in " + count(Answer.SHORT)); }
        return String.join(", ", parts) + "; the poorest gave " + poorest;
    }

    record Told(String crop, Optional<String> model, Optional<Double> wanted, Optional<Double> wantedLeast,
            Optional<Double> wantedMost, Optional<String> seen, Optional<List<String>> sources,
            Optional<Double> poorestWinter, @JsonAnyGetter Map<String, Integer> winters) {}

    Told told() {
        Optional<Need> any = winters.stream().findFirst();
        Optional<Figure> wants = any.map(Need::wants);
        Map<String, Integer> answers = new LinkedHashMap<>();
        if (any.isPresent()) {
            Stream.of(Answer.MET, Answer.DOUBTFUL, Answer.SHORT)
                    .forEach(answer -> answers.put(answer.words(), count(answer)));
        }
        return new Told(crop.id(), any.map(Need::model), wants.map(Figure::is), wants.map(Figure::low),
                wants.map(Figure::high), wants.map(figure -> figure.seen().key()), wants.map(Figure::sources),
                any.map(need -> Math.round(10 * poorest()) / 10.0), answers);
    }
}
