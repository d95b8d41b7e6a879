package simmerpoint.viewer;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** Holds what the parts of the window may know. */
class ViewerArchitectureTest {
    private static final JavaClasses OURS = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("simmerpoint.viewer");

    @Test
    void answersAndDeskKnowNothingThatIsSeen() {
        noClasses()
                .that()
                .resideInAnyPackage("simmerpoint.viewer.live..", "simmerpoint.viewer.document..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("javafx.scene..", "javafx.stage..", "javafx.application..")
                .check(OURS);
    }

    @Test
    void nothingButTheLauncherPrintsOrEndsTheProgram() {
        noClasses()
                .that()
                .doNotHaveSimpleName("Launcher")
                .should(ACCESS_STANDARD_STREAMS)
                .orShould()
                .callMethod(System.class, "exit", int.class)
                .check(OURS);
    }

    @Test
    void noPartKnowsTheWindowAsAWhole() {
        noClasses()
                .that()
                .resideOutsideOfPackage("simmerpoint.viewer.app..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("simmerpoint.viewer.app..")
                .check(OURS);
    }

    @Test
    void noPartKnowsTheCommandLine() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("simmerpoint.command..", "picocli..")
                .check(OURS);
    }
}
