package gripwright.desktop.take;

import gripwright.desktop.support.Sheets;
import gripwright.desktop.support.Workbench;
import gripwright.intake.IntakeResult;
import gripwright.model.Problem;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;

/**
 * The sheet over the window on which a CSV file or pasted rows are looked at before their shots are taken; Enter takes
 * them, Escape leaves them, and the focus goes back to where it was.
 */
public final class TakeOverlay extends StackPane {

    private static final double WIDTH = 1180;
    private static final double MARGIN = 40;

    private final Workbench workbench;
    private final TakeViewModel model;
    private final Label title = new Label();
    private final Label outcome = Sheets.text("");
    private final Label dialect = Sheets.hint("");
    private final QuestionsPane questions;
    private final MappingPane mapping;
    private final ColumnsPane columns;
    private final VBox columnsSection;
    private final VBox keeping;
    private final LeftOutTable leftOut = new LeftOutTable();
    private final Label leftOutHeading = Sheets.heading("");
    private final VBox leftOutSection;
    private final VBox content = new VBox(3 * Sheets.STEP);
    private final Button take = new Button("Take them");
    private final Label where = Sheets.text("");
    private final ScrollPane scroll;
    private Node before;
    private boolean backwards;

    public TakeOverlay(Workbench workbench) {
        this.workbench = workbench;
        this.model = new TakeViewModel(workbench);
        questions = new QuestionsPane(model::answer);
        mapping = new MappingPane(model);
        columns = new ColumnsPane(model);
        columnsSection = Sheets.section("Columns", mapping.line(), columns);
        keeping = mapping.keeping();
        leftOutSection = new VBox(Sheets.STEP, leftOutHeading, leftOut, copyButton());
        content.getChildren().addAll(questions, columnsSection, leftOutSection, keeping);
        content.setPadding(new Insets(0, 2 * Sheets.STEP, 0, 0));
        scroll = Sheets.scrolling(content);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getStyleClass().add("gw-overlay");
        getStylesheets().add(TakeOverlay.class.getResource("take.css").toExternalForm());
        setId("take-overlay");
        setVisible(false);
        VBox sheet = new VBox(2 * Sheets.STEP, head(), progress(), scroll, foot());
        sheet.getStyleClass().add("gw-overlay-sheet");
        sheet.setMaxWidth(WIDTH);
        setPadding(new Insets(MARGIN));
        getChildren().add(sheet);
        addEventFilter(KeyEvent.KEY_PRESSED, this::beforeTheFields);
        addEventHandler(KeyEvent.KEY_PRESSED, this::afterTheFields);
        model.isOpen().subscribe(this::showOrHide);
        model.result().subscribe(now -> show());
        model.reading().subscribe(now -> show());
        workbench.rowsToTake().subscribe(rows -> {
            if (rows != null) {
                openRows(rows);
                workbench.rowsToTake().set(null);
            }
        });
        workbench.session().subscribe(now -> where.setText(model.destination()));
        sceneProperty().subscribe(scene -> {
            if (scene != null) {
                scene.focusOwnerProperty().subscribe(this::keepFocusInside);
            }
        });
    }

    private VBox head() {
        title.getStyleClass().add("take-name");
        outcome.setId("take-outcome");
        dialect.setId("take-dialect");
        return new VBox(Sheets.STEP, title, outcome, dialect);
    }

    private Node progress() {
        ProgressBar bar = new ProgressBar();
        bar.progressProperty().bind(model.progress());
        bar.setMaxWidth(Double.MAX_VALUE);
        bar.setAccessibleText("how much is read");
        Button cancel = new Button("Break off");
        cancel.setId("take-cancel");
        cancel.setOnAction(event -> model.cancel());
        HBox.setHgrow(bar, Priority.ALWAYS);
        HBox line = new HBox(Sheets.STEP, bar, cancel);
        line.setAlignment(Pos.CENTER_LEFT);
        line.visibleProperty().bind(model.reading());
        line.managedProperty().bind(model.reading());
        return line;
    }

    private Button copyButton() {
        Button copy = new Button("Copy the list");
        copy.getStyleClass().addAll("flat", "take-flush");
        copy.setOnAction(event -> {
            leftOut.copy();
            workbench.say("The list is on the clipboard.");
        });
        return copy;
    }

    private Node foot() {
        Button leave = new Button("Leave it");
        leave.setId("take-leave");
        leave.getStyleClass().add("take-leave");
        leave.setMinWidth(USE_PREF_SIZE);
        leave.setOnAction(event -> model.close());
        take.setId("take-them");
        take.getStyleClass().add("take-them");
        take.setMinWidth(USE_PREF_SIZE);
        take.setOnAction(event -> model.take());
        HBox.setHgrow(where, Priority.ALWAYS);
        where.setMaxWidth(Double.MAX_VALUE);
        HBox foot = new HBox(Sheets.STEP, where, leave, take);
        foot.setAlignment(Pos.CENTER_LEFT);
        return foot;
    }

