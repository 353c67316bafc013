package org.oldwood;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;

/** The house in {@code DEVELOPERS.md} is kept by machine. */
@AnalyzeClasses(packages = "org.oldwood", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    @ArchTest
    static final ArchRule packages_use_only_what_stands_above_them = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .withOptionalLayers(true)
            .layer("store")
            .definedBy("org.oldwood.store..")
            .layer("crop")
            .definedBy("org.oldwood.crop..")
            .layer("garden")
            .definedBy("org.oldwood.garden..")
            .layer("season")
            .definedBy("org.oldwood.season..")
            .layer("pruning")
            .definedBy("org.oldwood.pruning..")
            .layer("cuttings")
            .definedBy("org.oldwood.cuttings..")
            .layer("feeding")
            .definedBy("org.oldwood.feeding..")
            .layer("mulching")
            .definedBy("org.oldwood.mulching..")
            .layer("water")
            .definedBy("org.oldwood.water..")
            .layer("care")
            .definedBy("org.oldwood.care..")
            .layer("calendar")
            .definedBy("org.oldwood.calendar..")
            .layer("report")
            .definedBy("org.oldwood.report..")
            .layer("sheet")
            .definedBy("org.oldwood.sheet..")
            .layer("cli")
            .definedBy("org.oldwood.cli..")
            .whereLayer("cli")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("sheet")
            .mayOnlyBeAccessedByLayers("cli")
            .whereLayer("report")
            .mayOnlyBeAccessedByLayers("sheet", "cli")
            .whereLayer("calendar")
            .mayOnlyBeAccessedByLayers("cli")
            .whereLayer("care")
            .mayOnlyBeAccessedByLayers("calendar", "report", "sheet", "cli")
            .whereLayer("pruning")
            .mayOnlyBeAccessedByLayers("care", "report", "sheet", "cli")
            .whereLayer("cuttings")
            .mayOnlyBeAccessedByLayers("care", "report", "sheet", "cli")
            .whereLayer("feeding")
            .mayOnlyBeAccessedByLayers("care", "report", "sheet", "cli")
            .whereLayer("mulching")
            .mayOnlyBeAccessedByLayers("care", "report", "sheet", "cli")
            .whereLayer("water")
            .mayOnlyBeAccessedByLayers("care", "report", "sheet", "cli")
            .whereLayer("season")
            .mayOnlyBeAccessedByLayers(
                    "pruning", "cuttings", "feeding", "mulching", "water", "care", "calendar", "report", "sheet", "cli")
            .whereLayer("garden")
            .mayOnlyBeAccessedByLayers(
                    "season",
                    "pruning",
                    "cuttings",
                    "feeding",
                    "mulching",
                    "water",
                    "care",
                    "calendar",
                    "report",
                    "sheet",
                    "cli");

    @ArchTest
    static final ArchRule no_package_cycles =
            slices().matching("org.oldwood.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule only_the_command_line_prints = noClasses()
            .that()
            .resideOutsideOfPackage("org.oldwood.cli..")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .callMethod(System.class, "exit", int.class);

    @ArchTest
    static final ArchRule only_the_command_line_knows_what_day_it_is = noClasses()
            .that()
            .resideOutsideOfPackage("org.oldwood.cli..")
            .should()
            .callMethod(LocalDate.class, "now")
            .orShould()
            .callMethod(LocalDateTime.class, "now")
            .orShould()
            .callMethod(ZonedDateTime.class, "now")
            .orShould()
            .callMethod(Instant.class, "now")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(Clock.class);
}
