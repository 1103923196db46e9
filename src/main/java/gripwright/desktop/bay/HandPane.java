package gripwright.desktop.bay;

import gripwright.charts.Look;
import gripwright.charts.Mark;
import gripwright.desktop.support.MarkCanvas;
import gripwright.desktop.support.Sheets;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The configuration in hand, the progress of its stint, and the signs that go over everything: rehearsal, twist check. */
final class HandPane extends HBox {

    private static final double MARK = 40;
    private static final double REMINDER = 230;

    private final ObjectProperty<Mark> mark = new SimpleObjectProperty<>();
    private final MarkCanvas markCanvas;
    private final Label label = BayLabels.whole(BayLabels.HUGE);
    private final Label name = BayLabels.whole(BayLabels.HUGE);
    private final Label facts = BayLabels.label(BayLabels.LARGE);
    private final Label under = BayLabels.label(BayLabels.SMALL, BayLabels.QUIET);
    private final Label reminder = BayLabels.label(BayLabels.MIDDLE);
    private final Button looked = new Button();
    private final Label rehearsal = BayLabels.whole("bay-rehearsal");
    private final Label progress = BayLabels.whole(BayLabels.HUGE);

    HandPane(ObservableValue<Look> look, Runnable twistChecked) {
        getStyleClass().add("bay-hand");
        setId("bay-hand");
        markCanvas = new MarkCanvas(mark, look, MARK);
        label.setId("hand-label");
        name.setId("hand-name");
        progress.setId("hand-progress");
        rehearsal.setText("rehearsal");
        rehearsal.setId("rehearsal-sign");
        reminder.setWrapText(true);
        reminder.setMaxWidth(REMINDER);
        reminder.setId("twist-reminder");
        looked.setText("Looked  " + BayAction.TWIST.key());
        looked.getStyleClass().add("bay-button");
        looked.setFocusTraversable(false);
        looked.setOnAction(event -> twistChecked.run());
        VBox words = new VBox(facts, under);
        words.setAlignment(Pos.CENTER_LEFT);
        words.setMinWidth(0);
        HBox twist = new HBox(Sheets.STEP, reminder, looked);
        twist.setAlignment(Pos.CENTER_LEFT);
        twist.managedProperty().bind(reminder.managedProperty());
        twist.visibleProperty().bind(reminder.managedProperty());
        getChildren().addAll(markCanvas, label, name, words, Sheets.spring(), twist, rehearsal, progress);
    }

    /** How much larger than usual everything is. */
    void setScale(double scale) {
        markCanvas.setSize(MARK * scale);
        reminder.setMaxWidth(REMINDER * scale);
    }

    void show(HandCard card, String reminderText, boolean rehearsing) {
        mark.set(card.mark());
        BayLabels.present(markCanvas, card.mark() != null);
        BayLabels.write(label, card.mark() == null ? "" : card.mark().label());
        BayLabels.present(label, card.mark() != null);
        BayLabels.write(name, card.name());
        BayLabels.present(name, !card.name().isEmpty());
        BayLabels.write(facts, String.join("   ", card.facts()));
        BayLabels.present(facts, !card.facts().isEmpty());
        BayLabels.write(under, card.under());
        BayLabels.present(under, !card.under().isEmpty());
        BayLabels.write(progress, card.progress());
        BayLabels.write(reminder, reminderText);
        BayLabels.present(reminder, !reminderText.isEmpty());
        BayLabels.present(rehearsal, rehearsing);
    }
}
