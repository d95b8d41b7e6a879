package simmerpoint;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ThreadLocalRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import simmerpoint.heat.balance.PotModel;
import simmerpoint.heat.losses.LossModel;

/** Holds the arrows between the packages: each knows only those on its left. */
class ArchitectureTest {
    /** From left to right. Packages of one stage do not know each other, so that each can be read alone. */
    private static final List<List<String>> STAGES = List.of(
            List.of("geometry", "sampling"),
            List.of("input", "units", "uncertainty"),
            List.of("sun", "dish", "pan"),
            List.of("setup"),
            List.of("tracing"),
            List.of("target"),
            List.of("heat"),
            List.of("scenario"),
            List.of("study"),
            List.of("safety", "trial", "workshop"),
            List.of("quantities"),
            List.of("answer"),
            List.of("drawing"),
            List.of("report"),
            List.of("command"));

    private static final JavaClasses OURS = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("simmerpoint");

    @Test
    void classesAreFoundInTheFirstAndTheLastStage() {
        assertTrue(OURS.contain("simmerpoint.geometry.Vec"), "no classes to judge");
        assertTrue(OURS.contain("simmerpoint.command.Main"), "no program to judge");
    }

    @Test
    void everyClassLivesInAPackageOfAStage() {
        classes().should().resideInAnyPackage(patterns(packages())).check(OURS);
    }

    static Stream<String> packages() {
        return STAGES.stream().flatMap(List::stream);
    }

    @ParameterizedTest
    @MethodSource("packages")
    void knowsOnlyPackagesOnItsLeft(String name) {
        List<String> known = new ArrayList<>(List.of(name));
        STAGES.stream().takeWhile(stage -> !stage.contains(name)).forEach(known::addAll);
        noClasses()
                .that()
                .resideInAPackage(pattern(name))
                .should()
                .dependOnClassesThat(
                        resideInAnyPackage("simmerpoint..").and(not(resideInAnyPackage(patterns(known.stream())))))
                .allowEmptyShould(true)
                .check(OURS);
    }

    /** Heat is worked out in {@code study}; what is right of it reads the values: records, enums and sealed interfaces. */
    @Test
    void nothingRightOfStudySolvesTheHeatBalance() {
        DescribedPredicate<JavaClass> value = describe(
                "values",
                type -> (type.isRecord() || type.isEnum() || type.isInterface())
                        && !type.isAssignableTo(LossModel.class)
                        && !type.isEquivalentTo(PotModel.class));
        noClasses()
                .that()
                .resideInAnyPackage(patterns(Stream.of("answer", "quantities", "drawing", "report", "command")))
                .should()
                .dependOnClassesThat(resideInAnyPackage(pattern("heat")).and(not(value)))
                .check(OURS);
    }

    /** Rooms of one package, too: {@code dish.cut} knows {@code dish}, so that may not know {@code dish.cut}. */
    @Test
    void packagesAreFreeOfCycles() {
        slices().matching("simmerpoint.(**)").should().beFreeOfCycles().check(OURS);
    }

    /** The one sentence for a double click on the jar needs a dialog of the Java machine's own. */
    @Test
    void nothingKnowsTheWindow() {
        noClasses()
                .that()
                .doNotHaveSimpleName("DoubleClick")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("javafx..", "javax.swing..")
                .check(OURS);
    }

    @Test
    void heatGoesFromPropertiesOverLossesToTheBalance() {
        noClasses()
                .that()
                .resideInAPackage("simmerpoint.heat")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("simmerpoint.heat.losses", "simmerpoint.heat.balance")
                .check(OURS);
        noClasses()
                .that()
                .resideInAPackage("simmerpoint.heat.losses")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("simmerpoint.heat.balance")
                .check(OURS);
    }

    @Test
    void onlyCommandPrints() {
        noClasses()
                .that()
                .resideOutsideOfPackage(pattern("command"))
                .should(ACCESS_STANDARD_STREAMS)
                .check(OURS);
    }

    @Test
    void onlyCommandEndsTheProgram() {
        noClasses()
                .that()
                .resideOutsideOfPackage(pattern("command"))
                .should()
                .callMethod(System.class, "exit", int.class)
                .orShould()
                .callMethod(Runtime.class, "exit", int.class)
                .orShould()
                .callMethod(Runtime.class, "halt", int.class)
                .check(OURS);
    }

    @Test
    void onlyCommandKnowsTheCommandLineLibrary() {
        onlyIn("picocli..", "command");
    }

    @Test
    void onlyScenarioAndQuantitiesKnowTheFileFormats() {
        onlyIn("com.fasterxml.jackson..", "quantities");
        onlyIn("org.yaml.snakeyaml..", "scenario.yaml");
    }

    /** Values are set and checked without text; the text comes before and after. */
    @Test
    void roomsOfScenarioKnowOnlyThoseBefore() {
        List<String> rooms = Stream.concat(
                        Stream.of("simmerpoint.scenario"),
                        Stream.of("keys", "yaml", "values", "checks", "doubts", "file", "variants")
                                .map(room -> pattern("scenario." + room)))
                .toList();
        for (int k = 0; k + 1 < rooms.size(); k++) {
            noneKnows(rooms.get(k), rooms.subList(k + 1, rooms.size()).toArray(String[]::new));
        }
        noneKnows(pattern("scenario.checks"), pattern("scenario.yaml"));
    }

    private static void noneKnows(String pattern, String... unknown) {
        noClasses()
                .that()
                .resideInAPackage(pattern)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(unknown)
                .check(OURS);
    }

    /** Such numbers depend on a thread, on the clock or on the order of calls, and not on the index of the ray. */
    @Test
    void noRandomNumbersThatCannotBeRepeated() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .areAssignableTo(Random.class)
                .orShould()
                .callMethod(ThreadLocalRandom.class, "current")
                .orShould()
                .callMethod(Math.class, "random")
                .orShould()
                .callMethod(StrictMath.class, "random")
                .check(OURS);
    }

    /** Only a measured sun, a mesh and measured ribs are read where they are used; all else arrives as values from {@code scenario}. */
    @Test
    void nothingElseLeftOfScenarioKnowsFiles() {
        Stream<String> left = STAGES.stream()
                .takeWhile(stage -> !stage.contains("scenario"))
                .flatMap(List::stream)
                .filter(name -> !List.of("input", "sun", "dish").contains(name));
        noClasses()
                .that()
                .resideInAnyPackage(patterns(left))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("java.nio.file..")
                .orShould()
                .dependOnClassesThat()
                .haveNameMatching("java\\.io\\.(File|RandomAccessFile).*")
                .check(OURS);
    }

    private static void onlyIn(String library, String... allowed) {
        noClasses()
                .that()
                .resideOutsideOfPackages(patterns(Stream.of(allowed)))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library)
                .check(OURS);
    }

    private static String pattern(String name) {
        return "simmerpoint." + name + "..";
    }

    private static String[] patterns(Stream<String> names) {
        return names.map(ArchitectureTest::pattern).toArray(String[]::new);
    }
}
