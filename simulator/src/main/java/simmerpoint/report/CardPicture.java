package simmerpoint.report;

import java.util.List;
import java.util.function.ToDoubleFunction;
import simmerpoint.answer.trial.CardAnswer;
import simmerpoint.drawing.Sheet;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.chart.LineChart;
import simmerpoint.drawing.map.SpotMaps;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.Version;
import simmerpoint.trial.spot.CardResult;
import simmerpoint.units.UnitSystem;

/** Widths of the spot against the card's distance as a picture. */
final class CardPicture {
    private static final double HEADROOM = 1.15;
    private static final double HEIGHT = 300;

    private CardPicture() {}

    static Sheet sheet(CardResult result, UnitSystem units) {
        String title = OneLine.of(result.scenario().scenario().title());
        Sheet sheet = new Sheet(title.isEmpty() ? "The spot on a card" : title)
                .subtitle(CardAnswer.brief(result, units).sections().get(0).heading() + ".")
                .gap(14)
                .with(chart(result, units));
        for (CardResult.Point point : result.photographed()) {
            sheet.gap(18)
                    .with(new SpotMaps(
                            point.maps().orElseThrow(), point.reading().distance(), units));
        }
        return sheet.gap(12).caption(caption(result));
    }

    private static String caption(CardResult result) {
        return (result.photographed().isEmpty()
                        ? ""
                        : "Photographs about the centre of their light, from the dish's side, upper edge up; circles hold 50 and"
                                + " 90 % of the light. Difference: brown where more light was measured than traced, blue where"
                                + " less. ")
                + "Simmerpoint " + Version.text();
    }

    private static LineChart chart(CardResult result, UnitSystem units) {
        double unit = units == UnitSystem.INCH ? units.shortUnitMetres() : 0.01;
        String name = units == UnitSystem.INCH ? "in" : "cm";
        List<CardResult.Point> points = result.points();
        double first = points.get(0).reading().distance() / unit;
        double last = points.get(points.size() - 1).reading().distance() / unit;
        double room = Math.max(1, 0.05 * (last - first));
        double top = points.stream()
                .mapToDouble(p -> Math.max(p.reading().width(), Math.max(p.planned(), p.fitted())))
                .max()
                .orElse(1);
        return new LineChart(
                        "Width of the spot, " + name,
                        "card from the middle of the dish, " + name,
                        first - room,
                        last + room,
                        HEADROOM * top / unit)
                .tall(HEIGHT)
                .curve(Style.CURVE_2, points(points, unit, CardResult.Point::planned), "planned")
                .curve(Style.WATTS_CURVE, points(points, unit, CardResult.Point::fitted), "fitted")
                .dots(points(points, unit, p -> p.reading().width()), "measured");
    }

    private static List<double[]> points(
            List<CardResult.Point> points, double unit, ToDoubleFunction<CardResult.Point> width) {
        return points.stream()
                .map(p -> new double[] {p.reading().distance() / unit, width.applyAsDouble(p) / unit})
                .toList();
    }
}
