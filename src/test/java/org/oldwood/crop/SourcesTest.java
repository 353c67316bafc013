package org.oldwood.crop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.oldwood.store.Documents;
import org.oldwood.store.Json;

/** A publication that a figure rests on can be found again, and stands under one key. */
class SourcesTest {
    private static final Documents DATA = Documents.bundled();

    /** They are no publications. */
    private static final Set<String> NOBODY = Set.of("oldwood", "memory", "common-practice");

    /** An author who is only a kind: {@code A Dutch retail page}. */
    private static final String KIND = "(An? |Two |Popular |Field study|Study|Abstract|Nursery text|Unnamed|Gardening page|Garden forum|News"
            + " page).*|.*\\b(retail|suppliers?|pages?|firm's)\\b.*";

    private static Map<String, Map<String, String>> sources() {
        return DATA.all("sources").stream().flatMap(file -> file.objects("sources").stream())
                .collect(Collectors.toMap(one -> one.text("key"),
                        one -> Stream.of("by", "title", "year", "address", "grade", "note")
                                .collect(Collectors.toMap(name -> name, name -> one.text(name, ""))),
                        (one, other) -> one, TreeMap::new));
    }

    @Test
    void a_publication_stands_under_one_key() {
        Map<String, List<String>> keys = new TreeMap<>();
        sources().forEach((key, told) -> keys
                .computeIfAbsent((told.get("by") + ": " + told.get("title")).toLowerCase(java.util.Locale.ROOT),
                        each -> new ArrayList<>())
                .add(key));

        assertThat(keys.values()).allSatisfy(same -> assertThat(same).hasSize(1));
    }

    /** A study without its author's name is of the first grade only where it has an address. */
    @Test
    void few_authors_are_without_a_name() {
        Map<String, String> unnamed = new TreeMap<>();
        sources().forEach((key, told) -> {
            if (!NOBODY.contains(key) && told.getOrDefault("by", "").matches(KIND)) {
                unnamed.put(key, told.getOrDefault("grade", ""));
            }
        });

        assertThat(unnamed).hasSizeLessThan(25);
        assertThat(unnamed.entrySet().stream().filter(each -> each.getValue().equals("A")))
                .allSatisfy(each -> assertThat(sources().get(each.getKey()).get("address")).isNotBlank());
    }

    /** It was looked for, and {@code sources KEY} says so. */
    @Test
    void a_publication_without_address_and_year_says_that_it_was_not_found_again() {
        assertThat(sources().entrySet().stream()
                .filter(each -> !NOBODY.contains(each.getKey())
                        && (each.getValue().get("address") + each.getValue().get("year")).isEmpty()))
                .hasSizeLessThan(25)
                .allSatisfy(each -> assertThat(each.getValue().get("note")).contains("not found again"));
    }

    @Test
    void a_figure_marked_read_rests_on_a_source_with_an_address_or_a_year() throws IOException {
        Map<String, Map<String, String>> sources = sources();
        List<String> lost = new ArrayList<>();
        Path data = Path.of("src/main/resources/org/oldwood");
        try (Stream<Path> files = Files.walk(data)) {
            for (String name : files.map(path -> data.relativize(path).toString())
                    .filter(name -> name.endsWith(".json") && !name.startsWith("sources/")).toList()) {
                DATA.read(name).ifPresent(json -> walk(name, json, sources, lost));
            }
        }

        assertThat(lost).isEmpty();
    }

    private static void walk(String place, Json value, Map<String, Map<String, String>> sources, List<String> lost) {
        if (value instanceof Json.Arr list) {
            list.items().forEach(item -> walk(place, item, sources, lost));
        } else if (value instanceof Json.Obj object) {
            List<String> keys = texts(object.members().get("source"));
            if (texts(object.members().get("seen")).equals(List.of(Seen.READ.key())) && !keys.isEmpty() && keys.stream()
                    .allMatch(key -> told(sources, key, "address").isEmpty() && told(sources, key, "year").isEmpty())) {
                lost.add("%s: %s".formatted(object.place(), keys));
            }
            object.members().forEach((name, inner) -> walk(place, inner, sources, lost));
        }
    }

    private static String told(Map<String, Map<String, String>> sources, String key, String what) {
        return sources.getOrDefault(key, Map.of()).getOrDefault(what, "");
    }

    private static List<String> texts(Json value) {
        if (value instanceof Json.Text text) { return List.of(text.value()); }
        return value instanceof Json.Arr list ? list.items().stream().flatMap(item -> texts(item).stream()).toList()
                : List.of();
    }
}
