package simmerpoint.drawing.cooker;

import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Circle;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.Style;
import simmerpoint.safety.person.PersonShape;
import simmerpoint.setup.SideView.Place;

/** A grown-up drawn beside a cooker. */
public final class PersonOutline {
    private PersonOutline() {}

    /** Draws one whose middle stands so far towards the sun, as places of the drawing count. */
    public static void draw(Canvas canvas, SideFrame frame, double towardsSun) {
        double u = frame.perMetre();
        double x = frame.x(new Place(towardsSun, 0));
        double y = frame.ground();
        Path body = Path.through(
                PersonShape.body().stream()
                        .map(at -> new double[] {x + at[0] * u, y - at[1] * u})
                        .toList(),
                true);
        canvas.draw(Style.TARGET, body);
        canvas.draw(Style.TARGET, new Circle(x, y - PersonShape.HEAD_HEIGHT * u, PersonShape.HEAD_RADIUS * u));
    }

    /** What it covers. */
    public static Box box(SideFrame frame, double towardsSun) {
        double half = PersonShape.HALF_WIDTH * frame.perMetre();
        double high = PersonShape.HEIGHT * frame.perMetre();
        return new Box(frame.x(new Place(towardsSun, 0)) - half, frame.ground() - high, 2 * half, high);
    }
}
