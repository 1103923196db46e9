package gripwright.desktop;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TableCell;
import javafx.scene.control.TextField;
import javafx.scene.layout.StackPane;
import javafx.scene.text.Text;
import javafx.scene.text.TextBoundsType;

/** Looks over a scene for texts that are cut off and for siblings that lie over one another. */
public final class LabelFit {

    private static final double TOLERANCE = 1.0;

    private final List<String> faults = new ArrayList<>();

    private LabelFit() {
    }

    /** What is wrong below this node, each in a sentence; empty when nothing is. */
    public static List<String> faults(Parent root) {
        LabelFit fit = new LabelFit();
        fit.lookForWidth(root);
        fit.look(root);
        return fit.faults;
    }

    /** A root that needs more than the scene has is laid out wider than the window, and cut at both sides. */
    private void lookForWidth(Parent root) {
        if (root.getScene() == null || root.getScene().getRoot() != root) {
            return;
        }
        double least = root.minWidth(-1);
        double room = root.getScene().getWidth();
        if (least > room + TOLERANCE) {
            faults.add("root wider than scene by " + Math.round(least - room) + " px: " + name(root));
        }
    }

    private void look(Node node) {
        if (!node.isVisible()) {
            return;
        }
        if (node instanceof Labeled labeled) {
            lookForCut(labeled);
        }
        if (node instanceof TextField field) {
            lookForCut(field);
        }
        if (node instanceof ScrollPane pane && pane.getHbarPolicy() == ScrollPane.ScrollBarPolicy.NEVER
                && pane.getContent() != null
                && pane.getContent().getLayoutBounds().getWidth() > pane.getViewportBounds().getWidth() + TOLERANCE) {
            faults.add("wider than its view: " + name(pane.getContent()) + " " + path(pane));
        }
        if (node instanceof Parent parent) {
            if (!(parent instanceof StackPane) && isOurs(parent)) {
                lookForOverlap(parent);
            }
            if (isOurs(parent)) {
                lookForSticking(parent);
            }
            parent.getChildrenUnmodifiable().forEach(this::look);
        }
    }

    /** A text that is laid out shorter than it is has been given an ellipsis; in a table a tip may tell the whole. */
    private void lookForCut(Labeled labeled) {
        String wanted = labeled.getText();
        boolean toldInATip = labeled instanceof TableCell<?, ?> && labeled.getTooltip() != null
                && wanted != null && wanted.equals(labeled.getTooltip().getText());
        if (wanted == null || wanted.isEmpty() || toldInATip) {
            return;
        }
        for (Node child : labeled.getChildrenUnmodifiable()) {
            if (child instanceof Text text && text.isVisible() && isTooLow(labeled, text)) {
                faults.add("cut off above or below: '" + wanted + "' " + path(labeled));
            }
            if (child instanceof Text text && text.isVisible() && !text.getText().equals(wanted)
                    && text.getText().length() < wanted.length()) {
                faults.add("cut off: '" + wanted + "' shows as '" + text.getText() + "' " + path(labeled));
            }
        }
    }

    private static boolean isTooLow(Labeled labeled, Text text) {
        Text ink = new Text(text.getText());
        ink.setFont(text.getFont());
        ink.setWrappingWidth(text.getWrappingWidth());
        ink.setBoundsType(TextBoundsType.VISUAL);
        return ink.getLayoutBounds().getHeight() > labeled.getHeight() + TOLERANCE;
    }

    /** A text that is kept has to fit into its field. */
    private void lookForCut(TextField field) {
        Text text = new Text(field.getText());
        text.setFont(field.getFont());
        double room = field.getWidth() - field.getPadding().getLeft() - field.getPadding().getRight();
        if (text.getLayoutBounds().getWidth() > room) {
            faults.add("cut off in its field: '" + field.getText() + "' " + path(field));
        }
    }

    private static boolean isOurs(Parent parent) {
        String name = parent.getClass().getName();
        return name.startsWith("javafx.scene.layout.") || name.startsWith("gripwright.");
    }

    private void lookForOverlap(Parent parent) {
        List<Node> children = parent.getChildrenUnmodifiable().stream()
                .filter(child -> child.isVisible() && child.isManaged()).toList();
        for (int first = 0; first < children.size(); first++) {
            for (int second = first + 1; second < children.size(); second++) {
                Bounds a = children.get(first).getLayoutBounds();
                a = children.get(first).localToParent(a);
                Bounds b = children.get(second).localToParent(children.get(second).getLayoutBounds());
                if (overlap(a, b)) {
                    faults.add("overlap: " + name(children.get(first)) + " and " + name(children.get(second)) + " in "
                            + name(parent) + " " + path(parent));
                }
            }
        }
    }

    /** A child wider than the room it is given runs into what is beside. */
    private void lookForSticking(Parent parent) {
        double room = parent.getLayoutBounds().getWidth();
        for (Node child : parent.getChildrenUnmodifiable()) {
            double end = child.localToParent(child.getLayoutBounds()).getMaxX();
            if (child.isVisible() && child.isManaged() && room > 0 && end > room + TOLERANCE) {
                faults.add("sticks out by " + Math.round(end - room) + " px: " + name(child) + " in " + name(parent) + " "
                        + path(parent));
            }
        }
    }

    private static boolean overlap(Bounds a, Bounds b) {
        double width = Math.min(a.getMaxX(), b.getMaxX()) - Math.max(a.getMinX(), b.getMinX());
        double height = Math.min(a.getMaxY(), b.getMaxY()) - Math.max(a.getMinY(), b.getMinY());
        return width > TOLERANCE && height > TOLERANCE;
    }

    private static String name(Node node) {
        String text = node instanceof Labeled labeled ? " '" + labeled.getText() + "'" : "";
        return node.getClass().getSimpleName() + (node.getId() == null ? "" : "#" + node.getId())
                + node.getStyleClass() + text;
    }

    private static String path(Node node) {
        StringBuilder path = new StringBuilder("at ");
        for (Node upper = node; upper != null; upper = upper.getParent()) {
            if (upper instanceof ScrollPane || upper.getId() != null) {
                path.append(name(upper)).append(" < ");
            }
        }
        return path.toString();
    }
}
