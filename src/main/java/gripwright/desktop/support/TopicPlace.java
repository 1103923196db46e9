package gripwright.desktop.support;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import javafx.beans.property.ObjectProperty;
import javafx.collections.ObservableList;
import javafx.css.PseudoClass;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;

/**
 * A place that shows one sheet at a time: a list of topics on the left, the sheet of the chosen one on the right.
 *
 * <p>Up and Down in the list choose, and the chosen topic stays in view.
 *
 * @param <T> a topic
 */
public abstract class TopicPlace<T> implements Place {

    private static final PseudoClass STRONG = PseudoClass.getPseudoClass("strong");
    private static final double HEAD = 8 * Sheets.STEP;

    private final PlaceKey key;
    private final ObjectProperty<T> chosen;
    private final BorderPane root = new BorderPane();
    private final HBox head;
    private final ListView<T> list;
    private final VBox sheet = new VBox(2 * Sheets.STEP);
    private final ScrollPane scroll;
    private final Label state = Sheets.quiet("");
    private boolean wantsFocus;

    /**
     * @param key which place it is
     * @param topics in order
     * @param chosen the one shown; null for none
     * @param title each topic on the list
     * @param strong which topics stand out on the list
     * @param listWidth of the list, px
     */
    protected TopicPlace(PlaceKey key, ObservableList<T> topics, ObjectProperty<T> chosen, Function<T, String> title,
            Predicate<T> strong, double listWidth) {
        this.key = key;
        this.chosen = chosen;
        list = new ListView<>(topics);
        list.setPrefWidth(listWidth);
        list.setMinWidth(listWidth);
        list.setFixedCellSize(4 * Sheets.STEP);
        list.setAccessibleText("what to look at");
        list.getStyleClass().add("gw-topics");
        list.setCellFactory(view -> new TopicCell<>(title, strong));
        list.getSelectionModel().selectedItemProperty().addListener((observed, before, now) -> {
            if (now != null) {
                chosen.set(now);
            }
        });
        sheet.setPadding(new Insets(2 * Sheets.STEP, 3 * Sheets.STEP, 4 * Sheets.STEP, 3 * Sheets.STEP));
        scroll = Sheets.scrolling(sheet);
        head = Sheets.pageHead(key);
        head.getChildren().addAll(Sheets.spring(), state);
        head.setAlignment(Pos.CENTER_LEFT);
        head.setMinHeight(HEAD);
        head.setPadding(new Insets(1.5 * Sheets.STEP, 3 * Sheets.STEP, 0, 4 * Sheets.STEP));
        root.getStyleClass().add("gw-page");
    }

    /** Call once the place can show something: shows the chosen topic now and whenever another is chosen. */
    protected final void follow(Derived<?> derived) {
        chosen.subscribe(now -> {
            choose(now);
            show();
            scroll.setVvalue(0);
        });
        derived.computing().subscribe(busy -> state.setText(busy ? "working it out \u2026" : ""));
        derived.problem().subscribe(problem -> show());
    }

    private void choose(T topic) {
        if (list.getSelectionModel().getSelectedItem() != topic) {
            list.getSelectionModel().select(topic);
            list.scrollTo(topic);
        }
    }

    /** Shows what there is to show now, by one of the three methods below. */
    protected abstract void show();

    /** Adds to the head of the page, on its right. */
    protected final void addToHead(Node... nodes) {
        head.getChildren().addAll(nodes);
    }

    /** The list and the sheet of the chosen topic; nodes that are shown already stay as they are. */
    protected final void showSheet(Node content) {
        beside(scroll);
        if (!sheet.getChildren().equals(List.of(content))) {
            Node before = focusedInSheet();
            sheet.getChildren().setAll(content);
            if (before != null) {
                sameIn(content, before.getAccessibleText()).orElse(list).requestFocus();
            }
        }
    }

    /** What has the focus on the sheet; null where the focus is elsewhere. */
    private Node focusedInSheet() {
        Node focused = sheet.getScene() == null ? null : sheet.getScene().getFocusOwner();
        Node upper = focused;
        while (upper != null && upper != sheet) {
            upper = upper.getParent();
        }
        return upper == null ? null : focused;
    }

    /** The control of a sheet made anew that goes by the same words. */
    private static Optional<Node> sameIn(Node node, String words) {
        if (words == null || words.isEmpty()) {
            return Optional.empty();
        }
        if (node instanceof Control && words.equals(node.getAccessibleText())) {
            return Optional.of(node);
        }
        return node instanceof Pane pane ? pane.getChildren().stream().map(child -> sameIn(child, words))
                .flatMap(Optional::stream).findFirst() : Optional.empty();
    }

    /** The list, and beside it what takes the place of a sheet. */
    protected final void showBesideList(Node content) {
        VBox box = new VBox(content);
        box.setPadding(new Insets(0, 3 * Sheets.STEP, 4 * Sheets.STEP, 3 * Sheets.STEP));
        beside(box);
    }

    private void beside(Node content) {
        root.setTop(head);
        root.setLeft(list);
        if (root.getCenter() != content) {
            root.setCenter(content);
        }
        if (wantsFocus) {
            wantsFocus = false;
            list.requestFocus();
        }
    }

    /** A whole page while there are no topics. */
    protected final void showInstead(Node page) {
        root.setTop(null);
        root.setLeft(null);
        root.setCenter(page);
    }

    @Override
    public final PlaceKey key() {
        return key;
    }

    @Override
    public final Node node() {
        return root;
    }

    @Override
    public List<KeyLine> keys() {
        return List.of(new KeyLine("\u2191 \u2193", "another topic"), new KeyLine("Ctrl+C", "copy the table"));
    }

    /** Gives the focus to the list, as soon as there is one. */
    @Override
    public void entered() {
        wantsFocus = root.getLeft() == null;
        list.requestFocus();
    }

    @Override
    public void left() {
        wantsFocus = false;
    }

    /** One topic on the list. */
    private static final class TopicCell<T> extends ListCell<T> {

        private final Function<T, String> title;
        private final Predicate<T> strong;

        private TopicCell(Function<T, String> title, Predicate<T> strong) {
            this.title = title;
            this.strong = strong;
        }

        @Override
        protected void updateItem(T topic, boolean empty) {
            super.updateItem(topic, empty);
            boolean none = empty || topic == null;
            setText(none ? "" : title.apply(topic));
            pseudoClassStateChanged(STRONG, !none && strong.test(topic));
        }
    }
}
