package org.oldwood.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MembersTest {
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 3, 8, 9, 40})
    void small_or_large_they_are_the_same_members_in_the_same_order(int number) {
        Map<String, Json> table = new LinkedHashMap<>();
        for (int i = number; i > 0; i--) {
            table.put("key" + i, new Json.Bool(Place.of("file", i), true));
        }

        Map<String, Json> members = Members.of(table);

        assertThat(members).isEqualTo(table).hasSameHashCodeAs(table).hasSize(number);
        assertThat(members.keySet()).containsExactlyElementsOf(table.keySet());
        assertThat(members.get("key0")).isNull();
        assertThat(members.containsKey("key1")).isEqualTo(number > 0);
    }
}
