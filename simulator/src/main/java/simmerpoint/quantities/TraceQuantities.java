package simmerpoint.quantities;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.HeatLevelRange;
import simmerpoint.heat.plate.BottomTemperatures;
import simmerpoint.pan.Pan;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.BetterHeight;
import simmerpoint.study.trace.HeatResult;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.study.trace.PlateResult;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.FluxMap;
import simmerpoint.target.Spot;
import simmerpoint.target.SpotEllipse;
import simmerpoint.target.ZoneLight;
import simmerpoint.uncertainty.LikelyRange;

/** What {@code trace} finds; its table holds the flux maps, one row per cell. */
public final class TraceQuantities {
    private static final int NOTE_DIGITS = 6;

    private static final Fields<BetterHeight> BETTER_HEIGHT = Fields.<BetterHeight>none()
            .number("raised_m", "how much higher; below 0 lower", BetterHeight::raisedMetres)
            .number("gained_share", "more cooking power there, as a share", BetterHeight::gainedShare);

    private static final Fields<SpotEllipse> ELLIPSE = Fields.<SpotEllipse>none()
            .number("long_sigma_m", "standard deviation of the light along the long axis", SpotEllipse::longSigma)
            .number("short_sigma_m", "standard deviation of the light along the short axis", SpotEllipse::shortSigma)
            .number("angle_rad", "direction of the long axis from x towards y", SpotEllipse::angleRadians);

    private static final Fields<Spot> SPOT = Fields.<Spot>none()
            .estimate("intercept_factor", "caught \u00f7 reflected", Spot::interceptFactor)
            .estimate("mean_concentration", "mean flux over the underside \u00f7 beam", Spot::meanConcentration)
            .estimate("evenness", "standard deviation \u00f7 mean of flux over the underside", Spot::evenness)
            .estimate("peak_flux_W_m2", "mean flux over the peak disc", Spot::peakFlux)
            .number("peak_disc_radius_m", "radius of the peak disc", Spot::peakDiscRadius)
            .vector("peak_center_m", "middle of the peak disc", s -> new double[] {s.peakX(), s.peakY()})
            .vector("spot_centroid_m", "centroid of the caught light", s ->
                    new double[] {s.centroidX().value(), s.centroidY().value()})
            .vector("spot_centroid_m_se", "standard error of spot_centroid_m", s ->
                    new double[] {s.centroidX().standardError(), s.centroidY().standardError()})
            .optionalEstimate("radius_50_m", "half of the reflected light crosses within it", Spot::radius50)
            .optionalEstimate("radius_90_m", "90 % of the reflected light crosses within it", Spot::radius90)
            .optionalEstimate("radius_95_m", "95 % of the reflected light crosses within it", Spot::radius95)
            .optionalGroup("spot_ellipse", "main axes of the caught light", Spot::ellipse, ELLIPSE);

    private static final Fields<Heated> HEAT = Fields.<Heated>none()
            .number(
                    "cooking_power_W",
                    "net heat into the water at cooking_power_at_C, the likely figure",
                    Heated::power)
            .optionalNumber("cooking_power_low_W", "one such cooker in ten brings less", h -> h.range(LikelyRange::low))
            .optionalNumber(
                    "cooking_power_high_W", "one such cooker in ten brings more", h -> h.range(LikelyRange::high))
            .estimate(
                    "cooking_power_as_given_W",
                    "the same with every figure exactly as given",
                    h -> h.heat().cookingPower())
            .number(
                    "cooking_power_at_C",
                    "50 K above the air, at most boiling",
                    h -> h.heat().cookingCelsius())
            .number(
                    "heat_loss_power_W",
                    "what the pan loses at that temperature",
                    h -> h.heat().cookingLossWatts())
            .word("heat_level", "the likely heat level", HeatLevel.class, Heated::level)
            .include(Heated::boil, HeatQuantities.BOIL);

