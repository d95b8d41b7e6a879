package simmerpoint.quantities;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import simmerpoint.dish.sheet.SheetSag;
import simmerpoint.geometry.Point;
import simmerpoint.study.build.BuildTrace;
import simmerpoint.study.build.DepthTolerance;
import simmerpoint.study.build.RibsAsBuilt;
import simmerpoint.workshop.BuildCheck;
import simmerpoint.workshop.BuildCost;
import simmerpoint.workshop.CutPlan;
import simmerpoint.workshop.EdgeBevel;
import simmerpoint.workshop.MountLoad;
import simmerpoint.workshop.PanelPlace;
import simmerpoint.workshop.Piece;
import simmerpoint.workshop.RibShape;
import simmerpoint.workshop.StringRule;
import simmerpoint.workshop.ThroughRibs;

/** What {@code cut} finds; its table has a row for every point of the ribs' edge. */
public final class CutQuantities {
    private static final double STEP = 0.01;

    private static final Fields<RibShape> RIB = Fields.<RibShape>none()
            .number("rib_depth_m", "height of the ribs' edge at the rim above the vertex", RibShape::depth)
            .number("rib_arc_m", "length along the curve from the vertex to the rim", RibShape::arc)
            .number("rib_inner_end_m", "where ribs end and meet, from the axis", RibShape::innerEnd)
            .number("rib_outer_end_m", "where ribs end outside, from the axis", RibShape::outerEnd);

    private static final Fields<ThroughRibs> CROSS = Fields.<ThroughRibs>none()
            .number("cross_angle_rad", "at which two ribs cross that run through the middle", ThroughRibs::angle)
            .number("cross_slot_width_m", "of the slot in each of them", ThroughRibs::slotWidth)
            .number(
                    "cross_slot_depth_m",
                    "of that slot, from above in one and from below in the other",
                    ThroughRibs::slotDepth);

    private static final Fields<StringRule> STRING = Fields.<StringRule>none()
            .number("string_length_m", "length of the string from the pin to the bar", StringRule::string)
            .number("string_pin_m", "height of the pin above the vertex: the focus", StringRule::focus)
            .number("string_bar_m", "height of the bar above the vertex", StringRule::bar);

    private static final Fields<Piece> PIECE = Fields.<Piece>none()
            .text("name", "what it is", Piece::name)
            .word("use", "what it is for", Piece.Use.class, Piece::use)
            .whole("count", "how many", Piece::count)
            .number(
                    "width_m",
                    "longer side of the smallest box around it",
                    piece -> piece.outline().width())
            .number(
                    "height_m",
                    "shorter side of that box",
                    piece -> piece.outline().height())
            .number("area_m2", "area of one", piece -> piece.outline().area());

    private static final Fields<PanelPlace> PLACE = Fields.<PanelPlace>none()
            .whole("number", "of the panel, from 1", PanelPlace::number)
            .text("piece", "what it is cut as", PanelPlace::piece)
            .vector("middle_m", "mean of its corners in the dish frame", p ->
                    new double[] {p.middle().x(), p.middle().y(), p.middle().z()})
            .number("cant_rad", "how far it leans from level when the dish lies on its back", PanelPlace::cantRadians);

    private static final Fields<BuildCheck.Depth> DEPTH = Fields.<BuildCheck.Depth>none()
            .number("radius_m", "distance from the axis", BuildCheck.Depth::radius)
            .number("depth_m", "below a straight edge across the rim", BuildCheck.Depth::depth);

    private static final Fields<MountLoad> MOUNT = Fields.<MountLoad>none()
            .number("centre_of_mass_m", "of the dish above its vertex", MountLoad::centreHeight)
            .number("mount_lever_m", "from the mount to the centre of mass", MountLoad::lever);

    private static final Fields<SheetSag> SAG = Fields.<SheetSag>none()
            .number(
                    "sag_m",
                    "of a flat panel between two ribs at the rim, or of a tile held at its edge, by its own weight",
                    SheetSag::depth)
            .number("sag_slope_rad", "of that panel, root mean square", SheetSag::meanSlope);

    private static final Fields<EdgeBevel> BEVEL = Fields.<EdgeBevel>none()
            .text("piece", "which", EdgeBevel::piece)
            .optionalNumber("sides_rad", "towards the panels beside it", EdgeBevel::sides)
            .optionalNumber("inwards_rad", "towards the panel nearer the middle", EdgeBevel::inwards)
            .optionalNumber("outwards_rad", "towards the panel nearer the rim", EdgeBevel::outwards);

    static final Fields<BuildCost> COST = Fields.<BuildCost>none()
            .text("currency", "of the prices, as the scenario names it", BuildCost::currency)
            .number("cost", "of sheets, film, stand and all else, in that currency", BuildCost::total);

    private static final Fields<RibsAsBuilt.Rib> RIB_GAIN = Fields.<RibsAsBuilt.Rib>none()
            .whole("rib", "from 1, the dish's upper edge, anticlockwise as seen from the sun", RibsAsBuilt.Rib::number)
            .number("farthest_off_m", "greatest distance above or below its plan", RibsAsBuilt.Rib::farthestOff)
            .estimate("gain_power_W", "what mending it alone gains", RibsAsBuilt.Rib::gain);

