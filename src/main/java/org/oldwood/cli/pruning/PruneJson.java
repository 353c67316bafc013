package org.oldwood.cli.pruning;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.oldwood.craft.pruning.Cut;
import org.oldwood.craft.pruning.Outlook;
import org.oldwood.craft.pruning.StagedRenovation;
import org.oldwood.craft.pruning.Step;
import org.oldwood.crop.UnprunedBush;
import org.oldwood.facts.pruning.CutWords;
import org.oldwood.facts.pruning.PruningCase;
import org.oldwood.report.TaskWords;
import org.oldwood.words.Words;

/** Plants' cut lists and outlooks as JSON has them; keys are only ever added. */
record PruneJson(String minutesSeen, Stream<OnePlant> plants) {
    private record OnePlant(String plant, String crop, String form, String variant, String lifeStage, boolean counted,
            String todo, @JsonUnwrapped @Nullable Counts counts, List<String> notes, Map<String, List<String>> steps,
            Optional<Double> minutes, List<String> sources, Optional<List<Future>> outlooks,
            Optional<List<String>> outlookNotes) {
        static OnePlant of(PruneSheet sheet, boolean withOutlook) {
            PruningCase one = sheet.one();
            boolean counted = one.bush().isPresent();
            Map<String, List<String>> steps = new LinkedHashMap<>();
            for (String time : List.of("planting", "renovation", "winter", "canes", "summer")) {
                steps.put(time, sheet.steps(time).stream().map(Step::inWords).toList());
            }
            boolean told = withOutlook && counted;
            List<Future> futures = new ArrayList<>();
            if (told) { sheet.outlooks().forEach((name, outlook) -> futures.add(Future.of(name, outlook))); }
            return new OnePlant(sheet.title(), one.crop().id(), one.form().form(), one.school().id(),
                    sheet.life().words(), counted, sheet.todo(), counted ? Counts.of(one.cut()) : null, sheet.notes(),
                    steps, sheet.minutes(), List.copyOf(one.school().teaching().sources()),
                    told ? Optional.of(futures) : Optional.empty(),
                    told ? Optional.of(sheet.futures().notes(one.crop())) : Optional.empty());
        }
    }

    private record Counts(String before, String after, int heldBack, List<Out> takeOut, List<String> remarks,
            Optional<Renovation> renovation) {
        static Counts of(Cut cut) {
            return new Counts(cut.before().toString(), cut.after().toString(), cut.heldBack(),
                    cut.taken().stream().map(taken -> Out.of(cut, taken)).toList(), CutWords.remarks(cut),
                    cut.staged().map(Renovation::of));
        }
    }

    private record Out(String age, int number, String why) {
        static Out of(Cut cut, Cut.Taken taken) {
            return new Out(cut.before().label(taken.age()), taken.number(), CutWords.why(taken.why()));
        }
    }

    private record Renovation(String id, String words, int winter, int winters, int due, int now, String meanwhile,
            List<Integer> later, List<Way> instead, List<String> sources) {
        static Renovation of(StagedRenovation.Part part) {
            StagedRenovation staged = part.renovation();
            return new Renovation(staged.id(), staged.words(), part.winter(), staged.number(), part.due(), part.now(),
                    staged.meanwhile(), part.later(),
                    staged.instead().stream().map(other -> new Way(other.way(), other.words())).toList(),
                    staged.sources());
        }
    }

    private record Way(String variant, String words) {}

    private record Future(String habit, List<Winter> winters) {
        static Future of(String name, Outlook outlook) {
            return new Future(name, outlook.winters().stream().map(Winter::of).toList());
        }
    }

    private record Winter(String after, int bearing, double bearingShare, Optional<Double> shareLow,
            Optional<Double> shareHigh, Optional<Double> berryWeight, Optional<Double> pickingSpeed,
            Optional<Double> kgLow, Optional<Double> kgHigh) {
        static Winter of(Outlook.Winter winter) {
            return new Winter(winter.cut().after().toString(), winter.bearing(),
                    Words.rounded(winter.bearingShare(), 2), winter.share().map(it -> Words.rounded(it.low(), 2)),
                    winter.share().map(it -> Words.rounded(it.high(), 2)), winter.berry().map(it -> it.weight().is()),
                    winter.berry().map(UnprunedBush.Berry::speed), winter.kg().map(kg -> Words.rounded(kg.low(), 2)),
                    winter.kg().map(kg -> Words.rounded(kg.high(), 2)));
        }
    }

    static PruneJson of(Stream<PruneSheet> sheets, boolean withOutlook) {
        return new PruneJson(TaskWords.MINUTES_SEEN, sheets.map(sheet -> OnePlant.of(sheet, withOutlook)));
    }
}
