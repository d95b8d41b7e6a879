package simmerpoint.dish.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import simmerpoint.dish.Cut;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.FlatPanel;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.PanelOutline;
import simmerpoint.dish.PanelSize;
import simmerpoint.dish.RibLayout;
import simmerpoint.dish.Zone;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Point;

/**
 * A dish of several zones, each with a cut of its own. What one zone leaves free another may cover; where the mirrors of two lie over one
 * another, those of the later zone lie on top.
 *
 * @param zones at least one; all of one focal length
 */
public record Zoned(List<Zone> zones) implements Cut {
    /** A smaller share of bare places needs no telling, %. */
    private static final int LEAST_BARE = 10;

    /** Keeps a copy; refuses a mesh, and zones within zones. */
    public Zoned {
        zones = List.copyOf(zones);
        if (zones.isEmpty()
                || zones.stream()
                        .anyMatch(zone -> !zone.plan().cut().has(CutTrait.PARABOLOID)
                                || !zone.plan().cut().zones().isEmpty())) {
            throw new IllegalArgumentException("only our own cuts can be zones, not " + zones);
        }
    }

    /** Not one that a file can ask for as the cut of a dish. */
    @Override
    public CutKind kind() {
        Set<CutTrait> traits = Stream.of(CutTrait.values()).filter(this::has).collect(Collectors.toSet());
        return new CutKind("zones", "several zones, each cut in its own way", List.of(), traits, values -> this);
    }

    /** What is said of the rim must hold for all zones, all else for one. */
    @Override
    public boolean has(CutTrait trait) {
        Stream<Cut> cuts = zones.stream().map(zone -> zone.plan().cut());
        return (trait == CutTrait.FULL_RIM || trait == CutTrait.PARABOLOID)
                ? cuts.allMatch(cut -> cut.has(trait))
                : cuts.anyMatch(cut -> cut.has(trait));
    }

    @Override
    public Cut withZones(UnaryOperator<Zone> change) {
        return new Zoned(zones.stream().map(change).toList());
    }

    @Override
    public MirrorSurface surface(DishPlan plan, Direction sunInDish) {
        return new ZonedSurface(zones);
    }

    /** Share of the mirrors of each zone that lies under those of others, by its name. */
    public Map<String, Double> hiddenShares() {
        ZonedSurface surface = new ZonedSurface(zones);
        Map<String, Double> shares = new LinkedHashMap<>();
        for (int z = 0; z < zones.size(); z++) {
            shares.put(zones.get(z).name(), surface.hiddenArea(z) / surface.mirrorArea(z));
        }
        return shares;
    }

    @Override
    public List<PanelOutline> outlines(DishPlan plan) {
        List<PanelOutline> all = new ArrayList<>();
        int first = 0;
        for (Zone zone : zones) {
            for (PanelOutline outline : zone.plan().outlines()) {
                all.add(new PanelOutline(first + outline.panel(), outline.edge(), outline.hole()));
            }
            first += zone.plan().surface(Direction.Z).panels();
        }
        return all;
    }

    @Override
    public List<FlatPanel> flatPanels(DishPlan plan) {
        List<FlatPanel> all = new ArrayList<>();
        int first = 0;
        for (Zone zone : zones) {
            for (FlatPanel panel : zone.plan().cut().flatPanels(zone.plan())) {
                all.add(new FlatPanel(first + panel.panel(), panel.edge(), panel.bent()));
            }
            first += zone.plan().surface(Direction.Z).panels();
        }
        return all;
    }

    @Override
    public String description(DishPlan plan, String panels, DoubleFunction<String> length) {
        Map<String, Double> hidden = hiddenShares();
        return zones.stream()
                .map(zone -> zone.name() + ": "
                        + zone.plan().cut().description(zone.plan(), count(zone), length)
                        + bare(zone)
                        + under(hidden.get(zone.name())))
                .collect(Collectors.joining("; "));
    }

