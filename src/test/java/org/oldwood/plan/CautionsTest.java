package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.oldwood.crop.Crop;
import org.oldwood.garden.Site;

/** Each caution reaches the work, tools, crops, countries and months for which its source gives it, and no other. */
class CautionsTest {
    private static final Cautions CAUTIONS = Cautions.read(TestGarden.DOCUMENTS);
    private static final List<Rule> RULES = Rules.read(TestGarden.DOCUMENTS).all();
    private static final List<String> GROUPS = List.of("ribes", "rubus", "vaccinium", "lonicera");
    private static final Optional<Window> YEAR = Optional.of(window("2026-01-01", "2026-12-31"));

    /** A row of the table of published sources. */
    record Row(String id, int gravity, Set<String> tasks, Set<String> tags, Set<String> crops, Set<String> countries,
            String months, List<String> says, String source) {
        static Row of(String line) {
            String[] cell = line.split("\\|", -1);
            return new Row(cell[0], Integer.parseInt(cell[1]), words(cell[2]), words(cell[3]), words(cell[4]),
                    words(cell[5]), cell[6], List.of(cell[7].split(" & ")), cell[8]);
        }

        @Override
        public String toString() { return "%s (%s)".formatted(id, source); }

        boolean reaches(Set<String> here) {
            boolean allBut = countries.stream().anyMatch(code -> code.startsWith("-"));
            boolean among = here.stream().anyMatch(code -> countries.contains(allBut ? "-" + code : code));
            return countries.isEmpty() || among != allBut;
        }

        boolean grows(Crop crop) {
            return crops.isEmpty() || crops.contains(crop.group())
                    || crop.isAmong(List.copyOf(crops.stream().filter(name -> !GROUPS.contains(name)).toList()));
        }
    }

    private static Set<String> words(String cell) {
        return cell.isEmpty() ? Set.of() : new TreeSet<>(List.of(cell.split(" ")));
    }

    private static Window window(String first, String last) {
        return new Window(LocalDate.parse(first), LocalDate.parse(last), 0, "");
    }

    private static List<String> table(String name) {
        try (InputStream in = CautionsTest.class.getResourceAsStream("/reference/" + name)) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8).lines()
                    .filter(line -> !line.startsWith("#")).toList();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    static Stream<Row> rows() { return table("cautions.txt").stream().map(Row::of); }

    private static boolean told(String id, Collection<String> work, Collection<String> tags, String crop, String zone,
            Optional<Window> when) {
        double latitude = zone.startsWith("Australia") || zone.startsWith("Pacific") ? -42 : 52;
        return CAUTIONS
                .of(new Cautions.Job(work, tags, List.of(),
                        crop.isEmpty() ? List.of() : List.of(TestGarden.CROPS.get(crop)),
                        zone.isEmpty() ? Optional.empty() : Optional.of(new Site(latitude, 0, 0, zone)), when))
                .stream().anyMatch(caution -> caution.id().equals(id));
    }

