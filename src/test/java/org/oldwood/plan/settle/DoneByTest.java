package org.oldwood.plan.settle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.oldwood.garden.EntryKind;
import org.oldwood.plan.SmallGarden;

/** What an entry says for and against being the work of a rule. */
class DoneByTest {
    @Test
    void it_may_say_so_or_say_another_or_say_nothing() {
        DoneBy winter = new DoneBy(List.of(EntryKind.PRUNED), Map.of("cut", "winter"), false, 0, Optional.empty());
        SmallGarden garden = SmallGarden.north()
                .note("2020-11-15", "'planted','plant':'b-2','crop':'blackcurrant','bed':'a'")
                .note("2027-02-01", "'pruned','plant':'b-2','cut':'winter'")
                .note("2027-02-02", "'pruned','plant':'b-2','cut':'summer'")
                .note("2027-02-03", "'pruned','plant':'b-2'")
                .note("2027-02-04", "'fed','plant':'b-2','material':'dried-blood','grams':5");

        assertThat(garden.on("2027-12-31").entries().subList(1, 5)).extracting(winter::of)
                .containsExactly(DoneBy.Says.YES, DoneBy.Says.NO, DoneBy.Says.NOTHING, DoneBy.Says.NO);
    }
}
