package simmerpoint.viewer.pan;

import java.util.Optional;
import simmerpoint.target.FluxMap;

/**
 * Where a flux map lies on a drawing.
 *
 * @param map what is drawn
 * @param facing which way round
 * @param left edge, px
 * @param top edge, px
 * @param width px
 * @param height px
 */
record MapFrame(FluxMap map, Facing facing, double left, double top, double width, double height) {
    /** The largest frame of the map's shape in some room, at its upper left or centred; whole pixels, one at least. */
    static MapFrame in(FluxMap map, Facing facing, double left, double top, double width, double height) {
        double first = map.columns() * map.cellWidth();
        double second = map.rows() * map.cellHeight();
        double across = facing == Facing.FIRST_RIGHT ? first : second;
        double upright = facing == Facing.FIRST_RIGHT ? second : first;
        double scale = Math.max(0, Math.min(width / across, height / upright));
        return new MapFrame(
                map,
                facing,
                Math.round(left),
                Math.round(top),
                Math.max(1, Math.floor(across * scale)),
                Math.max(1, Math.floor(upright * scale)));
    }

    /** Pixels per metre, level. */
    double scale() {
        return width / (facing == Facing.FIRST_RIGHT ? map.columns() * map.cellWidth() : map.rows() * map.cellHeight());
    }

    private double firstShare(Place place) {
        return (place.first() - map.firstMin()) / (map.columns() * map.cellWidth());
    }

    private double secondShare(Place place) {
        return (place.second() - map.secondMin()) / (map.rows() * map.cellHeight());
    }

    /** Where a place lies from left to right, px. */
    double x(Place place) {
        return left + width * (facing == Facing.FIRST_RIGHT ? firstShare(place) : secondShare(place));
    }

    /** Where a place lies from above, px. */
    double y(Place place) {
        double down = switch (facing) {
            case FIRST_DOWN -> firstShare(place);
            case FIRST_UP -> 1 - firstShare(place);
            case FIRST_RIGHT -> 1 - secondShare(place);
        };
        return top + height * down;
    }

    /** Which place lies at a point of the drawing; empty beside the map. */
    Optional<Place> at(double x, double y) {
        double right = (x - left) / width;
        double down = (y - top) / height;
        if (!(right >= 0 && right < 1 && down >= 0 && down < 1)) {
            return Optional.empty();
        }
        double first = facing == Facing.FIRST_RIGHT ? right : facing == Facing.FIRST_DOWN ? down : 1 - down;
        double second = facing == Facing.FIRST_RIGHT ? 1 - down : right;
        return Optional.of(new Place(
                map.firstMin() + first * map.columns() * map.cellWidth(),
                map.secondMin() + second * map.rows() * map.cellHeight()));
    }

    /** The place some cells to the right and down on the screen, kept on the map. */
    Place stepped(Place from, int right, int down) {
        int first = facing == Facing.FIRST_RIGHT ? right : facing == Facing.FIRST_DOWN ? down : -down;
        int second = facing == Facing.FIRST_RIGHT ? -down : right;
        int i = Math.max(0, Math.min(map.columns() - 1, column(from) + first));
        int j = Math.max(0, Math.min(map.rows() - 1, row(from) + second));
        return new Place(map.first(i), map.second(j));
    }

    /** The cell's column a place is in, the nearest for one beside the map. */
    int column(Place place) {
        int i = (int) Math.floor((place.first() - map.firstMin()) / map.cellWidth());
        return Math.max(0, Math.min(map.columns() - 1, i));
    }

    /** The cell's row a place is in, the nearest for one beside the map. */
    int row(Place place) {
        int j = (int) Math.floor((place.second() - map.secondMin()) / map.cellHeight());
        return Math.max(0, Math.min(map.rows() - 1, j));
    }
}
