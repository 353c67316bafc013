package org.oldwood.facts.record;

import org.oldwood.facts.Advisor;
import org.oldwood.facts.cuttings.CuttingsAdvisor;
import org.oldwood.facts.feeding.FeedAdvisor;
import org.oldwood.facts.feeding.MulchAdvisor;
import org.oldwood.facts.feeding.SharedBooks;
import org.oldwood.facts.feeding.SoilAdvisor;
import org.oldwood.facts.pruning.CropAdvisor;
import org.oldwood.facts.pruning.PruningAdvisor;
import org.oldwood.facts.pruning.PruningCases;
import org.oldwood.facts.water.WaterFacts;

/** All that the crafts of this program tell the rules, made anew for one plan. A new craft adds itself here. */
public final class AllCrafts extends Advisor {
    private AllCrafts() {
        PruningCases cases = new PruningCases();
        SharedBooks books = new SharedBooks();
        learn(new RecordFacts());
        learn(new FrostFacts());
        learn(new PruningAdvisor(cases));
        learn(new CropAdvisor(cases));
        learn(new CuttingsAdvisor(cases));
        learn(new WaterFacts());
        learn(new FeedAdvisor(books));
        learn(new SoilAdvisor(books));
        learn(new MulchAdvisor(books));
    }

    public static Advisor advisors() { return new AllCrafts(); }
}
