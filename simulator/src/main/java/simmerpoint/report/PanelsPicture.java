package simmerpoint.report;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import simmerpoint.answer.panels.PanelsAnswer;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.drawing.Sheet;
import simmerpoint.drawing.cooker.LivePanels;
import simmerpoint.drawing.cooker.PanelRaster;
import simmerpoint.drawing.cooker.ShadowOutline;
import simmerpoint.drawing.cooker.ShareDrawing;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.Version;
import simmerpoint.study.light.PanelWatts;
import simmerpoint.study.panels.PanelsResult;
import simmerpoint.units.UnitSystem;

/** The dish from the front, each panel in the colour of the share of its light that lands. */
final class PanelsPicture {
    private static final int UNLIT = 0xC8C8C8;
    private static final int EDGES = 0x8A8A8A;
    private static final double BARELY = 1e-9;

    private PanelsPicture() {}

    static Sheet sheet(PanelsResult result, UnitSystem units) {
        String title = OneLine.of(result.scenario().title());
        String noun = TargetWords.of(result.scenario().target()).noun();
        return new Sheet(title.isEmpty() ? "The panels" : title)
                .subtitle(PanelsAnswer.heading(result, units) + ".")
                .gap(10)
                .with(new ShareDrawing(Optional.of(panels(result))))
                .gap(10)
                .caption("Share of each panel\u2019s light that lands on the " + noun
                        + ", seen from the sun; the outline is the "
                        + noun + "\u2019s shadow. Seed " + result.seed() + ", " + FigureFormat.count(result.rays())
                        + " rays. An estimate. Simmerpoint " + Version.text())
                .caption(Cautions.ALWAYS);
    }

    /** The panel most worth turning, which the heading names; below 0 for none. */
    private static int named(PanelsResult result) {
        return result.worthTurning().stream()
                .mapToInt(panel -> panel.number() - 1)
                .findFirst()
                .orElse(-1);
    }

    private static LivePanels panels(PanelsResult result) {
        PanelRaster raster = PanelRaster.of(result.scenario().dish());
        PanelWatts watts = result.watts();
        int[] colours = new int[watts.panels()];
        Arrays.setAll(
                colours,
                k -> watts.reflected(k) > BARELY
                        ? ShareDrawing.rgb(watts.share(k).value())
                        : UNLIT);
        return new LivePanels(
                raster,
                raster.picture(colours, EDGES),
                ShadowOutline.of(result.scenario()),
                named(result),
                PanelsAnswer.named(result).stream()
                        .map(panel -> panel.number() - 1)
                        .collect(Collectors.toSet()));
    }
}
