package simmerpoint.drawing.chart;

import java.util.List;
import java.util.Optional;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.RoundBox;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;
import simmerpoint.study.pan.MoveStudy;
import simmerpoint.units.InchLength;
import simmerpoint.units.UnitSystem;

/**
 * The pan's places along the axis as one ribbon of heat levels, the pan on it, and the places where the level changes. Lengths
 * count from the focus.
 *
 * @param curve what is known along the way; empty before anything is
 * @param low least place shown, m
 * @param high largest place shown, m
 * @param pan where it stands, and what is pointed at
 * @param units of lengths
 */
public record LevelRibbon(Optional<MoveCurve> curve, double low, double high, LivePan pan, UnitSystem units)
        implements Drawing {
    /** Its usual height, units. */
    public static final double HEIGHT = 78;

    private static final double SIDE = 26;
    private static final LevelBand BAND = new LevelBand(SIDE, 18, 34);
    private static final int QUARTERS = 4;
    private static final double STALE = 0.35;
    private static final double PAN_WIDE = 13;
    private static final double APART = 6;

    @Override
    public double height(double width, TextMetrics metrics) {
        return HEIGHT;
    }

    /** Where places on the way lie in a box. */
    public Scale scale(Box box) {
        Box band = BAND.in(box);
        return new Scale(low, high, band.x(), band.right());
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        Box band = BAND.in(box);
        Scale scale = scale(box);
        canvas.draw(Style.CHART_GROUND, band);
        curve.ifPresent(c -> canvas.fade(pan.fits() ? 1 : STALE, () -> levels(canvas, band, scale, c)));
        canvas.draw(Style.FRAME, band);
        ends(canvas, box, band);
        pan.pointedMetres()
                .ifPresent(
                        place -> canvas.line(Style.POINTED, scale.at(place), band.y(), scale.at(place), band.bottom()));
        pan(canvas, band, scale);
    }

    private void levels(Canvas canvas, Box band, Scale scale, MoveCurve c) {
        double origin = c.move().presentMetres();
        Box mark = new Box(scale.at(pan.presentMetres()) - PAN_WIDE - 2, band.y(), 2 * PAN_WIDE + 4, band.height());
        List<LevelBand.Stretch> stretches = c.move().stretches().stream()
                .map(stretch -> new LevelBand.Stretch(
                        stretch.level(),
                        scale.within(origin + stretch.fromMetres()),
                        scale.within(origin + stretch.toMetres())))
                .toList();
        BAND.draw(canvas, band, mark, stretches);
        recommended(canvas, band, scale, c);
        borders(canvas, band, scale, c);
    }

    /** The place recommended for a simmer: a mark on the upper edge. */
    private static void recommended(Canvas canvas, Box band, Scale scale, MoveCurve c) {
        c.result()
                .simmer()
                .filter(place -> place.move() == MoveStudy.Move.PULL_BACK)
                .map(place -> c.move().presentMetres() + place.position().offsetMetres())
                .map(scale::at)
                .ifPresent(x -> canvas.draw(
                        Style.FLAG_CLOTH, Path.closed(x, band.y() + 9, x - 5, band.y() + 1, x + 5, band.y() + 1)));
    }

    /** Lengths below the borders, those that have room. */
    private void borders(Canvas canvas, Box band, Scale scale, MoveCurve c) {
        double origin = c.move().presentMetres();
        double free = band.x() - SIDE;
        List<Double> places = c.move().borders().stream()
                .map(border -> origin + border.offsetMetres())
                .filter(place -> place > low && place < high)
                .toList();
        for (double place : places) {
            double x = scale.at(place);
            canvas.line(Style.BORDER, x, band.y(), x, band.bottom());
            canvas.line(Style.TICK, x, band.bottom(), x, band.bottom() + 4);
            Text words = Text.at(x, band.bottom() + 16, length(place)).middle();
            double half = canvas.metrics().width(words) / 2;
            if (x - half >= free && x + half <= band.right() + SIDE) {
                canvas.write(words);
                free = x + half + APART;
            }
        }
    }

    private String length(double metres) {
        double figure = metres / units.shortUnitMetres();
        String text = units == UnitSystem.INCH ? InchLength.fraction(figure, QUARTERS) : FigureFormat.fixed(figure, 0);
        return text.replaceAll("^\u2212?0$", "0") + FigureFormat.NBSP + units.shortUnit();
    }

    private void ends(Canvas canvas, Box box, Box band) {
        double room = box.width() / 2 - PAN_WIDE;
        canvas.write(Text.at(band.x(), band.y() - 5, "\u2190 towards the dish")
                .in(TextStyle.SOFT)
                .within(room));
        canvas.write(Text.at(band.right(), band.y() - 5, "away from the dish \u2192")
                .in(TextStyle.SOFT)
                .within(room)
                .end());
    }

    /** A pan to take hold of. */
    private void pan(Canvas canvas, Box band, Scale scale) {
        double x = scale.within(pan.presentMetres());
        canvas.line(Style.PRESENT_HELD, x, band.y() - 3, x, band.bottom() + 3);
        Box pot = new Box(x - PAN_WIDE, band.middleY() - 8, 2 * PAN_WIDE, 17);
        canvas.draw(Style.HANDLE, new RoundBox(pot, 3));
        canvas.draw(Style.HANDLE, new RoundBox(new Box(pot.x() - 3, pot.y() - 3, pot.width() + 6, 5), 2));
        canvas.draw(Style.HANDLE, new RoundBox(new Box(x - 4, pot.y() - 7, 8, 4), 1.5));
    }
}
