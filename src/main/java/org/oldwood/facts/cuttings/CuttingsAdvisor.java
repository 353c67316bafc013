package org.oldwood.facts.cuttings;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.oldwood.facts.Advisor;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Fact;
import org.oldwood.facts.Situation;
import org.oldwood.facts.pruning.PruningCases;

/** What the cuttings craft tells the rules of lots and of parents. Built anew for each plan. */
public final class CuttingsAdvisor implements Advisor {
    private final PruningCases cases;
    private @Nullable LotBook book;
    private @Nullable CuttingsFacts facts;
    private Situation.@Nullable World world;

    public CuttingsAdvisor(PruningCases cases) {
        this.cases = cases;
    }

    @Override
    public List<String> facts() {
        return CuttingsFacts.NAMES;
    }

    @Override
    public List<String> amounts() {
        return CuttingsAmounts.NAMES;
    }

    @SuppressWarnings("ReferenceEquality") // one plan has one world; comparing its parts is slow
    private LotBook book(Situation s) {
        LotBook now = book;
        if (now == null || world != s.world()) {
            now = new LotBook(s.world().state(), s.world().crops(), s.world().stages());
            book = now;
            facts = null;
            world = s.world();
        }
        return now;
    }

    private CuttingsFacts facts(Situation s) {
        LotBook now = book(s);
        CuttingsFacts of = facts;
        if (of == null) {
            of = new CuttingsFacts(now);
            facts = of;
        }
        return of;
    }

    @Override
    public Fact fact(String name, Optional<String> of, Situation s) {
        return facts(s).of(name, of, s);
    }

    @Override
    public Optional<Amount> amount(String name, Situation s) {
        return new CuttingsAmounts(book(s), facts(s), cases).of(name, s);
    }
}
