package simmerpoint.viewer.editing;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;

/** What a builder asks, in this order, and which sections of the scenario answer it. */
enum QuestionGroup {
    /** Pan, water, lid. */
    FOOD("What is cooked, and in what?", "pan plane"),
    /** Size and panels. */
    DISH("How big is the dish, how cut?", "dish"),
    /** Material and roughness. */
    MIRROR("What covers it, how rough?", "mirror workmanship shape as-built"),
    /** The moves and heights. */
    STAND("Where does the pan stand?", "stand"),
    /** Turn, drift, mount. */
    AIM("How well is it aimed?", "aim"),
    /** Sun, place, sky, air. */
    SUN("In what sun and weather?", "sun place when sky air"),
    /** Levels of heat. */
    LEVELS("What is a simmer, what a boil?", "heat-levels"),
    /** Named places in its light. */
    THINGS("What stands in its light?", "look-at"),
    /** Sheets, ribs, stand. */
    BUILD("What is it cut from?", "build"),
    /** The title. */
    NAME("What is it called?", ""),
    /** Keys of sections that no question names. */
    REST("What else?", "-");

    private final String words;
    private final String sections;

    QuestionGroup(String words, String sections) {
        this.words = words;
        this.sections = sections;
    }

    /** The question. */
    String words() {
        return words;
    }

    /** Its keys, in the order of the file. */
    List<Key> keys() {
        return Keys.all().stream().filter(key -> of(key) == this).toList();
    }

    /** Under which question a key stands. */
    static QuestionGroup of(Key key) {
        String top = key.section().contains(".")
                ? key.section().substring(0, key.section().indexOf('.'))
                : key.section();
        return Stream.of(values())
                .filter(asked -> Arrays.asList(asked.sections.split(" ")).contains(top))
                .findFirst()
                .orElse(REST);
    }
}
