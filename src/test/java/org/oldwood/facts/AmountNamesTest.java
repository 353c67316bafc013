package org.oldwood.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.oldwood.facts.record.AllCrafts;
import org.oldwood.plan.Cautions;
import org.oldwood.plan.Rule;
import org.oldwood.plan.Rules;
import org.oldwood.plan.TestGarden;

/** What a bundled rule names as its amount some craft works out, and no craft works for nobody. */
class AmountNamesTest {
    @Test
    void every_amount_that_a_rule_names_is_worked_out_and_every_one_worked_out_is_named() {
        Set<String> named = new TreeSet<>();
        Rules.read(TestGarden.DOCUMENTS).all().forEach(rule -> rule.amount().ifPresent(named::add));

        assertThat(named).isNotEmpty().isEqualTo(new AllCrafts().amountNames());
    }

    @Test
    void every_caution_that_a_rule_names_is_known() {
        Cautions cautions = Cautions.read(TestGarden.DOCUMENTS);
        for (Rule rule : Rules.read(TestGarden.DOCUMENTS).all()) {
            assertThat(rule.cautions()).as(rule.id()).allSatisfy(id -> assertThat(cautions.find(id)).isPresent());
        }
    }
}
