package simmerpoint.answer.cut;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Item;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.MoneyWords;
import simmerpoint.units.SawLength;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.BuildCost;
import simmerpoint.workshop.CutPlan;
import simmerpoint.workshop.CuttingStock.Sheeting;
import simmerpoint.workshop.FilmLengths;
import simmerpoint.workshop.SheetLayout;

/**
 * What to buy and what it costs.
 *
 * @param plan the dish
 * @param units for lengths
 */
record BuyWords(CutPlan plan, UnitSystem units) {
    /** The shortest end of a sheet that is kept, m. */
    private static final double WORTH_KEEPING = 0.05;

    /** A row of what to buy. */
    private record Purchase(String name, SheetLayout layout) {}

    Item sheets() {
        List<Purchase> rows = new ArrayList<>();
        if (plan.rib().isPresent()) {
            rows.add(new Purchase(sheeting(plan.stock().ribMaterial()) + " for ribs", plan.ribSheets()));
        }
        rows.add(new Purchase(sheeting(plan.stock().panelMaterial()) + " for panels", plan.panelSheets()));
        Map<String, SheetLayout> films = plan.filmByMaterial();
        films.forEach(
                (material, layout) -> rows.add(new Purchase(films.size() == 1 ? "mirror film" : material, layout)));
        return Columns.<Purchase>none()
                .with("what", Purchase::name)
                .with(
                        "size",
                        p -> SawLength.text(
                                p.layout().sheet().width(), p.layout().sheet().length(), units))
                .with("how\nmany", p -> Integer.toString(p.layout().sheets().size()))
                .with(
                        "offcuts",
                        p -> new FigureFormat(units).percent(1 - p.layout().usedShare()))
                .with("end\nleft", p -> endLeft(p.layout()))
                .table(rows);
    }

    private String endLeft(SheetLayout layout) {
        return layout.leftWhole() < WORTH_KEEPING ? "\u2013" : SawLength.text(layout.leftWhole(), units);
    }

    /** Film that is narrower than its panels, and how much of it they take. */
    Optional<String> lengths() {
        List<FilmLengths> films = plan.filmLengths();
        if (films.isEmpty()) {
            return Optional.empty();
        }
        int count = films.stream().mapToInt(FilmLengths::count).sum();
        double metres = plan.filmByMaterial().values().stream()
                .mapToDouble(SheetLayout::usedLength)
                .sum();
        String each = films.size() == 1 ? films.get(0).lengths().size() + " to each panel, " : "";
        return Optional.of(
                "The film is smaller than " + (films.size() < plan.films().size() ? "some of its" : "its")
                        + " panels: lay it in lengths side by side, each "
                        + SawLength.text(FilmLengths.OVERLAP, units) + " over the next. That takes " + each + count
                        + " lengths in all, cut from " + new FigureFormat(units).length(metres, 2)
                        + " of film. A file for a cutter leaves them out.");
    }

    /** What a dish a little smaller would save. */
    Optional<String> saving() {
        return plan.smaller().map(less -> {
            String sheets = counted(less.sheets(), "sheet");
            String rolls = counted(less.rolls(), "roll of film");
            String what = sheets.isEmpty() || rolls.isEmpty() ? sheets + rolls : sheets + " and " + rolls;
            return "A dish of " + new FigureFormat(units).length(less.diameter(), 3) + " (dish.diameter) would save "
                    + what + ".";
        });
    }

    private static String counted(int count, String what) {
        return switch (count) {
            case 0 -> "";
            case 1 -> "one " + what;
            default -> count + " " + what.replaceFirst("^\\w+", "$0s");
        };
    }

    Optional<String> cost() {
        return plan.cost().map(cost -> {
            MoneyWords money = new MoneyWords(cost.currency());
            String perWatt = plan.trace().stream()
                    .mapToDouble(trace -> trace.watts().value())
                    .mapToObj(cost::perWatt)
                    .flatMapToDouble(OptionalDouble::stream)
                    .mapToObj(each -> ", " + money.perWatt(each) + " of cooking power")
                    .collect(Collectors.joining());
            return "It costs " + money.amount(cost.total()) + perWatt + ": " + parts(cost, money) + ".";
        });
    }

    private static String parts(BuildCost cost, MoneyWords money) {
        Map<String, Double> parts = new LinkedHashMap<>();
        parts.put("sheets for ribs", cost.ribs());
        parts.put("sheets for panels", cost.panels());
        parts.put("film", cost.film());
        parts.put("stand", cost.stand());
        parts.put("all else", cost.rest());
        return parts.entrySet().stream()
                .filter(part -> part.getValue() > 0)
                .map(part -> part.getKey() + " " + money.amount(part.getValue()))
                .collect(Collectors.joining(", "));
    }

    private String sheeting(Sheeting sheeting) {
        String thickness = units == UnitSystem.METRIC
                ? new FigureFormat(units).length(sheeting.thickness(), 2)
                : SawLength.text(sheeting.thickness(), units);
        return thickness + " " + sheeting.material().name();
    }
}
