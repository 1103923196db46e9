package gripwright.desktop.take;

import gripwright.desktop.support.Sheets;
import gripwright.intake.Choice;
import java.util.List;
import java.util.function.BiConsumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** What a file leaves open, before everything else: each question with its choices, open ones marked. */
final class QuestionsPane extends VBox {

    private static final String ANSWERED = "take-answered";

    private final BiConsumer<String, String> answer;
    private List<AskedQuestion> shown = List.of();

    QuestionsPane(BiConsumer<String, String> answer) {
        super(2 * Sheets.STEP);
        this.answer = answer;
        setId("take-questions");
    }

    void show(List<AskedQuestion> questions) {
        setVisible(!questions.isEmpty());
        setManaged(isVisible());
        if (!sameQuestions(questions)) {
            getChildren().setAll(questions.stream().map(this::question).toList());
        }
        shown = List.copyOf(questions);
        for (int n = 0; n < questions.size(); n++) {
            mark((VBox) getChildren().get(n), questions.get(n));
        }
    }

    /** An answer changes no question, so that the focus stays where it is. */
    private boolean sameQuestions(List<AskedQuestion> questions) {
        return questions.size() == shown.size() && java.util.stream.IntStream.range(0, shown.size()).allMatch(n ->
                questions.get(n).id().equals(shown.get(n).id()) && questions.get(n).choices().equals(shown.get(n).choices())
                        && questions.get(n).sentence().equals(shown.get(n).sentence()));
    }

    private VBox question(AskedQuestion asked) {
        Label sentence = Sheets.text(asked.sentence());
        sentence.getStyleClass().add("gw-heading-text");
        FlowPane choices = new FlowPane(Sheets.STEP, Sheets.STEP);
        for (Choice choice : asked.choices()) {
            ToggleButton button = new ToggleButton(choice.text());
            button.setUserData(choice.key());
            button.setMinWidth(USE_PREF_SIZE);
            button.setAccessibleText(asked.sentence() + " " + choice.text());
            button.setOnAction(event -> answer.accept(asked.id(), choice.key()));
            choices.getChildren().add(button);
        }
        VBox block = new VBox(Sheets.STEP, sentence, choices);
        block.getStyleClass().addAll("take-question", "gw-section");
        return block;
    }

    private static void mark(VBox block, AskedQuestion asked) {
        block.getStyleClass().remove(ANSWERED);
        if (!asked.isOpen()) {
            block.getStyleClass().add(ANSWERED);
        }
        for (Node node : ((FlowPane) block.getChildren().get(1)).getChildren()) {
            ((ToggleButton) node).setSelected(asked.chosen().equals(node.getUserData()));
        }
    }

    /** Gives the focus to the first choice of the first open question; says whether there is one. */
    boolean focusFirstOpen() {
        for (int n = 0; n < shown.size(); n++) {
            if (shown.get(n).isOpen()) {
                ((FlowPane) ((VBox) getChildren().get(n)).getChildren().get(1)).getChildren().get(0).requestFocus();
                return true;
            }
        }
        return false;
    }
}
