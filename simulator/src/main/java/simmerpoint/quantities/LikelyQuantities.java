package simmerpoint.quantities;

import java.util.List;
import java.util.Optional;
import simmerpoint.study.trace.DoubtShare;
import simmerpoint.study.trace.LikelyResult;

/** What is likely over all doubts, and where the doubt comes from. */
final class LikelyQuantities {
    private static final Fields<DoubtShare> SHARE = Fields.<DoubtShare>none()
            .text("cause", "what is not known exactly", DoubtShare::name)
            .number("share", "of the variance of the power, from this cause alone", DoubtShare::share)
            .flag("given", "whether the scenario says how badly it is known", DoubtShare::given)
            .text("source", "who says how badly it is known", DoubtShare::source)
            .text("measurement", "what would tell it better", DoubtShare::measurement);

    /** The shares; none where doubts were not looked at. */
    static final Fields<Optional<LikelyResult>> DOUBTS = Fields.<Optional<LikelyResult>>none()
            .rows("doubts", "where the doubt comes from, largest share first", LikelyQuantities::shares, SHARE);

    private LikelyQuantities() {}

    static List<DoubtShare> shares(Optional<LikelyResult> likely) {
        return likely.map(LikelyResult::shares).orElse(List.of());
    }
}
