package simmerpoint.drawing.cooker;

import simmerpoint.geometry.Vec;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.SideView;

/**
 * Where things are seen from the side, in a frame that stays with the pan's stand when the dish is slid: level distance
 * towards the sun from where the tripod's middle is with no slide, and height above the ground, m.
 */
public final class YardPlace {
    private final SideView view;
    private final double slide;

    /** Of a scenario. */
    public YardPlace(Scenario scenario) {
        view = scenario.sideView();
        slide = scenario.stand().slideMetres();
    }

    /** Of a place in the well-aimed frame. */
    public SideView.Place of(Vec wellAimed) {
        SideView.Place place = view.of(wellAimed);
        return new SideView.Place(place.towardsSunMetres() - slide, place.heightMetres());
    }

    /** Of the point the dish turns about. */
    public SideView.Place mount() {
        return new SideView.Place(-slide, view.mountHeightMetres());
    }
}
