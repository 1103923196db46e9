package gripwright.desktop.support;

import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The field in which an {@link Entry} is typed, its unit behind it and its problem under it. */
public final class EntryField extends VBox {

    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");

    private static final int NUMBER_COLUMNS = 5;

    private final TextField input = new TextField();
    private final Label unit = new Label();
    private final Entry entry;
    private Runnable onEnter = () -> { };

    public EntryField(Entry entry) {
        this.entry = entry;
        getStyleClass().add("gw-entry");
        input.setUserData(entry);
        input.setAccessibleText(entry.name());
        input.setMinWidth(USE_PREF_SIZE);
        input.textProperty().bindBidirectional(entry.text());
        input.focusedProperty().addListener((observed, before, focused) -> {
            if (focused) {
                entry.begin();
            } else {
                entry.commit();
            }
        });
        input.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        HBox row = new HBox(input);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("gw-entry-row");
        if (entry instanceof NumberEntry) {
            input.getStyleClass().add("gw-number");
            input.setPrefColumnCount(NUMBER_COLUMNS);
            layOutUnit();
            row.getChildren().add(unit);
        }
        getChildren().addAll(row, problemLabel());
        entry.problem().addListener((observed, before, problem) ->
                input.pseudoClassStateChanged(WRONG, !problem.isEmpty()));
    }

    private void layOutUnit() {
        unit.getStyleClass().add("gw-unit");
        unit.setMinWidth(USE_PREF_SIZE);
        unit.textProperty().bind(entry.unit());
    }

    private Label problemLabel() {
        Label problem = new Label();
        problem.getStyleClass().add("gw-problem");
        problem.setWrapText(true);
        problem.setMinHeight(USE_PREF_SIZE);
        problem.textProperty().bind(entry.problem());
        problem.managedProperty().bind(problem.textProperty().isNotEmpty());
        problem.visibleProperty().bind(problem.managedProperty());
        return problem;
    }

    private void pressed(KeyEvent event) {
        if (event.getCode() == KeyCode.ENTER && !event.isAltDown()) {
            if (entry.commit()) {
                input.selectAll();
                onEnter.run();
            }
            event.consume();
        } else if (event.getCode() == KeyCode.ESCAPE && (entry.isDirty() || !entry.problem().get().isEmpty())) {
            entry.restore();
            input.selectAll();
            event.consume();
        }
    }

    /** The control that takes the focus. */
    public TextField input() {
        return input;
    }

    /** What Enter does beyond keeping what is typed. */
    public EntryField onEnter(Runnable action) {
        onEnter = action;
        return this;
    }

    /** Leaves the unit out where the heading of its column says it. */
    public EntryField withoutUnit() {
        unit.setManaged(false);
        unit.setVisible(false);
        return this;
    }

    /** Says in grey, while nothing is typed, what to type. */
    public EntryField prompt(String prompt) {
        input.setPromptText(prompt);
        return this;
    }

    /** Makes the field this wide, px, so that it lines up with its column. */
    public EntryField wide(double width) {
        input.setPrefWidth(width);
        setMaxWidth(width);
        return this;
    }

    /** Makes the field about this many characters wide. */
    public EntryField columns(int columns) {
        input.setPrefColumnCount(columns);
        return this;
    }

    /** Gives the control an identity that tests and styles find it by. */
    public EntryField named(String id) {
        input.setId(id);
        return this;
    }
}
