package gripwright.desktop.bay;

import gripwright.desktop.support.Place;
import gripwright.desktop.support.PlaceKey;
import gripwright.desktop.support.Workbench;
import java.io.File;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import javafx.stage.WindowEvent;
import javafx.util.Duration;

/** The place Bay in the window. */
public final class BayPlace implements Place {

    private final BayViewModel bay;
    private final ShotSources sources;
    private final BayView view;
    private final Timeline seconds;
    private Window closesWith;

    public BayPlace(Workbench workbench) {
        bay = new BayViewModel(workbench, Clock.systemUTC(), () -> UUID.randomUUID().toString());
        sources = new ShotSources(workbench, bay);
        view = new BayView(workbench, bay, new BayKeys(workbench, bay,
                () -> sources.ask(this::chooseFile, this::chooseFolder)));
        view.sceneProperty().flatMap(Scene::windowProperty).subscribe(this::closeWith);
        seconds = new Timeline(new KeyFrame(Duration.seconds(1), event -> bay.tick()));
        seconds.setCycleCount(Animation.INDEFINITE);
    }

    /** When the window goes, the source of shots and the clock go with it. */
    private void closeWith(Window window) {
        if (window != null && window != closesWith) {
            closesWith = window;
            window.addEventHandler(WindowEvent.WINDOW_HIDDEN, event -> {
                sources.stop();
                seconds.stop();
            });
        }
    }

    private void chooseFile() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Watch a file of readings");
        File file = chooser.showOpenDialog(view.getScene().getWindow());
        if (file != null) {
            sources.chosen(file.toPath());
        }
    }

    private void chooseFolder() {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle("Watch a folder of readings");
        File folder = chooser.showDialog(view.getScene().getWindow());
        if (folder != null) {
            sources.chosen(folder.toPath());
        }
    }

    /** The sources that shots can arrive from. */
    public ShotSources sources() {
        return sources;
    }

    @Override
    public PlaceKey key() {
        return PlaceKey.BAY;
    }

    @Override
    public Node node() {
        return view;
    }

    @Override
    public List<KeyLine> keys() {
        return BayAction.keyLines();
    }

    @Override
    public void entered() {
        bay.setActive(true);
        seconds.play();
        view.begin();
    }

    @Override
    public void left() {
        seconds.stop();
        bay.setActive(false);
    }
}
