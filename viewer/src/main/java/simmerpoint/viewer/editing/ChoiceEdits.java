package simmerpoint.viewer.editing;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import simmerpoint.dish.cut.Cuts;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.keys.CutKeys;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.scenario.keys.MirrorKeys;
import simmerpoint.scenario.keys.ZoneKeys;
import simmerpoint.units.Dimension;
import simmerpoint.units.TypedQuantity;
import simmerpoint.viewer.dialog.Dialogs;
import simmerpoint.viewer.document.DocumentState;
import simmerpoint.viewer.document.Edit;
import simmerpoint.viewer.document.ScenarioDocument;

/**
 * Choices that change which keys belong: each is made as one step, with what the new choice needs filled in and what it
 * forbids taken out. What stood there before a choice was changed is remembered and comes back with it.
 */
final class ChoiceEdits {
    private static final List<String> PLACE = List.of("place.latitude", "place.longitude", "place.zone");
    private static final List<String> OWN_FIGURES = List.of("reflectance", "slope-error");

    private final ScenarioDocument document;
    private final Dialogs dialogs;
    private final Map<String, String> memory = new HashMap<>();

    ChoiceEdits(ScenarioDocument document, Dialogs dialogs) {
        this.document = document;
        this.dialogs = dialogs;
        document.stateProperty().addListener((value, before, now) -> memory.putAll(now.given()));
        memory.putAll(document.state().given());
    }

    /** Another word at a key of choice. A file that it cannot do without is asked for; nothing changes if none is named. */
    void choose(Key key, String word) {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put(key.path(), word);
        Edit edit = Edit.NONE;
        if (key.path().equals("dish.surface.cut")) {
            edit = Edit.drop(given(CutKeys.inapplicable(word)));
            boolean whole = Cuts.find(word).filter(cut -> !ZoneKeys.isZone(cut)).isPresent();
            edit = whole && document.state().hasSection(ZoneKeys.SECTION)
                    ? edit.then(Edit.drop(ZoneKeys.SECTION))
                    : edit;
        }
        if (!fill(key.section(), word, typed)) {
            return;
        }
        if (key.name().equals("material") && word.equals(MirrorKeys.OWN_FIGURES)) {
            fillFigures(key.section(), typed);
        }
        document.apply(edit.then(Edit.type(typed)));
    }

    private String[] given(List<String> paths) {
        return paths.stream()
                .filter(path -> document.state().typed(path).isPresent())
                .toArray(String[]::new);
    }

    /** Keys that the choice cannot do without: as they were the last time, a usual value, or a file asked for; false if none was named. */
    private boolean fill(String section, String word, Map<String, String> typed) {
        for (Key key : Keys.all()) {
            boolean own = key.section().equals(section) && key.onlyFor().contains(word);
            boolean size = section.equals("dish.surface")
                    && CutKeys.isOfPlannedSize(key.path())
                    && !CutKeys.inapplicable(word).contains(key.path());
            if ((own || size)
                    && key.required()
                    && document.state().typed(key.path()).isEmpty()) {
                Optional<String> value = Optional.ofNullable(memory.get(key.path()))
                        .or(() -> key.kind() == Key.Kind.FILE
                                ? FileQuestion.ask(key, document, dialogs)
                                : Optional.of(key.example()));
                if (value.isEmpty()) {
                    return false;
                }
                typed.put(key.path(), value.get());
            }
        }
        return true;
    }

    /** Own figures begin with those of the material before. */
    private void fillFigures(String section, Map<String, String> typed) {
        Scenario scenario = document.state().read().scenario();
        for (String name : OWN_FIGURES) {
            String path = section + "." + name;
            if (document.state().typed(path).isEmpty()) {
                EffectiveValue.of(Keys.find(path).orElseThrow(), scenario)
                        .ifPresent(figure -> typed.put(path, figure.text()));
            }
        }
    }

    /** A bare disc as wide as the pan stands in for it; the pan is remembered. */
    void takeDisc() {
        DocumentState state = document.state();
        Map<String, String> typed = remembered("plane");
        typed.putIfAbsent("plane.disc", state.typed("pan.diameter").orElse("24 cm"));
        document.apply(Edit.drop("pan", "air", "heat-levels").then(Edit.type(typed)));
    }

    /** A pan instead of the bare disc: the one that was there before, or a usual one. */
    void takePan() {
        Map<String, String> typed = remembered("pan");
        typed.putAll(remembered("air"));
        typed.putAll(remembered("heat-levels"));
        document.apply(Edit.drop("plane").then(Edit.type(typed)));
    }

    /** The sun of a day and place; what is missing of the place is asked for at its keys. */
    void takeDay(LocalDate today) {
        Map<String, String> typed = remembered("when");
        typed.putIfAbsent("when.date", today.toString());
        typed.putIfAbsent("when.time", "12:00");
        if (!document.state().hasSection("place")) {
            typed.putAll(remembered("place"));
            // A usual place to begin with: nothing is wrong before anything was typed.
            for (String path : PLACE) {
                typed.putIfAbsent(path, Keys.find(path).orElseThrow().example());
            }
        }
        document.apply(Edit.drop("sun.elevation", "sun.beam").then(Edit.type(typed)));
    }

    /** A sun that stands as said: at first where it stands now. */
    void takeGivenSun() {
        Scenario scenario = document.state().read().scenario();
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put(
                "sun.elevation",
                TypedQuantity.written(scenario.sun().elevationRadians(), Dimension.ANGLE, "°", 1)
                        .text());
        typed.put(
                "sun.beam",
                TypedQuantity.written(scenario.sun().beamWattsPerSquareMetre(), Dimension.IRRADIANCE, "W/m²", 0)
                        .text());
        boolean measured = ChosenWord.word(document.state(), "sky.kind").equals("measured");
        boolean unplaced = Optional.ofNullable(document.state().given().get("place.latitude"))
                .isEmpty();
        Edit out = Edit.drop("when");
        out = measured || unplaced ? out.then(Edit.drop("sky")) : out;
        out = unplaced ? out.then(Edit.drop("place")) : out;
        document.apply(out.then(Edit.type(typed)));
    }

    private Map<String, String> remembered(String section) {
        Map<String, String> values = new LinkedHashMap<>();
        for (Key key : Keys.all()) {
            boolean inside = key.section().equals(section) || key.section().startsWith(section + ".");
            if (inside && memory.containsKey(key.path())) {
                values.put(key.path(), memory.get(key.path()));
            }
        }
        return values;
    }
}
