package simmerpoint.workshop;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import simmerpoint.dish.Curve;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.Zone;
import simmerpoint.dish.cut.OffAxisShell;
import simmerpoint.dish.sheet.SheetBending;
import simmerpoint.dish.sheet.SheetSag;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.build.BuildTrace;
import simmerpoint.study.build.DepthTolerance;
import simmerpoint.units.SawLength;
import simmerpoint.units.UnitSystem;

/**
 * All that is cut for a dish.
 *
 * @param scenario the cooker
 * @param units by whose round numbers it is checked
 * @param stock what it is cut from
 * @param rib its ribs, if it has some
 * @param string how to draw them, where they follow the parabola
 * @param panels each different panel
 * @param films the film for each
 * @param ribSheets ribs laid out on sheets
 * @param panelSheets panels laid out on sheets
 * @param filmSheets film laid out on its roll or sheets
 * @param smaller a dish a little smaller that takes fewer sheets or rolls, if it was looked for and there is one
 * @param trace what the dish does with its pan, if it was traced
 */
public record CutPlan(
        Scenario scenario,
        UnitSystem units,
        CuttingStock stock,
        Optional<RibShape> rib,
        Optional<StringRule> string,
        List<Piece> panels,
        List<Piece> films,
        SheetLayout ribSheets,
        SheetLayout panelSheets,
        SheetLayout filmSheets,
        Optional<SmallerDish> smaller,
        Optional<BuildTrace> trace) {
    /** More different panels are not a plan that anybody cuts by hand. */
    private static final int MOST_SHAPES = 200;

    private static final int MOST_PANELS = 5000;

    private static final String SHEET = "sheet";

    /** Polyester film of 0.05 mm with its adhesive, kg/m² (typical). */
    private static final double FILM_AREAL_MASS = 0.1;

    /** Keeps copies of the lists. */
    public CutPlan {
        panels = List.copyOf(panels);
        films = List.copyOf(films);
    }

    /**
     * The plan for a scenario, sheets and film of sizes that are usual in those units where the scenario names none.
     *
     * @throws CuttingException if the dish cannot be built so
     */
    public static CutPlan of(CheckedScenario read, UnitSystem units) throws CuttingException {
        return of(read.scenario(), CuttingStock.of(UsualStock.in(read.values(), units)), units);
    }

    /**
     * The plan for a cooker made of that stock.
     *
     * @throws CuttingException if the dish cannot be built so
     */
    static CutPlan of(Scenario scenario, CuttingStock stock, UnitSystem units) throws CuttingException {
        DishPlan plan = scenario.dish();
        List<Piece> mirrors = mirrors(plan);
        List<Piece> panels = panels(mirrors, stock);
        boolean alike = mirrors.stream()
                        .map(mirror -> material(scenario, mirror))
                        .distinct()
                        .count()
                == 1;
        List<Piece> films = mirrors.stream()
                .map(mirror -> PanelPieces.film(mirror, alike ? "film" : material(scenario, mirror), stock.filmEdge()))
                .toList();
        Optional<RibShape> rib = checkedRib(plan, stock, units);
        return new CutPlan(
                scenario,
                units,
                stock,
                rib,
                rib.filter(r -> plan.cut().curve() == Curve.PARABOLA)
                        .map(r -> StringRule.of(plan.parabola(), r.rim(), units)),
                panels,
                films,
                SheetLayout.of(ribs(rib), stock.sheet(), stock.spacing(), SHEET, units),
                SheetLayout.of(panels, stock.sheet(), stock.spacing(), SHEET, units),
                filmSheets(scenario, films, stock, units),
                Optional.empty(),
                Optional.empty());
    }

    /**
     * Refuses a cooker whose ribs or panels cannot be cut from that stock, without laying them out.
     *
     * @throws CuttingException if the dish cannot be built so
     */
    static void check(Scenario scenario, CuttingStock stock) throws CuttingException {
        DishPlan plan = scenario.dish();
        Optional<RibShape> rib = checkedRib(plan, stock, UnitSystem.METRIC);
        SheetLayout.check(ribs(rib), stock.sheet(), SHEET, UnitSystem.METRIC);
        SheetLayout.check(panels(mirrors(plan), stock), stock.sheet(), SHEET, UnitSystem.METRIC);
    }

    private static List<Piece> panels(List<Piece> mirrors, CuttingStock stock) {
        return mirrors.stream()
                .map(mirror -> PanelPieces.panel(mirror, stock.overlap()))
                .toList();
    }

    private static Optional<RibShape> checkedRib(DishPlan plan, CuttingStock stock, UnitSystem units)
            throws CuttingException {
        Optional<RibShape> rib = plan.cut().ribs(plan).map(ribs -> RibShape.of(plan, ribs, stock));
        if (rib.isPresent()) {
            RibChecks.check(rib.get(), units);
        }
        return rib;
    }

    /** Film of one material after that of another: no sheet has both. */
    private static SheetLayout filmSheets(Scenario scenario, List<Piece> films, CuttingStock stock, UnitSystem units)
            throws CuttingException {
        int lengths = films.stream()
                .flatMap(film -> FilmLengths.of(film, stock).stream())
                .mapToInt(FilmLengths::count)
                .sum();
        if (lengths > MOST_PANELS) {
            throw new CuttingException("film of "
                    + SawLength.text(stock.film().width(), stock.film().length(), units)
                    + " is too small for these panels: they would take " + lengths
                    + " lengths of it; take a larger roll or sheet (build.film-width, build.film-length).");
        }
        Map<String, List<Piece>> byMaterial = new LinkedHashMap<>();
        for (Piece film : films) {
            byMaterial
                    .computeIfAbsent(material(scenario, film), name -> new ArrayList<>())
                    .add(film);
        }
        List<SheetLayout.Sheet> sheets = new ArrayList<>();
        for (List<Piece> same : byMaterial.values()) {
            List<Piece> laid = new ArrayList<>();
            for (Piece film : same) {
                laid.addAll(FilmLengths.of(film, stock).map(FilmLengths::pieces).orElse(List.of(film)));
            }
            sheets.addAll(SheetLayout.of(laid, stock.film(), stock.spacing(), "film", units, stock.filmGrain())
                    .sheets());
        }
        return new SheetLayout(stock.film(), sheets);
    }

    /** Film that is laid in lengths side by side, since the roll or sheet is smaller than it. */
    public List<FilmLengths> filmLengths() {
        return films.stream()
                .flatMap(film -> FilmLengths.of(film, stock).stream())
                .toList();
    }

    /** Film laid out on its roll or sheets by the material that it is. */
    public Map<String, SheetLayout> filmByMaterial() {
        Map<String, List<SheetLayout.Sheet>> sheets = new LinkedHashMap<>();
        for (SheetLayout.Sheet sheet : filmSheets.sheets()) {
            sheets.computeIfAbsent(material(scenario, sheet.placed().get(0).piece()), name -> new ArrayList<>())
                    .add(sheet);
        }
        Map<String, SheetLayout> layouts = new LinkedHashMap<>();
        sheets.forEach((material, some) -> layouts.put(material, new SheetLayout(filmSheets.sheet(), some)));
        return layouts;
    }

    private static String material(Scenario scenario, Piece film) {
        return scenario.dish()
                .zoneOf(film.panels().get(0))
                .flatMap(name -> scenario.dish().cut().zones().stream()
                        .filter(zone -> zone.name().equals(name))
                        .findFirst())
                .flatMap(Zone::mirror)
                .orElse(scenario.mirror())
                .material();
    }

    /** The same with what tracing the dish has found. */
    public CutPlan with(BuildTrace found) {
        return with(smaller, Optional.of(found));
    }

    /** The same, told whether a dish a little smaller than the one read takes fewer sheets. */
    public CutPlan comparedWithSmaller(CheckedScenario read) {
        return with(SmallerDish.of(read, this), trace);
    }

    private CutPlan with(Optional<SmallerDish> less, Optional<BuildTrace> found) {
        return new CutPlan(
                scenario, units, stock, rib, string, panels, films, ribSheets, panelSheets, filmSheets, less, found);
    }

    private static List<Piece> mirrors(DishPlan plan) throws CuttingException {
        List<Piece> panels = PanelPieces.mirrors(plan);
        if (plan.cut() instanceof OffAxisShell shell) {
            throw new CuttingException(String.format(
                    Locale.ROOT,
                    "nothing to cut: the antenna is there already. To line it you need %.2f m² of film, plus a fifth for overlaps"
                            + " and waste.",
                    shell.tape().mirrorArea()));
        }
        if (plan.cut().ownSize().isPresent()) {
            throw new CuttingException("a mirror that was measured is there already: it has no panels to cut.");
        }
        if (panels.isEmpty()) {
            throw new CuttingException(
                    "a smooth dish has no panels to cut; choose how it is cut with dish.surface, for instance "
                            + "\"cut: bent-strips, sectors: 24\".");
        }
        int count = panels.stream().mapToInt(Piece::count).sum();
        if (panels.size() > MOST_SHAPES || count > MOST_PANELS) {
            throw new CuttingException("this dish has " + count + " panels of " + panels.size()
                    + " shapes; a plan to cut by hand has at most " + MOST_PANELS + " of " + MOST_SHAPES
                    + ". Take fewer panels.");
        }
        return panels;
    }

    private static List<Piece> ribs(Optional<RibShape> rib) {
        return rib.map(r -> ThroughRibs.of(r).pieces()).orElse(List.of());
    }

    /** Ribs that run through the middle, if some do. */
    public Optional<ThroughRibs> throughRibs() {
        return rib.map(ThroughRibs::of).filter(through -> through.count() > 0);
    }

    /** Every sort of piece: ribs, panels, film. */
    public List<Piece> pieces() {
        List<Piece> all = new ArrayList<>(ribs(rib));
        all.addAll(panels);
        all.addAll(films);
        return all;
    }

    /** Whether film is cut to other outlines than its panels. */
    public boolean hasOwnFilm() {
        return stock.filmEdge() != stock.overlap();
    }

    /** Where each panel goes. */
    public List<PanelPlace> places() {
        return PanelPlace.of(scenario.dish(), panels);
    }

    /** What to measure on the finished dish, if it has ribs and so a rim to lay a straight edge on. */
    public Optional<BuildCheck> check() {
        return rib.map(r -> BuildCheck.of(r, units));
    }

    /** Distances from the axis at which depths are measured, m. */
    public double[] checkedRadii() {
        return check().stream()
                .flatMap(check -> check.depths().stream())
                .mapToDouble(BuildCheck.Depth::radius)
                .toArray();
    }

    /** How far the mirror may be off at a distance from the axis, if the dish was traced. */
    public Optional<DepthTolerance> tolerance(double radius) {
        return trace.stream()
                .flatMap(found -> found.tolerances().stream())
                .filter(each -> each.radius() == radius)
                .findFirst();
    }

    /** A card with the curve of the ribs' edge, to lay into the finished dish along a rib. */
    public Optional<Piece> template() {
        return rib.map(CardTemplate::of);
    }

    /** Number of sheets that ribs and panels take. */
    public int sheets() {
        return ribSheets.sheets().size() + panelSheets.sheets().size();
    }

    /** What it costs, if the scenario gives prices. */
    public Optional<BuildCost> cost() {
        return stock.prices()
                .map(prices -> prices.cost(
                        ribSheets.sheets().size(),
                        panelSheets.sheets().size(),
                        filmSheets.sheets().size()));
    }

    /** Mass of the ribs, kg. */
    public double ribMass() {
        return area(ribs(rib).stream()) * stock.ribMaterial().arealMass();
    }

    /** Mass of the panels without film, kg. */
    public double panelMass() {
        return area(panels.stream()) * stock.panelMaterial().arealMass();
    }

    /** Area of all film that is stuck on, m². */
    public double filmArea() {
        return area(films.stream());
    }

    /** Mass of the film and its adhesive, kg. */
    public double filmMass() {
        return filmArea() * FILM_AREAL_MASS;
    }

    /** Mass of ribs, panels and film, kg. */
    public double mass() {
        return ribMass() + panelMass() + filmMass();
    }

    /** How the edges of flat panels on ribs are bevelled, one for each piece. */
    public List<EdgeBevel> bevels() {
        boolean flat = panels.stream().noneMatch(Piece::bent);
        return rib.isPresent() && flat ? EdgeBevel.of(places(), scenario.dish().gapMetres()) : List.of();
    }

    /** How panels sag between two ribs at the rim, or tiles that are held at their edges alone, if their stiffness is known. */
    public Optional<SheetSag> sag() {
        CuttingStock.Sheeting sheet = stock.panelMaterial();
        if (!(sheet.material().modulus() > 0)) {
            return Optional.empty();
        }
        return rib.isPresent()
                ? Optional.of(SheetSag.betweenRibs(
                        sheet.material(),
                        sheet.thickness(),
                        2 * rib.get().rim() * Math.sin(Math.PI / rib.get().count())))
                : scenario.dish()
                        .largestPanel()
                        .map(tile -> SheetSag.ofDisc(sheet.material(), sheet.thickness(), tile.narrowestMetres()));
    }

    /** What the panels' sheet does when it is bent, if its stiffness is known. */
    public Optional<SheetBending> bending() {
        CuttingStock.Sheeting sheet = stock.panelMaterial();
        return Optional.of(new SheetBending(sheet.material(), sheet.thickness()))
                .filter(known -> known.material().modulus() > 0);
    }

    /** What the dish puts on its mount. */
    public MountLoad mountLoad() {
        MassCentre centre = new MassCentre();
        ribs(rib)
                .forEach(piece -> centre.add(
                        piece.totalArea() * stock.ribMaterial().arealMass(),
                        piece.outline().centroid().y() - stock.belowCurve()));
        Map<String, Double> areas = new HashMap<>();
        panels.forEach(piece -> areas.put(piece.name(), piece.outline().area()));
        double arealMass = stock.panelMaterial().arealMass() + FILM_AREAL_MASS;
        places().forEach(place -> centre.addPanel(areas.get(place.piece()) * arealMass, place));
        DishPlan dish = scenario.dish();
        double area = dish.rimArea();
        return MountLoad.of(mass(), centre.height(), scenario.aim().mountMetres(), area, dish.diameterMetres());
    }

    /** Wind into the dish as it stands for the scenario's sun. */
    public WindLoad wind() {
        DishPlan dish = scenario.dish();
        double along = scenario.aim().mountMetres() + dish.profile().height(dish.radiusMetres()) / 2;
        double height = scenario.heights().tripodHeightMetres()
                + along * Math.sin(scenario.sun().elevationRadians());
        CuttingStock.Tripod tripod = stock.tripod();
        double area = dish.rimArea();
        return WindLoad.of(area, height, mass() + tripod.mass(), tripod.feet(), tripod.footRadius());
    }

    private static double area(Stream<Piece> pieces) {
        return pieces.mapToDouble(Piece::totalArea).sum();
    }
}
