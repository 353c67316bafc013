package org.oldwood.cli.pruning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.oldwood.cli.command.Out;
import org.oldwood.craft.pruning.Cut;
import org.oldwood.craft.pruning.Outlook;
import org.oldwood.craft.pruning.Pruning;
import org.oldwood.craft.pruning.StageOfLife;
import org.oldwood.craft.pruning.Step;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Range;
import org.oldwood.crop.UnprunedBush;
import org.oldwood.crop.Yield;
import org.oldwood.facts.pruning.CutWords;
import org.oldwood.facts.pruning.PruningCase;
import org.oldwood.report.TaskWords;
import org.oldwood.words.Words;

/** One plant's cut list, the work in words, and its outlook. */
record PruneSheet(String title, PruningCase one, Optional<Double> minutes, Futures futures) {

    /** The times of year whose work is told, with what stands before it. */
    private static final List<List<String>> TIMES = List.of(List.of("planting", "At planting"),
            List.of("renovation", "Bringing it back"), List.of("winter", "In winter"),
            List.of("canes", "After picking"), List.of("summer", "In summer"));

    List<String> notes() {
        List<String> notes = new ArrayList<>(one.noted());
        if (one.pastLife()) {
            notes.add("It has stood for a productive life of its kind (%s): raise its successor."
                    .formatted(one.life().map(Figure::inWords).orElse("")));
        }
        return notes;
    }

    StageOfLife life() {
        StageOfLife life = one.cut().life();
        return one.pastLife() && life == StageOfLife.BEARING ? StageOfLife.AGEING : life;
    }

    /** What to do, as a sentence. */
    String todo() {
        if (one.cut().life() == StageOfLife.PLANTING_YEAR) {
            return "Its first winter: only the cut at planting is due.";
        }
        return Words.capital(one.bush().isEmpty() ? one.toDo() : CutWords.taken(one.cut(), one.form().counted())) + ".";
    }

    /** The work of a time of year in words. */
    List<Step> steps(String time) {
        StageOfLife life = one.cut().life();
        boolean atPlanting = life == StageOfLife.PLANTING_YEAR;
        boolean back = life == StageOfLife.NEGLECTED || one.toLeave() == 0;
        if (time.equals("planting") != atPlanting || (time.equals("renovation") && !back)) { return List.of(); }
        return one.form().steps(one.school(), time, life);
    }

    /** The outlooks by the name of the habit; none without a count. */
    Map<String, Outlook> outlooks() {
        return one.bush().isEmpty() ? Map.of() : futures.of(one);
    }

    /** All but its title. */
    void print(Out out, boolean withOutlook) {
        Cut cut = one.cut();
        out.line(" (" + life().words() + ", way: " + one.school().id() + ")");
        out.paragraph(2, todo());
        if (one.bush().isPresent() && cut.before().total() > 0) {
            CutWords.bars(cut).forEach(out::line);
            out.line("  ages; | stays, x goes");
            CutWords.remarks(cut).forEach(remark -> out.paragraph(2, remark));
        }
        notes().forEach(note -> out.paragraph(2, note));
        for (Pruning.WoodLook look : one.pruning().looks()) {
            out.hanging("  " + Words.capital(look.of()) + " wood: ", 4, look.words() + look.seen().beside());
        }
        for (List<String> time : TIMES) {
            List<Step> steps = steps(time.get(0));
            if (!steps.isEmpty()) {
                out.line("  " + time.get(1) + ":");
                steps.forEach(step -> out.hanging("  - ", 4, step.inWords()));
            }
        }
        minutes.ifPresent(all -> out.line("  Time: " + TaskWords.minutes(all)));
        List<String> renovation = cut.staged().map(part -> part.renovation().sources()).orElse(List.of());
        out.paragraph(2, Stream.concat(one.school().teaching().sources().stream(), renovation.stream()).distinct()
                .collect(Collectors.joining(", ", "Sources: ", ".")));
        if (withOutlook) { printOutlooks(out); }
        out.line();
    }

    private void printOutlooks(Out out) {
        if (one.bush().isEmpty() || futures.newShoots().isEmpty()) {
            out.paragraph(2, one.bush().isEmpty() ? "No outlook without a count."
                    : "No outlook: its branches stay for years, and only side shoots go.");
            return;
        }
        outlooks().forEach((name, outlook) -> {
            out.line("  " + name + ", stems left by age; how many bear well:");
            print(out, outlook, Yield.read(one.crop()).flatMap(Yield::picking));
        });
        futures.notes(one.crop()).forEach(note -> out.paragraph(2, note));
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
