package simmerpoint.viewer.yard;

import java.util.Optional;
import java.util.stream.Stream;
import javafx.geometry.Point2D;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import simmerpoint.answer.Figures;
import simmerpoint.pan.Pan;
import simmerpoint.setup.Aim;
import simmerpoint.setup.SideView.Place;
import simmerpoint.study.light.RayPath;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.theme.Shade;
import simmerpoint.viewer.theme.Theme;

/** Paints a {@link SideScene}. */
final class SidePainter {
    private static final double SUN = 13;
    private static final double LABEL = 54;
    static final double[] MISSED = {5, 4};
    static final double[] HOLDS = {2, 5};
    static final double[] AXIS = {9, 3, 2, 3};
    /** Below the words in the upper left corner, px. */
    private static final double BELOW_CORNER = 42;

    private static final double BAR = 110;
    private static final double BAR_BESIDE_WORDS = 60;

    /** How far down from the ground lengths and their words reach, px. */
    private static final double MEASURED = 56;

    private static final double LEAST_BAR = 22;

    /** Left of the bar, what is written beside it, and half of the length's own words, px. */
    private static final double BAR_WORDS = 100;

    private static final double INCH = 0.0254;

    private final Pen pen;
    private final SideScene scene;
    private final SideFrame frame;
    private final UnitSystem system;
    private final Figures figures;
    private final double width;
    private final double height;

    private SidePainter(
            GraphicsContext g,
            SideScene scene,
            SideFrame frame,
            UnitSystem system,
            Theme theme,
            double width,
            double height) {
        pen = new Pen(g, theme);
        this.scene = scene;
        this.frame = frame;
        this.system = system;
        figures = new Figures(system);
        this.width = width;
        this.height = height;
    }

    /** Paints the scene on a sheet of that size, px. */
    static void paint(
            GraphicsContext g,
            SideScene scene,
            SideFrame frame,
            UnitSystem system,
            Theme theme,
            double width,
            double height) {
        g.clearRect(0, 0, width, height + RayKey.height(scene.scenario().target(), width));
        SidePainter painter = new SidePainter(g, scene, frame, system, theme, width, height);
        painter.ground();
        painter.stands();
        painter.sunlight();
        painter.dish();
        painter.axis();
        painter.reflected();
        painter.target();
        painter.sun();
        painter.lengths();
        painter.scaleBar();
        RayKey.paint(painter.pen, scene.scenario().target(), width, height);
        painter.trouble();
    }

    private void ground() {
        pen.g.setFill(pen.colour(Shade.HAIR).deriveColor(0, 1, 1, 0.5));
        pen.g.fillRect(0, frame.ground(), width, Math.max(0, height - frame.ground()));
        pen.stroke(Shade.LINE, 1.5);
        pen.line(0, frame.ground(), width, frame.ground());
    }

    private void stands() {
        double x = frame.x(scene.mount());
        double y = frame.y(scene.mount());
        double leg = scene.legs() * frame.perMetre();
        pen.stroke(Shade.SOLID, 3);
        pen.line(x, y, x - leg, frame.ground());
        pen.line(x, y, x + leg, frame.ground());
        pen.line(x, y, x, frame.ground());
        pen.line(x, y, frame.x(scene.vertex()), frame.y(scene.vertex()));
        if (scene.scenario().aim().panCarriedBy() == Aim.PanCarrier.STAND) {
            pen.stroke(Shade.SOLID, 2, HOLDS);
            pen.line(frame.x(scene.pan()), frame.y(scene.pan()), frame.x(scene.pan()), frame.ground());
        } else {
            pen.stroke(Shade.SOLID, 2, HOLDS);
            pen.line(frame.x(scene.pan()), frame.y(scene.pan()), frame.x(scene.upperRim()), frame.y(scene.upperRim()));
        }
    }

    private void sunlight() {
        pen.stroke(pen.colour(Shade.SUN).deriveColor(0, 1, 1, 0.75), 1);
        for (SideScene.Ray ray : scene.rays()) {
            double x1 = frame.x(ray.from());
            double y1 = frame.y(ray.from());
            double x2 = frame.x(ray.mirror());
            double y2 = frame.y(ray.mirror());
            pen.line(x1, y1, x2, y2);
            pen.head(x1 + 0.3 * (x2 - x1), y1 + 0.3 * (y2 - y1), x2 - x1, y2 - y1);
        }
    }

