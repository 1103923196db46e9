package gripwright.desktop;

import gripwright.desktop.support.Place;
import gripwright.desktop.support.PlaceKey;
import gripwright.desktop.support.Sheets;
import javafx.scene.Node;

/** A place of which nothing is built yet: it says what will be here. */
record EmptyPlace(PlaceKey key, Node node) implements Place {

    EmptyPlace(PlaceKey key) {
        this(key, Sheets.page(key, Sheets.empty("This place is not built yet.", "Nothing can be done here for now.", null)));
    }
}
