package simmerpoint.dish;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;
import simmerpoint.units.RangeCheck;

/**
 * What the builder sets out to build: a paraboloid z = r²/4f of the given focal length, and how it is cut.
 *
 * @param diameterMetres across the outer corners (of a smooth dish across the rim circle), above 0
 * @param focalLengthMetres vertex to nominal focus, above 0
 * @param hubMetres diameter of the circle on which the innermost corners stand; 0 for none; below the diameter
 * @param gapMetres width of the slit between neighbouring panels, at least 0
 * @param cut how the surface is cut into panels
 */
public record DishPlan(double diameterMetres, double focalLengthMetres, double hubMetres, double gapMetres, Cut cut) {
    /** Checks every length; {@code cut} is not null. */
    public DishPlan {
        RangeCheck.positive(diameterMetres, "diameter");
        RangeCheck.positive(focalLengthMetres, "focal length");
        RangeCheck.require(hubMetres >= 0 && hubMetres < diameterMetres, "hub", hubMetres, "0 m to below the diameter");
        RangeCheck.require(
                gapMetres >= 0 && gapMetres < diameterMetres / 2, "gap", gapMetres, "0 m to below the radius");
        if (cut == null) {
            throw new IllegalArgumentException("a dish needs a cut");
        }
    }

    /** The same dish cut otherwise. */
    public DishPlan withCut(Cut other) {
        return new DishPlan(diameterMetres, focalLengthMetres, hubMetres, gapMetres, other);
    }

    /** The mirror of each zone, in their order: its own or {@code usual}, which is the only one where the dish has no zones. */
    public List<Mirror> mirrors(Mirror usual) {
        List<Zone> zones = cut.zones();
        return zones.isEmpty()
                ? List.of(usual)
                : zones.stream().map(zone -> zone.mirror().orElse(usual)).toList();
    }

    /** The same dish with wider or narrower slits, m. */
    public DishPlan withGap(double metres) {
        return new DishPlan(diameterMetres, focalLengthMetres, hubMetres, metres, cut);
    }

    /** The same dish with other mirrors on those zones that have mirrors of their own. */
    public DishPlan withMirrors(UnaryOperator<Mirror> change) {
        return withCut(cut.withZones(zone -> zone.withMirror(change)));
    }

    /** The same dish with a change to the zone of that name. */
    public DishPlan withZone(String name, UnaryOperator<Zone> change) {
        return withCut(cut.withZones(zone -> zone.name().equals(name) ? change.apply(zone) : zone));
    }

    /** The zone of that name. */
    public Zone zone(String name) {
        return cut.zones().stream()
                .filter(zone -> zone.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no zone is called " + name));
    }

    /** The same dish with slits wider by some metres, in its zones as well, wherever panels meet in seams. */
    public DishPlan withWiderGaps(double metres) {
        double wider = cut.has(CutTrait.SEAMS) ? Math.max(0, gapMetres + metres) : gapMetres;
        return new DishPlan(
                diameterMetres, focalLengthMetres, hubMetres, wider, cut.withZones(zone -> zone.withWiderGaps(metres)));
    }

    /** Name of the zone that a panel belongs to; empty where the dish has none. */
    public Optional<String> zoneOf(int panel) {
        List<Zone> zones = cut.zones();
        return zones.isEmpty()
                ? Optional.empty()
                : Optional.of(zones.get(surface(Direction.Z).zones().of(panel)).name());
    }

    /** Half the diameter, m. */
    public double radiusMetres() {
        return diameterMetres / 2;
    }

    /** Area within the rim, seen along the axis, m². */
    public double rimArea() {
        return cut.rimArea(this);
    }

    /** How far it reaches from the axis upwards, m; below 0 if all of it lies below the axis. */
    public double upperEdgeMetres() {
        return cut.upperEdgeMetres(this);
    }

    /** How far it reaches from the axis downwards, m; below 0 if all of it lies above the axis. */
    public double lowerEdgeMetres() {
        return cut.lowerEdgeMetres(this);
    }

    /** The parabola of its focal length. */
    public Parabola parabola() {
        return new Parabola(focalLengthMetres);
    }

    /** The curve of its ribs, which is that parabola unless they are cut to another one. */
    public Profile profile() {
        return cut.curve().of(focalLengthMetres, radiusMetres());
    }

    /** The same dish with its ribs cut to the parabola; the same dish where they are. */
    public DishPlan onParabola() {
        return withCut(cut.onParabola());
    }

    /** {@linkplain Cut#aperture The circle} about its mirrors. */
    public Aperture aperture() {
        return cut.aperture(this);
    }

    /** {@linkplain Cut#supposedFocus Where} its builder takes the focus to be. */
    public Vec supposedFocus() {
        return cut.supposedFocus(this);
    }

    /** Its middle: the place of the mirror under the middle of the aperture; the vertex unless that lies off the axis. */
    public Vec middle() {
        Aperture aperture = aperture();
        return onMirror(aperture.x(), aperture.y());
    }

    /** The point that a mount so far behind the middle turns it about, dish frame, m. */
    public Vec mount(double behindMetres) {
        return middle().minus(new Vec(0, 0, behindMetres));
    }

    /** The place of its curve, turned about the axis, above a point in plan, m. */
    public Vec onMirror(double x, double y) {
        double z = cut.curve() == Curve.PARABOLA
                ? (x * x + y * y) / (4 * focalLengthMetres)
                : profile().height(Math.hypot(x, y));
        return new Vec(x, y, z);
    }

    /** Largest angle at the focus between the axis and the rim, rad. */
    public double rimAngle() {
        return parabola().rimAngle(aperture().reach());
    }

    /** Whether light can fall through: there is a hub, a gap, or the cut leaves part of the rim bare. */
    public boolean hasHoles() {
        return hubMetres > 0 || gapMetres > 0 || !cut.has(CutTrait.FULL_RIM);
    }

    /** {@linkplain Cut#surface The surface} of the dish exactly as planned; light is cast on a dish as it was built. */
    public MirrorSurface surface(Direction sunInDish) {
        return cut.surface(this, sunInDish);
    }

    /** {@linkplain Cut#outlines The edges} of all panels. */
    public List<PanelOutline> outlines() {
        return cut.outlines(this);
    }

    /** Size of the largest panel, if panels have a size of their own. */
    public Optional<PanelSize> largestPanel() {
        return cut.largestPanel(this);
    }
}