    private void dish() {
        Color mirror = pen.colour(Shade.MIRROR);
        Color sheet = pen.colour(Shade.SHEET);
        double low = scene.panels().stream()
                .mapToDouble(SideScene.Panel::light)
                .min()
                .orElse(0);
        double high = scene.panels().stream()
                .mapToDouble(SideScene.Panel::light)
                .max()
                .orElse(1);
        boolean bowl = scene.panels().isEmpty();
        if (bowl) {
            pen.fill(sheet.interpolate(mirror, 0.35), scene.profile(), frame);
        }
        for (SideScene.Panel panel : scene.panels()) {
            double share = high - low > 1e-9 ? (panel.light() - low) / (high - low) : 0.5;
            pen.fill(sheet.interpolate(mirror, 0.2 + 0.5 * (1 - share)), panel.edge(), frame);
            pen.stroke(sheet, 0.6);
            pen.outline(panel.edge(), frame);
        }
        pen.stroke(Shade.MIRROR, 2.5);
        pen.way(scene.profile(), frame);
    }

    private void axis() {
        double x1 = frame.x(scene.vertex());
        double y1 = frame.y(scene.vertex());
        double x2 = frame.x(scene.focus());
        double y2 = frame.y(scene.focus());
        pen.stroke(Shade.LINE, 1, AXIS);
        pen.line(x1, y1, x2, y2);
    }

    private void reflected() {
        for (SideScene.Ray ray : scene.rays()) {
            if (ray.fate() == RayPath.Fate.SHADED) {
                continue;
            }
            boolean missed = ray.fate() == RayPath.Fate.MISSED;
            if (missed) {
                pen.stroke(Shade.LOST, 1.6, MISSED);
            } else {
                pen.stroke(Shade.RAY, 1.3);
            }
            pen.line(frame.x(ray.mirror()), frame.y(ray.mirror()), frame.x(ray.end()), frame.y(ray.end()));
            if (missed) {
                pen.stroke(Shade.LOST, 1.6);
                pen.head(
                        frame.x(ray.end()),
                        frame.y(ray.end()),
                        frame.x(ray.end()) - frame.x(ray.mirror()),
                        frame.y(ray.end()) - frame.y(ray.mirror()));
            }
        }
    }

    private void target() {
        double x = frame.x(scene.pan());
        double y = frame.y(scene.pan());
        boolean wrong = scene.panTrouble().isPresent();
        Color solid = pen.colour(wrong ? Shade.WRONG : Shade.SOLID);
        if (scene.scenario().target() instanceof Pan pan) {
            double half = pan.radiusMetres() * frame.perMetre();
            double high = pan.heightMetres() * frame.perMetre();
            pen.g.setFill(pen.colour(Shade.SHEET).interpolate(solid, 0.55));
            pen.g.fillRoundRect(x - half, y - high, 2 * half, high, 4, 4);
            pen.stroke(solid, wrong ? 3 : 2);
            pen.g.strokeRoundRect(x - half, y - high, 2 * half, high, 4, 4);
            pen.line(x - half - 3, y - high, x + half + 3, y - high);
            pen.g.setFill(solid);
            pen.g.fillRoundRect(x - 6, y - high - 5, 12, 4, 3, 3);
        } else {
            pen.stroke(solid, 3);
            pen.outline(scene.disc(), frame);
        }
        focus();
    }

    /** A ring with a cross, seen on the pan too. */
    private void focus() {
        double x = frame.x(scene.focus());
        double y = frame.y(scene.focus());
        pen.stroke(Shade.SHEET, 4);
        pen.g.strokeOval(x - 5, y - 5, 10, 10);
        pen.stroke(Shade.WORD, 1.6);
        pen.g.strokeOval(x - 5, y - 5, 10, 10);
        pen.line(x - 8, y, x + 8, y);
        pen.line(x, y - 8, x, y + 8);
        boolean apart = Math.hypot(x - frame.x(scene.pan()), y - frame.y(scene.pan())) > 14;
        pen.words(Shade.WORD, TextAlignment.LEFT, x + 10, y + (apart ? 10 : 15), "focus");
    }

    private void sun() {
        Point2D at = frame.sun(scene, width);
        double x = at.getX();
        double y = at.getY();
        pen.g.setFill(pen.colour(Shade.SUN));
        pen.g.fillOval(x - SUN, y - SUN, 2 * SUN, 2 * SUN);
        double middle = Math.max(LABEL, Math.min(width - LABEL, x));
        pen.words(
                Shade.WORD,
                TextAlignment.CENTER,
                middle,
                y - SUN - 10,
                "sun " + Figures.fixed(Math.toDegrees(scene.scenario().sun().elevationRadians()), 1) + "° high");
    }

