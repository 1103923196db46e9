package gripwright.desktop.support;

import javafx.geometry.HPos;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The parts that sheets are set from: pages, sections, forms, hints, empty states; all on a grid of 8 px. */
public final class Sheets {

    /** The step of the grid that everything is set on, px. */
    public static final double STEP = 8;

    /** The width that words take in the forms of a sheet, so that fields begin at the same place in all of them, px. */
    public static final double FORM_WORD = 16 * STEP;

    private Sheets() {
    }

    /** A page that scrolls: title, purpose, and sections under one another. */
    public static ScrollPane page(PlaceKey place, Node... content) {
        VBox sheet = new VBox(3 * STEP, pageHead(place));
        sheet.getChildren().addAll(content);
        sheet.setPadding(new Insets(3 * STEP, 4 * STEP, 4 * STEP, 4 * STEP));
        sheet.getStyleClass().add("gw-page");
        return scrolling(sheet);
    }

    /** The title of a place and, in grey, what it is for. */
    public static HBox pageHead(PlaceKey place) {
        Label title = new Label(place.title());
        title.getStyleClass().add("gw-title");
        title.setMinWidth(Region.USE_PREF_SIZE);
        Label purpose = quiet(place.purpose());
        HBox head = new HBox(2 * STEP, title, purpose);
        head.setAlignment(Pos.BASELINE_LEFT);
        return head;
    }

    /** Content that scrolls up and down when it is higher than the window, never sideways. */
    public static ScrollPane scrolling(Region content) {
        ScrollPane pane = new ScrollPane(content);
        pane.setFitToWidth(true);
        pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        pane.getStyleClass().add("gw-scroll");
        pane.setFocusTraversable(false);
        return pane;
    }

    /** A section: a heading over a hairline, then its content. */
    public static VBox section(String heading, Node... content) {
        VBox section = new VBox(STEP * 1.5, heading(heading));
        section.getChildren().addAll(content);
        section.getStyleClass().add("gw-section");
        return section;
    }

    /** A heading over a hairline. */
    public static Label heading(String text) {
        Label heading = new Label(text);
        heading.getStyleClass().add("gw-heading");
        heading.setMaxWidth(Double.MAX_VALUE);
        return heading;
    }

    /** A small grey text that wraps: what is only there. */
    public static Label hint(String text) {
        Label hint = new Label(text);
        hint.getStyleClass().addAll("gw-small", "gw-quiet");
        hint.setWrapText(true);
        hint.setMinHeight(Region.USE_PREF_SIZE);
        return hint;
    }

    /** A grey text of body size. */
    public static Label quiet(String text) {
        Label quiet = new Label(text);
        quiet.getStyleClass().add("gw-quiet");
        return quiet;
    }

    /** A body text that wraps. */
    public static Label text(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    /** As {@link #form()}, with words that take at least this width, px. */
    public static GridPane form(double words) {
        GridPane form = form();
        form.getColumnConstraints().get(0).setMinWidth(words);
        return form;
    }

    /** Two columns: grey words on the left, fields on the right. */
    public static GridPane form() {
        GridPane form = new GridPane();
        form.setHgap(2 * STEP);
        form.setVgap(STEP);
        ColumnConstraints words = new ColumnConstraints();
        words.setMinWidth(Region.USE_PREF_SIZE);
        words.setHalignment(HPos.LEFT);
        ColumnConstraints fields = new ColumnConstraints();
        fields.setHgrow(Priority.ALWAYS);
        form.getColumnConstraints().addAll(words, fields);
        form.getStyleClass().add("gw-form");
        return form;
    }

    /** Adds a line to a form: the word, then the field with what stands behind it. */
    public static void line(GridPane form, String word, Node field, Node... behind) {
        Label label = quiet(word);
        label.setMinWidth(Region.USE_PREF_SIZE);
        label.setLabelFor(field instanceof EntryField entry ? entry.input() : field);
        GridPane.setValignment(label, javafx.geometry.VPos.TOP);
        label.getStyleClass().add("gw-form-word");
        Node content = field;
        if (behind.length > 0) {
            HBox row = new HBox(STEP, field);
            row.getChildren().addAll(behind);
            for (Node one : behind) {
                if (one instanceof Label words) {
                    words.setMinWidth(Region.USE_PREF_SIZE);
                    words.getStyleClass().add("gw-form-word");
                }
            }
            content = row;
        }
        form.addRow(form.getRowCount(), label, content);
    }

    /**
     * An empty state: what will be here, and the one thing to do next.
     *
     * @param what one sentence on what will be here
     * @param next one sentence on what to do
     * @param action the button or link that does it; null where there is none
     */
    public static VBox empty(String what, String next, Node action) {
        Label first = text(what);
        first.getStyleClass().add("gw-heading-text");
        Label second = text(next);
        second.getStyleClass().add("gw-quiet");
        VBox state = new VBox(STEP, first, second);
        if (action != null) {
            VBox.setMargin(action, new Insets(STEP, 0, 0, 0));
            state.getChildren().add(action);
        }
        state.setMaxWidth(60 * STEP);
        state.getStyleClass().add("gw-empty");
        return state;
    }

    /** Takes up what room is left in a row. */
    public static Region spring() {
        Region spring = new Region();
        HBox.setHgrow(spring, Priority.ALWAYS);
        return spring;
    }
}
