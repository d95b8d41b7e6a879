package simmerpoint.workshop;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;

/**
 * All sheets of a plan side by side in one plane, for files that a cutter reads.
 *
 * @param layers ribs, panels and film; film that is laid in lengths side by side is left out
 * @param width of everything, m
 * @param height of everything, m
 */
public record CutterSheets(List<Layer> layers, double width, double height) {
    /** Room between sheets, m. */
    private static final double GAP = 0.05;

    /**
     * One sort of sheet.
     *
     * @param name in capitals
     * @param sheets their edges
     * @param cuts all lines to cut
     */
    public record Layer(String name, List<Polygon> sheets, List<Polygon> cuts) {}

    /** Of a plan. */
    public static CutterSheets of(CutPlan plan) {
        List<Layer> layers = new ArrayList<>();
        double x = 0;
        double height = 0;
        String[] names = {"RIBS", "PANELS", "FILM"};
        List<SheetLayout> layouts = List.of(plan.ribSheets(), plan.panelSheets(), wholeFilm(plan));
        for (int k = 0; k < names.length; k++) {
            SheetLayout layout = layouts.get(k);
            layers.add(layer(names[k], layout, x));
            x += layout.sheets().size() * (layout.sheet().width() + GAP);
            height = Math.max(
                    height, layout.sheets().isEmpty() ? 0 : layout.sheet().length());
        }
        return new CutterSheets(layers, x - GAP, height);
    }

    /** Film but for what is laid in lengths by hand. */
    private static SheetLayout wholeFilm(CutPlan plan) {
        Set<String> inLengths = plan.filmLengths().stream()
                .map(lengths -> lengths.film().name())
                .collect(Collectors.toSet());
        List<SheetLayout.Sheet> sheets = plan.filmSheets().sheets().stream()
                .map(sheet -> new SheetLayout.Sheet(sheet.placed().stream()
                        .filter(placed -> !inLengths.contains(placed.piece().name()))
                        .toList()))
                .filter(sheet -> !sheet.placed().isEmpty())
                .toList();
        return new SheetLayout(plan.filmSheets().sheet(), sheets);
    }

    private static Layer layer(String name, SheetLayout layout, double from) {
        List<Polygon> sheets = new ArrayList<>();
        List<Polygon> cuts = new ArrayList<>();
        double x = from;
        for (SheetLayout.Sheet sheet : layout.sheets()) {
            double shift = x;
            sheets.add(rectangle(layout.sheet()).moved(shift, 0));
            sheet.placed().forEach(placed -> cuts.add(placed.outline().moved(shift, 0)));
            x += layout.sheet().width() + GAP;
        }
        return new Layer(name, sheets, cuts);
    }

    private static Polygon rectangle(CuttingStock.Size size) {
        return new Polygon(List.of(
                new Point(0, 0),
                new Point(size.width(), 0),
                new Point(size.width(), size.length()),
                new Point(0, size.length())));
    }
}
