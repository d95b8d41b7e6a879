package simmerpoint.report;

import java.util.List;
import simmerpoint.answer.Figures;
import simmerpoint.drawing.chart.Ticks;
import simmerpoint.units.UnitSystem;

/**
 * Where metres lie on a sheet.
 *
 * @param left sheet unit at {@code firstMetres}
 * @param bottom sheet unit at {@code lastMetres} of the upright axis
 * @param firstMetres level distance at {@code left}
 * @param lastMetres height at {@code bottom}
 * @param perMetre sheet units in a metre
 */
record SvgScale(double left, double bottom, double firstMetres, double lastMetres, double perMetre) {
    private static final double INCH = 0.0254;
    private static final double BAR_SHARE = 0.25;

    double x(double metres) {
        return left + (metres - firstMetres) * perMetre;
    }

    double y(double metres) {
        return bottom - (metres - lastMetres) * perMetre;
    }

    double[] at(double across, double up) {
        return new double[] {x(across), y(up)};
    }

    /** A bar of a round length that starts at (x, y). */
    void bar(SvgSheet sheet, double x, double y, UnitSystem system) {
        double unit = system == UnitSystem.INCH ? INCH : 0.01;
        String name = system == UnitSystem.INCH ? "in" : "cm";
        double count = Ticks.below(BAR_SHARE * SvgSheet.WIDTH / perMetre / unit);
        double length = count * unit * perMetre;
        sheet.rectangle("scale", x, y - 4, length, 4);
        sheet.path(
                "dimension",
                SvgSheet.way(
                        List.of(
                                new double[] {x, y - 8},
                                new double[] {x, y},
                                new double[] {x + length, y},
                                new double[] {x + length, y - 8}),
                        false));
        sheet.text("start", x + length + 8, y + 1, Figures.rounded(count, 1) + Figures.NBSP + name);
    }
}
