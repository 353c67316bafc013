package org.oldwood.facts.record;

import org.oldwood.facts.Advisor;
import org.oldwood.facts.cuttings.CuttingsAdvisor;
import org.oldwood.facts.feeding.FeedAdvisor;
import org.oldwood.facts.feeding.MulchAdvisor;
import org.oldwood.facts.feeding.SoilAdvisor;
import org.oldwood.facts.pruning.CropAdvisor;
import org.oldwood.facts.pruning.PruningAdvisor;
import org.oldwood.facts.water.WaterAdvisor;

/** All that the crafts of this program tell the rules, made anew for one plan. A new craft adds itself here. */
public final class AllCrafts extends Advisor {
    public AllCrafts() {
        learn(new RecordFacts());
        learn(new FrostFacts());
        learn(new PruningAdvisor());
        learn(new CropAdvisor());
        learn(new CuttingsAdvisor());
        learn(new WaterAdvisor());
        learn(new FeedAdvisor());
        learn(new SoilAdvisor());
        learn(new MulchAdvisor());
    }
}
