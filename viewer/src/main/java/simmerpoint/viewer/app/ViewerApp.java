package simmerpoint.viewer.app;

import javafx.application.Application;
import javafx.scene.Scene;
import javafx.stage.Stage;
import simmerpoint.viewer.theme.Theme;

/** The window. */
public final class ViewerApp extends Application {
    private static final double USUAL_WIDTH = 1280;
    private static final double USUAL_HEIGHT = 800;

    @Override
    public void start(Stage stage) {
        Workbench workbench = new Workbench();
        Scene scene = new Scene(workbench, USUAL_WIDTH, USUAL_HEIGHT);
        Theme.LIGHT.dress(workbench);
        stage.setTitle("Simmerpoint");
        stage.setMinWidth(Workbench.LEAST_WIDTH);
        stage.setMinHeight(Workbench.LEAST_HEIGHT);
        stage.setScene(scene);
        stage.show();
    }
}
