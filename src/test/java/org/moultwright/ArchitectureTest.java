package org.moultwright;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.PrintStream;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Random;

/** The layers and their limits. Each rule's reason is in the decision record it names. */
@AnalyzeClasses(packages = "org.moultwright", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final String LAYERS = "docs/decisions/0001-layers.md";
    private static final String WHOLE_FILES = "docs/decisions/0158-files-are-replaced-in-one-way.md";
    private static final String REPEATABLE = "docs/decisions/0002-repeatable-arithmetic.md";

    @ArchTest
    static final ArchRule arrowsPointInwards = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .withOptionalLayers(true)
            .layer("boot")
            .definedBy("org.moultwright.boot..")
            .layer("language")
            .definedBy("org.moultwright.language..")
            .layer("file")
            .definedBy("org.moultwright.file..")
            .layer("domain")
            .definedBy("org.moultwright.domain..")
            .layer("compute")
            .definedBy("org.moultwright.compute..")
            .layer("text")
            .definedBy("org.moultwright.text..")
            .layer("task")
            .definedBy("org.moultwright.task..")
            .layer("settings")
            .definedBy("org.moultwright.settings..")
            .layer("workflow")
            .definedBy("org.moultwright.workflow..")
            .layer("store")
            .definedBy("org.moultwright.store..")
            .layer("device")
            .definedBy("org.moultwright.device..")
            .layer("document")
            .definedBy("org.moultwright.document..")
            .layer("exchange")
            .definedBy("org.moultwright.exchange..")
            .layer("ui")
            .definedBy("org.moultwright.ui..")
            .whereLayer("language")
            .mayNotAccessAnyLayer()
            .whereLayer("file")
            .mayNotAccessAnyLayer()
            .whereLayer("domain")
            .mayOnlyAccessLayers("language")
            .whereLayer("task")
            .mayNotAccessAnyLayer()
            .whereLayer("compute")
            .mayOnlyAccessLayers("domain")
            .whereLayer("text")
            .mayOnlyAccessLayers("language", "domain", "compute")
            .whereLayer("settings")
            .mayOnlyAccessLayers("language", "domain", "file")
            .whereLayer("workflow")
            .mayOnlyAccessLayers("language", "domain", "compute", "task")
            .whereLayer("store")
            .mayOnlyAccessLayers("language", "workflow", "domain", "file")
            .whereLayer("device")
            .mayOnlyAccessLayers("language", "workflow", "domain", "file")
            .whereLayer("document")
            .mayOnlyAccessLayers("language", "workflow", "domain", "text", "file")
            .whereLayer("exchange")
            .mayOnlyAccessLayers("language", "workflow", "domain", "text", "file")
            .whereLayer("ui")
            .mayOnlyAccessLayers("language", "workflow", "compute", "domain", "task", "text", "settings")
            .whereLayer("boot")
            .mayNotBeAccessedByAnyLayer()
            .because(LAYERS);

    @ArchTest
    static final ArchRule noPackageCycles =
            slices().matching("org.moultwright.(**)").should().beFreeOfCycles().because(LAYERS);

    @ArchTest
    static final ArchRule toolkitOnlyOnTheDesk = noClasses()
            .that()
            .resideOutsideOfPackages("org.moultwright.ui..", "org.moultwright.boot..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javafx..", "org.controlsfx..", "org.kordamp..")
            .because(LAYERS);

    @ArchTest
    static final ArchRule viewModelsKnowNoView = noClasses()
            .that()
            .haveSimpleNameEndingWith("ViewModel")
            .should()
            .dependOnClassesThat(resideInAPackage("javafx..")
                    .and(not(resideInAPackage("javafx.beans..")).and(not(resideInAPackage("javafx.collections..")))))
            .allowEmptyShould(true)
            .because(LAYERS);

    @ArchTest
    static final ArchRule sqlOnlyInTheStore = onlyIn("store", "java.sql..", "org.jdbi..", "org.h2..", "org.flywaydb..");

    @ArchTest
    static final ArchRule serialOnlyInTheDevice = onlyIn("device", "com.fazecast..");

    @ArchTest
    static final ArchRule pdfOnlyInTheDocument = onlyIn("document", "org.apache.pdfbox..", "com.google.zxing..");

    /** How a file takes the place of another is decided once. */
    @ArchTest
    static final ArchRule filesAreReplacedInOneWay = noClasses()
            .that()
            .resideOutsideOfPackage("org.moultwright.file..")
            .should()
            .dependOnClassesThat()
            .areAssignableTo(StandardCopyOption.class)
            .because(WHOLE_FILES);

    @ArchTest
    static final ArchRule domainKnowsOnlyTheLanguage = classes()
            .that()
            .resideInAPackage("org.moultwright.domain..")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java.lang..",
                    "java.util..",
                    "java.time..",
                    "org.jspecify..",
                    "org.moultwright.language..",
                    "org.moultwright.domain..")
            .because(LAYERS);

    @ArchTest
    static final ArchRule arithmeticReadsNoClockAndNoFile = noClasses()
            .that()
            .resideInAnyPackage("org.moultwright.compute..", "org.moultwright.domain..")
            .should()
            .callMethod(Instant.class, "now")
            .orShould()
            .callMethod(LocalDate.class, "now")
            .orShould()
            .callMethod(ZonedDateTime.class, "now")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(Math.class, "random")
            .orShould()
            .callConstructor(Random.class)
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(Clock.class)
            .orShould()
            .dependOnClassesThat()
            .resideInAnyPackage("java.io..", "java.nio..")
            .because(REPEATABLE);

    @ArchTest
    static final ArchRule onlyTheCommandLinePrints = noClasses()
            .that()
            .resideOutsideOfPackage("org.moultwright.boot..")
            .should()
            .dependOnClassesThat()
            .areAssignableTo(PrintStream.class)
            .because(LAYERS);

    private static ArchRule onlyIn(String layer, String... libraries) {
        return noClasses()
                .that()
                .resideOutsideOfPackages("org.moultwright." + layer + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(libraries)
                .because(LAYERS);
    }
}
