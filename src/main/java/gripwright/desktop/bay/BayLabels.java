package gripwright.desktop.bay;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** Labels in the four sizes of type of the bay, and the care to touch a node only when something changed. */
final class BayLabels {

    static final String HUGE = "bay-xl";
    static final String LARGE = "bay-l";
    static final String MIDDLE = "bay-m";
    static final String SMALL = "bay-s";
    static final String QUIET = "bay-quiet";
    static final String STRONG = "bay-strong";

    private BayLabels() {
    }

    static Label label(String... styles) {
        Label label = new Label();
        label.getStyleClass().addAll(styles);
        return label;
    }

    /** A label that is never cut off. */
    static Label whole(String... styles) {
        Label label = label(styles);
        label.setMinWidth(Region.USE_PREF_SIZE);
        return label;
    }

    /** Writes a text that differs from the one there. */
    static void write(Label label, String text) {
        if (!label.getText().equals(text)) {
            label.setText(text);
        }
    }

    /** Shows or takes away a node with its room. */
    static void present(Node node, boolean present) {
        if (node.isManaged() != present) {
            node.setManaged(present);
        }
        if (node.isVisible() != present) {
            node.setVisible(present);
        }
    }
}
