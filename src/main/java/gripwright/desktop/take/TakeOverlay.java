package gripwright.desktop.take;

import gripwright.desktop.support.Sheets;
import gripwright.desktop.support.Workbench;
import gripwright.intake.Choice;
import gripwright.intake.ColumnMapping;
import gripwright.intake.ColumnMeaning;
import gripwright.intake.ColumnRole;
import gripwright.intake.IntakeResult;
import gripwright.intake.Question;
import gripwright.intake.RecognisedColumn;
import gripwright.intake.UnknownColumn;
import gripwright.model.Metric;
import gripwright.model.Problem;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import javafx.util.StringConverter;

/** The sheet over the window on which a CSV file is looked at before its shots are taken; Escape leaves it. */
public final class TakeOverlay extends StackPane {

    private static final double WIDTH = 880;
    private static final double MARGIN = 48;

    private final Workbench workbench;
    private final TakeViewModel model;
    private final VBox content = new VBox(3 * Sheets.STEP);
    private final Button take = new Button("Take them");
    private final Label where = Sheets.text("");

    public TakeOverlay(Workbench workbench) {
        this.workbench = workbench;
        this.model = new TakeViewModel(workbench);
        getStyleClass().add("gw-overlay");
        setId("take-overlay");
        setVisible(false);
        VBox sheet = new VBox(2 * Sheets.STEP, title(), progress(), scrolling(), foot());
        sheet.getStyleClass().add("gw-overlay-sheet");
        sheet.setMaxWidth(WIDTH);
        setPadding(new Insets(MARGIN));
        getChildren().add(sheet);
        addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ESCAPE) {
                leave();
                event.consume();
            }
        });
        model.result().subscribe(now -> show());
        model.reading().subscribe(now -> show());
    }

    private static Label title() {
        Label title = new Label("Take shots from a CSV file");
        title.getStyleClass().add("gw-title");
        return title;
    }

    private Node progress() {
        ProgressBar bar = new ProgressBar();
        bar.progressProperty().bind(model.progress());
        bar.setMaxWidth(Double.MAX_VALUE);
        bar.setAccessibleText("how much is read");
        Button cancel = new Button("Break off");
        cancel.setOnAction(event -> model.cancel());
        HBox.setHgrow(bar, javafx.scene.layout.Priority.ALWAYS);
        HBox line = new HBox(Sheets.STEP, bar, cancel);
        line.setAlignment(Pos.CENTER_LEFT);
        line.visibleProperty().bind(model.reading());
        line.managedProperty().bind(model.reading());
        return line;
    }

    private ScrollPane scrolling() {
        ScrollPane scroll = Sheets.scrolling(content);
        VBox.setVgrow(scroll, javafx.scene.layout.Priority.ALWAYS);
        return scroll;
    }

    private Node foot() {
        Button leave = new Button("Leave it");
        leave.setOnAction(event -> leave());
        take.setId("take-them");
        take.setOnAction(event -> {
            if (model.take()) {
                leave();
            }
        });
        HBox foot = new HBox(Sheets.STEP, where, Sheets.spring(), leave, take);
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
        setVisible(true);
        model.open(file);
        take.requestFocus();
    }

    private void leave() {
        model.cancel();
        setVisible(false);
    }

    private void show() {
        IntakeResult result = model.result().get();
        take.setDisable(!model.isReady());
        where.setText(model.destination());
        content.getChildren().clear();
        if (result == null) {
            content.getChildren().add(Sheets.quiet("Reading \u2026"));
            return;
        }
        content.getChildren().add(Sheets.text(result.sentence()));
        result.questions().forEach(question -> content.getChildren().add(question(question)));
        if (!result.problems().isEmpty()) {
            content.getChildren().add(problems(result.problems()));
        }
        if (!result.recognisedColumns().isEmpty() || !result.unknownColumns().isEmpty()) {
            content.getChildren().addAll(columns(result), mappings());
        }
    }

    private Node question(Question question) {
        ToggleGroup group = new ToggleGroup();
        FlowPane choices = new FlowPane(2 * Sheets.STEP, Sheets.STEP);
        for (Choice choice : question.choices()) {
            RadioButton button = new RadioButton(choice.text());
            button.setToggleGroup(group);
            button.setOnAction(event -> model.answer(question.id(), choice.key()));
            choices.getChildren().add(button);
        }
        return Sheets.section("A question", Sheets.text(question.sentence()), choices);
    }

    private static Node problems(List<Problem> problems) {
        TextArea text = new TextArea(String.join("\n", problems.stream().map(Problem::text).toList()));
        text.setEditable(false);
        text.setWrapText(true);
        text.setPrefRowCount(Math.min(6, problems.size() + 1));
        text.setAccessibleText("what was rejected or is worth a look");
        return Sheets.section("Rejected, or worth a look", text);
    }

    private Node columns(IntakeResult result) {
        GridPane grid = new GridPane();
        grid.setHgap(2 * Sheets.STEP);
        grid.setVgap(Sheets.STEP);
        grid.addRow(0, Sheets.quiet("column"), Sheets.quiet("holds"), Sheets.quiet("unit"), Sheets.quiet("signs"),
                Sheets.quiet(""));
        for (RecognisedColumn column : result.recognisedColumns()) {
            row(grid, column.heading(), column.position(), column.meaning(), column.unit(),
                    column.byHand() ? "set by hand" : "");
        }
        for (UnknownColumn column : result.unknownColumns()) {
            row(grid, column.heading(), column.position(), null, "", String.join(", ", column.samples()));
        }
        return Sheets.section("Columns", grid);
    }

    private void row(GridPane grid, String heading, int position, ColumnMeaning meaning, String unit, String note) {
        String name = heading.isBlank() ? "#" + position : heading.replaceAll("\\s+", " ");
        ComboBox<ColumnMeaning> holds = new ComboBox<>();
        holds.setAccessibleText("what the column " + name + " holds");
        holds.setConverter(new StringConverter<>() {
            @Override
            public String toString(ColumnMeaning value) {
                return value == null ? "not read" : value.text();
            }

            @Override
            public ColumnMeaning fromString(String typed) {
                return null;
            }
        });
        holds.getItems().addAll(meanings());
        holds.setValue(meaning);
        TextField units = new TextField(unit);
        units.setPrefColumnCount(5);
        units.setAccessibleText("unit of the column " + name);
        CheckBox flipped = new CheckBox("the other way round");
        Runnable set = () -> {
            if (holds.getValue() != null) {
                model.setColumn(heading.isBlank() ? name : heading, holds.getValue().key(), units.getText().strip(),
                        flipped.isSelected()).ifPresent(workbench::sayProblem);
            }
        };
        holds.setOnAction(event -> set.run());
        units.setOnAction(event -> set.run());
        flipped.setOnAction(event -> set.run());
        flipped.setSelected(model.mapping().columns().stream()
                .anyMatch(rule -> rule.heading().equals(heading) && rule.flipped()));
        Label label = new Label(name);
        label.setMaxWidth(220);
        grid.addRow(grid.getRowCount(), label, holds, units, flipped, Sheets.hint(note));
    }

    private static List<ColumnMeaning> meanings() {
        List<ColumnMeaning> meanings = new ArrayList<>();
        Stream.of(Metric.values()).map(ColumnMeaning::of).forEach(meanings::add);
        Stream.of(ColumnRole.values()).map(ColumnMeaning::of).forEach(meanings::add);
        return meanings;
    }

    private Node mappings() {
        ComboBox<ColumnMapping> saved = new ComboBox<>();
        saved.setAccessibleText("saved mapping");
        saved.setPromptText("none saved");
        saved.setConverter(new StringConverter<>() {
            @Override
            public String toString(ColumnMapping value) {
                return value == null ? "" : value.name();
            }

            @Override
            public ColumnMapping fromString(String typed) {
                return null;
            }
        });
        saved.getItems().setAll(model.saved());
        saved.getItems().stream().filter(each -> each.name().equals(model.mapping().name())).findFirst()
                .ifPresent(saved::setValue);
        saved.setOnAction(event -> model.use(saved.getValue()));
        TextField name = new TextField(model.mapping().columns().isEmpty() ? "" : model.mapping().name());
        name.setPromptText("a name of your own");
        name.setAccessibleText("name to keep the columns under");
        Button keep = new Button("Keep these columns and answers");
        keep.setOnAction(event -> {
            model.save(name.getText());
            saved.getItems().setAll(model.saved());
        });
        FlowPane line = new FlowPane(Sheets.STEP, Sheets.STEP, Sheets.quiet("read files as"), saved, name, keep);
        line.setAlignment(Pos.CENTER_LEFT);
        return Sheets.section("For the next file of this kind", line);
    }
}
