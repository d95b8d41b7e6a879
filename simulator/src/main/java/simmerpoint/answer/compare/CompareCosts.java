package simmerpoint.answer.compare;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import simmerpoint.answer.words.MoneyWords;
import simmerpoint.quantities.CompareQuantities;
import simmerpoint.quantities.OneLine;
import simmerpoint.study.compare.ComparedRow;
import simmerpoint.study.compare.Comparison;
import simmerpoint.workshop.BuildCost;

/** What compared cookers cost, where their scenarios give prices. */
final class CompareCosts {
    private final Map<Integer, BuildCost> byPlace = new HashMap<>();
    private final Comparison comparison;

    CompareCosts(Comparison comparison) {
        this.comparison = comparison;
        comparison.rows().forEach(row -> CompareQuantities.cost(row).ifPresent(cost -> byPlace.put(row.place(), cost)));
    }

    /** Whether any of them has a price. */
    boolean isAny() {
        return !byPlace.isEmpty();
    }

    private boolean isOneCurrency() {
        return byPlace.values().stream().map(BuildCost::currency).distinct().count() == 1;
    }

    /** Head of their column. */
    String head() {
        String currency = isOneCurrency()
                ? OneLine.of(byPlace.values().iterator().next().currency()).strip()
                : "";
        return currency.isEmpty() ? "cost" : "cost\n" + currency;
    }

    /** What one of them costs. */
    String amount(ComparedRow row) {
        return Optional.ofNullable(byPlace.get(row.place()))
                .map(cost -> isOneCurrency()
                        ? MoneyWords.number(cost.total())
                        : new MoneyWords(cost.currency()).amount(cost.total()))
                .orElse("\u2013");
    }

    /** The cheapest by the watt, if several have prices in one currency. */
    Optional<String> cheapest(Function<ComparedRow, String> name) {
        if (byPlace.size() < 2 || !isOneCurrency()) {
            return Optional.empty();
        }
        ComparedRow least = null;
        for (ComparedRow row : comparison.rows()) {
            least = least == null || perWatt(row) < perWatt(least) ? row : least;
        }
        double each = perWatt(least);
        if (!Double.isFinite(each)) {
            return Optional.empty();
        }
        BuildCost cost = byPlace.get(least.place());
        MoneyWords money = new MoneyWords(cost.currency());
        return Optional.of("The cheapest watt is that of " + name.apply(least) + ": " + money.perWatt(each) + ", "
                + money.amount(cost.total()) + " in all.");
    }

    private double perWatt(ComparedRow row) {
        return Optional.ofNullable(byPlace.get(row.place()))
                .map(cost -> cost.perWatt(row.useful().value()))
                .orElse(OptionalDouble.empty())
                .orElse(Double.POSITIVE_INFINITY);
    }
}