    private static final Fields<PlateResult> PLATE = Fields.<PlateResult>none()
            .text(
                    "material",
                    "what the underside is made of",
                    p -> p.plate().material().name())
            .number("thickness_m", "how thick it is", p -> p.plate().thicknessMetres())
            .number(
                    "middle_C",
                    "empty, steady: mean within half of the radius",
                    p -> p.empty().middleCelsius())
            .number(
                    "edge_C",
                    "empty, steady: mean over the outer tenth of the radius",
                    p -> p.empty().edgeCelsius())
            .number("hottest_C", "empty, steady: hottest place", p -> p.empty().hottestCelsius())
            .vector("hottest_place_m", "where that is", p ->
                    new double[] {p.empty().hottestX(), p.empty().hottestY()})
            .optionalNumber("hot_s", "time until the middle is at 190 \u00b0C", PlateResult::hotSeconds)
            .number("held_hottest_C", "middle held at 190 \u00b0C: hottest place", p -> hottest(p.held()))
            .number("held_edge_C", "middle held at 190 \u00b0C: edge", p -> edge(p.held()))
            .number("thicker_held_hottest_C", "the same with a sheet twice as thick", p -> hottest(p.heldThicker()))
            .number("thicker_held_edge_C", "the same with a sheet twice as thick", p -> edge(p.heldThicker()))
            .number("copper_held_hottest_C", "the same with copper, no thicker", p -> hottest(p.heldCopper()))
            .number("copper_held_edge_C", "the same with copper, no thicker", p -> edge(p.heldCopper()))
            .number("water_C", "temperature at which the water settles", PlateResult::waterCelsius)
            .number("under_water_C", "hottest place inside under that water", PlateResult::underWaterCelsius)
            .number("under_food_C", "the same under 5 mm of food that lies still", PlateResult::underFoodCelsius)
            .optionalGroup(
                    "range",
                    "four in five such cookers",
                    PlateResult::range,
                    Fields.<PlateResult.Range>none()
                            .range("middle_*_C", "empty, steady: middle", PlateResult.Range::middleCelsius)
                            .range("edge_*_C", "empty, steady: edge", PlateResult.Range::edgeCelsius)
                            .range("under_food_*_C", "under food that lies still", PlateResult.Range::underFoodCelsius))
            .group(
                    "oil",
                    "with oil for deep frying instead of the water, lid off",
                    PlateResult::oil,
                    OilQuantities.FIELDS);

    /** What differs from run to run. */
    static final Fields<TraceResult.RunInfo> RUN = Fields.<TraceResult.RunInfo>none()
            .whole("rays", "number of rays traced", TraceResult.RunInfo::rays)
            .whole("threads", "number of threads", TraceResult.RunInfo::threads)
            .number("trace_seconds", "wall time of the ray loop", TraceResult.RunInfo::traceSeconds);

    private static final Fields<ZoneLight> ZONE = Fields.<ZoneLight>none()
            .text("name", "of the zone", ZoneLight::name)
            .estimate("incident_power_W", "towards its mirrors", ZoneLight::incident)
            .estimate("reflected_power_W", "left its mirrors as a beam", ZoneLight::reflected)
            .estimate("caught_power_W", "of that caught by the pan or the bare disc", ZoneLight::caught);

    private static final Fields<TraceResult> FIELDS = Fields.<TraceResult>none()
            .whole("replicates", "number of replicates behind every standard error", TraceResult::replicates)
            .flag("precision_reached", "true if no precision was asked", TraceResult::precisionReached)
            .text("target", "what the light falls on", List.of("pan", "plane"), r -> isPan(r) ? "pan" : "plane")
            .text("frame", "axes of all places on the target", TraceQuantities::frame)
            .whole("panels", "number of panels", TraceResult::panels)
            .number("outline_area_m2", "area of the outline, projected along the axis", TraceResult::outlineArea)
            .number("aperture_area_m2", "area of the mirrors, projected along the axis", TraceResult::apertureArea)
            .optionalGroup(
                    ShellQuantities.KEY,
                    ShellQuantities.LABEL,
                    r -> ShellQuantities.of(r.scenario()),
                    ShellQuantities.FIELDS)
            .include(TraceResult::ledger, LedgerQuantities.FIELDS)
            .rows(
                    "zones",
                    "light of each zone of the dish, those on top last; none where it has none",
                    r -> r.ledger().zones(),
                    ZONE)
            .include(TraceResult::spot, SPOT)
            .includeOptional(r -> r.heat().map(heat -> new Heated(heat, r.likely())), HEAT)
            .optionalEstimate(
                    "standard_cooking_power_W",
                    "cooking_power_as_given_W times 700 W/m\u00b2 \u00f7 beam",
                    TraceResult::standardCookingPower)
            .optionalEstimate(
                    "aim_again_s",
                    "from a dead-on aim until a tenth less is there than aiming again gives",
                    r -> r.aimAgainMinutes().map(minutes -> minutes.times(60)))
            .optionalGroup(
                    "better_height",
                    "a height at which the pan gets clearly more, if there is one near where it stands",
                    TraceResult::betterHeight,
                    BETTER_HEIGHT)
            .include(TraceResult::likely, LikelyQuantities.DOUBTS)
            .optionalGroup("plate", "temperatures of the underside, with the likely losses", TraceResult::plate, PLATE)
            .group("run", "differs from run to run", TraceResult::run, RUN);