    private static final Fields<RibsAsBuilt> AS_BUILT = Fields.<RibsAsBuilt>none()
            .estimate("planned_power_W", "the same figure on ribs as planned", RibsAsBuilt::planned)
            .estimate("ribs_gain_power_W", "what mending all ribs gains", RibsAsBuilt::gain)
            .rows("ribs_as_built", "the one to mend first comes first", RibsAsBuilt::ribs, RIB_GAIN);

    private static final Fields<DepthTolerance> TOLERANCE = Fields.<DepthTolerance>none()
            .number("radius_m", "distance from the axis", DepthTolerance::radius)
            .number(
                    "tolerance_m",
                    "how far off ribs may be there until a fiftieth of the watts is lost",
                    DepthTolerance::metres)
            .flag("more_will_do", "whether that much costs less; farther was not looked", DepthTolerance::isMore);

    private static final Fields<BuildTrace> TRACE = Fields.<BuildTrace>none()
            .estimate("useful_power_W", "cooking power; of a bare disc, caught", BuildTrace::watts)
            .rows("tolerances", "at the distances of depths", BuildTrace::tolerances, TOLERANCE)
            .rows(
                    ShapeToleranceQuantities.KEY,
                    ShapeToleranceQuantities.LABEL,
                    BuildTrace::shape,
                    ShapeToleranceQuantities.FIELDS)
            .optionalEstimate(
                    "parabola_gain_power_W",
                    "what ribs cut to the parabola would gain, where they are cut to another curve",
                    BuildTrace::parabolaGain)
            .includeOptional(BuildTrace::ribs, AS_BUILT);

    private static final Fields<CutPlan> ALL = Fields.<CutPlan>none()
            .includeOptional(CutPlan::rib, RIB)
            .includeOptional(plan -> plan.throughRibs().filter(ThroughRibs::cross), CROSS)
            .includeOptional(CutPlan::string, STRING)
            .rows("pieces", "every sort of piece", CutPlan::pieces, PIECE)
            .rows("panels", "where each panel goes", CutPlan::places, PLACE)
            .rows(
                    "depths",
                    "to measure on the finished dish",
                    plan -> plan.check().map(BuildCheck::depths).orElse(List.of()),
                    DEPTH)
            .whole("sheets", "sheets for ribs and panels", CutPlan::sheets)
            .number(
                    "film_length_m",
                    "length of film that is used of the roll",
                    plan -> plan.filmSheets().usedLength())
            .number(
                    "film_used_share",
                    "area of the pieces of film in that length",
                    plan -> plan.filmSheets().usedShare())
            .number("rib_mass_kg", "all ribs", CutPlan::ribMass)
            .number("panel_mass_kg", "all panels without film", CutPlan::panelMass)
            .number("mass_kg", "ribs, panels and film", CutPlan::mass)
            .number(
                    "tipping_wind_m_s",
                    "wind into the open dish that tips it over its feet",
                    plan -> plan.wind().tippingSpeed())
            .includeOptional(CutPlan::sag, SAG)
            .include(CutPlan::mountLoad, MOUNT)
            .rows("bevels", "of flat panels, one for each piece", CutPlan::bevels, BEVEL)
            .includeOptional(CutPlan::cost, COST)
            .optionalNumber("cost_per_W", "cost for each watt of cooking power", CutQuantities::perWatt)
            .includeOptional(CutPlan::trace, TRACE);

    private static final Fields<Point> EDGE = Fields.<Point>none()
            .number("radius_m", "distance from the axis", Point::x)
            .number("height_m", "of the ribs' edge above the vertex", Point::y);

    /** JSON and CSV of {@code cut}. */
    public static final Document<CutPlan> DOCUMENT =
            new Document<>("cut", plan -> plan.scenario().title(), null, ALL, new Table<>(EDGE, CutQuantities::edge));

    private CutQuantities() {}

    private static OptionalDouble perWatt(CutPlan plan) {
        return plan.cost().isPresent() && plan.trace().isPresent()
                ? plan.cost().get().perWatt(plan.trace().get().watts().value())
                : OptionalDouble.empty();
    }

    private static Stream<Point> edge(CutPlan plan) {
        return plan.rib().stream().flatMap(rib -> radii(rib).mapToObj(r -> new Point(r, rib.height(r))));
    }

    /** Every centimetre from the hub, and the rim. */
    private static DoubleStream radii(RibShape rib) {
        double first = STEP * Math.ceil(rib.hub() / STEP - 1e-9);
        int steps = (int) Math.floor((rib.rim() - first) / STEP + 1e-9);
        DoubleStream even = DoubleStream.iterate(0, k -> k <= steps, k -> k + 1).map(k -> first + k * STEP);
        return DoubleStream.concat(even, DoubleStream.of(rib.rim())).distinct();
    }
}
