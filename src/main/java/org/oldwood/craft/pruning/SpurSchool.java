package org.oldwood.craft.pruning;

import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.store.Fields;

/**
 * Spur pruning of a permanent frame: an open bush on a leg, or a cordon. The branches stay for years; each winter their
 * side shoots are cut to spurs and each summer checked, as the steps of the teaching say. Only branches past their age,
 * or too many, come out.
 *
 * @param branches main branches of a grown plant
 * @param permanent true where the branches are the plant, as the arms of a cordon: none goes but a dead one
 * @param branchLife age at which a branch is replaced; empty where it is never replaced
 * @param limit the most branches that may go in one winter
 * @param buildYears seasons until the frame stands
 * @param staged how a frame with far too many branches is brought back
 */
public record SpurSchool(
        Teaching teaching,
        Figure branches,
        boolean permanent,
        Optional<Figure> branchLife,
        SeasonLimit limit,
        int buildYears,
        Optional<StagedRenovation> staged)
        implements School {

    static SpurSchool read(Fields fields) {
        SpurSchool school = new SpurSchool(
                Teaching.read(fields),
                Figure.read(fields, "branches"),
                fields.flag("permanent", false),
                Figure.optional(fields, "branchLife"),
                SeasonLimit.required(fields),
                fields.count("buildYears", 1, 10),
                fields.object("renovation").map(Renovation::read).flatMap(Renovation::staged));
        fields.done();
        return school;
    }

    @Override
    public Cut winter(Bush bush) {
        return SpurCut.cut(bush, this);
    }

    @Override
    public Stems target(Bush bush) {
        return Stems.ofOpen(0, (int) branches.is());
    }

    @Override
    public int bearing(Stems stems) {
        return stems.from(2);
    }

    @Override
    public int fold() {
        return branchLife.map(age -> (int) age.is()).orElse(2);
    }
}
