package simmerpoint.viewer.yard;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Point2D;
import org.junit.jupiter.api.Test;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.cooker.SideDrawing;
import simmerpoint.drawing.cooker.SideFrame;
import simmerpoint.drawing.cooker.SideScene;
import simmerpoint.drawing.cooker.SideScenes;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.FxThread;
import simmerpoint.viewer.canvas.CaptionBoxes;
import simmerpoint.viewer.canvas.FxMetrics;

/** Handles and captions at every height of the sun and in small pictures, by the geometry of their boxes. */
class GripsTest {
    private static final double[][] SIZES = {{600, 250}, {690, 380}, {988, 390}, {300, 300}};

    @Test
    void noHandleCoversAnotherOrACaption() throws Exception {
        List<String> covered = new ArrayList<>();
        for (int degrees : new int[] {1, 3, 5, 10, 20, 35, 50, 70, 90}) {
            SideScene scene = new SideScenes()
                    .of(
                            Yards.example(Map.of("sun.elevation", degrees + "\u00b0", "sun.beam", "300 W/m\u00b2")),
                            List.of(),
                            Optional.empty(),
                            UnitSystem.METRIC);
            for (double[] size : SIZES) {
                covered.addAll(FxThread.get(() -> covered(scene, size, degrees + "\u00b0 " + size[0] + "x" + size[1])));
            }
        }
        assertEquals(List.of(), covered);
    }

    private static List<String> covered(SideScene scene, double[] size, String name) {
        Box box = new Box(0, 0, size[0], size[1]);
        Box above = box.inside(0, 0, 0, SideDrawing.keyHeight(scene, size[0], FxMetrics::width));
        SideFrame frame = SideFrame.around(scene, above, 0);
        List<Box> captions = CaptionBoxes.of(SideDrawing.live(scene, UnitSystem.METRIC, frame), box);
        Map<Handle, Point2D> places = Grips.clear(scene, frame, above, captions);
        List<String> wrong = new ArrayList<>();
        places.forEach((handle, place) -> {
            places.forEach((other, there) -> {
                if (handle.compareTo(other) < 0 && place.distance(there) < Grip.SIZE) {
                    wrong.add(name + ": " + handle + " covers " + other);
                }
            });
            if (captions.stream().anyMatch(caption -> Grips.covers(place, caption))) {
                wrong.add(name + ": " + handle + " covers a caption");
            }
        });
        return wrong;
    }
}
