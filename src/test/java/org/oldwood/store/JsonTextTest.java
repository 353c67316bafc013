package org.oldwood.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class JsonTextTest {
    private enum Mark {
        COMMON_PRACTICE
    }

    private record Bed(String name, double areaM2, Optional<LocalDate> tested, Optional<Double> ph, List<String> crops,
            Mark mark) {}

    @Test
    void writes_components_in_their_order_and_leaves_out_what_is_absent() {
        Bed bed = new Bed("Fence", 4, Optional.of(LocalDate.of(2026, 11, 20)), Optional.empty(), List.of("a"),
                Mark.COMMON_PRACTICE);

        assertThat(JsonText.line(bed)).isEqualTo(
                "{\"name\":\"Fence\",\"areaM2\":4,\"tested\":\"2026-11-20\",\"crops\":[\"a\"],\"mark\":\"common-practice\"}");
    }

    @Test
    void indents_by_two_spaces() {
        assertThat(JsonText.indented(Map.of("ph", List.of(6.5, 7)), text -> text))
                .isEqualTo("{\n  \"ph\": [\n    6.5,\n    7\n  ]\n}");
    }

    @Test
    void takes_a_value_that_was_read_as_it_is_written() throws IOException {
        Json read = JsonReader
                .read(new ByteArrayInputStream("{\"a\": 1.50}".getBytes(StandardCharsets.UTF_8)), "it", new Problems())
                .orElseThrow();

        assertThat(JsonText.line(Map.of("read", read))).isEqualTo("{\"read\":{\"a\":1.50}}");
    }
}
