package simmerpoint.scenario.doubts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.Zone;
import simmerpoint.dish.mirror.MaterialCatalogue;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.pan.CatalogueFinish;
import simmerpoint.pan.FinishCatalogue;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.SiteConditions;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.scenario.keys.MirrorKeys;
import simmerpoint.scenario.keys.ZoneKeys;
import simmerpoint.scenario.values.ScenarioValues;
import simmerpoint.uncertainty.Distribution;
import simmerpoint.uncertainty.Distributions;
import simmerpoint.uncertainty.Draws;
import simmerpoint.units.Dimension;
import simmerpoint.units.PlusMinus;

/** Everything that is not known exactly about one scenario, and the cookers that it may turn out to be. */
public final class ScenarioDoubts {
    private static final String REFLECTANCE = "mirror.reflectance";
    private static final String MIRROR = "mirror";
    private static final String TILT = "mirror.panel-tilt";
    private static final String SUN_BEAM = "sun.beam";
    private static final String SKY_BEAM = "sky.beam";
    private static final String TURBIDITY = "sky.turbidity";
    private static final String SETTING = "sky.setting";
    private static final String BY_HAND = "aim.by-hand";

    private final ScenarioValues values;
    private final Scenario scenario;
    private final boolean sky;
    private final boolean luck;
    private final List<Doubt> doubts = new ArrayList<>();

    private ScenarioDoubts(CheckedScenario read, boolean sky, boolean luck) {
        values = read.values();
        scenario = read.scenario();
        this.sky = sky;
        this.luck = luck;
    }

    /** The doubts that the file gives, and the usual ones for the rest. */
    public static ScenarioDoubts of(CheckedScenario read) {
        return of(read, read.scenario().site().filter(SiteConditions::timed).isPresent());
    }

    /** The same where the beam is that of the sky of its place, whatever sun the file names. */
    public static ScenarioDoubts underItsSky(CheckedScenario read) {
        return of(read, true);
    }

    private static ScenarioDoubts of(CheckedScenario read, boolean sky) {
        ScenarioDoubts all = new ScenarioDoubts(read, sky, true);
        all.aim();
        all.beam();
        all.pan();
        DoubtTable.rows().values().stream()
                .filter(row -> Keys.find(row.cause()).isPresent())
                .forEach(all::ofKey);
        Keys.all().stream().filter(key -> !all.isKnown(key.path())).forEach(all::given);
        return all;
    }

    /** No doubt about anything, and every cooker glued alike, for comparison. */
    public static ScenarioDoubts none(CheckedScenario read) {
        return new ScenarioDoubts(read, false, false);
    }

    /** Whether something is cooked. */
    public boolean hasPan() {
        return scenario.cooking().isPresent();
    }

    /** All of them. */
    public List<Doubt> all() {
        return List.copyOf(doubts);
    }

    /** How likely the values of each are. */
    public List<Distribution> laws() {
        return doubts.stream().map(Doubt::law).toList();
    }

    /** The cooker of one draw; empty if its values do not go together, such as a hub wider than its dish. */
    public Optional<DrawnCooker> cooker(Draws draws, int draw) {
        double[] drawn = draws.values(laws(), draw);
        CookerBuilder cooker = new CookerBuilder();
        for (int k = 0; k < drawn.length; k++) {
            cooker.set(doubts.get(k).cause(), drawn[k]);
        }
        return cooker.build(values, scenario.dish().cut(), draw, luck ? 1L + draw : 0);
    }

    private boolean isKnown(String cause) {
        return cause.equals(SUN_BEAM)
                || cause.equals(SKY_BEAM)
                || doubts.stream().anyMatch(d -> d.cause().equals(cause));
    }

    private void add(String cause, DoubtTable.Row row, Distribution law, DoubtSize size, boolean given) {
        doubts.add(new Doubt(
                cause, row.name(), law, size, given, given ? "the scenario" : row.source(), row.measurement()));
    }

    private void aim() {
        DoubtTable.Row row = DoubtTable.get("aim");
        Distribution law = Distributions.normal(0, values.number(BY_HAND));
        DoubtSize size = DoubtSize.of(0, values.number(BY_HAND), Dimension.ANGLE);
        add(CookerBuilder.AIM_UP, row, law, size, values.has(BY_HAND));
        add(CookerBuilder.AIM_SIDE, row, law, size, values.has(BY_HAND));
    }

    /** The beam as a factor, since it may come from the sky. */
    private void beam() {
        boolean timed = scenario.site().filter(SiteConditions::timed).isPresent();
        String measured = sky && (values.has(SKY_BEAM) || !timed) ? SKY_BEAM : SUN_BEAM;
        OptionalDouble deviation = values.deviation(measured);
        DoubtTable.Row row = DoubtTable.get(beamRow(timed));
        double width = deviation.isPresent() ? deviation.getAsDouble() / values.number(measured) : share(row);
        Distribution law = Distributions.normalWithin(1, width, 0.01, 2);
        add(CookerBuilder.BEAM, row, law, DoubtSize.of(1, width, Dimension.IRRADIANCE), deviation.isPresent());
    }

    private String beamRow(boolean timed) {
        if (!sky) {
            return values.has(SUN_BEAM) ? SUN_BEAM : "beam.usual";
        }
        if (values.has(SKY_BEAM) || (timed && values.has(SUN_BEAM))) {
            return "beam.measured";
        }
        return values.has(TURBIDITY) ? "beam.turbidity" : "beam." + values.text(SETTING);
    }

    private static double share(DoubtTable.Row row) {
        String perCent =
                PlusMinus.split("0 " + row.doubt()).doubt().replace("%", "").strip();
        return Double.parseDouble(perCent) / 100 / PlusMinus.DEVIATIONS;
    }

