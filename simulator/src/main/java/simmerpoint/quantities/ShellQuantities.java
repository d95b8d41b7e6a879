package simmerpoint.quantities;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import simmerpoint.dish.cut.OffAxisShell;
import simmerpoint.dish.cut.ShellTape;
import simmerpoint.scenario.Scenario;

/** What the tape measures of a shell beside its axis come to, each figure with its standard deviation, which follows from those of the tape. */
final class ShellQuantities {
    static final String KEY = "shell";

    static final String LABEL = "a shell beside its axis: what the tape says and what follows";

    static final Fields<OffAxisShell> FIELDS = fields();

    private ShellQuantities() {}

    private static Fields<OffAxisShell> fields() {
        Fields<OffAxisShell> all = Fields.<OffAxisShell>none()
                .text(
                        "near_end",
                        "which end of the rim is nearer the axis",
                        List.of("down", "up"),
                        shell -> shell.nearEndUp() ? "up" : "down");
        all = measured(all, "width", "of its rim, the short way", ShellTape::width);
        all = measured(all, "height", "of its rim, the long way", ShellTape::height);
        all = measured(all, "depth", "greatest, below a straight edge across the rim", ShellTape::depth);
        all = figure(all, "focal_length", "m", "of the paraboloid it is a part of", ShellTape::focalLength);
        all = figure(all, "tilt", "rad", "of the rim from square to the axis", ShellTape::tilt);
        all = figure(all, "offset", "m", "of the rim's middle from the axis", ShellTape::offset);
        all = figure(all, "near_string", "m", "from the near end of the rim to the focus", ShellTape::nearString);
        all = figure(all, "far_string", "m", "from the far end of the rim to the focus", ShellTape::farString);
        return figure(all, "deepest_at", "m", "from the near end to the deepest place", ShellTape::deepestAt);
    }

    private static Fields<OffAxisShell> measured(
            Fields<OffAxisShell> all, String name, String label, ToDoubleFunction<ShellTape> length) {
        return all.number(name + "_m", label, shell -> length.applyAsDouble(shell.tape()))
                .number(
                        name + "_deviation_m",
                        "standard deviation of that",
                        shell -> length.applyAsDouble(shell.deviations()));
    }

    private static Fields<OffAxisShell> figure(
            Fields<OffAxisShell> all, String name, String unit, String label, ToDoubleFunction<ShellTape> figure) {
        return all.number(name + "_" + unit, label, shell -> figure.applyAsDouble(shell.tape()))
                .number(
                        name + "_deviation_" + unit,
                        "standard deviation of that",
                        shell -> shell.doubt().of(figure));
    }

    static Optional<OffAxisShell> of(Scenario scenario) {
        return scenario.dish().cut() instanceof OffAxisShell shell ? Optional.of(shell) : Optional.empty();
    }
}
