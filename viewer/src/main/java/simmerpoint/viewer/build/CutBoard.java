package simmerpoint.viewer.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import simmerpoint.drawing.pattern.PanelMap;
import simmerpoint.drawing.pattern.SheetsDrawing;
import simmerpoint.report.CutFiles;
import simmerpoint.units.SawLength;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.theme.Theme;
import simmerpoint.viewer.theme.Zoom;
import simmerpoint.workshop.CutPlan;
import simmerpoint.workshop.Piece;
import simmerpoint.workshop.SheetLayout;

/** The sheets with all pieces, to scale, and beside them the dish: what the mouse is on in one is shown in the other. */
final class CutBoard extends Region {
    private static final double MAP_SHARE = 0.36;
    private static final double MAP_MOST = 420;
    private static final double MAP_HIGH = 0.8;
    private static final double GAP = 16;

    private final CutPlan plan;
    private final UnitSystem units;
    private final ObjectProperty<Optional<Piece>> pointed =
            new SimpleObjectProperty<>(this, "pointed", Optional.empty());
    private final VBox sheets = new VBox();
    private final ScrollPane scroll = new ScrollPane();
    private final DishMap map;
    private final Label words = new Label();

    CutBoard(CutPlan plan, UnitSystem units, Theme theme, Node answer) {
        this.plan = plan;
        this.units = units;
        getStyleClass().add("cut-board");
        map = new DishMap("cut-dish", PanelMap.of(plan), plan.panels(), pointed);
        map.applyTheme(theme);
        words.setId("cut-piece");
        words.setWrapText(true);
        words.getStyleClass().add("cut-piece");
        sheets.setId("cut-sheets");
        sheets.getStyleClass().add("cut-sheets");
        add("Ribs", "cut-ribs", plan.ribSheets(), theme);
        add("Panels", "cut-panels", plan.panelSheets(), theme);
        plan.filmByMaterial()
                .forEach((material, layout) -> add(CutFiles.filmHeading(plan, material), "cut-film", layout, theme));
        sheets.getChildren().add(answer);
        scroll.setId("cut-scroll");
        scroll.setContent(sheets);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setMinSize(0, 0);
        getChildren().addAll(scroll, map, words);
        pointed.addListener((value, before, now) -> tell());
        tell();
    }

    private void add(String heading, String id, SheetLayout layout, Theme theme) {
        if (!layout.sheets().isEmpty()) {
            Label name = new Label(heading);
            name.getStyleClass().add("section-heading");
            SheetsView view = new SheetsView(id, heading, new SheetsDrawing(layout, units), plan.pieces(), pointed);
            view.applyTheme(theme);
            sheets.getChildren().addAll(name, view);
        }
    }

    /** What is pointed at, in a sentence. */
    private void tell() {
        words.setText(pointed.get()
                .map(this::sentence)
                .orElse("Point at a piece, or go through the pieces with the arrow keys, to see where it belongs."));
    }

    private String sentence(Piece piece) {
        List<String> parts = new ArrayList<>();
        parts.add(Character.toUpperCase(piece.name().charAt(0)) + piece.name().substring(1));
        parts.add(piece.count() + (piece.count() == 1 ? " piece" : " pieces"));
        parts.add(SawLength.text(piece.outline().width(), piece.outline().height(), units));
        String where = piece.use() == Piece.Use.RIB ? "; carries the panels from hub to rim" : "";
        return String.join(", ", parts) + (piece.bent() ? ", bent once it is cut" : "") + where + ".";
    }

    private double mapWidth() {
        return Math.min(Math.min(MAP_MOST * Zoom.of(this), MAP_SHARE * getWidth()), MAP_HIGH * getHeight());
    }

    @Override
    protected void layoutChildren() {
        double wide = Math.rint(mapWidth());
        double left = getWidth() - wide - GAP;
        scroll.resizeRelocate(0, 0, left, getHeight());
        map.resizeRelocate(left + GAP, 0, wide, wide);
        words.resizeRelocate(left + GAP, wide + 4, wide, Math.min(getHeight() - wide - 4, words.prefHeight(wide)));
    }
}
