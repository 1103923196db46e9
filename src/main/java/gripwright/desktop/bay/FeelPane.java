package gripwright.desktop.bay;

import gripwright.desktop.support.ChoiceField;
import gripwright.desktop.support.EntryField;
import gripwright.model.Stint;
import java.util.ArrayList;
import java.util.List;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The feel of a stint: a digit answers and goes on to the next question; all may be skipped. */
final class FeelPane extends VBox {

    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    private final BayViewModel bay;
    private final Runnable leave;
    private final Label title = BayLabels.label(BayLabels.LARGE, BayLabels.STRONG);
    private final List<Question> questions = new ArrayList<>();
    private final VBox details = new VBox(10);
    private final List<Node> stops = new ArrayList<>();
    private String shownStint;

    FeelPane(BayViewModel bay, Runnable leave) {
        this.bay = bay;
        this.leave = leave;
        getStyleClass().add("bay-feel");
        setId("bay-feel");
        title.setId("feel-title");
        Label hint = BayLabels.label(BayLabels.SMALL, BayLabels.QUIET);
        hint.setText("A digit answers and goes on, Enter skips, N starts the next stint, Escape leaves; "
                + "all of it can be changed later.");
        VBox rows = new VBox(2);
        for (FeelQuestion question : FeelQuestion.values()) {
            Question row = new Question(question);
            questions.add(row);
            rows.getChildren().add(row);
        }
        HBox columns = new HBox(32, rows, details);
        HBox.setHgrow(details, Priority.ALWAYS);
        HBox head = new HBox(16, title, hint);
        head.setAlignment(Pos.BASELINE_LEFT);
        getChildren().addAll(head, columns);
        addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ESCAPE) {
                leave.run();
                event.consume();
            }
        });
    }

    void show(Stint stint, String label) {
        if (stint == null) {
            shownStint = null;
            return;
        }
        boolean another = !stint.id().equals(shownStint);
        shownStint = stint.id();
        if (another) {
            BayLabels.write(title, "How did " + label + " feel?");
            buildDetails();
        }
        questions.forEach(question -> question.show(stint));
    }

    /** Puts the focus on the first question. */
    void begin() {
        questions.get(0).requestFocus();
    }

    private void buildDetails() {
        FeelDetails typed = bay.details();
        List<EntryField> fields = List.of(new EntryField(typed.word()).named("feel-word"),
                new EntryField(typed.chokedDown()).named("feel-choked"),
                new EntryField(typed.pressure()).named("feel-pressure"),
                new EntryField(typed.swingweight()).prompt("D2").columns(6).named("feel-swingweight"));
        details.getChildren().setAll(line("a word of the player\u2019s", fields.get(0), ""),
                line("hands down the grip by", fields.get(1), ""),
                line("grip pressure, of the most", fields.get(2), "%"),
                line("swingweight off the scale", fields.get(3), ""));
        if (typed.physicalClubs().size() > 1) {
            details.getChildren().add(line("which club it was", new ChoiceField<>(typed.physicalClub(),
                    typed.physicalClubs(), typed::clubName).named("feel-club"), ""));
        }
        Button done = new Button("Done  Esc");
        done.getStyleClass().addAll("bay-button", "accent");
        done.setMinWidth(USE_PREF_SIZE);
        done.setId("feel-done");
        done.setOnAction(event -> leave.run());
        details.getChildren().add(done);
        stops.clear();
        stops.addAll(questions);
        for (EntryField field : fields) {
            stops.add(field.input());
            goOnWithEnter(field.input());
        }
        stops.add(done);
    }

    /** Moves the focus to the stop after this one. */
    private void goOn(Node from) {
        int at = stops.indexOf(from);
        if (at >= 0 && at + 1 < stops.size()) {
            stops.get(at + 1).requestFocus();
        }
    }

    /** Enter keeps the text, which the field does itself, and goes on to the next one. */
    private void goOnWithEnter(TextField input) {
        input.addEventHandler(KeyEvent.KEY_RELEASED, event -> {
            if (event.getCode() == KeyCode.ENTER) {
                goOn(input);
            }
        });
    }

    private static VBox line(String word, Node field, String behind) {
        Label label = BayLabels.label(BayLabels.SMALL, BayLabels.QUIET);
        label.setText(word);
        Label unit = BayLabels.label(BayLabels.SMALL, BayLabels.QUIET);
        unit.setText(behind);
        HBox row = new HBox(6, field, unit);
        row.setAlignment(Pos.CENTER_LEFT);
        return new VBox(2, label, row);
    }

    /** One question with its buttons; it takes the focus as a whole. */
    private final class Question extends HBox {

        private final FeelQuestion question;
        private final List<Button> buttons = new ArrayList<>();

        private Question(FeelQuestion question) {
            this.question = question;
            getStyleClass().add("bay-feel-row");
            setId("feel-" + question.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
            setFocusTraversable(true);
            setAccessibleText(question.text());
            getChildren().add(word(question.text(), "bay-feel-asked", BayLabels.MIDDLE, Pos.CENTER_LEFT));
            getChildren().add(word(question.lowWord(), "bay-feel-end", BayLabels.SMALL, Pos.CENTER_RIGHT));
            for (int n = 1; n <= question.answers().size(); n++) {
                getChildren().add(button(n));
            }
            getChildren().add(word(question.highWord(), "bay-feel-end", BayLabels.SMALL, Pos.CENTER_LEFT));
            addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
            setOnMouseClicked(event -> requestFocus());
        }

        private Label word(String text, String style, String size, Pos place) {
            Label label = BayLabels.label(size, size.equals(BayLabels.SMALL) ? BayLabels.QUIET : size, style);
            label.setText(text);
            label.setAlignment(place);
            return label;
        }

        private Button button(int number) {
            Button button = new Button(question.answers().get(number - 1));
            button.getStyleClass().add("bay-answer");
            button.setFocusTraversable(false);
            button.setOnAction(event -> bay.answer(question, number));
            buttons.add(button);
            return button;
        }

        private void show(Stint stint) {
            Integer chosen = question.chosen(stint.feel());
            for (int n = 0; n < buttons.size(); n++) {
                buttons.get(n).pseudoClassStateChanged(CHOSEN, chosen != null && chosen == n + 1);
            }
        }

        private void pressed(KeyEvent event) {
            if (event.isAltDown() || event.isShortcutDown()) {
                return;
            }
            if (event.getCode().isDigitKey()) {
                String name = event.getCode().getName();
                int number = name.charAt(name.length() - 1) - '0';
                if (number >= 1 && number <= buttons.size()) {
                    bay.answer(question, number);
                    goOn(this);
                }
                event.consume();
            } else if (event.getCode() == KeyCode.ENTER) {
                goOn(this);
                event.consume();
            }
        }

    }
}
