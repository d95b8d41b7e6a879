package simmerpoint.command;

import java.util.Optional;
import picocli.CommandLine.Option;
import simmerpoint.heat.HeatLevel;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.design.DesignLimits;
import simmerpoint.workshop.BuildableDishes;
import simmerpoint.workshop.CuttingStock;
import simmerpoint.workshop.DishCosts;

/** What is wanted of a design and what it may be. */
final class DesignOptions {
    private static final int FEWEST_SECTORS = 3;

    @Option(
            names = "--watts",
            paramLabel = "POWER",
            converter = DesignConverters.Watts.class,
            description =
                    "Wanted: so many watts into the water (cooking power; of a bare disc, caught), for instance 400W.")
    Double watts;

    @Option(
            names = "--level",
            paramLabel = "LEVEL",
            converter = DesignConverters.Level.class,
            description = "Wanted instead: a heat level, keep-warm, simmer, boil or fast-boil (default: boil).")
    HeatLevel level;

    @Option(
            names = "--diameter",
            paramLabel = "FROM..TO",
            converter = DesignConverters.Lengths.class,
            description = "Diameters allowed, for instance 60cm..1.2m (default: half to one and a half of the file's).")
    private DesignConverters.Range diameter;

    @Option(
            names = "--focal-length",
            paramLabel = "FROM..TO",
            converter = DesignConverters.Lengths.class,
            description = "Focal lengths allowed (default: half to twice the file's).")
    private DesignConverters.Range focal;

    @Option(
            names = "--panels",
            paramLabel = "N",
            converter = DesignConverters.Counts.class,
            description = "Panels allowed in all, for instance ..96 (default: ..150).")
    private DesignConverters.Range panels;

    @Option(
            names = "--sectors",
            paramLabel = "FROM..TO",
            converter = DesignConverters.Counts.class,
            description = "Sectors allowed (default: 6..36).")
    private DesignConverters.Range sectors;

    @Option(
            names = "--rings",
            paramLabel = "FROM..TO",
            converter = DesignConverters.Counts.class,
            description = "Rings of flat panels allowed (default: 1..6).")
    private DesignConverters.Range rings;

    @Option(
            names = "--sheet",
            paramLabel = "SIZE",
            converter = DesignConverters.Sheet.class,
            description = "Sheet that the largest panel must fit on, for instance 50x70cm.")
    private DesignLimits.Sheet sheet;

    @Option(
            names = "--pan-height",
            paramLabel = "LENGTH",
            converter = DesignConverters.Height.class,
            description =
                    "Highest the pan may stand above the ground, for instance 1.1m (default: stand.highest-pan of the "
                            + "file).")
    private Double panHeight;

    @Option(
            names = "--most-cost",
            paramLabel = "AMOUNT",
            converter = DesignConverters.Amount.class,
            description = "Most that it may cost by the prices of the file (build.prices), for instance 120.")
    private Double mostCost;

    @Option(
            names = "--cut",
            paramLabel = "CUT",
            converter = DesignConverters.Cuts.class,
            description = "flat-rings, bent-strips or both (default: the file's).")
    private DesignCuts cut;

    /** The limits around the dish of the file, its pan no higher than one likes to cook there. */
    DesignLimits limits(Scenario scenario, CuttingStock stock) throws WrongUse {
        DesignLimits usual = DesignLimits.around(scenario);
        DesignLimits.Span asked = sectors == null ? usual.sectors() : sectors.or(usual.sectors());
        if (asked.from() < FEWEST_SECTORS) {
            throw new WrongUse("--sectors: a dish needs 3 sectors or more.");
        }
        return new DesignLimits(
                cut == null ? usual.cuts() : cut.kinds(),
                diameter == null ? usual.diameter() : diameter.or(usual.diameter()),
                focal == null ? usual.focal() : focal.or(usual.focal()),
                asked,
                rings == null ? usual.rings() : rings.or(usual.rings()),
                mostPanels(usual.mostPanels()),
                Optional.ofNullable(sheet),
                Optional.of(panHeight == null ? scenario.heights().highestPanMetres() : panHeight),
                cost(stock),
                Optional.of(BuildableDishes.of(stock)));
    }

    private Optional<DesignLimits.Cost> cost(CuttingStock stock) throws WrongUse {
        if (mostCost != null && stock.prices().isEmpty()) {
            throw new WrongUse("--most-cost: the scenario gives no prices; write some under build.prices, for instance "
                    + "prices: {currency: EUR, panel-sheet: 9, film: 35}.");
        }
        return DishCosts.of(stock, mostCost == null ? Double.POSITIVE_INFINITY : mostCost);
    }

    private int mostPanels(int usual) throws WrongUse {
        if (panels == null) {
            return usual;
        }
        if (panels.from() != null || panels.to() == null) {
            throw new WrongUse("--panels only bounds from above: write for instance ..96.");
        }
        return panels.to();
    }
}
