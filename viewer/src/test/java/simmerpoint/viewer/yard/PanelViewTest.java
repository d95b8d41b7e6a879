package simmerpoint.viewer.yard;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayDeque;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.viewer.FxThread;
import simmerpoint.viewer.theme.Theme;

class PanelViewTest {
    private final Queue<Runnable> background = new ArrayDeque<>();
    private final Queue<Runnable> delivery = new ArrayDeque<>();

    private static void work(Queue<Runnable> queue) {
        while (!queue.isEmpty()) {
            queue.remove().run();
        }
    }

    /** A dish that is changed and changed back, while its panels are laid out behind, is drawn with its own panels. */
    @Test
    void aLayoutThatComesTooLateIsNotDrawn() throws ScenarioException {
        Scenario first = Yards.example(Map.of());
        Scenario second = Yards.example(Map.of("dish.surface.sectors", "12"));
        FxThread.run(() -> {
            PanelView view = new PanelView(background::add, delivery::add);
            show(view, first);
            work(background);
            work(delivery);
            assertEquals(Optional.of(first.dish()), view.drawnDish());
            show(view, second);
            work(background);
            show(view, first);
            work(delivery);
            assertEquals(Optional.of(first.dish()), view.drawnDish());
            show(view, second);
            work(background);
            work(delivery);
            assertEquals(Optional.of(second.dish()), view.drawnDish());
        });
    }

    private static void show(PanelView view, Scenario scenario) {
        view.show(scenario, Optional.empty(), Optional.empty(), Theme.LIGHT);
    }
}
