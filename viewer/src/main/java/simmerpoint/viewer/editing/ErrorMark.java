package simmerpoint.viewer.editing;

import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.shape.FillRule;
import javafx.scene.shape.SVGPath;

/** A sign and a sentence that say what is wrong where it stands; takes no room while nothing is. */
final class ErrorMark extends HBox {
    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");
    private static final String TRIANGLE =
            "M7 0 L14.5 13 H-0.5 Z M6.2 4.2 L6.5 8.6 H7.5 L7.8 4.2 Z M6.2 9.6 H7.8 V11.2 H6.2 Z";

    ErrorMark(ObservableValue<String> sentence) {
        getStyleClass().add("wrong-mark");
        setAlignment(Pos.TOP_LEFT);
        setSpacing(6);
        SVGPath sign = sign();
        Label words = new Label();
        words.setWrapText(true);
        words.setMinHeight(USE_PREF_SIZE);
        words.textProperty().bind(sentence);
        HBox.setHgrow(words, Priority.ALWAYS);
        getChildren().setAll(sign, words);
        managedProperty().bind(visibleProperty());
        sentence.addListener((value, before, now) -> setVisible(!now.isEmpty()));
        setVisible(!sentence.getValue().isEmpty());
    }

    /** Marks a control while what stands in it is wrong. */
    static void follow(Control control, KeyModel model) {
        Runnable mark =
                () -> control.pseudoClassStateChanged(WRONG, model.state().isWrong());
        model.onChange(KeyState::isWrong, mark);
        mark.run();
    }

    /** A triangle with an exclamation mark. */
    static SVGPath sign() {
        SVGPath sign = new SVGPath();
        sign.setContent(TRIANGLE);
        sign.setFillRule(FillRule.EVEN_ODD);
        sign.getStyleClass().add("wrong-sign");
        return sign;
    }
}
