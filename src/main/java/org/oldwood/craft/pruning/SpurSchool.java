package org.oldwood.craft.pruning;

import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Key;
import org.oldwood.crop.Stems;

/**
 * Spur pruning of a permanent frame: an open bush on a leg, or a cordon. The branches stay for years; each winter their
 * side shoots are cut to spurs and each summer checked, as the steps of the teaching say. Only branches past their age,
 * or too many, come out.
 *
 * @param permanent true where the branches are the plant, as the arms of a cordon: none goes but a dead one
 * @param branchLife age at which a branch is replaced; empty where it is never replaced
 * @param buildYears seasons until the frame stands
 */
public record SpurSchool(@Key(Key.HERE) Teaching teaching, Figure branches, boolean permanent,
        Optional<Figure> branchLife, SeasonLimit limit, @Key(least = 1, most = 10) int buildYears,
        Optional<Renovation> renovation) implements School {

    @Override
    public Cut winter(Bush bush) { return SpurCut.cut(bush, this); }

    @Override
    public Optional<StagedRenovation> staged() { return renovation.flatMap(Renovation::staged); }

    @Override
    public Stems target(Bush bush) { return Stems.ofOpen(0, (int) branches.is()); }

    @Override
    public int bearing(Stems stems) { return stems.from(2); }

    @Override
    public int fold() { return branchLife.map(age -> (int) age.is()).orElse(2); }
}
