package org.oldwood.cli.feeding;

import java.util.ArrayList;
import java.util.List;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.Out;
import org.oldwood.plan.Cautions;
import org.oldwood.store.Documents;

/** What a command works out for one piece of ground, for people and as JSON. */
interface GroundSheet {
    void print(Out out);

    /** The cautions that go with it; none where there is nothing to do. */
    List<Cautions.Caution> cautions(Cautions all);

    Record answer(Cautions all);

    /** What a command answers as JSON. */
    record Answer(int format, List<Record> ground) {}

    /** Prints all sheets and then their cautions, each once; or writes them as JSON. */
    static void show(GardenCommand command, List<? extends GroundSheet> sheets, Documents documents) {
        Cautions cautions = Cautions.read(documents);
        Out out = command.out();
        if (command.json) {
            out.json(new Answer(1, sheets.stream().map(sheet -> sheet.answer(cautions)).toList()));
            return;
        }
        List<Cautions.Caution> found = new ArrayList<>();
        for (GroundSheet sheet : sheets) {
            sheet.print(out);
            found.addAll(sheet.cautions(cautions));
        }
        section(out, "", "Take care", Cautions.lines(found));
    }

    /** A titled list; nothing where it is empty. */
    static void section(Out out, String indent, String title, List<String> lines) {
        if (!lines.isEmpty()) {
            out.line(indent + title);
            lines.forEach(line -> out.hanging("  - ", 4, line));
        }
    }
}
