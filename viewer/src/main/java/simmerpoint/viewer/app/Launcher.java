package simmerpoint.viewer.app;

import javafx.application.Application;

/** Where the program with the window starts; no {@link Application} itself, so that one jar can hold everything. */
public final class Launcher {
    private Launcher() {}

    /** Opens the window; see {@link ViewerApp}. */
    public static void main(String[] args) {
        Application.launch(ViewerApp.class, args);
    }
}
