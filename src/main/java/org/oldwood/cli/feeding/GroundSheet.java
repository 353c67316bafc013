package org.oldwood.cli.feeding;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.Out;
import org.oldwood.garden.Bed;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.Site;
import org.oldwood.plan.Cautions;
import org.oldwood.words.Words;

/** What a command works out for one piece of ground, for people and as JSON. */
interface GroundSheet {
    void print(Out out);

    /** The work that comes of it, as far as cautions hang on it; none where there is nothing to do. */
    List<Cautions.Job> jobs();

    Record answer(List<String> cautions);

    record Answer(int format, List<Record> ground) {}

    /** Prints all sheets and then their cautions, each once; or writes them as JSON; returns exit code 0. */
    static int show(GardenCommand command, List<? extends GroundSheet> sheets) {
        Optional<GardenFolder> garden = command.folderIfAny();
        garden.ifPresent(command::stopOnProblems);
        Optional<Site> site = garden.map(folder -> folder.garden().site());
        Cautions cautions = Cautions.read(command.documents());
        Function<GroundSheet, List<Cautions.Caution>> of = sheet -> sheet.jobs().stream()
                .flatMap(job -> cautions.of(job.at(site)).stream()).toList();
        Out out = command.out();
        return command.answer(() -> new Answer(1,
                sheets.stream().map(sheet -> sheet.answer(Cautions.lines(of.apply(sheet)))).toList()), () -> {
                    sheets.forEach(sheet -> sheet.print(out));
                    out.section("Take care",
                            Cautions.lines(sheets.stream().flatMap(sheet -> of.apply(sheet).stream()).toList()));
                });
    }

    /** {@code upper terrace (upper-terrace), 18 m²}. */
    static String heading(Bed bed) {
        String id = bed.name().equals(bed.id()) ? "" : " (" + bed.id() + ")";
        return bed.name() + id + ", " + Words.amount(bed.areaM2()) + " m²";
    }
}
