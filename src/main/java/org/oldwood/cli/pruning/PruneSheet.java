package org.oldwood.cli.pruning;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.oldwood.cli.command.Out;
import org.oldwood.craft.pruning.Bush;
import org.oldwood.craft.pruning.Cut;
import org.oldwood.craft.pruning.FormPruning;
import org.oldwood.craft.pruning.Outlook;
import org.oldwood.craft.pruning.Pruning;
import org.oldwood.craft.pruning.School;
import org.oldwood.craft.pruning.StageOfLife;
import org.oldwood.craft.pruning.Step;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Range;
import org.oldwood.crop.UnprunedBush;
import org.oldwood.crop.Yield;
import org.oldwood.facts.pruning.CutWords;
import org.oldwood.report.TaskWords;

/**
 * One plant's cut list, the work in words, and its outlook.
 *
 * @param bush its stems; none where they were not counted
 * @param uncounted what to do where they were not counted; empty where they were
 * @param ageing true where it has stood for its productive life
 */
record PruneSheet(String title, Crop crop, Pruning pruning, FormPruning form, School school, Bush bush,
        Optional<String> uncounted, List<String> notes, boolean ageing, Optional<Double> minutes, Futures futures) {

    /** The times of year whose work is told, with what stands before it. */
    private static final List<List<String>> TIMES = List.of(List.of("planting", "At planting"),
            List.of("renovation", "Bringing it back"), List.of("winter", "In winter"),
            List.of("canes", "After picking"), List.of("summer", "In summer"));

    static String ageing(Crop crop, FormPruning form) {
        return "It has stood for a productive life of its kind (%s): raise its successor."
                .formatted(crop.life(form.form()).map(Figure::inWords).orElse(""));
    }

    Cut cut() { return school.winter(bush); }

    StageOfLife life() {
        StageOfLife life = cut().life();
        return ageing && life == StageOfLife.BEARING ? StageOfLife.AGEING : life;
    }

    /** What to do, as a sentence. */
    String todo() {
        if (cut().life() == StageOfLife.FIRST_YEAR) { return "Its first winter: only the cut at planting is due."; }
        return sentence(uncounted.orElseGet(() -> CutWords.taken(cut(), form.counted())) + ".");
    }

    /** The work of a time of year in words. */
    List<Step> steps(String time, Cut cut) {
        boolean atPlanting = cut.life() == StageOfLife.FIRST_YEAR;
        boolean back = cut.life() == StageOfLife.NEGLECTED || school.target(bush).total() == 0;
        if (time.equals("planting") != atPlanting || (time.equals("renovation") && !back)) { return List.of(); }
        return form.steps(school, time, cut.life());
    }

    void print(Out out, boolean withOutlook) {
        Cut cut = cut();
        out.line(title + " (" + life().words() + ", way: " + school.id() + ")");
        out.paragraph(2, todo());
        if (uncounted.isEmpty() && cut.before().total() > 0) {
            CutWords.bars(cut).forEach(out::line);
            out.line("  ages; | stays, x goes");
            CutWords.remarks(cut).forEach(remark -> out.paragraph(2, remark));
        }
        notes.forEach(note -> out.paragraph(2, note));
        for (Pruning.WoodLook look : pruning.looks()) {
            out.hanging("  " + sentence(look.of()) + " wood: ", 4, look.words() + look.seen().beside());
        }
        for (List<String> time : TIMES) {
            List<Step> steps = steps(time.get(0), cut);
            if (!steps.isEmpty()) {
                out.line("  " + time.get(1) + ":");
                steps.forEach(step -> out.hanging("  - ", 4, step.inWords()));
            }
        }
        minutes.ifPresent(all -> out.line("  Time: " + TaskWords.minutes(all)));
        out.paragraph(2, "Sources: " + String.join(", ", sources(cut)) + ".");
        if (withOutlook) { printOutlooks(out); }
        out.line();
    }

    private List<String> sources(Cut cut) {
        List<String> renovation = cut.staged().map(part -> part.renovation().sources()).orElse(List.of());
        return Stream.concat(school.teaching().sources().stream(), renovation.stream()).distinct().toList();
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private void printOutlooks(Out out) {
        if (uncounted.isPresent() || futures.newShoots().isEmpty()) {
            out.paragraph(2, uncounted.isPresent() ? "No outlook without a count."
                    : "No outlook: its branches stay for years, and only side shoots go.");
            return;
        }
        futures.of(bush, form, school, crop).forEach((name, outlook) -> {
            out.line("  " + name + ", stems left by age; how many bear well:");
            print(out, outlook, Yield.read(crop).flatMap(Yield::picking));
        });
        futures.notes(crop).forEach(note -> out.paragraph(2, note));
    }

    private static void print(Out out, Outlook outlook, Optional<Figure> picking) {
        int wide = outlook.winters().stream().mapToInt(one -> one.cut().after().toString().length()).max().orElse(1);
        int winter = 1;
        for (Outlook.Winter one : outlook.winters()) {
            out.line(String.format(Locale.ROOT, "    winter %s  %-" + wide + "s  %3.0f %%  %s", winter++,
                    one.cut().after(), 100 * one.bearingShare(), crop(one, picking)));
        }
    }

    private static String crop(Outlook.Winter winter, Optional<Figure> picking) {
        if (winter.kg().isEmpty() || winter.share().isEmpty()) { return "crop not known"; }
        Range kg = winter.kg().get();
        Range share = winter.share().get();
        return String.format(Locale.ROOT, "crop %.0f to %.0f %%, %.1f to %.1f kg", 100 * share.low(),
                100 * share.high(), kg.low(), kg.high()) + winter.berry().map(it -> berry(it, picking)).orElse("");
    }

    /** Where pruning tells on it, how large a berry is and how long picking takes. */
    private static String berry(UnprunedBush.Berry berry, Optional<Figure> picking) {
        return String.format(Locale.ROOT, ", berries %.0f %%", 100 * berry.weight().is())
                + picking.map(it -> String.format(Locale.ROOT, ", picking %.0f min/kg", 60 / (it.is() * berry.speed())))
                        .orElse("");
    }
}
