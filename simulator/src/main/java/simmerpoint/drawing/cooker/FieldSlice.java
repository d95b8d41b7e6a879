package simmerpoint.drawing.cooker;

import java.util.List;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Raster;
import simmerpoint.geometry.Vec;
import simmerpoint.safety.field.FieldBox;
import simmerpoint.safety.field.YardLight;
import simmerpoint.setup.SideView.Place;

/**
 * The light in the upright plane through the dish's axis as a picture, coloured by the worst that it does: made once, and laid under side
 * views of any size.
 */
public final class FieldSlice {
    private static final double FINEST_CELL = 0.004;
    private static final double MOST_CELLS = 400_000;

    private final Raster raster;
    private final Place corner;
    private final double width;
    private final double height;

    private FieldSlice(Raster raster, Place corner, double width, double height) {
        this.raster = raster;
        this.corner = corner;
        this.width = width;
        this.height = height;
    }

    /** Of all the places where light can harm. */
    public static FieldSlice of(YardLight light) {
        FieldBox box = light.fields().get(1).box();
        double width = box.nx() * box.cellMetres();
        double height = box.nz() * box.cellMetres();
        double cell = Math.max(FINEST_CELL, Math.sqrt(width * height / MOST_CELLS));
        int wide = (int) Math.ceil(width / cell);
        int high = (int) Math.ceil(height / cell);
        int[] argb = new int[wide * high];
        YardLight.Probe probe = light.new Probe();
        for (int row = 0; row < high; row++) {
            double z = box.corner().z() + height * (high - row - 0.5) / high;
            for (int column = 0; column < wide; column++) {
                double x = box.corner().x() + width * (column + 0.5) / wide;
                argb[row * wide + column] =
                        HazardBands.argb(probe.smooth(new Vec(x, 0, z), box.cellMetres(), HazardBands.LEAST));
            }
        }
        // Places of a drawing count from under the mount as it stands with no slide, those of the yard from where it
        // stands.
        double slide = light.scenario().stand().slideMetres();
        return new FieldSlice(
                new Raster(wide, high, argb),
                new Place(box.corner().x() - slide, box.corner().z()),
                width,
                height);
    }

    /** Its lower left and its upper right corner, as places of a drawing count. */
    public List<Place> corners() {
        return List.of(corner, new Place(corner.towardsSunMetres() + width, corner.heightMetres() + height));
    }

    /** Left and right end, m. */
    double[] ends() {
        return new double[] {corner.towardsSunMetres(), corner.towardsSunMetres() + width};
    }

    /** Lays it on a drawing. */
    public void draw(Canvas canvas, SideFrame frame) {
        double x = frame.x(corner);
        double low = frame.y(corner);
        double perMetre = frame.perMetre();
        canvas.image(raster, new Box(x, low - height * perMetre, width * perMetre, height * perMetre));
    }
}
