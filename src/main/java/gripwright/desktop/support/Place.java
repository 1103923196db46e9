package gripwright.desktop.support;

import java.util.List;
import javafx.scene.Node;

/** One of the seven places of the window: what it is, what it shows, and what happens when it is entered and left. */
public interface Place {

    PlaceKey key();

    /** Its content; the same node every time, built when the place is made. */
    Node node();

    /** A key of the place's own and what it does, for the overlay of keys. */
    record KeyLine(String keys, String what) {
    }

    /** The place's own keys, in order of use. */
    default List<KeyLine> keys() {
        return List.of();
    }

    /** The place has just been shown; a good moment to give the focus to where work begins. */
    default void entered() {
    }

    /** The place is about to be hidden. */
    default void left() {
    }
}
