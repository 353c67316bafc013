package org.oldwood.crop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.cli.command.Cli;
import org.oldwood.store.Documents;

/** What people call crops, in any spelling: the trade's names, and no more than a hint. */
class CropsTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"honeyberry|Did you mean \"haskap\"?",
            "Blue Honeysuckle|Did you mean \"haskap\"?", "black currants|Did you mean \"blackcurrant\"?",
            "cassis|Did you mean \"blackcurrant\"?", "Gooseberries|Did you mean \"gooseberry\"?",
            "raspberry|Which one: summer-raspberry or autumn-raspberry?",
            "blackberries|Which one: trailing-blackberry or semi-erect-blackberry or erect-blackberry?",
            "boysenberry|Did you mean \"trailing-blackberry\"?",
            "currant|Which one: blackcurrant or redcurrant or whitecurrant?",
            "blackcurant|Did you mean \"blackcurrant\"?",
            "Worcesterberries|\"Worcesterberries\" is kept like a gooseberry (common practice): write \"gooseberry\".",
            "rabbiteye|Nothing is known here of \"rabbiteye\": what is told of \"blueberry\" is for northern highbush.",
            "bilberry|Nothing is known here of \"bilberry\": what is told of \"blueberry\" is for northern highbush.",
            "pink currants|\"pink currants\" is kept like a white currant (common practice): write \"whitecurrant\"."})
    void what_people_call_a_crop_is_understood(String word, String hint) {
        assertThat(new Crops(Documents.bundled()).hint(word)).isEqualTo(hint);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"gooseberry|fan|Nearest is \"cordon\"", "redcurrant|bush|Nearest is \"leg\"",
            "blackcurrant|fan|Known here: stool", "gooseberry|cordan|Did you mean \"cordon\"?"})
    void a_form_that_is_not_known_is_answered_with_those_that_are(String crop, String form, String hint) {
        String said = new Crops(Documents.bundled()).get(crop).formHint(form);

        assertThat(said).startsWith(hint);
        assertThat(said.startsWith("Did") || said.contains("Known here: ")).isTrue();
    }

    @Test
    void wherever_a_crop_is_named(@TempDir Path folder) {
        Cli cli = Cli.in(folder);
        String start = cli.run("start", "here", "--at", "52,0,10", "--zone", "UTC", "--name", "G", "--plants",
                "black currant=2, cassis=1 honeyberry=3,gooseberry").err();
        assertThat(start).contains("\"black currant\"", "\"cassis\"", "mean \"haskap\"")
                .doesNotContain("\"gooseberry\"");

        assertThat(cli.run("start", "here", "--at", "52,0,10", "--zone", "UTC", "--name", "G", "--plants",
                "blackcurrant=2 , gooseberry=1", "--planted", "2020").exit()).isZero();
        for (String[] line : new String[][]{{"stages", "blackberry"}, {"water", "--compare", "--crop", "blackberry"},
                {"prune", "--crop", "blackberry"}, {"cuttings", "--crop", "blackberry"},
                {"feed", "--crop", "blackberry"},
                {"note", "planted", "b-9", "--bed", "blackcurrant-bed", "--crop", "blackberry"}}) {
            Cli.Result run = Cli.in(folder.resolve("here")).run(line);
            assertThat(run.err().replaceAll("\\s+", " ")).as(String.join(" ", line))
                    .contains("Which one: trailing-blackberry");
        }
    }
}