    /** Asks for a file with the system's own chooser. */
    public void choose() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Take shots from a file");
        chooser.getExtensionFilters().addAll(new FileChooser.ExtensionFilter("Readings", "*.csv", "*.txt", "*.tsv"),
                new FileChooser.ExtensionFilter("All files", "*"));
        File file = chooser.showOpenDialog(getScene().getWindow());
        if (file != null) {
            open(file.toPath());
        }
    }

    /** Opens the sheet on a file. */
    public void open(Path file) {
        model.open(file);
    }

    /** Opens the sheet on pasted rows. */
    public void openRows(String rows) {
        model.openRows(rows);
    }

    /** What the sheet shows. */
    public TakeViewModel model() {
        return model;
    }

    private void showOrHide(boolean open) {
        if (open && !isVisible()) {
            before = getScene() == null ? null : getScene().getFocusOwner();
            setVisible(true);
        } else if (!open && isVisible()) {
            setVisible(false);
            if (before != null && before.getScene() == getScene()) {
                before.requestFocus();
            }
            before = null;
        }
    }

    private void show() {
        IntakeResult result = model.result().get();
        boolean any = result != null && !result.columns().isEmpty();
        title.setText(model.name());
        take.setDisable(!model.isReady());
        take.setText(model.count() == 1 ? "Take 1 shot" : model.count() > 0 ? "Take " + model.count() + " shots" : "Take them");
        where.setText(model.destination());
        outcome.setText(result == null ? "Reading \u2026" : TakeWords.outcome(result));
        dialect.setText(result == null ? "" : TakeWords.dialect(result));
        questions.show(model.questions());
        present(columnsSection, any);
        present(keeping, any);
        columns.show(any ? result.columns() : List.of());
        mapping.show();
        showLeftOut(result == null ? List.of() : result.problems());
        if (result != null && !model.reading().get() && isVisible() && !isFocusInside()) {
            begin();
        } else if (model.isReady() && isInside(getScene().getFocusOwner(), questions)) {
            take.requestFocus();
        }
    }

    private void showLeftOut(List<Problem> problems) {
        List<Problem> listed = problems.stream().filter(each -> each.severity() != Problem.Severity.FATAL).toList();
        present(leftOutSection, !listed.isEmpty());
        long rejected = TakeWords.rejected(listed);
        leftOutHeading.setText(rejected == listed.size() ? "Left out: " + rejected : rejected == 0
                ? "Taken, and worth a look: " + listed.size()
                : "Left out: " + rejected + ". Taken, and worth a look: " + (listed.size() - rejected));
        leftOut.show(listed);
        // What was left out comes before the columns, a mere note after them.
        int place = rejected > 0 ? 1 : 2;
        if (content.getChildren().indexOf(leftOutSection) != place) {
            content.getChildren().remove(leftOutSection);
            content.getChildren().add(place, leftOutSection);
        }
    }

    private static void present(Node node, boolean there) {
        node.setVisible(there);
        node.setManaged(there);
    }

    /** Work begins at the first open question, else at taking, else at the columns. */
    private void begin() {
        scroll.setVvalue(0);
        if (!questions.focusFirstOpen() && !take.isDisabled()) {
            take.requestFocus();
        } else if (!isFocusInside()) {
            lookup("#take-leave").requestFocus();
        }
    }

    // ---- keys and focus -----------------------------------------------------------------------------------------

    private void beforeTheFields(KeyEvent event) {
        backwards = event.getCode() == KeyCode.TAB && event.isShiftDown();
        boolean listOpen = getScene().getFocusOwner() instanceof ComboBoxBase<?> box && box.isShowing();
        if (event.getCode() == KeyCode.ESCAPE && !listOpen) {
            model.close();
            event.consume();
        } else if (event.getCode() == KeyCode.ENTER && getScene().getFocusOwner() instanceof ButtonBase button) {
            button.fire();
            event.consume();
        }
    }

    private void afterTheFields(KeyEvent event) {
        if (event.getCode() == KeyCode.ENTER) {
            model.take();
            event.consume();
        } else if (event.getCode().isDigitKey()) {
            // The window behind would go to another place.
            event.consume();
        }
    }

    private boolean isFocusInside() {
        return getScene() != null && isInside(getScene().getFocusOwner(), this);
    }

    /** Tab goes round within the sheet; the window behind it waits. */
    private void keepFocusInside(Node owner) {
        if (isVisible() && owner != null && !isInside(owner, this) && model.result().get() != null) {
            Node end = backwards ? take.isDisabled() ? lookup("#take-leave") : take : first();
            end.requestFocus();
        } else if (isVisible() && isInside(owner, scroll.getContent())) {
            bringIntoView(owner);
        }
    }

    private Node first() {
        return lookupAll(".toggle-button").stream().filter(Node::isFocusTraversable).filter(Node::isVisible).findFirst()
                .orElseGet(() -> lookup("#take-leave"));
    }

    /** Scrolls so that what has the focus is seen. */
    private void bringIntoView(Node node) {
        double view = scroll.getViewportBounds().getHeight();
        double whole = scroll.getContent().getLayoutBounds().getHeight();
        if (whole <= view) {
            return;
        }
        double top = scroll.getContent().sceneToLocal(node.localToScene(node.getBoundsInLocal())).getMinY();
        double seenFrom = scroll.getVvalue() * (whole - view);
        if (top < seenFrom || top + 5 * Sheets.STEP > seenFrom + view) {
            scroll.setVvalue(Math.max(0, Math.min(1, (top - view / 2) / (whole - view))));
        }
    }

    private static boolean isInside(Node node, Node upper) {
        Node each = node;
        while (each != null && each != upper) {
            each = each.getParent();
        }
        return each == upper && upper != null;
    }
}
