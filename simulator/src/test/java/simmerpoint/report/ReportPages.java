package simmerpoint.report;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.pan.Finish;
import simmerpoint.pan.Pan;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.units.UnitSystem;

/** Pages of the demo scenarios and of nasty ones, from few rays. */
public final class ReportPages {
    /** Says whatever it can to break out of its element; titles, names and comments hold parts of it. */
    public static final String NASTY = "</pre></title></style></svg><script>document.title='broken'</script>"
            + "<img src=x onerror=alert(1)> \"quoted\" 'single' & &amp; &#60; \u05e9\u05dc\u05d5\u05dd \u202eleft \u2066 \ud83c\udf72\u2600\ufe0f";

    private static final Path SCENARIOS = Path.of("..", "scenarios");
    static final long RAYS = 1 << 10;

    private ReportPages() {}

    /** The page of a demo scenario. */
    public static String demo(String name, UnitSystem units, int threads) throws ScenarioException {
        return page(ScenarioReader.read(SCENARIOS.resolve(name)), name, units, threads);
    }

    /** The page of a scenario whose every text is {@link #NASTY} and whose title goes on for 10,000 letters. */
    public static String nasty() throws ScenarioException {
        String text = "# " + NASTY + "\ntitle: '" + NASTY.replace("'", "''") + "'\n"
                + "dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: bent-strips, sectors: 12}}\n";
        CheckedScenario read = ScenarioReader.parse(NASTY, text, Path.of(""));
        Scenario s = read.scenario();
        Mirror m = s.mirror();
        Mirror mirror = new Mirror(
                NASTY,
                m.reflectance(),
                m.scattered(),
                m.slopeErrorRadians(),
                m.beamSpreadRadians(),
                m.wideShare(),
                m.wideSpreadRadians(),
                m.dust(),
                m.panelTiltRadians());
        Scenario nasty = new Scenario(
                NASTY + "W".repeat(10_000 - NASTY.length()),
                s.dish(),
                mirror,
                s.sun(),
                s.aim(),
                new Pan(0.24, 0.11, new Finish(NASTY, 0.9)),
                s.stand(),
                s.cooking(),
                s.site(),
                s.heights());
        return page(
                new CheckedScenario(nasty, read.values(), List.of(NASTY), Optional.empty(), List.of()),
                NASTY,
                UnitSystem.INCH,
                2);
    }

    /** The page of what was read. */
    static String page(CheckedScenario read, String name, UnitSystem units, int threads) throws ScenarioException {
        TraceOptions options = TraceOptions.defaults().withRays(RAYS).withThreads(threads);
        read.atOneMoment();
        PageStudy all = PageStudy.run(read, units, options, options, Progress.NONE);
        return new String(CookerReport.bytes(read, all.cooker(), all.safety(), name, units), StandardCharsets.UTF_8);
    }
}
