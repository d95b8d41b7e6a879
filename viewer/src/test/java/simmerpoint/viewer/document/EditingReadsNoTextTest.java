package simmerpoint.viewer.document;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.scenario.values.ScenarioValues;

/**
 * Whoever changes the open scenario sets values: no chain of calls leads from there to the YAML parser. Those who listen can
 * reach it by two ways alone, the reader of files and the text of a scenario, and use neither.
 */
class EditingReadsNoTextTest {
    private static final String YAML = "org.yaml.snakeyaml.";
    private static final JavaClasses OURS = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("simmerpoint.viewer", "simmerpoint.scenario");

    @ParameterizedTest
    @ValueSource(strings = {"change", "apply", "reset", "undo", "redo", "beginGesture", "endGesture", "unsaved"})
    void editingParsesNoYaml(String method) {
        assertEquals(Optional.empty(), wayToYaml(method));
    }

    /** The search sees the parser where it is used. */
    @ParameterizedTest
    @ValueSource(strings = {"open", "save", "saveAs"})
    void openingAndSavingDo(String method) {
        assertFalse(wayToYaml(method).isEmpty());
    }

    @Test
    void noPartOfTheWindowReadsOrWritesTheText() {
        noClasses()
                .that()
                .resideInAPackage("simmerpoint.viewer..")
                .and()
                .doNotBelongToAnyOf(OpenedFile.class, ScenarioDocument.class)
                .should()
                .dependOnClassesThat()
                .areAssignableTo(ScenarioReader.class)
                .orShould()
                .callMethod(CheckedScenario.class, "sourceText")
                .orShould()
                .callMethod(ScenarioValues.class, "sourceText")
                .check(OURS);
    }

    /** A method of ours from which the parser is called, if one can be reached from that method of the desk. */
    private static Optional<String> wayToYaml(String method) {
        Deque<JavaCodeUnit> open = new ArrayDeque<>();
        Set<JavaCodeUnit> seen = new HashSet<>();
        OURS.get(ScenarioDocument.class).getMethods().stream()
                .filter(m -> m.getName().equals(method))
                .forEach(open::add);
        assertFalse(open.isEmpty(), method);
        while (!open.isEmpty()) {
            JavaCodeUnit next = open.poll();
            if (seen.add(next)) {
                if (callsYaml(next)) {
                    return Optional.of(next.getFullName());
                }
                called(next).forEach(open::add);
            }
        }
        return Optional.empty();
    }

    private static boolean callsYaml(JavaCodeUnit unit) {
        return unit.getAccessesFromSelf().stream()
                .anyMatch(access -> access.getTargetOwner().getName().startsWith(YAML));
    }

    /** What a method calls or hands on, and whatever overrides that. */
    private static Stream<JavaCodeUnit> called(JavaCodeUnit unit) {
        return Stream.concat(
                        unit.getCallsFromSelf().stream().map(call -> call.getTarget()),
                        unit.getCodeUnitReferencesFromSelf().stream().map(reference -> reference.getTarget()))
                .filter(target -> target.getOwner().getName().startsWith("simmerpoint."))
                .flatMap(target -> Stream.concat(
                                Stream.of(target.getOwner()), target.getOwner().getAllSubclasses().stream())
                        .flatMap(owner -> units(owner, target.getName()).stream()));
    }

    private static List<JavaCodeUnit> units(JavaClass owner, String name) {
        return owner.getCodeUnits().stream()
                .filter(unit -> unit.getName().equals(name))
                .toList();
    }
}