    @Test
    void every_caution_stands_in_the_table_with_its_source() {
        assertThat(rows().map(Row::id))
                .containsExactlyElementsOf(CAUTIONS.all().stream().map(Cautions.Caution::id).toList());
        assertThat(rows()).noneMatch(row -> row.source().isBlank() || row.says().isEmpty());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void it_says_what_the_source_says_in_twenty_words_at_most(Row row) {
        Cautions.Caution caution = CAUTIONS.find(row.id()).orElseThrow();

        assertThat(caution.line()).contains(row.says());
        assertThat(caution.line().replace(" (From memory.)", "").split(" ")).hasSizeLessThanOrEqualTo(20);
        assertThat(caution.line().endsWith("(From memory.)"))
                .isEqualTo(row.source().startsWith("memory") || Set.of("dry-day", "silver-leaf").contains(row.id()));
        assertThat(caution.gravity()).isEqualTo(row.gravity());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void it_reaches_the_work_and_the_tools_or_materials_of_its_source_alone(Row row) {
        Set<String> allWork = rows().flatMap(it -> it.tasks().stream()).collect(Collectors.toCollection(TreeSet::new));
        Set<String> allTags = rows().flatMap(it -> it.tags().stream()).collect(Collectors.toCollection(TreeSet::new));

        assertThat(allWork.stream().filter(work -> told(row.id(), List.of(work), row.tags(), "", "", YEAR)))
                .containsExactlyElementsOf(row.tasks());
        assertThat(allTags.stream().filter(tag -> told(row.id(), row.tasks(), List.of(tag), "", "", YEAR)))
                .containsExactlyElementsOf(row.tags().isEmpty() ? allTags : row.tags());
        assertThat(told(row.id(), row.tasks(), List.of(), "", "", YEAR)).isEqualTo(row.tags().isEmpty());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void it_reaches_the_crops_countries_and_months_of_its_source_alone(Row row) {
        for (Crop crop : TestGarden.CROPS.ids().stream().map(TestGarden.CROPS::get).toList()) {
            assertThat(told(row.id(), row.tasks(), row.tags(), crop.id(), "", YEAR)).as(crop.id())
                    .isEqualTo(row.grows(crop));
        }
        List<String> places = List.of("Europe/London:GB", "Europe/Dublin:IE EU", "Europe/Berlin:EU",
                "America/Chicago:US", "America/Toronto:CA", "Australia/Hobart:AU", "Australia/Melbourne:AU AU-VIC",
                "Pacific/Auckland:NZ", "Europe/Oslo:NO", "Europe/Zurich:CH", "Atlantic/Reykjavik:IS", "Asia/Tokyo:JP",
                "America/Santiago:CL", "America/Argentina/Buenos_Aires:AR", "America/Montevideo:UY",
                "Africa/Johannesburg:ZA");
        for (String place : places) {
            String[] zone = place.split(":", -1);
            assertThat(told(row.id(), row.tasks(), row.tags(), "", zone[0], YEAR)).as(zone[0])
                    .isEqualTo(row.reaches(words(zone[1])));
        }
        for (int month = 1; month <= 12; month++) {
            Window window = window("2026-%02d-10".formatted(month), "2026-%02d-20".formatted(month));
            String[] span = (row.months().isEmpty() ? "1-12" : row.months()).split("-", -1);
            int south = (month + 5) % 12 + 1;
            assertThat(told(row.id(), row.tasks(), row.tags(), "", "UTC", Optional.of(window)))
                    .isEqualTo(month >= Integer.parseInt(span[0]) && month <= Integer.parseInt(span[1]));
            if (row.countries().isEmpty()) {
                assertThat(told(row.id(), row.tasks(), row.tags(), "", "Australia/Hobart", Optional.of(window)))
                        .isEqualTo(south >= Integer.parseInt(span[0]) && south <= Integer.parseInt(span[1]));
            }
        }
    }

    /** What nobody looked up for a country is told there in words that send to its own law and offices. */
    @ParameterizedTest
    @CsvSource({"Asia/Tokyo, cuttings, breeders-rights-law", "America/Lima, cuttings, breeders-rights-law",
            "Asia/Tokyo, plant, cables", "Europe/Berlin, pick, poison", "America/Toronto, pick, poison"})
    void no_country_is_left_without_a_general_word(String zone, String work, String caution) {
        assertThat(told(caution, List.of(work), List.of("spade"), "", zone, YEAR)).isTrue();
        assertThat(told(caution, List.of(work), List.of("spade"), "", "America/Chicago", YEAR)).isFalse();
    }

    /** The work and the tools of each rule, as its title and text have them. */
    @Test
    void every_rule_does_the_work_that_its_text_describes() {
        List<String> read = RULES.stream().map(
                rule -> "%s|%s|%s".formatted(String.join(" ", rule.work()), String.join(" ", rule.tools()), rule.id()))
                .sorted().toList();
        List<String> meant = table("work.txt").stream()
                .flatMap(line -> Arrays.stream(line.substring(line.lastIndexOf('|') + 1).split(" "))
                        .map(rule -> line.substring(0, line.lastIndexOf('|') + 1) + rule))
                .sorted().toList();

        assertThat(read).containsExactlyElementsOf(meant);
    }

    /** Public Health England, Green Book chapter 30 (2019): tetanus enters by punctures, thorns among them. */
    @Test
    void every_thorny_job_by_hand_tells_of_tetanus() {
        Crop gooseberry = TestGarden.CROPS.get("gooseberry");
        List<Rule> byHand = RULES.stream()
                .filter(rule -> rule.crops().contains("gooseberry") || rule.crops().stream()
                        .anyMatch(crop -> crop.contains("berry") && TestGarden.CROPS.get(crop).group().equals("rubus")))
                .toList();

        assertThat(byHand).hasSizeGreaterThan(35)
                .allSatisfy(rule -> assertThat(CAUTIONS.of(new Cautions.Job(rule.work(), rule.tools(), List.of(),
                        List.of(gooseberry), Optional.empty(), YEAR))).as(rule.id()).extracting(Cautions.Caution::line)
                        .anyMatch(line -> line.contains("etanus")));
    }

    @Test
    void all_are_told_once_the_gravest_first() {
        List<Cautions.Caution> all = CAUTIONS.of(Cautions.Job.of("lime", Set.of("lime", "dusty"), List.of()));

        assertThat(Cautions.lines(all)).hasSizeGreaterThan(4).doesNotHaveDuplicates().first().asString()
                .contains("15 minutes");
    }

    @ParameterizedTest
    @CsvSource({"2026-11-15, 2027-02-28, false", "2026-11-15, 2027-03-01, true", "2027-08-31, 2027-09-20, true"})
    void a_window_of_which_one_day_is_in_the_months_counts(String from, String to, boolean told) {
        assertThat(told("nesting-birds", List.of("prune"), List.of(), "", "UTC", Optional.of(window(from, to))))
                .isEqualTo(told);
    }
}