    private void pan() {
        if (scenario.cooking().isEmpty()) {
            return;
        }
        DoubtTable.Row row = DoubtTable.get(CookerBuilder.FINISH);
        String name = values.text("pan.finish");
        double doubt = FinishCatalogue.all().stream()
                .filter(finish -> finish.finish().name().equalsIgnoreCase(name))
                .mapToDouble(CatalogueFinish::doubt)
                .findFirst()
                .orElseThrow();
        double deviation = doubt / PlusMinus.DEVIATIONS;
        DoubtSize size = DoubtSize.of(0, deviation, Dimension.SHARE);
        add(CookerBuilder.FINISH, row, Distributions.normal(0, deviation), size, false);
        for (String losses : List.of(CookerBuilder.DRY, CookerBuilder.EVAPORATION)) {
            DoubtTable.Row of = DoubtTable.get(losses);
            add(losses, of, DoubtLaw.factor(of), DoubtSize.of(of, 1, Dimension.NUMBER), false);
        }
    }

    /** The usual doubt of a key, or what the file says of it. */
    private void ofKey(DoubtTable.Row row) {
        Key key = Keys.get(row.cause());
        if (row.cause().equals(SUN_BEAM) || !applies(key)) {
            return;
        }
        add(key, row, row.name(), number(key), deviation(key.path(), scenario.mirror()));
        if (key.section().equals(MIRROR)) {
            scenario.dish().cut().zones().forEach(zone -> ofZone(zone, key, row));
        }
    }

    /** The same of a zone with a material or a figure of its own; of others the doubt about the dish's mirror is theirs. */
    private void ofZone(Zone zone, Key key, DoubtTable.Row row) {
        Key own = Keys.get(ZoneKeys.path(zone.name(), key.path()));
        boolean ofMaterial = Key.FROM_MATERIAL.equals(key.defaultText())
                && values.has(ZoneKeys.path(zone.name(), MirrorKeys.MATERIAL));
        boolean tilts = !key.path().equals(TILT) || zone.plan().cut().has(CutTrait.PANELS);
        if (tilts && (ofMaterial || values.has(own.path()))) {
            Mirror mirror = zone.mirror().orElseThrow();
            String name = row.name() + ", zone " + zone.name();
            add(own, row, name, figure(key.path(), mirror), deviation(own.path(), mirror));
        }
    }

    private void add(Key key, DoubtTable.Row row, String name, double value, OptionalDouble deviation) {
        Distribution law = deviation.isPresent()
                ? DoubtLaw.normal(value, deviation.getAsDouble(), key.range())
                : DoubtLaw.of(row, value, key.dimension(), key.range());
        if (law.quantile(0.1) != law.quantile(0.9)) {
            boolean given = values.deviation(key.path()).isPresent();
            DoubtSize size = deviation.isPresent()
                    ? DoubtSize.of(value, deviation.getAsDouble(), key.dimension())
                    : DoubtSize.of(row, value, key.dimension());
            doubts.add(new Doubt(
                    key.path(), name, law, size, given, given ? "the scenario" : row.source(), row.measurement()));
        }
    }

    /** A ± in the file at any other key. */
    private void given(Key key) {
        OptionalDouble deviation = values.deviation(key.path());
        if (deviation.isPresent() && deviation.getAsDouble() > 0) {
            double value = values.number(key.path());
            Distribution law = DoubtLaw.normal(value, deviation.getAsDouble(), key.range());
            DoubtSize size = DoubtSize.of(value, deviation.getAsDouble(), key.dimension());
            doubts.add(new Doubt(key.path(), key.path(), law, size, true, "the scenario", "measure it"));
        }
    }

    private OptionalDouble deviation(String path, Mirror mirror) {
        OptionalDouble given = values.deviation(path);
        return given.isEmpty() && (path.equals(REFLECTANCE) || path.endsWith("." + REFLECTANCE))
                ? MaterialCatalogue.find(mirror.material()).stream()
                        .mapToDouble(m -> m.reflectanceDoubt() / PlusMinus.DEVIATIONS)
                        .findFirst()
                : given;
    }

    private boolean applies(Key key) {
        String section = key.section();
        if (section.equals("pan") || section.equals("air")) {
            return scenario.cooking().isPresent();
        }
        if (section.equals("dish.surface")) {
            return values.has(key.path());
        }
        if (key.path().equals(TILT)) {
            return scenario.dish().cut().has(CutTrait.PANELS);
        }
        return !key.path().equals(TURBIDITY) || values.has(TURBIDITY);
    }

    /** What holds: given, or from the material, the pan's size or the default. */
    private double number(Key key) {
        return switch (key.path()) {
            case "pan.water" -> scenario.cooking().orElseThrow().contents().waterKilograms();
            default -> key.section().equals(MIRROR) ? figure(key.path(), scenario.mirror()) : values.number(key.path());
        };
    }

    private static double figure(String path, Mirror mirror) {
        return switch (path) {
            case REFLECTANCE -> mirror.reflectance();
            case "mirror.scattered" -> mirror.scattered();
            case "mirror.slope-error" -> mirror.slopeErrorRadians();
            case "mirror.beam-spread" -> mirror.beamSpreadRadians();
            case "mirror.wide-share" -> mirror.wideShare();
            case "mirror.wide-spread" -> mirror.wideSpreadRadians();
            case "mirror.dust" -> mirror.dust();
            case TILT -> mirror.panelTiltRadians();
            default -> throw new IllegalArgumentException("no figure of a mirror: " + path);
        };
    }
}
