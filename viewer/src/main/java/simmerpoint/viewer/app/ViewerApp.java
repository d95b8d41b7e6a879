package simmerpoint.viewer.app;

import java.util.Optional;
import javafx.animation.AnimationTimer;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Group;
import javafx.scene.Scene;
import javafx.scene.image.ImageView;
import javafx.stage.Stage;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.viewer.dialog.WindowDialogs;
import simmerpoint.viewer.document.ConfigFolder;
import simmerpoint.viewer.document.OpenedFile;
import simmerpoint.viewer.document.RecentFiles;
import simmerpoint.viewer.document.ScenarioDocument;
import simmerpoint.viewer.theme.Zoom;

/** The program behind the window. */
public final class ViewerApp extends Application {
    private static final Arguments.Size USUAL = new Arguments.Size(1280, 800);
    private static final String RECENT = "recent-scenarios.txt";
    private static final String LOOK = "look.txt";

    /** The first frame is on the screen when the third begins. */
    private static final int FRAMES = 2;

    /** What was asked for before JavaFX was there; JavaFX makes the application itself and takes only words. */
    private static volatile Start asked;

    private static volatile int exitCode;

    private record Start(Arguments arguments, OpenedFile opened, Optional<String> complaint) {}

    private Optional<ViewerWindow> window = Optional.empty();

    /** Runs the program to its end and returns its exit code. */
    static int open(Arguments arguments, OpenedFile opened) {
        return open(new Start(arguments, opened, Optional.empty()));
    }

    /** The same with the example, saying why it is not what was asked for. */
    static int openExample(Arguments arguments, String complaint) {
        return open(new Start(arguments, OpenedFile.example(), Optional.of(complaint)));
    }

    private static int open(Start start) {
        asked = start;
        launch(ViewerApp.class);
        return exitCode;
    }

    @Override
    public void start(Stage stage) {
        Arguments arguments = asked.arguments();
        boolean shot = arguments.shot().isPresent();
        RecentFiles recent = shot
                ? RecentFiles.forgotten()
                : RecentFiles.in(ConfigFolder.usual().resolve(RECENT));
        StoredDisplaySettings remembered = shot
                ? StoredDisplaySettings.forgotten()
                : StoredDisplaySettings.in(ConfigFolder.usual().resolve(LOOK));
        if (!shot) {
            arguments.scenario().filter(file -> asked.complaint().isEmpty()).ifPresent(recent::add);
        }
        ViewerWindow all = new ViewerWindow(
                new ScenarioDocument(asked.opened()),
                recent,
                remembered.settings(arguments.units(), arguments.theme()),
                new WindowDialogs(() -> stage),
                arguments.size().orElse(USUAL),
                TraceOptions.defaults());
        window = Optional.of(all);
        StartupActions opening = new StartupActions(all, arguments);
        asked.complaint().ifPresentOrElse(all::tell, opening::begin);
        if (shot) {
            all.begin();
            Platform.setImplicitExit(false);
            new Screenshot(all, opening, arguments.shot().get(), this::end).start();
        } else {
            show(stage, all);
        }
    }

    private void show(Stage stage, ViewerWindow all) {
        stage.titleProperty().bind(all.document().titleProperty().map(title -> title + " \u2013 Simmerpoint"));
        stage.setMinWidth(Zoom.LEAST_WIDTH);
        stage.setMinHeight(Zoom.LEAST_HEIGHT);
        stage.setOnCloseRequest(event -> {
            if (!all.files().mayLeave()) {
                event.consume();
            }
        });
        double width = all.scene().getWidth();
        double height = all.scene().getHeight();
        // Its picture is painted before it is shown, stands there from the first frame on, and is seen only then, so
        // that the
        // window is never blank; the window itself takes its place, and light is traced.
        ImageView picture = new ImageView(all.scene().snapshot(null));
        stage.setScene(new Scene(new Group(picture), width, height, all.scene().getFill()));
        stage.setOpacity(0);
        stage.show();
        WindowSize.keep(stage, width, height);
        afterFrames(FRAMES, () -> {
            stage.setOpacity(1);
            stage.setScene(all.scene());
            afterFrames(FRAMES, all::begin);
        });
    }

    /** Runs something once so many frames have been painted. */
    private static void afterFrames(int frames, Runnable then) {
        new AnimationTimer() {
            private int painted;

            @Override
            public void handle(long now) {
                if (painted++ == frames) {
                    stop();
                    then.run();
                }
            }
        }.start();
    }

    private void end(int code) {
        exitCode = code;
        Platform.exit();
    }

    @Override
    public void stop() {
        window.ifPresent(ViewerWindow::close);
    }
}