    private static final Fields<Cell> CELL = Fields.<Cell>none()
            .text("surface", "which surface", List.of("plane", "underside", "disc", "wall", "lid"), Cell::surface)
            .number("x_m", "middle of the cell", Cell::x)
            .number("y_m", "middle of the cell", Cell::y)
            .estimate("flux_W_m2", "mean flux over the cell", Cell::flux);

    /** All of it. */
    public static final Document<TraceResult> DOCUMENT = new Document<>(
            "trace",
            result -> result.scenario().title(),
            TraceResult::seed,
            FIELDS,
            new Table<>(CELL, TraceQuantities::cells, TraceQuantities::notes));

    private TraceQuantities() {}

    /** What a pan's water does; over all doubts where those were looked at, else over the pan's losses. */
    private record Heated(HeatResult heat, Optional<LikelyResult> likely) {
        double power() {
            return range(LikelyRange::likely).orElse(heat.cookingPower().value());
        }

        OptionalDouble range(ToDoubleFunction<LikelyRange> end) {
            return likely.map(l -> OptionalDouble.of(end.applyAsDouble(l.power())))
                    .orElse(OptionalDouble.empty());
        }

        HeatLevel level() {
            return likely.flatMap(LikelyResult::level)
                    .map(HeatLevelRange::likely)
                    .orElseGet(heat::level);
        }

        BoilingOutcome boil() {
            return likely.flatMap(LikelyResult::boil).orElseGet(heat::boil);
        }
    }

    /** One cell of a flux map. */
    private record Cell(String surface, double x, double y, Estimate flux) {}

    /** A flux map and its name in the table. */
    private record Surface(String name, FluxMap map) {}

    private static double hottest(Optional<BottomTemperatures> held) {
        return held.map(BottomTemperatures::hottestCelsius).orElse(Double.NaN);
    }

    private static double edge(Optional<BottomTemperatures> held) {
        return held.map(BottomTemperatures::edgeCelsius).orElse(Double.NaN);
    }

    private static boolean isPan(TraceResult result) {
        return result.scenario().target() instanceof Pan;
    }

    private static String frame(TraceResult result) {
        return isPan(result)
                ? "origin: middle of the underside; x: level, away from the sun; y: the dish's +y; z: up"
                : "origin: middle of the disc; y: the dish's +y; z: the disc's normal, away from the dish; x = y cross z "
                        + "(square to the axis: towards the dish's upper edge)";
    }

    private static List<Surface> surfaces(TraceResult result) {
        List<Surface> all = new ArrayList<>();
        all.add(new Surface("plane", result.maps().crossing()));
        all.add(new Surface(isPan(result) ? "underside" : "disc", result.maps().caught()));
        result.maps().wall().ifPresent(map -> all.add(new Surface("wall", map)));
        result.maps().lid().ifPresent(map -> all.add(new Surface("lid", map)));
        return all;
    }

    private static Stream<Cell> cells(TraceResult result) {
        return surfaces(result).stream().flatMap(TraceQuantities::cells);
    }

    private static Stream<Cell> cells(Surface surface) {
        FluxMap map = surface.map();
        return IntStream.range(0, map.rows() * map.columns())
                .mapToObj(k -> new Cell(
                        surface.name(),
                        map.first(k % map.columns()),
                        map.second(k / map.columns()),
                        new Estimate(map.flux()[k], map.standardError()[k])));
    }

    private static List<String> notes(TraceResult result) {
        List<String> notes = new ArrayList<>();
        notes.add("replicates: " + result.replicates());
        notes.add(frame(result));
        if (isPan(result)) {
            notes.add("plane: all light that crosses the plane of the underside from below, caught or not");
            notes.add("underside: the part of it that the underside catches");
            notes.add("wall: x_m is measured round the wall from the side away from the sun over the right; y_m is the "
                    + "height above the underside");
            notes.add("lid: as seen from above; x and y as for the underside");
        } else {
            notes.add("plane: all light that crosses the plane of the disc from the dish's side, caught or not");
            notes.add("disc: the part of it that the disc catches");
        }
        for (Surface each : surfaces(result)) {
            notes.add("cells of " + each.name() + ": " + each.map().columns() + " x "
                    + each.map().rows() + " of "
                    + StableNumber.of(each.map().cellWidth(), NOTE_DIGITS) + " m x "
                    + StableNumber.of(each.map().cellHeight(), NOTE_DIGITS) + " m");
        }
        return notes;
    }
}
