package gripwright.desktop.support;

import javafx.scene.Node;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Spinner;
import javafx.scene.control.TextInputControl;

/** Whether what has the focus takes typing, so that bare digits and letters are its own. */
public final class Typing {

    private static final String OWN = "gripwright.takesTyping";

    private Typing() {
    }

    /** Marks a node of one's own that takes digits and letters while it, or something inside it, has the focus. */
    public static void takenBy(Node node) {
        node.getProperties().put(OWN, Boolean.TRUE);
    }

    /** Whether bare digits and letters belong to this node; false for null. */
    public static boolean isTakenBy(Node focused) {
        for (Node node = focused; node != null; node = node.getParent()) {
            if (node instanceof TextInputControl || node instanceof Spinner<?>
                    || node instanceof ComboBoxBase<?> box && box.isEditable() || node.getProperties().containsKey(OWN)) {
                return true;
            }
        }
        return false;
    }

    /** Whether the node holds text that is typed and not yet kept, so that undo is its own. */
    public static boolean hasUnkeptText(Node focused) {
        if (!(focused instanceof TextInputControl input)) {
            return false;
        }
        return input.getUserData() instanceof Entry entry ? entry.isDirty() : input.isUndoable();
    }
}
