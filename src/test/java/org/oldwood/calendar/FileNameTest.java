package org.oldwood.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.calendar.server.Publish;
import org.oldwood.calendar.server.Session;

/** Whatever people call a garden, its files stay in the folder, on every system. */
class FileNameTest {
    @TempDir
    Path folder;

    /** Any text: 1,000 tries. */
    @Property
    void a_name_is_made_of_letters_digits_and_hyphens_whatever_it_was(@ForAll String name) {
        assertThat(FileName.of(name)).matches("[a-z0-9]+(-[a-z0-9]+)*").hasSizeLessThanOrEqualTo(80);
    }

    @ParameterizedTest
    @ValueSource(strings = {"../../etc/passwd", "/etc/passwd", "C:\\garden", "con", "NUL", "..", ".", "a\u0000b",
            "line\nend", "\u202Ecod.exe", "~", "-rf", "%2e%2e%2f", "$(touch x)", "\uD83E\uDED0"})
    void a_hostile_name_writes_inside_the_folder_alone(String name) throws IOException {
        Path inside = Files.createDirectories(folder.resolve("a/b"));
        Export.Garden garden = new Export.Garden(new UUID(1, 2), name, ZoneId.of("UTC"), inside, Map.of());

        Export.Result result = new Export(garden, Layout.usual(), Plans.TODAY, false)
                .pairs(List.of(Plans.item("cut", "2027-01-10", "2027-02-05")), inside, Export.Split.ALL);

        assertThat(result.files()).hasSize(2).allMatch(file -> inside.equals(file.getParent()));
        try (var all = Files.walk(folder)) {
            assertThat(all.filter(Files::isRegularFile)).hasSize(3).allMatch(file -> inside.equals(file.getParent()))
                    .allMatch(file -> file.getFileName().toString().matches("[a-z0-9.-]{5,100}"));
        }
    }

    @Test
    void a_very_long_name_is_cut() throws IOException {
        Export.Garden garden = new Export.Garden(new UUID(1, 2), "g".repeat(5000), ZoneId.of("UTC"), folder, Map.of());
        Item item = inBed("b".repeat(64));

        Export.Result result = new Export(garden, Layout.usual(), Plans.TODAY, false).pairs(List.of(item), folder,
                Export.Split.BED);

        assertThat(result.files()).allMatch(file -> file.getFileName().toString().length() < 200)
                .allMatch(Files::isRegularFile);
    }

    @Test
    void no_two_beds_share_a_file_and_none_takes_that_of_the_whole_garden() throws IOException {
        List<String> beds = List.of("", "garden", "bed-garden", "bed-bed-garden", "a-b", "a--b", "a---b", "bed");
        Set<String> names = new HashSet<>();
        beds.forEach(bed -> names.add(FileName.ofBed(bed)));

        Export.Result result = Plans.export(folder).pairs(beds.stream().map(FileNameTest::inBed).toList(), folder,
                Export.Split.BED);

        assertThat(names).hasSize(beds.size());
        assertThat(result.files()).hasSize(2 * beds.size()).doesNotHaveDuplicates();
        for (Path file : result.files()) {
            assertThat(Files.readString(file).split("BEGIN:V(EVENT|TODO)")).hasSize(2);
        }
    }

    /** RFC 5545, 3.8.4.7: an adopted UID may hold anything; it must not lead to another place. */
    @ParameterizedTest
    @ValueSource(strings = {"../../other/x", "http://127.0.0.1:9/x", "//elsewhere/x", "a?b#c", "..", "."})
    void an_adopted_uid_is_published_inside_the_collection(String uid) throws IOException {
        Map<String, String> adopted = Map.of(Uids.name("cut", "todo"), uid);
        new CalendarState(Map.of("cut", remembered()), adopted).write(folder.resolve(CalendarState.FILE));
        try (LoopbackServer server = new LoopbackServer()) {
            Publish.Result result = new Publish(Plans.garden(folder), Layout.usual(), Plans.TODAY, false, false)
                    .to(Session.with(java.util.Optional.empty(), false, java.util.Optional.empty(), text -> {
                    }), server.address(), server.address(), List.of(Plans.item("cut", "2027-01-10", "2027-02-05")));

            assertThat(result.refused()).isEmpty();
            assertThat(server.objects.keySet()).hasSize(2).allMatch(path -> path.startsWith(LoopbackServer.COLLECTION))
                    .noneMatch(path -> path.contains(".."));
        }
    }

    private static Remembered remembered() {
        Item item = Plans.item("cut", "2027-01-10", "2027-02-05");
        return new Remembered(item, new Stamp(0, java.time.Instant.EPOCH), Layout.usual().shown(item.days()), "",
                item.days().best(), Outgoing.Event.OWN, false);
    }

    private static Item inBed(String bed) {
        Item item = Plans.item("cut-" + bed, "2027-01-10", "2027-02-05");
        return new Item(item.identity(), "", List.of(), item.words(), bed, item.days(), 0, item.progress());
    }
}
