package simmerpoint.command;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.dish.mirror.Material;
import simmerpoint.dish.mirror.MaterialCatalogue;
import simmerpoint.pan.CatalogueFinish;
import simmerpoint.pan.FinishCatalogue;
import simmerpoint.report.Wrapping;

/** Prints the catalogues. */
@Command(
        name = "materials",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description = "List mirror materials and pan finishes with their figures and sources.")
final class MaterialsCommand implements Callable<Integer> {
    private static final int NAME = 30;
    private static final int LONGEST_NAME = 41;
    private static final int[] MIRROR_CELLS = {9, 9, 6, 6, 12, 5};
    private static final int[] FINISH_CELLS = {9, 5};

    private final Terminal terminal;

    @Mixin
    private ShowOptions show;

    private int width;
    private final List<String> notes = new ArrayList<>();

    MaterialsCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        width = show.columns(terminal);
        if (show.full()) {
            whole();
        } else {
            brief();
        }
        return 0;
    }

    /** Names and what of their figures decides. */
    private void brief() {
        text("Mirror materials (mirror.material):");
        for (Material m : MaterialCatalogue.all()) {
            name(
                    m.name(),
                    "reflects " + share(m.reflectance()) + ", slope error " + milliradians(m.slopeErrorRadians())
                            + " mrad");
        }
        text("Pan finishes (pan.finish):");
        for (CatalogueFinish finish : FinishCatalogue.all()) {
            name(finish.finish().name(), "takes up " + share(finish.finish().absorptance()));
        }
        text(
                "Slope error: how far the surface of a hand-built dish leans from place to place. More figures and their sources: --full.");
    }

    private void name(String name, String figures) {
        String start = "  " + name + " ".repeat(Math.max(1, LONGEST_NAME - name.length()));
        if (start.length() + figures.length() <= width) {
            terminal.say(start + figures);
        } else {
            terminal.say("  " + name);
            Wrapping.lines(figures, "    ", "    ", width).forEach(terminal::say);
        }
    }

    private void whole() {
        text(
                "Mirror materials, as they end up on a hand-built dish. Reflects: total share of sunlight; scatters: share of "
                        + "that to all sides. Slope error, sharp and wide spread in mrad, standard deviation per axis; wide: share "
                        + "of the beam that takes the wide spread. Any figure can be overridden in the scenario.");
        row("", List.of("reflects", "scatters", "slope", "sharp", "wide"), "from");
        for (Material material : MaterialCatalogue.all()) {
            row(material.name(), cells(material), note(material.quality(), material.source()));
        }
        terminal.say("");
        text("Pan finishes. Takes up: share of sunlight at steep incidence.");
        row("", List.of("takes up"), "from");
        for (CatalogueFinish finish : FinishCatalogue.all()) {
            String note = note(finish.quality(), finish.source());
            row(finish.finish().name(), List.of(share(finish.finish().absorptance())), note);
        }
        terminal.say("");
        text("Where the figures come from:");
        for (int k = 0; k < notes.size(); k++) {
            String mark = "[" + (k + 1) + "] ";
            Wrapping.lines(notes.get(k), mark, " ".repeat(mark.length()), width).forEach(terminal::say);
        }
    }

    private static List<String> cells(Material m) {
        String wide = m.wideShare() == 0 ? "none" : share(m.wideShare()) + " of " + milliradians(m.wideSpreadRadians());
        return List.of(
                share(m.reflectance()),
                share(m.scattered()),
                milliradians(m.slopeErrorRadians()),
                milliradians(m.beamSpreadRadians()),
                wide);
    }

    private static String share(double x) {
        return FigureFormat.fixed(100 * x, Math.abs(100 * x - Math.rint(100 * x)) < 1e-9 ? 0 : 1) + " %";
    }

    private static String milliradians(double radians) {
        return radians == 0 ? "0" : FigureFormat.rounded(radians * 1000, 2);
    }

    /** Name and figures on one line, or on two where the window is narrow or the name long. */
    private void row(String name, List<String> figuresOnly, String note) {
        List<String> cells = new ArrayList<>(figuresOnly);
        cells.add(note);
        StringBuilder figures = new StringBuilder();
        int[] widths = cells.size() == FINISH_CELLS.length ? FINISH_CELLS : MIRROR_CELLS;
        for (int k = 0; k < widths.length; k++) {
            figures.append(" ".repeat(Math.max(1, widths[k] - cells.get(k).length())))
                    .append(cells.get(k));
        }
        boolean fits = NAME + figures.length() <= width && name.length() <= NAME;
        if (fits) {
            terminal.say(name + " ".repeat(NAME - name.length()) + figures);
            return;
        }
        if (!name.isEmpty()) {
            text(name);
        }
        if (figures.length() <= width) {
            boolean aligned = NAME + figures.length() <= width;
            terminal.say((aligned ? " ".repeat(NAME) : "") + figures);
        } else {
            text(String.join(", ", cells));
        }
    }

    /** The mark of a source; equal sources share one. */
    private String note(String quality, String source) {
        String note = quality + ": " + source;
        if (!notes.contains(note)) {
            notes.add(note);
        }
        return "[" + (notes.indexOf(note) + 1) + "]";
    }

    private void text(String text) {
        Wrapping.lines(text, "", "", width).forEach(terminal::say);
    }
}
