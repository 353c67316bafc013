package org.oldwood;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Month;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.crop.Crops;
import org.oldwood.crop.RecordReader;
import org.oldwood.crop.Seen;
import org.oldwood.crop.Source;
import org.oldwood.crop.Sources;
import org.oldwood.store.Documents;
import org.oldwood.store.Json;
import org.oldwood.store.JsonReader;
import org.oldwood.store.Problems;

/** Laws over the bundled data: it can be read, every source key resolves, and none is orphaned. */
class DataTest {
    private static final Path DATA = Path.of("src/main/resources/org/oldwood");
    private static final String MONTHS = "(January|February|March|April|May|June|July|August|September|October|November|December)";
    private static final Pattern MONTH = Pattern.compile("\\b" + MONTHS + "\\b");
    private static final Pattern BOTH = Pattern.compile(MONTHS + " \\((?:mid-)?" + MONTHS + " in the south\\)");

    @Test
    void every_document_is_json_without_duplicate_keys() throws IOException {
        Problems problems = new Problems();
        for (Path file : documents()) {
            json(file, problems);
        }
        assertThat(problems.list()).isEmpty();
    }

    @Test
    void every_source_key_resolves() throws IOException {
        Set<String> unknown = new TreeSet<>(usedKeys());
        unknown.removeAll(knownKeys());
        assertThat(unknown).isEmpty();
    }

    @Test
    void no_source_is_orphaned() throws IOException {
        Set<String> orphans = new TreeSet<>(knownKeys());
        orphans.removeAll(usedKeys());
        orphans.removeAll(Set.of("common-practice", "memory", "oldwood"));
        assertThat(orphans).isEmpty();
    }

    /** Texts tell how these were seen, and need no other source for it. */
    @Test
    void the_sources_that_were_not_read_stand_together() {
        Set<String> there = Documents.bundled().fields("sources/not-read.json").objects("sources").stream()
                .map(fields -> RecordReader.read(fields, Source.class).key())
                .collect(Collectors.toCollection(TreeSet::new));

        assertThat(there).isNotEmpty().isEqualTo(notRead());
    }

    private static Set<String> notRead() {
        return Sources.read(Documents.bundled()).all().stream().filter(source -> source.seen() != Seen.READ)
                .map(Source::key).collect(Collectors.toCollection(TreeSet::new));
    }

    /** A figure that only stood in a quotation was quoted, whatever else is said of it. */
    @Test
    void what_is_marked_read_has_a_source_that_was_read() throws IOException {
        Set<String> claims = new TreeSet<>();
        for (Path file : documents()) {
            if (!file.startsWith(DATA.resolve("sources"))) {
                claims(json(file, new Problems()), file.toString(), notRead(), claims);
            }
        }

        assertThat(claims).isEmpty();
    }

    private static void claims(Json value, String where, Set<String> notRead, Set<String> found) {
        if (value instanceof Json.Obj object) {
            Json seen = object.members().get("seen");
            Set<String> keys = new TreeSet<>();
            if (seen instanceof Json.Text text && text.value().equals("read")
                    && object.members().containsKey("source")) {
                gather(new Json.Obj(object.place(), Map.of("source", object.members().get("source"))), keys);
                if (notRead.containsAll(keys)) { found.add(where + keys); }
            }
            object.members().forEach((key, member) -> claims(member, where + "/" + key, notRead, found));
        } else if (value instanceof Json.Arr array) {
            array.items().forEach(item -> claims(item, where, notRead, found));
        }
    }

