package gripwright.desktop.bay;

import java.util.ArrayList;
import java.util.List;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The entry line: one cell a column, checked as it is typed; Enter records, rows can be pasted. */
final class EntryBar extends HBox {

    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");
    private static final PseudoClass UNUSUAL = PseudoClass.getPseudoClass("unusual");

    private final BayViewModel bay;
    private final HBox cells = new HBox(8);
    private final List<TextField> fields = new ArrayList<>();
    private final Label problem = BayLabels.label("bay-line-problem");
    private EntryLine line;

    EntryBar(BayViewModel bay) {
        this.bay = bay;
        getStyleClass().add("bay-line");
        setId("bay-line");
        cells.setAlignment(Pos.BOTTOM_LEFT);
        Button record = new Button("Record");
        record.getStyleClass().addAll("bay-button", "accent");
        record.setId("record");
        record.setFocusTraversable(false);
        record.setMinWidth(88);
        record.setOnAction(event -> record());
        problem.setWrapText(true);
        problem.setId("line-problem");
        problem.setMaxHeight(58);
        HBox.setHgrow(problem, Priority.ALWAYS);
        getChildren().addAll(cells, record, problem);
        bay.line().subscribe(this::build);
    }

    private void build(EntryLine columns) {
        line = columns;
        fields.clear();
        cells.getChildren().clear();
        for (int n = 0; n < columns.columns().size(); n++) {
            cells.getChildren().add(cell(columns.columns().get(n), n));
        }
    }

    private VBox cell(EntryColumn column, int place) {
        Label heading = BayLabels.whole(BayLabels.SMALL, BayLabels.QUIET);
        heading.setText(column.unit().isEmpty() ? column.heading() : column.heading() + ", " + column.unit());
        TextField field = new TextField();
        field.getStyleClass().addAll("bay-cell", "gw-number");
        field.setId("cell-" + place);
        field.setPromptText(column.signHint());
        field.setAccessibleText(column.heading() + " " + column.unit());
        field.setPrefWidth(96);
        field.textProperty().addListener((observed, before, typed) -> check(field, column, typed));
        field.addEventFilter(KeyEvent.KEY_PRESSED, event -> pressed(event, place));
        fields.add(field);
        return new VBox(2, heading, field);
    }

    private void check(TextField field, EntryColumn column, String typed) {
        EntryCell read = column.read(typed);
        boolean unusual = read instanceof EntryCell.Reading reading && reading.isUnusual();
        boolean startsOnly = read instanceof EntryCell.Wrong && typed.strip().length() < 2;
        field.pseudoClassStateChanged(WRONG, read instanceof EntryCell.Wrong && !startsOnly);
        field.pseudoClassStateChanged(UNUSUAL, unusual);
        say(read instanceof EntryCell.Wrong wrong && !startsOnly ? wrong.sentence()
                : unusual ? ((EntryCell.Reading) read).unusual() : "");
    }

    private void say(String sentence) {
        BayLabels.write(problem, sentence);
    }

    private void pressed(KeyEvent event, int place) {
        if (event.getCode() == KeyCode.ENTER) {
            record();
            event.consume();
        } else if (event.isShortcutDown() && event.getCode() == KeyCode.V && holdsRows()) {
            pasteRows();
            event.consume();
        }
    }

    private static boolean holdsRows() {
        String text = Clipboard.getSystemClipboard().getString();
        return text != null && (text.strip().contains("\n") || text.contains("\t"));
    }

    /** Takes the rows on the clipboard in. */
    void pasteRows() {
        String text = Clipboard.getSystemClipboard().getString();
        if (text != null && !text.isBlank()) {
            bay.paste(text);
        }
    }

    private void record() {
        EntryLine.Outcome outcome = bay.record(fields.stream().map(TextField::getText).toList());
        if (outcome instanceof EntryLine.Outcome.Shot) {
            fields.forEach(TextField::clear);
            say("");
            begin();
        } else if (outcome instanceof EntryLine.Outcome.Refused refused) {
            say(refused.sentence());
            if (refused.cell() < fields.size()) {
                fields.get(refused.cell()).requestFocus();
                fields.get(refused.cell()).selectAll();
            }
        }
    }

    /** Puts the focus into the first cell. */
    void begin() {
        if (!fields.isEmpty()) {
            fields.get(0).requestFocus();
        }
    }
}
