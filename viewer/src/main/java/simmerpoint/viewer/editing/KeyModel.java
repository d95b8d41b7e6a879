package simmerpoint.viewer.editing;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import simmerpoint.scenario.keys.Key;
import simmerpoint.units.TypedQuantity;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.document.DocumentState;
import simmerpoint.viewer.document.ScenarioDocument;

/** One key as it is shown and changed: what stands there in the units asked for, what holds if nothing does, what is wrong. */
final class KeyModel {
    private static final Pattern BARE_NUMBER = Pattern.compile("\\s*[+\\-−]?([0-9]+\\.?[0-9]*|\\.[0-9]+)\\s*");

    private static final int ROUGHLY = 3;
    private static final char NBSP = '\u00a0';

    private final Key key;
    private final ScenarioDocument document;
    private final ObservableValue<UnitSystem> units;
    private final ReadOnlyStringWrapper shown = new ReadOnlyStringWrapper(this, "shown", "");
    private final ReadOnlyStringWrapper otherwise = new ReadOnlyStringWrapper(this, "otherwise", "");
    private final ReadOnlyStringWrapper inTheFile = new ReadOnlyStringWrapper(this, "inTheFile", "");
    private final ReadOnlyStringWrapper wrong = new ReadOnlyStringWrapper(this, "wrong", "");
    private final ReadOnlyStringWrapper whyNot = new ReadOnlyStringWrapper(this, "whyNot", "");
    private final ReadOnlyBooleanWrapper given = new ReadOnlyBooleanWrapper(this, "given");
    private Optional<TypedQuantity> quantity = Optional.empty();

    /** A model that listens to the document and the units. */
    KeyModel(Key key, ScenarioDocument document, ObservableValue<UnitSystem> units) {
        this.key = key;
        this.document = document;
        this.units = units;
        document.stateProperty().addListener((value, before, now) -> refresh());
        units.addListener((value, before, now) -> refresh());
        refresh();
    }

    Key key() {
        return key;
    }

    ScenarioDocument document() {
        return document;
    }

    /** What stands at the key, in the units asked for; empty if its default holds. */
    ReadOnlyStringProperty shownProperty() {
        return shown.getReadOnlyProperty();
    }

    /** What holds where nothing is given. */
    ReadOnlyStringProperty otherwiseProperty() {
        return otherwise.getReadOnlyProperty();
    }

    /** As it stands in the file, where it is shown in other units; else empty. */
    ReadOnlyStringProperty inTheFileProperty() {
        return inTheFile.getReadOnlyProperty();
    }

    /** What is wrong with it; empty if nothing. */
    ReadOnlyStringProperty wrongProperty() {
        return wrong.getReadOnlyProperty();
    }

    /** Why the key has no meaning now; empty if it has. */
    ReadOnlyStringProperty whyNotProperty() {
        return whyNot.getReadOnlyProperty();
    }

    /** Whether something stands there, right or wrong. */
    ReadOnlyBooleanProperty givenProperty() {
        return given.getReadOnlyProperty();
    }

    /** The number that holds, in the unit in which it is shown; empty where something wrong stands. */
    Optional<TypedQuantity> quantity() {
        return quantity;
    }

    private void refresh() {
        DocumentState state = document.state();
        Optional<String> typed = state.typed(key.path());
        Optional<TypedQuantity> number = typed.flatMap(this::measured);
        Optional<TypedQuantity> taken =
                EffectiveValue.of(key, state.read().scenario()).map(this::inUnits);
        quantity = typed.isPresent() ? number.map(this::inUnits) : taken;
        String text =
                quantity.filter(q -> typed.isPresent()).map(TypedQuantity::text).orElse(typed.orElse(""));
        otherwise.set(otherwise(taken.filter(q -> typed.isEmpty() || key.defaultIsValue())));
        inTheFile.set(typed.filter(t -> !t.equals(text)).orElse(""));
        wrong.set(state.wrongAt(key.path()).orElse(""));
        whyNot.set(KeyApplicability.whyNot(key, state).orElse(""));
        given.set(typed.isPresent());
        shown.set(text);
    }

    private String otherwise(Optional<TypedQuantity> figure) {
        return figure.map(TypedQuantity::text).orElse(key.defaultText() == null ? "" : key.defaultText());
    }

    private Optional<TypedQuantity> measured(String typed) {
        boolean plain = key.kind() == Key.Kind.QUANTITY || key.kind() == Key.Kind.COUNT;
        return plain ? TypedQuantity.of(typed, key.dimension()) : Optional.empty();
    }

    private TypedQuantity inUnits(TypedQuantity typed) {
        return typed.in(units.getValue());
    }

    /** The unit that a bare number gets; empty for plain numbers and words. */
    String unit() {
        if (key.kind() != Key.Kind.QUANTITY) {
            return "";
        }
        return quantity.orElseGet(this::usual).unit();
    }

    /** The key's example, a usual number, in the units asked for; only for numbers. */
    TypedQuantity usual() {
        return inUnits(TypedQuantity.of(key.example(), key.dimension()).orElseThrow());
    }

    /** Which numbers are allowed, in the units asked for. */
    String allowed() {
        String[] ends = key.allowed().split(" to ", -1);
        for (int k = 0; k < ends.length; k++) {
            ends[k] = end(ends[k]);
        }
        return String.join(" to ", ends);
    }

    private String end(String words) {
        String before = words.startsWith("above ") ? "above " : words.startsWith("below ") ? "below " : "";
        String number = words.substring(before.length());
        return before
                + measured(number)
                        .map(q -> q.in(units.getValue(), ROUGHLY))
                        .map(q -> q.text().replace(' ', NBSP))
                        .orElse(number);
    }

    /** Someone typed a text; a bare number gets a unit, nothing at all means the default. */
    void enter(String text) {
        if (text.equals(shown.get())) {
            return;
        }
        if (text.isBlank() && !key.required()) {
            reset();
            return;
        }
        document.change(Map.of(key.path(), withUnit(text)));
    }

    /** The text as it goes into the file: a bare number with the unit that stood there, or centimetres for a large one. */
    String withUnit(String text) {
        String unit = unit();
        if (unit.isEmpty() || !BARE_NUMBER.matcher(text).matches()) {
            return text;
        }
        String number = text.strip();
        return number + (unit.equals("°") ? "" : " ") + (unit.equals("m") && isRatherCentimetres(number) ? "cm" : unit);
    }

    /** Whether so many cm are nearer than so many m to what holds: 90 where 1.2 m stood. */
    private boolean isRatherCentimetres(String number) {
        Optional<TypedQuantity> asCentimetres = measured(number + " cm");
        double stood = quantity.orElseGet(this::usual).si();
        double cm = asCentimetres.map(TypedQuantity::si).orElse(0.0);
        return stood > 0 && cm > 0 && Math.abs(Math.log(cm / stood)) < Math.abs(Math.log(100 * cm / stood));
    }

    /** The default shall hold again. */
    void reset() {
        if (given.get()) {
            document.reset(key.path());
        }
    }
}
