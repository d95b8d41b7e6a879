package simmerpoint.viewer.pan;

import javafx.scene.control.Label;
import javafx.scene.text.Text;

/** Words that are broken into lines, with room for the longest of them, so that what lies around stays while they change. */
final class SteadyLabel extends Label {
    private final String longest;

    SteadyLabel(String longest) {
        this.longest = longest;
        setWrapText(true);
    }

    @Override
    protected double computePrefHeight(double width) {
        double own = super.computePrefHeight(width);
        if (!(width > 0)) {
            return own;
        }
        Text text = new Text(longest);
        text.setFont(getFont());
        text.setWrappingWidth(
                Math.max(1, width - getInsets().getLeft() - getInsets().getRight()));
        double room = text.getLayoutBounds().getHeight();
        return Math.max(own, Math.ceil(room + getInsets().getTop() + getInsets().getBottom()));
    }
}