    /** Share of a zone, between its hub and its outline, that has no mirror. */
    public static double bareShare(Zone zone) {
        MirrorSurface surface = zone.plan().surface(Direction.Z);
        PlanRegion hub = PlanRegion.circle(Math.max(1e-9, zone.plan().hubMetres() / 2));
        PlanRegion outline = region(zone);
        List<Point> corners = surface.outlineCorners();
        double within = outline.areaWithin(corners) - outline.common(hub).area();
        return 1 - surface.apertureArea() / within;
    }

    private static String bare(Zone zone) {
        long percent = Math.round(100 * bareShare(zone));
        return percent < LEAST_BARE ? "" : ", " + percent + "\u00a0% of this zone bare";
    }

    /** What lies under another zone is told from a five-hundredth on. */
    private static String under(double share) {
        return share < 0.002 ? "" : ", " + Math.max(1, Math.round(100 * share)) + "\u00a0% of it under another zone";
    }

    private static String count(Zone zone) {
        return String.valueOf(zone.plan().surface(Direction.Z).panels());
    }

    @Override
    public String shapeLossName() {
        return zones.stream()
                .map(zone -> zone.plan().cut())
                .filter(cut -> cut.has(CutTrait.PANELS))
                .map(Cut::shapeLossName)
                .distinct()
                .collect(Collectors.joining(", "));
    }

    /** That of the zone with the largest. */
    @Override
    public Optional<PanelSize> largestPanel(DishPlan plan) {
        return zones.stream()
                .flatMap(zone -> zone.plan().largestPanel().stream())
                .max(Comparator.comparingDouble(PanelSize::narrowestMetres));
    }

    /** Panels of zones have no one size. */
    @Override
    public Optional<String> panelSizeLabel(DishPlan plan, DoubleFunction<String> length) {
        return Optional.empty();
    }

    /** The ribs of the first zone that has some, from the hub of the whole dish to where its outermost zone ends: zones lie on one frame. */
    @Override
    public Optional<RibLayout> ribs(DishPlan plan) {
        return zones.stream()
                .map(zone -> zone.plan().cut())
                .filter(cut -> cut.has(CutTrait.RIBS))
                .findFirst()
                .flatMap(cut -> cut.ribs(plan.withCut(cut)))
                .map(ribs -> ribs.withEnds(ends(ribs.sectors(), plan)));
    }

    private List<Double> ends(int ribs, DishPlan plan) {
        List<List<Double>> ofZones = zones.stream()
                .map(zone -> region(zone).ends(ribs, plan.hubMetres() / 2, plan.radiusMetres()))
                .toList();
        return IntStream.range(0, ribs)
                .mapToObj(k ->
                        ofZones.stream().mapToDouble(ends -> ends.get(k)).max().orElseThrow())
                .toList();
    }

    private static PlanRegion region(Zone zone) {
        return zone.plan().cut() instanceof Clipped clipped
                ? clipped.within(zone.plan())
                : PlanRegion.circle(zone.plan().radiusMetres());
    }

    @Override
    public boolean fits(DishPlan plan) {
        return zones.stream().allMatch(zone -> zone.plan().cut().fits(zone.plan()));
    }

    @Override
    public double reachMetres(DishPlan plan) {
        return largest(zone -> zone.cut().reachMetres(zone));
    }

    @Override
    public double rimArea(DishPlan plan) {
        return PlanRegion.unionArea(zones.stream().map(Zoned::region).toList());
    }

    @Override
    public double upperEdgeMetres(DishPlan plan) {
        return largest(DishPlan::upperEdgeMetres);
    }

    @Override
    public double lowerEdgeMetres(DishPlan plan) {
        return largest(DishPlan::lowerEdgeMetres);
    }

    private double largest(ToDoubleFunction<DishPlan> of) {
        return zones.stream().map(Zone::plan).mapToDouble(of).max().orElseThrow();
    }
}
