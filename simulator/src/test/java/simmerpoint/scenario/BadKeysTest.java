package simmerpoint.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static simmerpoint.scenario.BadInput.GOOD;
import static simmerpoint.scenario.BadInput.assertRefused;
import static simmerpoint.scenario.BadInput.refused;
import static simmerpoint.scenario.BadInput.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Unknown, misplaced, missing, doubled and foreign keys. */
class BadKeysTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "hub: 60 mm|hubb: 60 mm|5|dish.hubb|did you mean hub?",
                "hub: 60 mm|Hub: 60 mm|5|dish.Hub|did you mean hub?",
                "slope-error: 5 mrad|slop_error: 5 mrad|9|mirror.slop_error|did you mean slope-error?",
                "focal-length: 0.8 m|focallength: 0.8 m|4|dish.focallength|did you mean focal-length?",
                "hub: 60 mm|rings: 6|5|dish.rings|it belongs under dish.surface",
                "hub: 60 mm|colour: red|5|dish.colour|known in dish are diameter, focal-length, hub, gap, surface",
                "mirror:|miror:|8|miror|did you mean mirror?",
                "title: test|name: test|1|name|known at the top are title, dish, mirror, workmanship, shape, as-built, build, sun, aim, pan, plane, stand",
                "title: test|dish.hub: 60 mm|1|dish.hub|this key is not known here; keys are indented under their section, here dish",
                "title: test|'': 60 mm|1|``|this key is not known here; known at the top are",
                "title: test|'': {sun: {beam: 5 W/m²}}|1|``|this key is not known here; known at the top are",
                "hub: 60 mm|sun: {beam: 5 W/m²}|5|dish.sun|it belongs to the outermost level",
                "title: test|sky: clear|1|sky|clear stands here, but a section is needed; its keys are kind, setting, turbidity, beam",
                "hub: 60 mm|<<: 60 mm|5|dish.<<|this key is not known",
                "hub: 60 mm|diameter: 1 m|5|dish.diameter|this key is given twice, first in line 3; keep one of them",
                "`  diameter: 1.2 m\n`|``|2|dish.diameter|this key is missing; write for instance diameter: 1.20 m",
                "`  focal-length: 0.8 m\n`|``|2|dish.focal-length|this key is missing",
                ", sectors: 24|``|7|dish.surface.sectors|this key is missing; write for instance sectors: 24",
                ", rings: 6|``|7|dish.surface.rings|this key is missing",
                "`cut: flat-rings, `|``|7|dish.surface.cut|this key is missing; write for instance cut: flat-rings",
                "cut: flat-rings, sectors: 24|cut: smooth|7|dish.surface.rings|rings does not belong to cut smooth, only to flat-rings",
                "cut: flat-rings|cut: bent-strips|7|dish.surface.rings|rings does not belong to cut bent-strips",
                "{cut: flat-rings, sectors: 24, rings: 6}|{cut: square-tiles}|7|dish.surface.tile|this key is missing",
                "{cut: flat-rings, sectors: 24, rings: 6}|{cut: square-tiles, tile: 1.3 m}|7|dish.surface.tile|is not smaller than the dish",
                "{cut: flat-rings, sectors: 24, rings: 6}|{cut: hexagon-tiles, tile: 0.5 mm}|7|dish.surface.tile|at most 2000000",
                "{cut: flat-rings, sectors: 24, rings: 6}|flat-rings|7|dish.surface|flat-rings stands here, but a section is needed",
                "{cut: flat-rings, sectors: 24, rings: 6}|`{cut: smooth}\n  bowl: yes`|8|dish.bowl|this key is not known"
            })
    void isRefusedWithLineAndKey(String line, String replacement, int at, String key, String words) {
        assertRefused(with(line, replacement), at, key, words);
    }

    @Test
    void aDoubledSectionIsRefused() {
        assertRefused(GOOD + "sun: {beam: 800 W/m²}\n", 17, "sun", "this key is given twice, first in line 10");
    }

    @Test
    void aSmoothDishHasNoPanelsToSetApartOrGlueAskew() {
        String smooth = with("{cut: flat-rings, sectors: 24, rings: 6}", "{cut: smooth}");
        assertRefused(smooth.replace("gap: 0 mm", "gap: 1 mm"), 6, "dish.gap", "a smooth dish has no panels");
        assertRefused(
                smooth.replace("slope-error: 5", "panel-tilt: 5"),
                9,
                "mirror.panel-tilt",
                "a smooth dish has no panels that could be glued crooked");
    }

    @ParameterizedTest
    @ValueSource(strings = {"title: test\n", "mirror: {dust: 0.03}\n"})
    void aScenarioWithoutADishNeedsOne(String text) {
        assertRefused(text, 0, "dish", "this section is missing; a scenario needs it");
    }

    @Test
    void aDishWithoutSurfaceNeedsOne() {
        assertRefused("dish:\n  diameter: 1 m\n  focal-length: 1 m\n", 1, "dish.surface", "this section is missing");
        assertRefused("dish:\n", 1, "dish", "there is nothing under it");
    }

    @Test
    void ownFiguresNeedReflectanceAndSlopeError() {
        String text = with("slope-error: 5 mrad", "material: own figures");
        assertEquals(
                List.of("mirror.reflectance", "mirror.slope-error"),
                refused(text).problems().stream().map(Problem::key).toList());
    }

    @Test
    void theDefaultPanIsTooWideForATinyDish() {
        String text = "dish:\n  diameter: 20 cm\n  focal-length: 30 cm\n  surface: {cut: smooth}\n";
        assertRefused(text, 2, "dish.diameter", "a pan 24 cm wide (the default) is not smaller than the dish");
    }

    @Test
    void aMisspeltWordIsToldBeforeWhatIsMissing() {
        ScenarioException e = refused("title: x\ndish:\n  diameter: 1.2 m\n  focal-lenght: 0.8 m\n");
        assertEquals(
                List.of(
                        "t.yaml, line 4, dish.focal-lenght: this key is not known here; did you mean focal-length?",
                        "t.yaml, line 2, dish.surface: this section is missing; write for instance surface: {cut: flat-rings, "
                                + "sectors: 24, rings: 6}"),
                e.sentences());
    }

    @Test
    void everyProblemOfAFileIsTold() {
        String text = GOOD.replace("1.2 m", "1,2 m").replace("hub", "hbu").replace("50°", "-5°");
        ScenarioException e = refused(text);
        assertEquals(List.of(3, 5, 11), e.problems().stream().map(Problem::line).toList());
        assertEquals(
                "t.yaml, line 3, dish.diameter: 1,2 m has a comma; decimals take a point and thousands no separator; write 1.2 m",
                e.getMessage());
        assertEquals("t.yaml", e.file());
    }
}
