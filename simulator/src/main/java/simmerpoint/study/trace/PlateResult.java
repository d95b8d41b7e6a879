package simmerpoint.study.trace;

import java.util.Optional;
import java.util.OptionalDouble;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.PanMaterial;
import simmerpoint.heat.Surroundings;
import simmerpoint.heat.ThermalPan;
import simmerpoint.heat.UndersidePlate;
import simmerpoint.heat.plate.BottomTemperatures;
import simmerpoint.heat.plate.CookingOil;
import simmerpoint.heat.plate.PanSheet;
import simmerpoint.heat.plate.SheetContents;
import simmerpoint.scenario.CookingSetup;
import simmerpoint.target.FluxMaps;
import simmerpoint.uncertainty.LikelyRange;

/**
 * How hot the bottom of the pan gets from place to place with the likely losses.
 *
 * @param plate the sheet of the underside
 * @param empty where it ends empty but for a film of oil, lid off, in all of the light
 * @param hotSeconds time until its middle is at {@link #GRIDDLE_CELSIUS} from the air's temperature; empty if never
 * @param held with less light, so that its middle stays there; empty if it never gets there
 * @param heldThicker the same with a sheet twice as thick
 * @param heldCopper the same with copper of the same thickness; empty if it is copper
 * @param waterCelsius temperature at which the water settles, or boils
 * @param underWaterCelsius hottest place of the bottom's inside then
 * @param underFoodCelsius the same under food that lies still, {@link #LAYER_METRES} thick
 * @param range the range of such cookers; empty if it was not worked out
 * @param oil the pan with oil for deep frying in it
 */
public record PlateResult(
        UndersidePlate plate,
        BottomTemperatures empty,
        OptionalDouble hotSeconds,
        Optional<BottomTemperatures> held,
        Optional<BottomTemperatures> heldThicker,
        Optional<BottomTemperatures> heldCopper,
        double waterCelsius,
        double underWaterCelsius,
        double underFoodCelsius,
        Optional<Range> range,
        OilResult oil) {
    /**
     * Four in five such cookers: the pan as given, its light as it is shared out, in the light that they take up for each watt that
     * they lose.
     *
     * @param middleCelsius of {@link #empty}
     * @param edgeCelsius of {@link #empty}
     * @param underFoodCelsius of {@link #underFoodCelsius}
     */
    public record Range(LikelyRange middleCelsius, LikelyRange edgeCelsius, LikelyRange underFoodCelsius) {}

    /** A griddle for pancakes, 375 °F: common practice in recipes. */
    public static final double GRIDDLE_CELSIUS = 190;

    /** A layer of rice or thick porridge at rest: engineering judgement. */
    public static final double LAYER_METRES = 0.005;

    /** Conductivity of wet food, nearly that of water, W/(m K): handbooks, from memory. */
    private static final double FOOD_CONDUCTIVITY = 0.6;

    /** Name of the best metal to compare with. */
    public static final String COPPER = "copper";

    static PlateResult of(HeatResult heat, FluxMaps maps, Optional<LikelyRange> likely) {
        return new Sheets(heat, maps, likely).result();
    }

    private record Sheets(HeatResult heat, FluxMaps maps, Optional<LikelyRange> likely) {
        PlateResult result() {
            ThermalPan vessel = heat.cooking().vessel();
            UndersidePlate plate = vessel.plate();
            PanSheet empty = sheet(plate, new SheetContents.Dry());
            BottomTemperatures end = empty.steady();
            boolean hot = end.middleCelsius() > GRIDDLE_CELSIUS;
            double water = heat.settlesCelsius().likely();
            double line = vessel.waterLineMetres(heat.cooking().contents().waterKilograms());
            PanSheet food = sheet(plate, new SheetContents.Still(water, line, LAYER_METRES / FOOD_CONDUCTIVITY));
            return new PlateResult(
                    plate,
                    end,
                    hot ? empty.secondsUntil(GRIDDLE_CELSIUS) : OptionalDouble.empty(),
                    hot ? empty.heldAt(GRIDDLE_CELSIUS) : Optional.empty(),
                    hot ? held(plate.material(), 2 * plate.thicknessMetres()) : Optional.empty(),
                    hot && !plate.material().name().equals(COPPER)
                            ? held(PanMaterial.find(COPPER).orElseThrow(), plate.thicknessMetres())
                            : Optional.empty(),
                    water,
                    sheet(plate, new SheetContents.Water(water, line)).hottestInsideCelsius(),
                    food.hottestInsideCelsius(),
                    likely.map(light -> range(light, empty, food)),
                    OilResult.of(
                            heat,
                            likely,
                            sheet(plate, new SheetContents.Oil(CookingOil.FRYING_CELSIUS, OilResult.depth(vessel)))));
        }

        private Range range(LikelyRange light, PanSheet empty, PanSheet food) {
            LikelyRange share = light.map(watts -> watts / heat.absorbed().total());
            return new Range(
                    share.map(s -> empty.steady(s).middleCelsius()),
                    share.map(s -> empty.steady(s).edgeCelsius()),
                    share.map(food::hottestInsideCelsius));
        }

        private Optional<BottomTemperatures> held(PanMaterial material, double thickness) {
            return sheet(new UndersidePlate(material, thickness), new SheetContents.Dry())
                    .heldAt(GRIDDLE_CELSIUS);
        }

        private PanSheet sheet(UndersidePlate plate, SheetContents contents) {
            CookingSetup kitchen = heat.cooking();
            Surroundings around = kitchen.around();
            AbsorbedLight absorbed = heat.absorbed();
            return new PanSheet(
                    kitchen.vessel(),
                    plate,
                    around,
                    contents,
                    absorbed,
                    maps.caught(),
                    maps.wall().orElseThrow());
        }
    }
}
