package org.oldwood.craft.mulching;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.store.Documents;
import org.oldwood.store.Problem;
import org.oldwood.store.Problems;

/** What is read of mulching.json and of materials, bundled and of one's own, and what is said of them. */
class MulchDataTest {
    private static final String FIGURE = "{'is': %s, 'unit': '%s', 'source': 'oldwood', 'seen': 'assumed'}";
    private static final String MINE = "{'format': 1, 'kind': 'materials', 'mulches': [{'id': 'mine', 'name': 'mine',"
            + " 'tags': [], 'depth': " + FIGURE.formatted(5, "cm") + ", 'density': " + FIGURE.formatted(100, "kg/m3")
            + ", 'layFactor': " + FIGURE.formatted(1, "1") + ", 'decayCmPerYear': " + FIGURE.formatted(0, "cm/year")
            + ", 'bale': {'kg': " + FIGURE.formatted(20, "kg") + ", 'volume': " + FIGURE.formatted(0.4, "m3")
            + ", 'flakes': " + FIGURE.formatted(10, "flakes") + " SLIP-BALE}, 'poison': {'percent': "
            + FIGURE.formatted(2, "%") + ", 'mgPerKg': " + FIGURE.formatted(20, "mg/kg")
            + " SLIP-POISON} SLIP-MULCH}], 'underlays': [{'id': 'felt', 'name': 'felt', 'tags': [], 'layers': "
            + FIGURE.formatted(1, "sheets") + ", 'sheetCm': {'width': 100, 'height': 100}, 'overlap': "
            + FIGURE.formatted(0, "cm") + " SLIP-UNDERLAY}]}";

    @TempDir
    Path folder;

    private final Problems problems = new Problems();

    private MulchTables mine(String slip) throws IOException {
        Path file = folder.resolve("materials/mine.json");
        Files.createDirectories(file.getParent());
        Files.writeString(file, MINE.replace(slip, ", 'slip': 1").replaceAll("SLIP-[A-Z]+", "").replace('\'', '"'));
        return MulchTables.read(Documents.with(folder, problems));
    }

    private static MulchPlan plan(Mulch mulch, double now, double wanted) {
        return MulchPlan.of(mulch, new MulchPlan.Asked(4, 0, 0, "", now, wanted));
    }

    @Test
    void the_bundled_figures_are_read() {
        MulchTables tables = MulchTables.read(Documents.bundled());

        assertThat(tables.collarGap("vaccinium").is()).isEqualTo(15);
        assertThat(tables.collarGap("rubus").is()).isEqualTo(10);
        assertThat(tables.collarGap("lonicera")).isEqualTo(tables.collarGap("otherwise"));
        assertThat(tables.figure("laidUntil").is()).isEqualTo(60);
        assertThat(tables.mulch(tables.usual("mulch"))).isPresent();
        assertThat(tables.underlay(tables.usual("underlay")).orElseThrow().sheetCm().width()).isEqualTo(60);
        assertThat(tables.figure("bag").is()).isEqualTo(50);
        assertThat(tables.mulch("straw").orElseThrow().notRead()).containsExactly("rots 10 cm/year (computed)");
        assertThat(tables.mulch("composted-bark").orElseThrow().notRead())
                .containsExactly("weighs 240 kg/m³ (our assumption)", "rots 2.5 cm/year (our assumption)");
        assertThat(tables.mulch("sawdust").orElseThrow().notRead()).isEmpty();
        assertThatThrownBy(() -> tables.usual("felt")).hasMessageContaining("no usual felt");
        assertThatThrownBy(() -> tables.figure("felt")).hasMessageContaining("no figure felt");
    }

    @Test
    void a_material_of_ones_own_is_read_whole() throws IOException {
        MulchTables tables = mine("nothing");
        Mulch mulch = tables.mulch("mine").orElseThrow();

        assertThat(problems.list()).isEmpty();
        assertThat(mulch.bale().orElseThrow().flakeKg(20)).isEqualTo(2);
        assertThat(mulch.poison().orElseThrow().gramsForSigns(10, 2)).isCloseTo(10, within(1e-9));
        assertThat(tables.underlay("felt").orElseThrow().sheetsPerM2()).isEqualTo(1);
        assertThat(new MulchLayer(mulch, 5, LocalDate.of(2026, 4, 1)).reaches(1)).isEmpty();
        assertThat(plan(mulch, 0, 5).lines().get(1)).isEqualTo("5 cm wanted − 0 cm there now = 5 cm");
        assertThat(tables.remarks(plan(mulch, 0, 30))).hasSize(2);
        assertThat(tables.remarks(plan(mulch, 0, 30.1))).hasSize(3).last().asString().contains("two goes");
    }

    @ParameterizedTest
    @ValueSource(strings = {"SLIP-MULCH", "SLIP-BALE", "SLIP-POISON", "SLIP-UNDERLAY"})
    void a_slip_of_the_pen_is_told(String where) throws IOException {
        mine(where);

        assertThat(problems.list()).extracting(Problem::name).containsOnly("unknown-key");
    }

    /**
     * The inquiry into cocoa mulch: mild signs from 20 mg of theobromine a kilogram, of which the shells hold to 2.98
     * %.
     */
    @Test
    void what_a_layer_takes_and_harms_is_told() {
        MulchTables tables = MulchTables.read(Documents.bundled());
        Mulch chips = tables.mulch("wood-chips").orElseThrow();

        assertThat(tables.remarks(plan(chips, 0, 5))).singleElement().asString().contains("takes nitrogen");
        assertThat(tables.remarks(plan(chips, 5, 5))).isEmpty();
        assertThat(tables.remarks(plan(tables.mulch("composted-bark").orElseThrow(), 0, 5))).isEmpty();
        assertThat(tables.remarks(plan(tables.mulch("cocoa-shell").orElseThrow(), 0, 5)))
                .containsExactly("Not where dogs go: one of 10 kg may fall ill from 7 g.");
        assertThat(plan(tables.mulch("straw").orElseThrow(), 0, 5).lines().get(1))
                .endsWith("laid 10 cm deep because it settles");
    }
}
