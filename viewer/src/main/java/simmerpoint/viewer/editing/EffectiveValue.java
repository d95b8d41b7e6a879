package simmerpoint.viewer.editing;

import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.keys.Key;
import simmerpoint.units.TypedQuantity;

/** The figure that holds for a key that is left out: its default, or what the scenario takes from the material or the pan. */
final class EffectiveValue {
    private static final Map<String, ToDoubleFunction<Scenario>> TAKEN = Map.ofEntries(
            Map.entry("mirror.reflectance", s -> s.mirror().reflectance()),
            Map.entry("mirror.scattered", s -> s.mirror().scattered()),
            Map.entry("mirror.slope-error", s -> s.mirror().slopeErrorRadians()),
            Map.entry("mirror.beam-spread", s -> s.mirror().beamSpreadRadians()),
            Map.entry("mirror.wide-share", s -> s.mirror().wideShare()),
            Map.entry("mirror.wide-spread", s -> s.mirror().wideSpreadRadians()),
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
        double si = TAKEN.containsKey(key.path()) ? TAKEN.get(key.path()).applyAsDouble(scenario) : Double.NaN;
        Optional<TypedQuantity> like = TypedQuantity.of(key.example(), key.dimension());
        int decimals = key.section().equals("pan") ? WEIGHED : DECIMALS;
        return Double.isFinite(si)
                ? like.map(q -> TypedQuantity.written(si, key.dimension(), q.unit(), decimals))
                : Optional.empty();
    }
}
