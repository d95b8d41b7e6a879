package simmerpoint.heat.plate;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.PhysicalConstants;
import simmerpoint.heat.Surroundings;
import simmerpoint.heat.ThermalPan;
import simmerpoint.heat.UndersidePlate;
import simmerpoint.heat.losses.PanFace;
import simmerpoint.pan.Pan;
import simmerpoint.sampling.RootFinder;
import simmerpoint.target.FluxMap;

/**
 * Bottom and wall of one pan with something in it, under traced light. The sheet has one temperature through its thickness, that
 * of its middle; each face loses heat behind half of the thickness, which matters for clay and glass.
 */
public final class PanSheet {
    private static final double SHORTEST_STEP = 2;
    private static final double STEP_SHARE = 0.1;
    private static final double LONGEST_SECONDS = 7200;
    private static final RootFinder SHARE = new RootFinder(1e-3, 1e-3, 0.5, 40);

    private final PanMesh mesh;
    private final PanConduction conduction;
    private final FluxCurve bottomInside;
    private final double resistance;
    private final double[] watts;
    private final double startCelsius;
    private final double[] start;
    private final double[] end;

    /**
     * A pan in its weather.
     *
     * @param vessel the pan; its lid is taken to be off where nothing is in it
     * @param plate the sheet of its underside, the pan's own or another to compare with
     * @param around air and sky
     * @param contents what is in it
     * @param absorbed what it takes up, by face
     * @param bottom flux map of the underside, for how the light is shared out
     * @param wall flux map of the wall, the same
     */
    public PanSheet(
            ThermalPan vessel,
            UndersidePlate plate,
            Surroundings around,
            SheetContents contents,
            AbsorbedLight absorbed,
            FluxMap bottom,
            FluxMap wall) {
        Pan pan = vessel.pan();
        UndersidePlate side = new UndersidePlate(vessel.material(), vessel.sheetThickness());
        mesh = PanMesh.of(pan.radiusMetres(), pan.heightMetres());
        resistance = plate.thicknessMetres() / (2 * plate.material().conductivity());
        double sideResistance = side.thicknessMetres() / (2 * side.material().conductivity());
        InsideLosses inside = InsideLosses.of(contents, pan, around);
        bottomInside = inside.bottom();
        FluxCurve bottomLoss = outside(PanFace.level(
                        PanFace.Kind.UNDERSIDE, vessel, vessel.underside().emissivity(), around, 1))
                .behind(resistance)
                .plus(bottomInside.behind(resistance));
        FluxCurve wallOutside = outside(PanFace.wall(
                        vessel, pan.heightMetres(), vessel.dryWall().emissivity(), around, 1))
                .behind(sideResistance);
        FluxCurve wetWall = wallOutside.plus(inside.wetWall().behind(sideResistance));
        FluxCurve dryWall = wallOutside.plus(inside.dryWall().behind(sideResistance));
        double[] conductance = new double[mesh.rings()];
        double[] capacity = new double[mesh.rings()];
        FluxCurve[] losses = new FluxCurve[mesh.rings()];
        for (int ring = 0; ring < mesh.rings(); ring++) {
            UndersidePlate sheet = mesh.isBottom(ring) ? plate : side;
            conductance[ring] = sheet.conductance();
            capacity[ring] = sheet.heatCapacity();
            boolean wet = mesh.middleHeight(ring) < inside.lineMetres();
            losses[ring] = mesh.isBottom(ring) ? bottomLoss : wet ? wetWall : dryWall;
        }
        conduction = new PanConduction(mesh, conductance, capacity, losses);
        watts = SheetLight.watts(
                mesh, bottom, absorbed.undersideWatts(), wall, absorbed.wetWallWatts() + absorbed.dryWallWatts());
        startCelsius = around.airCelsius();
        start = new double[mesh.cells()];
        Arrays.fill(start, startCelsius);
        end = conduction.steady(watts, start);
    }

    private static FluxCurve outside(PanFace face) {
        return FluxCurve.ofAir(t -> face.at(PhysicalConstants.kelvin(t)).dry() / face.area());
    }

    /** Where the temperatures end if nothing changes. */
    public BottomTemperatures steady() {
        return BottomTemperatures.of(mesh, end);
    }

    /** The same in so many times the light. */
    public BottomTemperatures steady(double share) {
        return with(share);
    }

    /** The same of the face inside, which touches water or food, °C at its hottest place. */
    public double hottestInsideCelsius() {
        return insideCelsius(steady());
    }

    /** The same in so many times the light. */
    public double hottestInsideCelsius(double share) {
        return insideCelsius(with(share));
    }

    private double insideCelsius(BottomTemperatures sheet) {
        double middle = sheet.hottestCelsius();
        return middle - resistance * bottomInside.behind(resistance).at(middle);
    }

    /**
     * The same with less of the light, as when a cook turns the dish away, so that the middle stays at a temperature; empty
     * where all of the light is not enough.
     */
    public Optional<BottomTemperatures> heldAt(double middleCelsius) {
        if (steady().middleCelsius() < middleCelsius) {
            return Optional.empty();
        }
        double share = SHARE.find(s -> with(s).middleCelsius() - middleCelsius, 0, 1);
        return Optional.of(with(share));
    }

    private BottomTemperatures with(double share) {
        double[] less = Arrays.stream(watts).map(w -> share * w).toArray();
        double[] guess = Arrays.stream(end)
                .map(t -> startCelsius + share * (t - startCelsius))
                .toArray();
        return BottomTemperatures.of(mesh, conduction.steady(less, guess));
    }

    /** Time from the temperature of the air until the middle has another one, s; empty if it takes longer than two hours. */
    public OptionalDouble secondsUntil(double middleCelsius) {
        double[] t = start;
        double before = startCelsius;
        for (double seconds = 0; seconds < LONGEST_SECONDS; ) {
            double step = Math.max(SHORTEST_STEP, STEP_SHARE * seconds);
            t = conduction.after(step, watts, t);
            double now = BottomTemperatures.of(mesh, t).middleCelsius();
            if (now >= middleCelsius) {
                return OptionalDouble.of(seconds + step * (middleCelsius - before) / (now - before));
            }
            before = now;
            seconds += step;
        }
        return OptionalDouble.empty();
    }
}
