package org.oldwood.cli.year;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;

class SheetCommandTest {
    private static final Path DEMO = Path.of("demo-data/terrace-school");

    @TempDir
    Path folder;

    @BeforeEach
    void copy() throws IOException {
        for (String file : new String[]{"garden.json", "journal.jsonl"}) {
            Files.copy(DEMO.resolve(file), folder.resolve(file));
        }
    }

    private Cli.Result run(String... more) {
        String[] all = new String[more.length + 3];
        all[0] = "sheet";
        all[1] = "--today";
        all[2] = "2026-11-25";
        System.arraycopy(more, 0, all, 3, more.length);
        return Cli.in(folder).run(all);
    }

    private String page(String name) throws IOException { return Files.readString(folder.resolve(name)); }

    @Test
    void writes_one_page_and_says_where() throws IOException {
        Cli.Result result = run("--full");

        assertThat(result.exit()).isZero();
        assertThat(result.out()).isEmpty();
        assertThat(result.err()).contains("sheet.html");
        assertThat(page("sheet.html"))
                .startsWith("<!DOCTYPE html>").contains("Terrace School", "winter-cut@bc-1@2027", "Six seasons ahead",
                        "Food due this season", "Sources")
                .doesNotContain("<script", "<link", "http://", "url(", "@import");
    }

    @Test
    void same_record_and_day_give_the_same_bytes_under_any_locale_and_zone() throws IOException {
        run("--out", "here.html");
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            run("--out", "there.html");
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }

        assertThat(page("there.html")).isEqualTo(page("here.html"));
    }

    @Test
    void words_of_the_user_stay_words() throws IOException {
        Path file = folder.resolve("garden.json");
        Files.writeString(file, Files.readString(file).replace("\"Terrace School\"",
                "\"</title></style><script>alert(1)</script> \\\"A\\\" & 'B' 🫐\""));

        run();

        assertThat(page("sheet.html")).contains("&lt;/title&gt;&lt;/style&gt;&lt;script&gt;alert(1)&lt;/script&gt;")
                .contains("&amp; 'B' 🫐").doesNotContain("<script");
    }

    @Test
    void a_sheet_of_one_bed_has_that_bed_alone_and_a_file_of_its_own() throws IOException {
        run("--full", "--bed", "acid-bed");

        assertThat(page("sheet-acid-bed.html"))
                .contains("<bdi>acid bed</bdi>", "winter-cut-blueberry@bl-1@2027", "<h4>Soil tests</h4>")
                .doesNotContain("winter-cut@bc-1@2027", "clean-tools@garden");
        assertThat(folder.resolve("sheet.html")).doesNotExist();
    }

    @Test
    void a_sheet_of_one_plant_has_its_tasks_alone() throws IOException {
        run("--plant", "bc-1");

        assertThat(page("sheet-bc-1.html")).contains("winter-cut@bc-1@2027", "Six seasons ahead")
                .doesNotContain("winter-cut@bc-2@2027");
    }

    @Test
    void a_sheet_of_one_month_has_the_jobs_of_that_month_alone() throws IOException {
        run("--month", "2");
        run("--month", "2027-02", "--out", "named.html");

        assertThat(page("sheet-2027-02.html")).isEqualTo(page("named.html"))
                .contains("February 2027", "winter-cut-blueberry@bl-1@2027").doesNotContain("winter-cut@bc-1@2027");
    }

    @Test
    void what_is_not_there_is_refused_with_what_is() {
        assertThat(run("--bed", "acid-bad").exit()).isEqualTo(2);
        assertThat(run("--bed", "acid-bad").err()).contains("no bed \"acid-bad\"", "acid-bed");
        assertThat(run("--plant", "bc-11").err()).contains("no plant \"bc-11\"", "bc-1");
        assertThat(run("--month", "13").err()).contains("2027-02", "\"13\"");
        assertThat(run("--month", "soon").err()).contains("\"soon\"");
    }

    @Test
    void a_folder_that_is_not_there_is_told_of() {
        Cli.Result result = run("--out", "nowhere/sheet.html");

        assertThat(result.exit()).isNotZero();
        assertThat(result.err()).contains("nowhere").doesNotContain("Exception");
    }
}
