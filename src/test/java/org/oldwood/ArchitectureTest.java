package org.oldwood;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The house in {@code DEVELOPERS.md} is kept by machine. */
@AnalyzeClasses(packages = "org.oldwood", importOptions = ArchitectureTest.NoTests.class)
class ArchitectureTest {
    /** Leaves out what was compiled beside this class, whatever that folder is called. */
    static final class NoTests implements ImportOption {
        private static final String TESTS = ArchitectureTest.class.getProtectionDomain().getCodeSource().getLocation()
                .getPath();

        @Override
        public boolean includes(Location location) { return !location.contains(TESTS); }
    }

    /** From the ground up: a room uses only what stands before it; crafts stand side by side. */
    private static final List<String> FLOORS = List.of("words", "store", "crop", "season", "garden", "craft", "facts",
            "plan", "calendar", "report", "sheet", "page", "cli");

    @ArchTest
    static final ArchRule a_floor_uses_only_what_stands_below_it = floors();

    @ArchTest
    static final ArchRule crafts_know_no_garden = noClasses().that().resideInAPackage("org.oldwood.craft..").should()
            .dependOnClassesThat().resideInAPackage("org.oldwood.garden..");

    @ArchTest
    static final ArchRule crafts_do_not_know_each_other = slices().matching("org.oldwood.craft.(*)..").should()
            .notDependOnEachOther();

    @ArchTest
    static final ArchRule the_planner_knows_no_craft = noClasses().that().resideInAPackage("org.oldwood.plan..")
            .should().dependOnClassesThat().resideInAnyPackage("org.oldwood.craft..", "org.oldwood.facts.*..");

    @ArchTest
    static final ArchRule no_package_cycles = slices().matching("org.oldwood.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule only_the_command_line_prints = noClasses().that().resideOutsideOfPackage("org.oldwood.cli..")
            .should().accessField(System.class, "out").orShould().accessField(System.class, "err").orShould()
            .callMethod(System.class, "exit", int.class);

    @ArchTest
    static final ArchRule only_the_command_line_knows_what_day_it_is = noClasses().that()
            .resideOutsideOfPackage("org.oldwood.cli..").should().callMethod(LocalDate.class, "now").orShould()
            .callMethod(LocalDateTime.class, "now").orShould().callMethod(ZonedDateTime.class, "now").orShould()
            .callMethod(Instant.class, "now").orShould().callMethod(System.class, "currentTimeMillis").orShould()
            .dependOnClassesThat().areAssignableTo(Clock.class);

    @ArchTest
    static final ArchRule every_class_has_a_room = classes().should()
            .resideInAnyPackage(FLOORS.stream().map(ArchitectureTest::room).toArray(String[]::new));

    @Test
    void no_room_holds_more_than_thirty_files() throws IOException {
        List<String> full = new ArrayList<>();
        try (Stream<Path> rooms = Files.walk(Path.of("src/main/java"))) {
            for (Path room : rooms.filter(Files::isDirectory).toList()) {
                try (Stream<Path> files = Files.list(room)) {
                    long count = files.filter(Files::isRegularFile).count();
                    if (count > 31) { full.add(room + ": " + count); }
                }
            }
        }

        assertThat(full).as("30 files and the package's description").isEmpty();
    }

    private static String room(String floor) { return "org.oldwood." + floor + ".."; }

    private static LayeredArchitecture floors() {
        LayeredArchitecture house = layeredArchitecture().consideringOnlyDependenciesInLayers();
        for (String floor : FLOORS) {
            house = house.layer(floor).definedBy(room(floor));
        }
        for (int i = 0; i < FLOORS.size(); i++) {
            String[] above = FLOORS.subList(i + 1, FLOORS.size()).toArray(String[]::new);
            house = above.length == 0 ? house.whereLayer(FLOORS.get(i)).mayNotBeAccessedByAnyLayer()
                    : house.whereLayer(FLOORS.get(i)).mayOnlyBeAccessedByLayers(above);
        }
        return house;
    }
}
