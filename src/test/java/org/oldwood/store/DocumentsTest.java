package org.oldwood.store;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DocumentsTest {
    private final Documents documents = Documents.bundled();

    @Test
    void opens_a_document_of_a_folder() {
        assertThat(documents.fields("crops/blackcurrant/crop.json").text("name")).isEqualTo("blackcurrant");
    }

    @ParameterizedTest
    @ValueSource(strings = {"crops/no-such-crop/crop.json", "rules/index.json#", "rules/index.json?x",
            "rules/%69ndex.json", "crops/no such crop/crop.json", "../oldwood/rules/index.json"})
    void has_nothing_under_other_names(String name) { assertThat(documents.read(name)).isEmpty(); }
}
