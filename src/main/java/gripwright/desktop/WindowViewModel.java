package gripwright.desktop;

import gripwright.desktop.support.SavingStatus;
import gripwright.desktop.support.StatusMessage;
import gripwright.desktop.support.Workbench;
import gripwright.model.ClubTest;
import gripwright.model.Session;
import gripwright.units.DayText;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;

/** What stands around the places: who plays, which test is in view, when, whether it is invented, undo, and saving. */
final class WindowViewModel {

    private static final int LONGEST_LABEL = 40;

    /** A test that can be brought into view. */
    record TestChoice(String id, String name) {
    }

    private final Workbench workbench;

    WindowViewModel(Workbench workbench) {
        this.workbench = workbench;
    }

    ObservableValue<String> player() {
        return workbench.session().map(session -> session.player().label().isBlank()
                ? "No player named yet" : session.player().label());
    }

    ObservableValue<String> hand() {
        return workbench.session().map(session -> session.player().hand().text());
    }

    ObservableValue<String> day() {
        return workbench.session().map(session -> DayText.of(session.date()));
    }

    ObservableValue<Boolean> invented() {
        return workbench.session().map(Session::invented);
    }

    ObservableValue<List<TestChoice>> tests() {
        return workbench.session().map(session -> session.tests().stream()
                .map(test -> new TestChoice(test.id(), test.club().name())).toList());
    }

    ObservableValue<String> testInView() {
        return workbench.test().map(ClubTest::id);
    }

    ObservableValue<String> title() {
        return player().map(player -> player + " \u2013 Gripwright");
    }

    ObservableValue<String> undo() {
        return workbench.undoLabel().map(label -> label.isEmpty() ? "Undo" : "Undo: " + shortened(label));
    }

    ObservableValue<String> redo() {
        return workbench.redoLabel().map(label -> label.isEmpty() ? "Redo" : "Redo: " + shortened(label));
    }

    ObservableValue<Boolean> nothingToUndo() {
        return workbench.undoLabel().isEmpty();
    }

    ObservableValue<Boolean> nothingToRedo() {
        return workbench.redoLabel().isEmpty();
    }

    ObservableValue<StatusMessage> message() {
        return workbench.message();
    }

    ObservableValue<SavingStatus> saving() {
        return workbench.saving();
    }

    ObservableValue<String> lookOffered() {
        return Bindings.createStringBinding(() -> workbench.settings().get().dark() ? "Light" : "Dark",
                workbench.settings());
    }

    /** A label cut at a word where it is too long for a button; the whole stands in its tip. */
    static String shortened(String label) {
        if (label.length() <= LONGEST_LABEL) {
            return label;
        }
        int space = label.lastIndexOf(' ', LONGEST_LABEL - 1);
        return label.substring(0, space > LONGEST_LABEL / 2 ? space : LONGEST_LABEL - 1) + "\u2026";
    }
}
