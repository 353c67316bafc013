package org.oldwood.facts.feeding;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.facts.OwnRules;
import org.oldwood.store.Documents;
import org.oldwood.store.Problems;

class TogetherTest {
    @TempDir
    private Path folder;

    @Test
    void says_what_a_material_asks_for_and_marks_what_was_not_read() {
        new OwnRules(folder).document("keep-apart.json",
                "{'apart':[],'together':[{'with':'wood','reason':'Give nitrogen.','seen':'read'},"
                        + "{'with':'wood','reason':'Wet it.','seen':'memory'},"
                        + "{'with':'ash','reason':'Sift it.','seen':'read'}]}");
        List<Together> all = Together.read(Documents.with(folder, new Problems()));

        assertThat(Together.about(all, Set.of("wood", "coarse"))).containsExactly("Give nitrogen.",
                "Wet it. (from memory)");
        assertThat(Together.about(all, Set.of("coarse"))).isEmpty();
    }
}
