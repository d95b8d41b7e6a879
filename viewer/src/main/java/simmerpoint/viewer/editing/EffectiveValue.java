package simmerpoint.viewer.editing;

import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.Zone;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.ZoneKeys;
import simmerpoint.units.TypedQuantity;

/** The figure that holds for a key that is left out: its default, or what the scenario takes from the material or the pan. */
final class EffectiveValue {
    private static final Map<String, ToDoubleFunction<Mirror>> OF_MIRROR = Map.of(
            "reflectance", Mirror::reflectance,
            "scattered", Mirror::scattered,
            "slope-error", Mirror::slopeErrorRadians,
            "beam-spread", Mirror::beamSpreadRadians,
            "wide-share", Mirror::wideShare,
            "wide-spread", Mirror::wideSpreadRadians,
            "dust", Mirror::dust,
            "panel-tilt", Mirror::panelTiltRadians);

    private static final Map<String, ToDoubleFunction<DishPlan>> OF_ZONE = Map.of(
            "inner-diameter", DishPlan::hubMetres,
            "outer-diameter", DishPlan::diameterMetres,
            "gap", DishPlan::gapMetres);

    private static final Map<String, ToDoubleFunction<Scenario>> TAKEN = Map.ofEntries(
            Map.entry(
                    "pan.underside-thickness",
                    s -> s.cooking()
                            .map(k -> k.vessel().plate().thicknessMetres())
                            .orElse(Double.NaN)),
            Map.entry(
                    "pan.opening",
                    s -> s.cooking()
                            .map(k -> k.vessel().pan().diameterMetres()
                                    * Math.sqrt(k.vessel().openShare()))
                            .orElse(Double.NaN)),
            Map.entry(
                    "pan.mass",
                    s -> s.cooking().map(k -> k.vessel().massKilograms()).orElse(Double.NaN)),
            Map.entry(
                    "pan.water",
                    s -> s.cooking().map(k -> k.contents().waterKilograms()).orElse(Double.NaN)),
            Map.entry("sun.beam", s -> s.sun().beamWattsPerSquareMetre()));

    private static final int DECIMALS = 3;
    private static final int WEIGHED = 1;

    private EffectiveValue() {}

    /** The figure, for a key that is not given. */
    static Optional<TypedQuantity> of(Key key, Scenario scenario) {
        if (key.dimension() == null || key.kind() == Key.Kind.LATITUDE || key.kind() == Key.Kind.LONGITUDE) {
            return Optional.empty();
        }
        if (key.defaultIsValue()) {
            return TypedQuantity.of(key.defaultText(), key.dimension());
        }
        double si = taken(key, scenario);
        Optional<TypedQuantity> like = TypedQuantity.of(key.example(), key.dimension());
        int decimals = key.section().equals("pan") ? WEIGHED : DECIMALS;
        return Double.isFinite(si)
                ? like.map(q -> TypedQuantity.written(si, key.dimension(), q.unit(), decimals))
                : Optional.empty();
    }

    private static double taken(Key key, Scenario scenario) {
        Optional<Mirror> mirror = mirror(key, scenario);
        if (mirror.isPresent() && OF_MIRROR.containsKey(key.name())) {
            return OF_MIRROR.get(key.name()).applyAsDouble(mirror.get());
        }
        Optional<Zone> zone = zone(key, scenario);
        if (zone.isPresent() && OF_ZONE.containsKey(key.name())) {
            return OF_ZONE.get(key.name()).applyAsDouble(zone.get().plan());
        }
        return TAKEN.containsKey(key.path()) ? TAKEN.get(key.path()).applyAsDouble(scenario) : Double.NaN;
    }

    /** The mirror that a key is about: that of the dish, or of a zone that there is. */
    private static Optional<Mirror> mirror(Key key, Scenario scenario) {
        if (key.section().equals("mirror")) {
            return Optional.of(scenario.mirror());
        }
        return zone(key, scenario)
                .filter(zone -> key.section().endsWith(".mirror"))
                .map(zone -> scenario.mirror(zone.name()));
    }

    private static Optional<Zone> zone(Key key, Scenario scenario) {
        Optional<String> name = ZoneKeys.zoneOf(key.path());
        return scenario.dish().cut().zones().stream()
                .filter(zone -> name.filter(zone.name()::equals).isPresent())
                .findFirst();
    }
}
