package simmerpoint.dish;

import java.util.List;
import simmerpoint.geometry.Point;

/** A surface made of another one: whatever is not said otherwise is as there, but for panels that hide each other. */
public abstract class AlteredSurface implements MirrorSurface {
    /** The other surface. */
    protected final MirrorSurface original;

    /** Of {@code original}. */
    protected AlteredSurface(MirrorSurface original) {
        this.original = original;
    }

    @Override
    public double outlineArea() {
        return original.outlineArea();
    }

    @Override
    public double sampledArea() {
        return original.sampledArea();
    }

    @Override
    public List<Point> outlineCorners() {
        return original.outlineCorners();
    }

    @Override
    public double apertureArea() {
        return original.apertureArea();
    }

    @Override
    public int panels() {
        return original.panels();
    }

    @Override
    public int sectors() {
        return original.sectors();
    }

    @Override
    public double[] ringBorders() {
        return original.ringBorders();
    }

    @Override
    public PanelZones zones() {
        return original.zones();
    }

    @Override
    public double steepestSlope() {
        return original.steepestSlope();
    }

    @Override
    public double radius() {
        return original.radius();
    }

    @Override
    public int panelAt(double x, double y) {
        return original.panelAt(x, y);
    }

    @Override
    public double heightAt(double x, double y) {
        return original.heightAt(x, y);
    }
}
