package simmerpoint.quantities;

import simmerpoint.study.panels.PanelFigures;
import simmerpoint.study.panels.PanelTurn;
import simmerpoint.study.panels.PanelsResult;

/** What {@code panels} finds; its table has one row per panel. */
public final class PanelsQuantities {
    private static final Fields<PanelTurn> TURN = Fields.<PanelTurn>none()
            .number(
                    "outer_edge_up_rad",
                    "by which its edge away from the dish's middle must rise",
                    PanelTurn::outerEdgeUp)
            .number(
                    "side_edge_up_rad",
                    "by which its edge that comes first anticlockwise, seen from the sun, must rise",
                    PanelTurn::sideEdgeUp)
            .number("outer_edge_up_m", "the same at that edge", PanelTurn::outerLiftMetres)
            .number("side_edge_up_m", "the same at that edge", PanelTurn::sideLiftMetres);

    private static final Fields<PanelFigures> PANEL = Fields.<PanelFigures>none()
            .whole("panel", "number as on the pieces to cut, from 1", PanelFigures::number)
            .number(
                    "x_m",
                    "middle of the panel, towards the dish's upper edge",
                    p -> p.middle().x())
            .number(
                    "y_m",
                    "middle of the panel, to the right as seen from behind the dish",
                    p -> p.middle().y())
            .number(
                    "z_m",
                    "middle of the panel, along the axis from the dish's middle",
                    p -> p.middle().z())
            .number("incident_power_W", "sunlight on the panel", PanelFigures::incident)
            .number("reflected_power_W", "leaves it as a beam", PanelFigures::reflected)
            .number("caught_power_W", "of that lands on the pan or disc", PanelFigures::caught)
            .estimate("caught_share", "caught \u00f7 reflected", PanelFigures::share)
            .number(
                    "landing_x_m",
                    "where the middle of its light crosses the plane of underside or disc",
                    p -> p.landing().x())
            .number(
                    "landing_y_m",
                    "the same to the right as seen from behind the dish",
                    p -> p.landing().y())
            .include(PanelFigures::turn, TURN)
            .number("caught_if_turned_W", "lands once all panels are turned so", PanelFigures::caughtTurned)
            .flag("worth_turning", "whether that is surely more", PanelFigures::isWorthTurning);

    private static final Fields<PanelsResult> FIELDS = Fields.<PanelsResult>none()
            .number("reflected_power_W", "leaves all panels as a beam", PanelsResult::reflected)
            .number("caught_power_W", "of that lands on the pan or disc", PanelsResult::caught)
            .number("gain_W", "lands more once the panels worth turning are turned", PanelsResult::gain)
            .number(
                    "one_panel_W_m2",
                    "light of the brightest panel alone where that is narrowest",
                    result -> result.strongest().flux())
            .whole("rays", "number of rays of each trace", PanelsResult::rays)
            .rows("panels", "those that light falls on, by their numbers", PanelsResult::panels, PANEL);

    /** JSON and CSV. */
    public static final Document<PanelsResult> DOCUMENT = new Document<>(
            "panels",
            result -> result.scenario().title(),
            PanelsResult::seed,
            FIELDS,
            new Table<>(PANEL, result -> result.panels().stream()));

    private PanelsQuantities() {}
}
