package simmerpoint.scenario.checks;

import simmerpoint.dish.mirror.MaterialCatalogue;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.scenario.keys.MirrorKeys;
import simmerpoint.scenario.values.ScenarioValues;

/** The mirrors that a scenario asks for: figures given, else those of the material. */
final class MirrorValues {
    private MirrorValues() {}

    /** The mirror of the dish. */
    static Mirror ofDish(ScenarioValues v) {
        String name = v.text(MirrorKeys.MATERIAL);
        return given(v, "mirror", name, of(name, v.number("mirror.dust"), v.number("mirror.panel-tilt")));
    }

    /** The mirror of a zone whose keys stand in that section; what it does not give it has from the dish's. */
    static Mirror ofZone(ScenarioValues v, String section, Mirror dish) {
        String material = section + ".material";
        if (!v.has(material)) {
            return given(v, section, dish.material(), dish);
        }
        String name = v.text(material);
        return given(v, section, name, of(name, dish.dust(), dish.panelTiltRadians()));
    }

    private static Mirror of(String material, double dust, double panelTilt) {
        return MaterialCatalogue.find(material)
                .map(found -> found.mirror(dust, panelTilt))
                .orElse(Mirror.plain(1, 0).withDust(dust).withPanelTilt(panelTilt));
    }

    private static Mirror given(ScenarioValues v, String section, String name, Mirror usual) {
        return new Mirror(
                name,
                v.number(section + ".reflectance", usual.reflectance()),
                v.number(section + ".scattered", usual.scattered()),
                v.number(section + ".slope-error", usual.slopeErrorRadians()),
                v.number(section + ".beam-spread", usual.beamSpreadRadians()),
                v.number(section + ".wide-share", usual.wideShare()),
                v.number(section + ".wide-spread", usual.wideSpreadRadians()),
                v.number(section + ".dust", usual.dust()),
                v.number(section + ".panel-tilt", usual.panelTiltRadians()));
    }
}
