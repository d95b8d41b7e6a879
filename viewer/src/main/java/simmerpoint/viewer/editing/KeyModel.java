package simmerpoint.viewer.editing;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.ZoneKeys;
import simmerpoint.units.PlusMinus;
import simmerpoint.units.TypedQuantity;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.document.DocumentState;
import simmerpoint.viewer.document.ScenarioDocument;

/** One key as it is shown and changed: what stands there in the units asked for, what holds if nothing does, what is wrong. */
final class KeyModel {
    private static final Pattern BARE_NUMBER = Pattern.compile("\\s*[+\\-−]?([0-9]+\\.?[0-9]*|\\.[0-9]+)\\s*");

    /** 12 1/2, 3/8 or 7½, without a unit. */
    private static final Pattern BARE_FRACTION =
            Pattern.compile("\\s*[+\\-−]?[0-9]*[ -]?([0-9]+\\s*[/⁄]\\s*[0-9]+|[½¼¾⅛⅜⅝⅞⅓⅔])\\s*");

    private static final int ROUGHLY = 3;
    private static final char NBSP = '\u00a0';

    private final Key key;
    private final ScenarioDocument document;
    private final ObservableValue<UnitSystem> units;
    private final ReadOnlyObjectWrapper<KeyState> state = new ReadOnlyObjectWrapper<>(this, "state");

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

    /** What is shown of it. */
    ReadOnlyObjectProperty<KeyState> stateProperty() {
        return state.getReadOnlyProperty();
    }

    /** What is shown of it now. */
    KeyState state() {
        return state.get();
    }

    /** Runs {@code then} whenever that part of the state becomes another. */
    void onChange(Function<KeyState, Object> part, Runnable then) {
        state.addListener((value, before, now) -> {
            if (!part.apply(before).equals(part.apply(now))) {
                then.run();
            }
        });
    }

    private void refresh() {
        DocumentState now = document.state();
        Optional<String> typed = now.typed(key.path());
        Optional<TypedQuantity> number = typed.flatMap(this::measured);
        Optional<TypedQuantity> taken =
                EffectiveValue.of(key, now.read().scenario()).map(this::inUnits);
        Optional<TypedQuantity> quantity = typed.isPresent() ? number.map(this::inUnits) : taken;
        String text = quantity.filter(q -> typed.isPresent())
                .map(TypedQuantity::inFractions)
                .orElse(typed.orElse(""));
        state.set(new KeyState(
                text,
                otherwise(taken.filter(q -> typed.isEmpty() || key.defaultIsValue())),
                typed.filter(t -> !t.equals(text)).orElse(""),
                now.wrongAt(key.path()).orElse(""),
                KeyApplicability.whyNot(key, now).orElse(""),
                typed.isPresent(),
                quantity));
    }

    private String otherwise(Optional<TypedQuantity> figure) {
        boolean ofZone = ZoneKeys.zoneOf(key.path()).isPresent() && key.name().equals("cut");
        String words = ofZone ? Key.FROM_DISH : key.defaultText() == null ? "" : key.defaultText();
        return figure.map(TypedQuantity::inFractions).orElse(words);
    }

    private Optional<TypedQuantity> measured(String typed) {
        boolean plain = key.kind() == Key.Kind.QUANTITY || key.kind() == Key.Kind.COUNT;
        return plain ? TypedQuantity.of(typed, key.dimension()) : Optional.empty();
    }

    private TypedQuantity inUnits(TypedQuantity typed) {
        return typed.shownIn(units.getValue());
    }

    /** The unit that a bare number gets; empty for plain numbers and words. */
    String unit() {
        if (key.kind() != Key.Kind.QUANTITY) {
            return "";
        }
        return state().quantity().orElseGet(this::usual).unit();
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
        if (withUnit(text).equals(withUnit(state().shown()))) {
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
        PlusMinus parts = PlusMinus.split(text);
        return parts.isGiven() ? bareWithUnit(parts.value()) + " ± " + parts.doubt() : bareWithUnit(text);
    }

    private String bareWithUnit(String text) {
        String unit = unit();
        boolean fraction = BARE_FRACTION.matcher(text).matches();
        if (key.kind() == Key.Kind.QUANTITY
                && (fraction || !BARE_NUMBER.matcher(text).matches())) {
            return TypedQuantity.decimal(fraction ? text.strip() + " " + unit : text, key.dimension());
        }
        if (unit.isEmpty() || !BARE_NUMBER.matcher(text).matches()) {
            return text;
        }
        String number = text.strip();
        return number + (unit.equals("°") ? "" : " ") + (unit.equals("m") && isRatherCentimetres(number) ? "cm" : unit);
    }

    /** Whether so many cm are nearer than so many m to what holds: 90 where 1.2 m stood. */
    private boolean isRatherCentimetres(String number) {
        Optional<TypedQuantity> asCentimetres = measured(number + " cm");
        double stood = state().quantity().orElseGet(this::usual).si();
        double cm = asCentimetres.map(TypedQuantity::si).orElse(0.0);
        return stood > 0 && cm > 0 && Math.abs(Math.log(cm / stood)) < Math.abs(Math.log(100 * cm / stood));
    }

    /** What stands in the file shall stand there again; empty for the default. */
    void restore(String typed) {
        if (typed.isEmpty()) {
            reset();
        } else {
            document.change(Map.of(key.path(), typed));
        }
    }

    /** The default shall hold again. */
    void reset() {
        if (state().given()) {
            document.reset(key.path());
        }
    }
}