    private void lengths() {
        double ground = frame.ground();
        double panX = frame.x(scene.pan());
        double panY = frame.y(scene.pan());
        double mountX = frame.x(scene.mount());
        double mountY = frame.y(scene.mount());
        double left = Math.max(14, Math.min(mountX - scene.legs() * frame.perMetre(), leftOf()) - 14);
        extension(left, mountY, mountX, mountY);
        // Away from the tripod's legs, if there is room.
        TextAlignment side = left > LABEL ? TextAlignment.RIGHT : TextAlignment.LEFT;
        pen.upright(left, ground, mountY, length(scene.scenario().ground().tripodHeightMetres()), side);
        double right = Math.min(width - 14, Math.max(panX + 60, rightOf() + 14));
        if (panY < ground - 6) {
            double half = scene.scenario().target().radiusMetres() * frame.perMetre();
            extension(panX + half, panY, right, panY);
            // Away from the dish, if there is room.
            TextAlignment beyond = width - right > LABEL ? TextAlignment.LEFT : TextAlignment.RIGHT;
            pen.upright(right, ground, panY, length(scene.geometry().panHeightMetres()), beyond);
        }
        between(mountX, panX);
        clearance();
    }

    private double leftOf() {
        return scene.profile().stream().mapToDouble(frame::x).min().orElse(0);
    }

    private double rightOf() {
        return scene.rays().stream()
                .mapToDouble(r -> frame.x(r.from()))
                .max()
                .orElseGet(() -> frame.sun(scene, width).getX());
    }

    private void extension(double x1, double y1, double x2, double y2) {
        pen.stroke(Shade.LINE, 0.8, 2, 3);
        pen.line(x1, y1, x2, y2);
    }

    /** From the tripod's middle to under the pan. */
    private void between(double mountX, double panX) {
        if (Math.abs(panX - mountX) > 24) {
            double y = frame.ground() + 36;
            extension(mountX, frame.ground() + 30, mountX, y);
            extension(panX, frame.ground(), panX, y);
            pen.across(
                    Math.min(mountX, panX),
                    Math.max(mountX, panX),
                    y,
                    length(Math.abs(scene.geometry().panDistanceMetres())));
        }
    }

    /** From the ground up to the mirror's lowest point. */
    private void clearance() {
        Place lowest = scene.lowest();
        double x = frame.x(lowest);
        double y = frame.y(lowest);
        if (frame.ground() - y > 10) {
            pen.upright(x, frame.ground(), y + 2, length(lowest.heightMetres()), TextAlignment.LEFT);
        }
    }

    private String length(double metres) {
        return figures.length(metres, 2 + (Math.abs(metres) >= 1 ? 1 : 0));
    }

    private void scaleBar() {
        double most = barRoom() / frame.perMetre();
        double unit = system == UnitSystem.INCH ? INCH : 1;
        double round = below(most / unit) * unit;
        double bar = round * frame.perMetre();
        double left = Math.min(frame.x(scene.mount()), frame.x(scene.pan()));
        double right = Math.max(frame.x(scene.mount()), frame.x(scene.pan()));
        String words = figures.length(round);
        boolean atLeft = left >= width - right;
        double x = atLeft ? 14 : width - 14 - 7 - Pen.plainWidth(words) - bar;
        double y = height - 12;
        double end = x + bar;
        pen.stroke(Shade.WORD, 2);
        pen.line(x, y, end, y);
        pen.line(x, y - 4, x, y + 1);
        pen.line(end, y - 4, end, y + 1);
        pen.words(Shade.WORD, TextAlignment.LEFT, end + 7, y - 2, words);
    }

    /** Most pixels for the bar: what is written beside it ends before the length between tripod and pan. */
    private double barRoom() {
        double usual = Math.min(wrong().isPresent() ? BAR_BESIDE_WORDS : BAR, width / 4);
        double free = (frame.x(scene.mount()) + frame.x(scene.pan())) / 2 - BAR_WORDS;
        return free >= LEAST_BAR ? Math.min(usual, free) : usual;
    }

    /** The largest of 1, 2, 5 times a power of ten that is not above x. */
    static double below(double x) {
        double power = Math.pow(10, Math.floor(Math.log10(x)));
        double mantissa = x / power * (1 + 1e-9);
        return (mantissa >= 5 ? 5 : mantissa >= 2 ? 2 : 1) * power;
    }

    private Optional<String> wrong() {
        return Stream.of(scene.panTrouble(), scene.dishTrouble())
                .flatMap(Optional::stream)
                .reduce((pan, dish) -> pan + " " + dish);
    }

    /** Under everything that is measured, or else in the corner beside the sun, where nothing stands. */
    private void trouble() {
        wrong().ifPresent(text -> {
            double below = frame.ground() + MEASURED;
            double high = Captions.height(text, Captions.MOST, width);
            if (below + high <= height - 3) {
                Captions.paint(pen, text, Captions.MOST, width, below, width, height, Shade.WRONG);
            } else {
                double room = Math.max(2 * LABEL, Math.min(Captions.MOST, frame.x(scene.sun()) - LABEL - 30));
                Captions.paint(pen, text, room, 0, BELOW_CORNER, width, height, Shade.WRONG);
            }
        });
    }
}
