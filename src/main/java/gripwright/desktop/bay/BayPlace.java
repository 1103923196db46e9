package gripwright.desktop.bay;

import gripwright.desktop.support.Place;
import gripwright.desktop.support.PlaceKey;
import gripwright.desktop.support.Workbench;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.scene.Node;
import javafx.util.Duration;

/** The place Bay in the window. */
public final class BayPlace implements Place {

    private final BayViewModel bay;
    private final BayView view;
    private final Timeline seconds;

    public BayPlace(Workbench workbench) {
        bay = new BayViewModel(workbench, Clock.systemUTC(), () -> UUID.randomUUID().toString());
        view = new BayView(workbench, bay, new BayKeys(workbench, bay,
                () -> workbench.say("Shots are typed or pasted here.")));
        seconds = new Timeline(new KeyFrame(Duration.seconds(1), event -> bay.tick()));
        seconds.setCycleCount(Animation.INDEFINITE);
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
