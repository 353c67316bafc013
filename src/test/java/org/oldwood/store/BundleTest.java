package org.oldwood.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BundleTest {
    private final Bundle bundle = new Bundle();

    @Test
    void opens_a_document_of_a_folder() throws IOException {
        try (InputStream in = bundle.open("crops/blackcurrant/crop.json")) {
            assertThat(in).isNotNull();
            assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8)).contains("\"blackcurrant\"");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "crops/no-such-crop/crop.json",
                "rules/index.json#",
                "rules/index.json?x",
                "rules/%69ndex.json",
                "crops/no such crop/crop.json"
            })
    void has_nothing_under_other_names(String name) throws IOException {
        try (InputStream in = bundle.open(name)) {
            assertThat(in).isNull();
        }
    }
}
