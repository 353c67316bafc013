package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.crop.Crop;

/** What is looked for, on which crop, and from how many degrees on frost is watched for. */
class LookingTest {
    private static final List<Rule> RULES = Rules.read(TestGarden.DOCUMENTS).all();

    /** Where on the bush, and the sign, as the source named has it; the source stands with the rule. */
    @ParameterizedTest(name = "{0} for {1}")
    @CsvSource(delimiter = '|', value = {"look-sawfly|gooseberry|pale eggs in a row|which-sawfly",
            "look-sawfly|redcurrant|green grubs with black dots|isip-sawfly",
            "look-sawfly|jostaberry|Low in the middle|which-sawfly",
            "look-sawfly-fruit|gooseberry|White powder on tips|rhs-gooseberry-mildew",
            "look-sawfly-second|whitecurrant|under the leaves|macclesfield-sawfly-2017",
            "look-sawfly-third|gooseberry|soil surface|isip-sawfly",
            "look-reversion|blackcurrant|bright magenta|suttons-reversion-2013",
            "look-clearwing|redcurrant|black tunnel in the pith|inra-clearwing",
            "look-dieback|gooseberry|pink pimples|horticulture-week-dieback-2012",
            "look-buds|gooseberry|scales on the ground|bullfinch-textbook",
            "look-raspberry-beetle|summer-raspberry|brown beetle of 4 mm|wsu-raspberry-beetle",
            "look-new-canes|autumn-raspberry|Lowest 40 cm|inra-cane-midge",
            "look-fruited-canes|summer-raspberry|below the soil|rhs-cane-blight",
            "look-mummy-berry|blueberry|5 cm of fresh mulch|wsu-blueberry-ipm",
            "look-scorch|blueberry|plant health service|cornell-scorch",
            "look-blueberry-stems|blueberry|bull's-eye round a leaf scar|connecticut-blueberry",
            "look-gnawing|haskap|mesh|cornell-rodents", "look-aphids|redcurrant|pale yellow aphids|rhs-blister-aphid",
            "look-aphids|blackcurrant|orange-white maggots|rhs-gall-midge",
            "look-rust|blackcurrant|Orange pustules|ohio-blister-rust-2010",
            "look-wing-flies|autumn-raspberry|grubs of 2 to 4 mm|rhs-spotted-wing",
            "look-weevil|blueberry|notches at the leaf edge|wsu-blueberry-ipm",})
    void it_says_where_to_look_and_what_one_sees(String id, String crop, String sign, String source) {
        Rule rule = RULES.stream().filter(it -> it.id().equals(id)).findFirst().orElseThrow();
        Crop grown = TestGarden.CROPS.get(crop);

        assertThat(rule.crops().isEmpty() && rule.groups().isEmpty() || grown.isAmong(rule.crops())
                || rule.groups().contains(grown.group())).isTrue();
        assertThat(rule.text()).contains(sign);
        assertThat(rule.sources()).contains(source);
    }

    /** No look doses a spray, and none is made for pests that lay to nobody's charge. */
    @Test
    void no_spray_is_named_and_the_south_is_told_what_was_not_read_of_it() {
        List<Rule> looks = RULES.stream().filter(rule -> rule.id().startsWith("look-")).toList();

        assertThat(looks).hasSizeGreaterThan(10);
        assertThat(looks).extracting(Rule::text)
                .noneMatch(text -> text.matches("(?i).*(spray|insecticide|fungicide).*"));
        assertThat(looks)
                .filteredOn(rule -> rule.id().startsWith("look-sawfly") && !rule.id().equals("look-sawfly-fruit"))
                .allMatch(rule -> rule.text().contains("(In the south look only where you have seen it.)"));
    }

    /** Ask Extension 304603, Michigan State University (2016): bloom 28 °F, green fruit 30 °F. */
    @Test
    void the_frost_watch_says_from_how_many_degrees_at_which_stage_without_a_climate_too() {
        TestGarden garden = new TestGarden(52, "").note("planted", "2021-11-20",
                "'plant': 'go', 'crop': 'gooseberry', 'bed': 'ribes', 'form': 'stool'");
        Task watch = garden.task("2027-02-25", "frost-watch@ribes.gooseberry.stool@2027");

        assertThat(watch.reasons()).extracting(Reason::words)
                .anyMatch(words -> words.contains("harm begins at -2.2 °C (read) at first flower and full flower")
                        && words.contains("-1.1 °C (read) at petal fall"));
    }
}
