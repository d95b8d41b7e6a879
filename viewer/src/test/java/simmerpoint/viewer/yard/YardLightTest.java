package simmerpoint.viewer.yard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import simmerpoint.viewer.FxThread;

/** The light under the side view: on and off, and a person dragged over it. */
class YardLightTest {
    private Yards yards;

    @BeforeEach
    void open() {
        yards = Yards.open(1300, 700);
    }

    @AfterEach
    void close() {
        yards.close();
    }

    private Node find(String id) {
        return FxThread.get(() -> yards.yard.lookup("#" + id));
    }

    private void light() {
        FxThread.run(() -> ((ToggleButton) yards.yard.lookup("#yard-light")).fire());
        FxThread.until(
                "the light is known", () -> yards.overlay.shownProperty().get().isPresent());
        FxThread.settle();
        FxThread.settle();
    }

    private Point2D person() {
        return FxThread.get(() -> {
            Node person = yards.yard.lookup("#yard-person");
            Bounds at = person.localToScene(person.getLayoutBounds());
            return yards.onScreen(new Point2D(at.getCenterX(), at.getCenterY()));
        });
    }

    @Test
    void itIsOffAtFirstAndComesAndGoes() {
        assertFalse(find("yard-person").isVisible());
        light();
        assertTrue(find("yard-person").isVisible());
        assertTrue(find("yard-light-taken").isVisible());
        FxThread.run(() -> yards.choice.onYardProperty().set(false));
        FxThread.settle();
        assertFalse(find("yard-person").isVisible());
    }

    @Test
    void thePersonFollowsTheMouseAndTheFrameStays() {
        light();
        double perMetre = FxThread.get(yards.yard::pixelsPerMetre);
        Point2D from = person();
        yards.pull(from, -120, 0, 6);
        yards.letGo();
        assertEquals(from.getX() - 120, person().getX(), 1.5);
        assertEquals(perMetre, FxThread.get(yards.yard::pixelsPerMetre), 1e-9);
        assertTrue(yards.choice.personProperty().get().isPresent());
        assertTrue(FxThread.get(() -> yards.yard.lookup("#yard-person").getAccessibleText())
                .contains("from the focus"));
    }

    @Test
    void arrowsMoveIt() {
        light();
        FxThread.run(() -> yards.yard.lookup("#yard-person").requestFocus());
        Robot robot = FxThread.get(Robot::new);
        FxThread.run(() -> robot.keyType(KeyCode.LEFT));
        FxThread.settle();
        double before = yards.choice.personProperty().get().orElseThrow();
        FxThread.run(() -> robot.keyType(KeyCode.RIGHT));
        FxThread.settle();
        assertEquals(before + 0.05, yards.choice.personProperty().get().orElseThrow(), 1e-9);
        FxThread.run(() -> robot.keyType(KeyCode.HOME));
        FxThread.settle();
        assertEquals(Optional.empty(), yards.choice.personProperty().get());
    }

    /** The light of an earlier design is not shown under a newer one. */
    @Test
    @Tag("slow")
    void aChangeOfTheDesignHasItWorkedOutAnew() {
        light();
        FxThread.run(() -> yards.document.change(Map.of("sun.elevation", "35°")));
        FxThread.settle();
        assertFalse(find("yard-person").isVisible());
        FxThread.until(
                "the light is known again",
                () -> yards.overlay.shownProperty().get().isPresent());
        FxThread.settle();
        assertTrue(find("yard-person").isVisible());
    }
}
