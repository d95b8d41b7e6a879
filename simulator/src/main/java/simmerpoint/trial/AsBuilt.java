package simmerpoint.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.distribution.NormalDistribution;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.study.likely.LikelyStudy;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.trial.fit.FlawLikelihood;
import simmerpoint.trial.fit.TrialFit;
import simmerpoint.trial.fit.TrialFit.KnownCause;
import simmerpoint.trial.log.TrialLog;
import simmerpoint.uncertainty.LikelyRange;
import simmerpoint.units.Dimension;
import simmerpoint.units.PlusMinus;

/**
 * The scenario of the cooker as its logs show it: the likeliest flaw, if it is told from all others, and every figure of the cooker that is
 * in doubt as it is known now. Causes that no key holds, as the pan's loss, cannot be written; the mirror's reflectance stands in for them, so that
 * the likely cooking power is that of the logs. Doubts are narrowed together to bring the range of the power near that of the fit; each figure
 * alone is less well known. How far that goes is told before it: the doubt of causes without a key comes back.
 */
public final class AsBuilt {
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
    private static final String REFLECTANCE = "mirror.reflectance";
    private static final double LEAST_REFLECTANCE = 0.05;

    /** No doubt gets narrower than this share of what it was. */
    private static final double NARROWEST = 0.2;

    private static final int ROUNDS = 3;

    private final TrialResult result;
    private final TrialFit fit;
    private final TraceOptions options;

    private AsBuilt(TrialResult result, TrialFit fit, TraceOptions options) {
        this.result = result;
        this.fit = fit;
        this.options = options;
    }

    /**
     * What is written of it.
     *
     * @param scenario the cooker
     * @param text of it, with a comment before it that says where it comes from
     */
    public record Found(CheckedScenario scenario, String text) {}

    /** The scenario; empty where no log tells anything of the mirror. */
    public static Optional<Found> of(TrialResult result, TraceOptions options) throws ScenarioException {
        return result.fit().isEmpty()
                ? Optional.empty()
                : Optional.of(new AsBuilt(result, result.fit().get(), options).found());
    }

    private Found found() throws ScenarioException {
        CheckedScenario built = scenario();
        List<KnownCause> kept = writable();
        List<KnownCause> others = fit.causes().stream()
                .filter(cause -> !kept.contains(cause) && !isWeather(cause))
                .toList();
        return new Found(
                built, new AsBuiltHeader(result, fit, expected(built), others).text() + "\n" + built.sourceText());
    }

    private CheckedScenario scenario() throws ScenarioException {
        Map<String, String> typed = new LinkedHashMap<>(causes());
        fit.likeliest().filter(f -> fit.isTold()).ifPresent(f -> typed.putAll(flaw(f)));
        CheckedScenario built = result.scenario().with(typed);
        for (int round = 0; round < ROUNDS; round++) {
            built = built.with(reflectance(built));
        }
        return built;
    }

    /** The flaw as large as is expected, each figure with two standard deviations. */
    private static Map<String, String> flaw(FlawLikelihood flaw) {
        Map<String, String> typed = new LinkedHashMap<>(flaw.middle().typed());
        flaw.middle().numbers().forEach((path, si) -> {
            Key key = Keys.get(path);
            double off = Math.abs(
                    flaw.more().numbers().get(path) - flaw.less().numbers().get(path));
            if (unit(key) != null) {
                typed.put(path, text(key, si) + " ± " + text(key, off));
            }
        });
        return typed;
    }

    private Map<String, String> causes() {
        double narrower = narrower();
        Map<String, String> typed = new LinkedHashMap<>();
        for (KnownCause cause : writable()) {
            Key key = Keys.get(cause.doubt().cause());
            double now = quantile(cause, cause.mean());
            double wide = narrower * cause.deviation();
            double deviation = (quantile(cause, cause.mean() + wide) - quantile(cause, cause.mean() - wide)) / 2;
            typed.put(key.path(), text(key, now) + " ± " + text(key, PlusMinus.DEVIATIONS * Math.max(0, deviation)));
        }
        return typed;
    }

    private static double quantile(KnownCause cause, double deviations) {
        double probability = NORMAL.cumulativeProbability(Math.max(-5, Math.min(5, deviations)));
        return cause.doubt().law().quantile(probability);
    }

    /** Figures of the cooker that have a key with a unit. */
    private List<KnownCause> writable() {
        List<KnownCause> found = new ArrayList<>();
        for (KnownCause cause : fit.causes()) {
            Optional<Key> key = Keys.find(cause.doubt().cause());
            String section = key.map(Key::section).orElse("");
            if (key.isPresent()
                    && !section.startsWith("sun")
                    && !section.startsWith("sky")
                    && unit(key.get()) != null) {
                found.add(cause);
            }
        }
        return found;
    }

    private static boolean isWeather(KnownCause cause) {
        return cause.doubt().cause().matches("(beam|sun|sky|air)\\b.*");
    }

    /** By which all doubts that can be written are narrowed further, so that the watts are as well known as by the fit. */
    private double narrower() {
        double written = 0;
        double others = 0;
        List<KnownCause> writable = writable();
        for (KnownCause cause : fit.causes()) {
            double part = cause.watts() * cause.deviation();
            if (writable.contains(cause)) {
                written += part * part;
            } else {
                others += part * part;
            }
        }
        double room = Math.max(0, fit.error() * fit.error() - others);
        return written > 0 ? Math.max(NARROWEST, Math.min(1, Math.sqrt(room / written))) : 1;
    }

    /** The reflectance with which the likely power in the light of the first log comes nearer to the fitted one. */
    private Map<String, String> reflectance(CheckedScenario built) throws ScenarioException {
        LikelyRange expected = expected(built);
        double lost = result.protocol().map(p -> 50 * p.lossWattsPerKelvin()).orElse(0.0);
        double more = (fit.watts() + lost) / Math.max(1, expected.likely() + lost);
        double now = built.scenario().mirror().reflectance();
        double next = Math.max(LEAST_REFLECTANCE, Math.min(0.99, now * more));
        String typed = built.values().typed(REFLECTANCE).orElse("");
        int doubt = typed.indexOf('±');
        return Map.of(REFLECTANCE, text(Keys.get(REFLECTANCE), next) + (doubt < 0 ? "" : " " + typed.substring(doubt)));
    }

    /** Cooking power in the light and weather of the first log. */
    private LikelyRange expected(CheckedScenario built) throws ScenarioException {
        TrialLog first = fit.curves().get(0).log();
        double boiling = built.scenario().cooking().orElseThrow().around().boilingCelsius();
        CheckedScenario then = LogScenario.of(built, first, first.warmsUntil(boiling));
        return LikelyStudy.run(then, LikelyStudy.FOR_RANGE, options, Progress.NONE)
                .power();
    }

    /** As it would be typed. */
    private static String text(Key key, double si) {
        Unit unit = unit(key);
        return String.format(Locale.ROOT, "%." + unit.decimals + "f%s", si / unit.size, unit.symbol);
    }

    /** A unit to write in; null where a figure has none of these. */
    private static Unit unit(Key key) {
        return key.dimension() == null ? null : unit(key.dimension(), key.path());
    }

    private static Unit unit(Dimension dimension, String path) {
        return switch (dimension) {
            case LENGTH -> new Unit(1e-3, " mm", 1);
            case ANGLE -> path.startsWith("aim") ? new Unit(Math.PI / 180, "°", 2) : new Unit(1e-3, " mrad", 2);
            case SHARE -> new Unit(1, "", 4);
            default -> null;
        };
    }

    private record Unit(double size, String symbol, int decimals) {}
}
