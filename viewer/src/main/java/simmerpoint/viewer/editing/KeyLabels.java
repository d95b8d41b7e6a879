package simmerpoint.viewer.editing;

import java.util.Map;
import java.util.Optional;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.cut.Cuts;
import simmerpoint.scenario.keys.Key;

/** What keys, sections and words of choice are called in the window. */
final class KeyLabels {
    private static final Map<String, String> LABELS = Map.of(
            "sun.shape.kind", "sun's shape",
            "sky.kind", "kind of sky",
            "aim.pan-carried-by", "pan carried by",
            "stand.pull-back", "pull-back",
            "mirror.wide-share", "wide share",
            "aim.mount", "mount behind dish");

    private static final Map<String, String> HEADINGS = Map.ofEntries(
            Map.entry("sun", "The sun"),
            Map.entry("place", "The place"),
            Map.entry("when", "Day and time"),
            Map.entry("sky", "The sky"),
            Map.entry("air", "The air"),
            Map.entry("aim", "The mount"),
            Map.entry("aim.turn", "Turn: the dish is pointed wrong"),
            Map.entry("aim.drift", "Drift: the sun has moved on"),
            Map.entry("dish.rim", "A rim that is not round"),
            Map.entry("dish.zones.middle", "Zone middle"),
            Map.entry("dish.zones.ring", "Zone ring"),
            Map.entry("dish.zones.rim", "Zone rim"),
            Map.entry("dish.zones.upper", "Zone upper"),
            Map.entry("dish.zones.lower", "Zone lower"),
            Map.entry("dish.zones.patches", "Zone patches"),
            Map.entry("dish.covered", "A mask over part of the mirror"),
            Map.entry("mirror", "The mirror"),
            Map.entry("workmanship", "The workmanship"),
            Map.entry("shape", "The shape, where it is not the plan"),
            Map.entry("as-built", "The ribs as built"),
            Map.entry("look-at.bracket", "A bracket of the stand"),
            Map.entry("look-at.arm", "An arm that holds the pan"),
            Map.entry("look-at.handle", "A handle"),
            Map.entry("look-at.wall", "A wall, fence or tent"),
            Map.entry("look-at.grass", "Grass or leaves on the ground"),
            Map.entry("look-at.bench", "A bench or table"));

    private static final Map<String, String> MEANINGS = Map.ofEntries(
            Map.entry("dish.surface.spacing equal-width", "all rings equally wide"),
            Map.entry("dish.surface.spacing equal-depth-step", "each ring rises by the same depth"),
            Map.entry("dish.surface.spacing equal-length", "all panels equally long along the rib"),
            Map.entry("dish.surface.curve circle", "a circle of twice the focal length"),
            Map.entry("dish.surface.curve hanging-chain", "a chain hung from rim to rim, as deep as the parabola"),
            Map.entry("dish.rim.shape polygon", "straight sides, all equal"),
            Map.entry("dish.rim.half left", "the left half, from behind the dish"),
            Map.entry("dish.rim.half right", "the right half, from behind the dish"),
            Map.entry("dish.covered.part middle", "a round mask about the middle"),
            Map.entry("dish.covered.part rim", "a ring along the rim"),
            Map.entry("dish.covered.part upper", "the upper half"),
            Map.entry("dish.covered.part lower", "the lower half"),
            Map.entry("dish.covered.part left", "the left half, from behind the dish"),
            Map.entry("dish.covered.part right", "the right half, from behind the dish"),
            Map.entry("sun.shape.kind uniform-disc", "equally bright all over"),
            Map.entry("sun.shape.kind limb-darkened", "darker towards its edge, as the real sun"),
            Map.entry("sun.shape.kind gaussian", "a soft spot without an edge"),
            Map.entry("sun.shape.kind circumsolar", "with a bright ring of haze around it"),
            Map.entry("sun.shape.kind table", "measured, from a file"),
            Map.entry("sky.kind clear", "usual clear air"),
            Map.entry("sky.kind measured", "the sunlight was measured facing the sun"),
            Map.entry("air.sky open", "the pan faces the open sky"),
            Map.entry("air.sky covered", "under a roof or cloud"),
            Map.entry("aim.pan-carried-by stand", "the pan stands on its own"),
            Map.entry("aim.pan-carried-by dish", "the pan moves with the dish"),
            Map.entry("mirror.material own figures", "nothing from the list; figures as given below"));

    private KeyLabels() {}

    /** What to write beside its control. */
    static String label(Key key) {
        return LABELS.getOrDefault(key.path(), key.name().replace('-', ' '));
    }

    /** The label with what it belongs to, for ears: "drift up", "pan diameter". */
    static String spoken(Key key) {
        String section = key.section().replace('.', ' ').replace('-', ' ');
        return section.isEmpty() ? label(key) : section + ", " + label(key);
    }

    /** What to write over the keys of a section, where a question has several. */
    static String heading(String section) {
        return HEADINGS.getOrDefault(section, section.replace('.', ' ').replace('-', ' '));
    }

    /** Under which heading a section's keys stand. */
    static String headed(String section) {
        return HEADINGS.containsKey(section) || !section.contains(".")
                ? section
                : headed(section.substring(0, section.lastIndexOf('.')));
    }

    /** What a choice does beyond what its sentence says; empty for most. */
    static String remark(Key key) {
        return key.path().equals("mirror.material") ? " Choosing another one brings its own figures." : "";
    }

    /** What a word of choice means, where that needs saying. */
    static Optional<String> meaning(Key key, String word) {
        return key.path().endsWith("surface.cut")
                ? Cuts.find(word).map(CutKind::meaning)
                : Optional.ofNullable(MEANINGS.get(key.path() + " " + word));
    }
}
