package org.oldwood.craft.cuttings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.oldwood.craft.cuttings.parent.HealthSigns;
import org.oldwood.garden.EntryKind;

/** Laws over the bundled data of every crop. */
class PropagationTest {
    static List<String> crops() { return Crafted.CROPS.ids(); }

    @ParameterizedTest
    @MethodSource("crops")
    void every_crop_reads_and_each_form_has_a_method_a_cut_and_a_yield(String crop) {
        Propagation all = Crafted.propagation(crop);

        assertThat(Crafted.DOCUMENTS.problems().list()).isEmpty();
        for (String form : Crafted.CROPS.get(crop).forms()) {
            assertThat(all.methodFor(form)).as(form).isPresent();
            assertThat(all.plantingOut().cutsFor(form)).as(form).isNotEmpty();
            assertThat(Course.of(Crafted.CROPS.get(crop), form, Optional.empty(), Optional.empty())).as(form)
                    .isPresent();
        }
    }

    @ParameterizedTest
    @MethodSource("crops")
    void a_weight_read_from_a_range_is_that_of_nine_lots_in_ten(String crop) {
        for (Method method : Crafted.propagation(crop).methods()) {
            for (Method.PhaseFigures pair : method.phases().values()) {
                if (pair.weight().note().startsWith("the range of the rate")) {
                    double p = pair.rate().is() / 100;
                    double sd = (pair.rate().high() - pair.rate().low()) / 100 / 2 / 1.645;
                    double weight = p * (1 - p) / (sd * sd) - 1;
                    assertThat(pair.weight().is()).as(method.name()).isBetween(0.85 * weight, 1.15 * weight);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("crops")
    void signs_are_findings_that_the_journal_knows_and_each_has_its_grounds(String crop) {
        List<String> findings = EntryKind.INSPECTED.field("finding").orElseThrow().words();
        Set<String> seen = new HashSet<>();
        for (HealthSigns.Sign sign : Crafted.propagation(crop).health().signs()) {
            assertThat(findings).contains(sign.finding());
            assertThat(sign.sources()).isNotEmpty();
            assertThat(seen.add(sign.finding())).as(sign.finding()).isTrue();
        }
        assertThat(Crafted.propagation(crop).health().local()).hasSizeGreaterThanOrEqualTo(2);
    }

    @Test
    void a_leg_is_disbudded_and_a_stool_keeps_its_buds() {
        Propagation redcurrant = Crafted.propagation("redcurrant");

        assertThat(redcurrant.methodFor("leg").orElseThrow().id()).isEqualTo("disbudded");
        assertThat(redcurrant.methodFor("stool").orElseThrow().id()).isEqualTo("hardwood");
    }

    @Test
    void the_methods_asked_of_the_trade_are_all_there() {
        Set<String> ids = new HashSet<>();
        for (String crop : crops()) {
            Crafted.propagation(crop).methods().forEach(method -> ids.add(method.id()));
        }
        assertThat(ids).containsExactlyInAnyOrder("hardwood", "disbudded", "tip-layer", "layer", "sucker", "root",
                "softwood", "division");
    }
}
