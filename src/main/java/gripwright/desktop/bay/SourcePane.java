package gripwright.desktop.bay;

import gripwright.desktop.support.SavingStatus;
import java.util.function.Consumer;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Under the queue: swings and time, how the source of shots is doing, whether everything is kept. */
final class SourcePane extends VBox {

    private final Label count = BayLabels.label(BayLabels.MIDDLE);
    private final Label caution = BayLabels.label("bay-caution");
    private final Label source = BayLabels.label(BayLabels.SMALL, BayLabels.QUIET);
    private final Label kept = BayLabels.label(BayLabels.SMALL, BayLabels.QUIET);
    private SwingCount swings;
    private String elapsed = "";

    SourcePane(BayViewModel bay, ObservableValue<SavingStatus> saving, Consumer<BayAction> act) {
        getStyleClass().add("bay-left-foot");
        count.setId("swings");
        source.setId("source-status");
        kept.setId("bay-kept");
        for (Label label : new Label[] {caution, source, kept}) {
            label.setWrapText(true);
            label.setMinHeight(USE_PREF_SIZE);
        }
        HBox buttons = new HBox(8, wide(ActionsBar.button(BayAction.SOURCE, act)),
                wide(ActionsBar.button(BayAction.HIDE, act)));
        buttons.getStyleClass().add("bay-actions");
        getChildren().addAll(count, caution, source, kept, buttons);
        bay.sourceText().subscribe(text -> BayLabels.write(source, text));
        bay.elapsed().subscribe(text -> {
            elapsed = text;
            writeCount();
        });
        saving.subscribe(status -> BayLabels.write(kept, words(status)));
    }

    /** 'kept' and 'not on disk yet' are the words of the bay; a failure keeps its own sentence. */
    private static String words(SavingStatus status) {
        return switch (status.state()) {
            case KEPT -> "kept";
            case KEEPING -> "not on disk yet";
            case IN_MEMORY, FAILED -> status.sentence();
        };
    }

    private static Button wide(Button button) {
        button.setMaxWidth(Double.MAX_VALUE);
        button.setPrefWidth(100);
        HBox.setHgrow(button, Priority.ALWAYS);
        return button;
    }

    void show(SwingCount now) {
        swings = now;
        writeCount();
        BayLabels.write(caution, now.caution());
        BayLabels.present(caution, !now.caution().isEmpty());
    }

    private void writeCount() {
        if (swings != null) {
            BayLabels.write(count, swings.swings() + (swings.swings() == 1 ? " swing" : " swings")
                    + (elapsed.isEmpty() ? "" : " \u00B7 " + elapsed));
        }
    }
}
