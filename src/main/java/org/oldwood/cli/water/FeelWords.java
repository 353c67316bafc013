package org.oldwood.cli.water;

import org.oldwood.cli.command.Out;
import org.oldwood.craft.water.Soil;
import org.oldwood.craft.water.Soils;
import org.oldwood.craft.water.WaterData;
import org.oldwood.facts.water.BedGround;
import org.oldwood.garden.BedState;
import org.oldwood.garden.GardenFolder;
import org.oldwood.store.Documents;

/** Shows how moist soil feels in the hand, class by class. */
public final class FeelWords {
    private static final String SOURCE = "Source: nrcs-feel (oldwood sources nrcs-feel)";

    private FeelWords() {}

    /** For every texture; needs no garden. */
    static int all(Out out, Documents documents) {
        Soils soils = Soils.read(documents);
        how(out, "BED");
        soils.guides().forEach(guide -> print(out, guide));
        out.line();
        out.line(SOURCE);
        return 0;
    }

    /** For the texture of one bed. */
    public static void of(Out out, BedState bed, GardenFolder folder) {
        WaterData data = WaterData.read(folder.crops(), folder.documents());
        BedGround ground = BedGround.of(bed.bed(), data);
        how(out, bed.bed().id());
        print(out, data.soils().guide(ground.soil()));
        out.line();
        ground.remarks().forEach(words -> out.paragraph(0, "Taken for granted: " + words + "."));
        out.line(SOURCE);
    }

    private static void how(Out out, String bed) {
        out.paragraph(0,
                "Take soil from the depth of the roots at three places or more, squeeze it in the hand, and note the class: oldwood note moisture %s --feel moist"
                        .formatted(bed));
    }

    private static void print(Out out, Soils.FeelGuide guide) {
        out.line();
        out.line("On " + guide.soils() + ":");
        for (Soil.FeelClass one : guide.classes()) {
            String mark = one.seen().beside();
            out.hanging("  " + one.word() + " (" + WaterWords.range(one) + "): ", 4, one.text() + mark);
        }
    }
}
