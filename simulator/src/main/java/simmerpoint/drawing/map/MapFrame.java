package simmerpoint.drawing.map;

import java.util.Optional;
import simmerpoint.drawing.Box;
import simmerpoint.target.FluxMap;

/**
 * Where a flux map lies on a drawing.
 *
 * @param map what is drawn
 * @param facing which way round
 * @param box units
 */
public record MapFrame(FluxMap map, Facing facing, Box box) {
    /** The largest frame of the map's shape in some room, at its upper left; whole units, one at least. */
    public static MapFrame in(FluxMap map, Facing facing, double left, double top, double width, double height) {
        double first = map.columns() * map.cellWidth();
        double second = map.rows() * map.cellHeight();
        double across = facing == Facing.FIRST_RIGHT ? first : second;
        double upright = facing == Facing.FIRST_RIGHT ? second : first;
        double scale = Math.max(0, Math.min(width / across, height / upright));
        Box box = new Box(
                Math.round(left),
                Math.round(top),
                Math.max(1, Math.floor(across * scale)),
                Math.max(1, Math.floor(upright * scale)));
        return new MapFrame(map, facing, box);
    }

    /** The same as far to the right as its middle is that of some room. */
    MapFrame centred(double left, double width) {
        double x = Math.round(left + (width - box.width()) / 2);
        return new MapFrame(map, facing, new Box(x, box.y(), box.width(), box.height()));
    }

    /** Units per metre, level. */
    public double scale() {
        return box.width()
                / (facing == Facing.FIRST_RIGHT ? map.columns() * map.cellWidth() : map.rows() * map.cellHeight());
    }

    private double firstShare(Place place) {
        return (place.first() - map.firstMin()) / (map.columns() * map.cellWidth());
    }

    private double secondShare(Place place) {
        return (place.second() - map.secondMin()) / (map.rows() * map.cellHeight());
    }

    /** Where a place lies from left to right. */
    public double x(Place place) {
        return box.x() + box.width() * (facing == Facing.FIRST_RIGHT ? firstShare(place) : secondShare(place));
    }

    /** Where a place lies from above. */
    public double y(Place place) {
        double down = switch (facing) {
            case FIRST_DOWN -> firstShare(place);
            case FIRST_UP -> 1 - firstShare(place);
            case FIRST_RIGHT -> 1 - secondShare(place);
        };
        return box.y() + box.height() * down;
    }

    /** Which place lies at a point of the drawing; empty beside the map. */
    public Optional<Place> at(double x, double y) {
        double right = (x - box.x()) / box.width();
        double down = (y - box.y()) / box.height();
        if (!(right >= 0 && right < 1 && down >= 0 && down < 1)) {
            return Optional.empty();
        }
        double first = facing == Facing.FIRST_RIGHT ? right : facing == Facing.FIRST_DOWN ? down : 1 - down;
        double second = facing == Facing.FIRST_RIGHT ? 1 - down : right;
        return Optional.of(new Place(
                map.firstMin() + first * map.columns() * map.cellWidth(),
                map.secondMin() + second * map.rows() * map.cellHeight()));
    }

    /** The place some cells to the right and down on the drawing, kept on the map. */
    public Place stepped(Place from, int right, int down) {
        int first = facing == Facing.FIRST_RIGHT ? right : facing == Facing.FIRST_DOWN ? down : -down;
        int second = facing == Facing.FIRST_RIGHT ? -down : right;
        int i = Math.max(0, Math.min(map.columns() - 1, column(from) + first));
        int j = Math.max(0, Math.min(map.rows() - 1, row(from) + second));
        return new Place(map.first(i), map.second(j));
    }

    /** The cell's column a place is in, the nearest for one beside the map. */
    public int column(Place place) {
        int i = (int) Math.floor((place.first() - map.firstMin()) / map.cellWidth());
        return Math.max(0, Math.min(map.columns() - 1, i));
    }

    /** The cell's row a place is in, the nearest for one beside the map. */
    public int row(Place place) {
        int j = (int) Math.floor((place.second() - map.secondMin()) / map.cellHeight());
        return Math.max(0, Math.min(map.rows() - 1, j));
    }
}