    /** Half a year apart; what is said of a month would be half a year wrong in the other half of the earth. */
    @Test
    void every_month_that_is_told_to_a_person_names_that_of_the_south() throws IOException {
        Set<String> texts = new TreeSet<>();
        for (Path file : documents()) {
            if (!file.startsWith(DATA.resolve("sources"))) { told(json(file, new Problems()), texts); }
        }

        assertThat(texts).filteredOn(text -> text.contains(" in the south)")).hasSizeGreaterThan(5).allSatisfy(text -> {
            Matcher both = BOTH.matcher(text);
            while (both.find()) {
                assertThat(Month.valueOf(both.group(1).toUpperCase(Locale.ROOT)).plus(6))
                        .isEqualTo(Month.valueOf(both.group(2).toUpperCase(Locale.ROOT)));
            }
        });
        assertThat(texts).noneMatch(text -> MONTH.matcher(BOTH.matcher(text).replaceAll("")).find());
    }

    private static void told(Json value, Set<String> texts) {
        if (value instanceof Json.Text text) {
            texts.add(text.value());
        } else if (value instanceof Json.Arr array) {
            array.items().forEach(item -> told(item, texts));
        } else if (value instanceof Json.Obj object) {
            object.members().forEach((key, member) -> {
                if (!Set.of("note", "zones").contains(key)) { told(member, texts); }
            });
        }
    }

    @Test
    void a_source_of_the_garden_that_was_not_read_is_known_too(@TempDir Path garden) throws IOException {
        Files.createDirectories(garden.resolve("sources"));
        Files.writeString(garden.resolve("sources/ours.json"),
                "{\"sources\": [{\"key\": \"ours\", \"title\": \"Ours\", \"seen\": \"memory\"}]}");

        Sources known = Sources.read(Documents.with(garden, new Problems()));
        assertThat(known.find("ours").orElseThrow().seen()).isEqualTo(Seen.MEMORY);
        assertThat(known.all()).containsAll(Sources.read(Documents.bundled()).all());
    }

    @Test
    void every_crop_can_be_read() {
        Documents documents = Documents.bundled();
        Crops crops = new Crops(documents);
        crops.ids().forEach(crops::get);
        assertThat(documents.problems().list()).isEmpty();
        assertThat(crops.ids()).contains("blackcurrant", "blueberry");
    }

    private static Set<String> knownKeys() {
        Documents documents = Documents.bundled();
        Set<String> keys = new TreeSet<>();
        for (Source source : Sources.read(documents).all()) {
            keys.add(source.key());
        }
        assertThat(documents.problems().list()).isEmpty();
        return keys;
    }

    private static Set<String> usedKeys() throws IOException {
        Set<String> keys = new TreeSet<>();
        for (Path file : documents()) {
            if (!file.startsWith(DATA.resolve("sources"))) { gather(json(file, new Problems()), keys); }
        }
        keys.addAll(observedKeys());
        return keys;
    }

    /** Sources that dates were only checked against, named in the table of observed stages. */
    private static Set<String> observedKeys() throws IOException {
        Set<String> keys = new TreeSet<>();
        Path table = Path.of("src/test/resources/reference/observed-stages.csv");
        for (String line : Files.readAllLines(table)) {
            String[] cells = line.split(";", -1);
            if (!line.startsWith("#") && cells.length > 6 && !cells[6].equals("source")) { keys.add(cells[6]); }
        }
        return keys;
    }

    private static void gather(Json value, Set<String> keys) {
        if (value instanceof Json.Obj object) {
            object.members().forEach((key, member) -> {
                if (key.equals("source")) { texts(member, keys); }
                gather(member, keys);
            });
        } else if (value instanceof Json.Arr array) { array.items().forEach(item -> gather(item, keys)); }
    }

    private static void texts(Json value, Set<String> keys) {
        if (value instanceof Json.Text text) {
            keys.add(text.value());
        } else if (value instanceof Json.Arr array) { array.items().forEach(item -> texts(item, keys)); }
    }

    private static List<Path> documents() throws IOException {
        try (Stream<Path> files = Files.walk(DATA)) {
            return files.filter(path -> path.toString().endsWith(".json")).sorted().toList();
        }
    }

    private static Json json(Path file, Problems problems) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return JsonReader.read(in, DATA.relativize(file).toString(), problems)
                    .orElseThrow(() -> new AssertionError(problems.list().toString()));
        }
    }
}
