package org.oldwood.facts.record;

import java.util.List;
import org.oldwood.facts.Advisors;
import org.oldwood.facts.cuttings.CuttingsAdvisor;
import org.oldwood.facts.feeding.FeedAdvisor;
import org.oldwood.facts.feeding.MulchAdvisor;
import org.oldwood.facts.feeding.SharedBooks;
import org.oldwood.facts.feeding.SoilAdvisor;
import org.oldwood.facts.pruning.CropAdvisor;
import org.oldwood.facts.pruning.PruningAdvisor;
import org.oldwood.facts.pruning.PruningCases;
import org.oldwood.facts.water.WaterFacts;

/** All that the crafts of this program tell the rules. */
public final class AllCrafts {
    private AllCrafts() {}

    /** Every craft's facts and amounts, made anew for one plan. A new craft adds itself here. */
    public static Advisors advisors() {
        PruningCases cases = new PruningCases();
        SharedBooks books = new SharedBooks();
        return new Advisors(List.of(
                new RecordFacts(),
                new FrostFacts(),
                new PruningAdvisor(cases),
                new CropAdvisor(cases),
                new CuttingsAdvisor(cases),
                new WaterFacts(),
                new FeedAdvisor(books),
                new SoilAdvisor(books),
                new MulchAdvisor(books)));
    }
}
