package simmerpoint.quantities;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import simmerpoint.study.trace.DoubtShare;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.uncertainty.LikelyRange;

/** What is likely over all doubts, and where the doubt comes from. */
final class LikelyQuantities {
    private static final Fields<DoubtShare> SHARE = Fields.<DoubtShare>none()
            .text("cause", "what is not known exactly", DoubtShare::name)
            .number("share", "of the variance of the power, from this cause alone", DoubtShare::share)
            .text(
                    "size",
                    "how badly it is known: \u00b1 is two standard deviations, a factor holds for four in five",
                    LikelyQuantities::size)
            .flag("given", "whether the scenario says how badly it is known", DoubtShare::given)
            .text("source", "who says how badly it is known", DoubtShare::source)
            .text("measurement", "what would tell it better", DoubtShare::measurement);

    /** The shares; none where doubts were not looked at. */
    static final Fields<Optional<LikelyResult>> DOUBTS = Fields.<Optional<LikelyResult>>none()
            .rows("doubts", "where the doubt comes from, largest share first", LikelyQuantities::shares, SHARE);

    private static String size(DoubtShare doubt) {
        return doubt.size().words();
    }

    /** The range of a figure of merit that is given beside it; none where doubts were not looked at. */
    static final Fields<Optional<LikelyResult>> RANGE = Fields.<Optional<LikelyResult>>none()
            .optionalNumber(
                    "power_likely_W",
                    "cooking power, of a bare disc caught watts: the median of such cookers",
                    likely -> end(likely, LikelyRange::likely))
            .optionalNumber(
                    "power_low_W", "one such cooker in ten brings less", likely -> end(likely, LikelyRange::low))
            .optionalNumber(
                    "power_high_W", "one such cooker in ten brings more", likely -> end(likely, LikelyRange::high));

    private LikelyQuantities() {}

    private static OptionalDouble end(Optional<LikelyResult> likely, ToDoubleFunction<LikelyRange> end) {
        return likely.stream()
                .mapToDouble(result -> end.applyAsDouble(result.power()))
                .findFirst();
    }

    static List<DoubtShare> shares(Optional<LikelyResult> likely) {
        return likely.map(LikelyResult::shares).orElse(List.of());
    }
}
