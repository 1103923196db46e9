package gripwright.desktop.bay;

import gripwright.charts.Look;
import gripwright.charts.Mark;
import gripwright.desktop.support.MarkCanvas;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** The question that is asked, in the place of the entry line: digits, buttons or words answer, Escape leaves it. */
final class PromptBar extends HBox {

    private static final double MARK = 14;

    private final BayViewModel bay;
    private final ObservableValue<Look> look;
    private final TextField typed = new TextField();
    private Prompt asked;

    PromptBar(BayViewModel bay, ObservableValue<Look> look) {
        this.bay = bay;
        this.look = look;
        getStyleClass().addAll("bay-line", "bay-prompt");
        setId("bay-prompt");
        setFocusTraversable(true);
        typed.getStyleClass().add("bay-cell");
        typed.setId("prompt-text");
        typed.setPrefWidth(120);
        typed.setMinWidth(96);
        typed.setMaxWidth(420);
        HBox.setHgrow(typed, Priority.ALWAYS);
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    }

    void show(Prompt prompt) {
        asked = prompt;
        getChildren().clear();
        if (prompt == null) {
            return;
        }
        Label question = BayLabels.whole(BayLabels.MIDDLE, BayLabels.STRONG);
        question.setText(prompt.question());
        question.setId("prompt-question");
        getChildren().add(question);
        for (int n = 0; n < prompt.options().size(); n++) {
            getChildren().add(button(prompt.options().get(n), n + 1));
        }
        if (prompt.takesText()) {
            Label words = BayLabels.whole(BayLabels.SMALL, BayLabels.QUIET);
            words.setText(prompt.textLabel());
            typed.clear();
            typed.setAccessibleText(prompt.question() + " " + prompt.textLabel());
            getChildren().addAll(words, typed);
        }
        Button leave = new Button("Leave  Esc");
        leave.getStyleClass().addAll("bay-button", "flat");
        leave.setFocusTraversable(false);
        leave.setMinWidth(USE_PREF_SIZE);
        leave.setOnAction(event -> bay.dismiss());
        getChildren().add(leave);
    }

    /** Takes the focus, so that digits answer. */
    void begin() {
        if (asked != null && asked.takesText()) {
            typed.requestFocus();
        } else {
            requestFocus();
        }
    }

    private Button button(Prompt.Option option, int number) {
        String digit = asked.digitsAreTyped() ? "" : number + "  ";
        Button button = new Button(digit + option.text());
        if (option.mark() != null) {
            button.setGraphic(new MarkCanvas(new SimpleObjectProperty<Mark>(option.mark()), look, MARK));
        }
        button.getStyleClass().add("bay-option");
        button.setFocusTraversable(false);
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(event -> bay.choose(number));
        return button;
    }

    private void pressed(KeyEvent event) {
        if (event.getCode() == KeyCode.ESCAPE) {
            bay.dismiss();
            event.consume();
        } else if (event.getCode() == KeyCode.ENTER) {
            bay.answerWith(asked.takesText() ? typed.getText() : "");
            event.consume();
        } else if (isChoice(event)) {
            String name = event.getCode().getName();
            event.consume();
            bay.choose(name.charAt(name.length() - 1) - '0');
        }
    }

    private boolean isChoice(KeyEvent event) {
        return event.getCode().isDigitKey() && !event.isAltDown() && !event.isShortcutDown()
                && !asked.digitsAreTyped() && (!asked.takesText() || typed.getText().isEmpty());
    }
}
