package gripwright.desktop.bay;

import gripwright.charts.Pattern;
import gripwright.charts.PatternPicture;
import gripwright.desktop.support.PictureCanvas;
import gripwright.desktop.support.Theme;
import gripwright.desktop.support.Typing;
import gripwright.desktop.support.Workbench;
import gripwright.model.Configuration;
import gripwright.model.Stint;
import java.util.List;
import java.util.Objects;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The sheet of the bay: queue on the left, the shot and its strips large in the middle, what can be done below. */
final class BayView extends BorderPane {

    private static final double SIDE_WIDTH = 308;
    private static final double SIDE_SHARE = 0.22;
    /** Six shots and the headings. */
    private static final double SHOTS_HEIGHT = 190;
    private static final double PATTERN_TEXT = 12;
    /** From this much room on everything is larger by two fifths: the screen on the wall is read from further away. */
    private static final double ROOMY_WIDTH = 1640;
    private static final double ROOMY_HEIGHT = 880;
    private static final double LARGER = 1.4;
    private static final PseudoClass ROOMY = PseudoClass.getPseudoClass("roomy");

    private final BayViewModel bay;
    private final BayKeys keys;
    private final QueuePane queue;
    private final HandPane hand;
    private final LastPane last = new LastPane();
    private final StripsPane strips = new StripsPane();
    private final PictureCanvas pattern = new PictureCanvas();
    private final ShotsPane shots;
    private final NextPane next = new NextPane();
    private final ActionsBar actions;
    private final EntryBar entry;
    private final PromptBar prompt;
    private final FeelPane feel;
    private final SourcePane source;
    private final Label empty = BayLabels.label(BayLabels.LARGE);
    private final Label covered = BayLabels.label(BayLabels.LARGE, BayLabels.QUIET);
    private final HBox figures;
    private final VBox side = new VBox(8);
    private double scale = 1;
    private Pattern shownPattern;
    private Node before;
    private Node pressedAt;

    BayView(Workbench workbench, BayViewModel bay, BayKeys keys) {
        this.bay = bay;
        this.keys = keys;
        getStyleClass().add("bay");
        getStylesheets().add(BayView.class.getResource("bay.css").toExternalForm());
        setFocusTraversable(true);
        queue = new QueuePane(workbench.pictureLook(PATTERN_TEXT), this::openStint);
        hand = new HandPane(workbench.pictureLook(PATTERN_TEXT), bay::twistChecked);
        shots = new ShotsPane(bay::toggleAside);
        actions = new ActionsBar(this::act);
        entry = new EntryBar(bay);
        prompt = new PromptBar(bay, workbench.pictureLook(PATTERN_TEXT));
        feel = new FeelPane(bay, this::leaveFeel);
        source = new SourcePane(bay, workbench.saving(), this::act);
        figures = figures();
        setLeft(left());
        setCenter(sheet());
        addEventFilter(KeyEvent.KEY_PRESSED, event -> pressedAt = getScene().getFocusOwner());
        addEventFilter(KeyEvent.KEY_TYPED, this::characterTyped);
        addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
        workbench.settings().map(now -> now.dark()).subscribe(this::setDark);
        widthProperty().addListener(observed -> fit(workbench.settings().get().dark()));
        heightProperty().addListener(observed -> fit(workbench.settings().get().dark()));
        bay.sheet().subscribe(this::show);
        bay.prompt().subscribe(this::showPrompt);
        bay.feelStint().subscribe(this::showFeel);
        bay.hiding().subscribe(this::cover);
        bay.rehearsal().subscribe(rehearsing -> show(bay.sheet().get()));
    }

    private VBox left() {
        VBox left = new VBox(queue, source);
        left.getStyleClass().add("bay-left");
        VBox.setVgrow(queue, Priority.ALWAYS);
        queue.setMinHeight(0);
        return left;
    }

    private HBox figures() {
        VBox middle = new VBox(4, last, strips);
        VBox.setVgrow(strips, Priority.ALWAYS);
        HBox.setHgrow(middle, Priority.ALWAYS);
        // Never wider than the window, however long a word is.
        middle.setMinWidth(0);
        side.getChildren().addAll(pattern, shots);
        side.setMinWidth(SIDE_WIDTH);
        side.prefWidthProperty().bind(widthProperty().multiply(SIDE_SHARE));
        VBox.setVgrow(pattern, Priority.ALWAYS);
        shots.setPrefHeight(SHOTS_HEIGHT);
        pattern.setMinHeight(0);
        pattern.setId("bay-pattern");
        shots.setMinHeight(SHOTS_HEIGHT);
        return new HBox(24, middle, side);
    }

    private VBox sheet() {
        empty.setWrapText(true);
        empty.setMaxWidth(640);
        empty.setId("bay-empty");
        covered.setId("bay-covered");
        StackPane middle = new StackPane(figures, feel, covered, empty);
        StackPane.setAlignment(empty, Pos.TOP_LEFT);
        middle.setMinHeight(0);
        VBox.setVgrow(middle, Priority.ALWAYS);
        StackPane line = new StackPane(entry, prompt);
        VBox sheet = new VBox(hand, middle, next, actions, line);
        sheet.getStyleClass().add("bay-sheet");
        sheet.setMinWidth(0);
        return sheet;
    }

    private void setDark(boolean dark) {
        strips.setDark(dark);
        pattern.setLook(Theme.pictures(dark, PATTERN_TEXT * scale));
    }

    /** Letters and marks grow with the window, in one step, so that nothing creeps while it is resized. */
    private void fit(boolean dark) {
        double fitting = getWidth() >= ROOMY_WIDTH && getHeight() >= ROOMY_HEIGHT ? LARGER : 1;
        if (fitting == scale) {
            return;
        }
        scale = fitting;
        pseudoClassStateChanged(ROOMY, scale > 1);
        queue.setScale(scale);
        hand.setScale(scale);
        strips.setScale(scale);
        side.setMinWidth(SIDE_WIDTH * scale);
        shots.setPrefHeight(SHOTS_HEIGHT * scale);
        shots.setMinHeight(SHOTS_HEIGHT * scale);
        setDark(dark);
    }

    // ---- showing ------------------------------------------------------------------------------------------------

    private void show(BaySheet sheet) {
        if (sheet == null) {
            return;
        }
        queue.show(sheet.queue());
        hand.show(sheet.hand(), sheet.reminder(), sheet.rehearsal() || bay.rehearsal().get());
        last.show(sheet.last());
        strips.show(sheet.strips());
        if (!Objects.equals(sheet.pattern(), shownPattern)) {
            shownPattern = sheet.pattern();
            pattern.setPicture(shownPattern == null ? null : new PatternPicture(shownPattern));
        }
        shots.show(sheet.shotColumns(), sheet.shots());
        next.show(sheet.next(), bay.hiding().get().figures() ? List.of() : sheet.warnings());
        source.show(sheet.swings());
        actions.showTray(sheet.tray());
        BayLabels.write(empty, sheet.empty());
        cover(bay.hiding().get());
    }

    /** What is hidden from the player is not drawn at all; what is missing is said in its place. */
    private void cover(Hiding hiding) {
        boolean nothing = !empty.getText().isEmpty();
        boolean asking = bay.feelStint().get() != null;
        empty.setVisible(nothing && !asking);
        feel.setVisible(asking);
        covered.setVisible(hiding.figures() && !nothing && !asking);
        BayLabels.write(covered, hiding.text() + "; H goes on to the next way of hiding");
        figures.setVisible(!nothing && !asking && !hiding.figures());
    }

    private void showPrompt(Prompt asked) {
        if (asked != null && !prompt.isVisible()) {
            before = getScene() == null ? null : getScene().getFocusOwner();
        }
        boolean wasAsked = prompt.isVisible();
        prompt.show(asked);
        prompt.setVisible(asked != null);
        entry.setVisible(asked == null);
        if (asked != null) {
            prompt.begin();
        } else if (wasAsked) {
            giveFocusBack();
        }
    }

    private void giveFocusBack() {
        if (before != null && before.getScene() == getScene() && before.isVisible() && before != prompt) {
            before.requestFocus();
        } else {
            requestFocus();
        }
        before = null;
    }

    private void showFeel(Stint stint) {
        boolean opening = stint != null && !feel.isVisible();
        boolean closing = stint == null && feel.isVisible();
        feel.show(stint, stint == null ? "" : bay.test().configuration(stint.configurationId())
                .map(Configuration::label).orElse("it"));
        cover(bay.hiding().get());
        if (opening) {
            feel.begin();
        } else if (closing) {
            requestFocus();
        }
    }

    private void leaveFeel() {
        bay.closeFeel();
    }

    // ---- doing --------------------------------------------------------------------------------------------------

    private void openStint(String stintId) {
        keys.openStint(stintId);
    }

    private void act(BayAction action) {
        if (action == BayAction.TYPE) {
            entry.begin();
        } else {
            keys.act(action);
        }
    }

    private void pressed(KeyEvent event) {
        boolean typing = Typing.isTakenBy(getScene().getFocusOwner());
        if (event.getCode() == KeyCode.ESCAPE) {
            bay.dismiss();
            requestFocus();
            event.consume();
        } else if (event.isShortcutDown() && event.getCode() == KeyCode.V && !typing) {
            entry.pasteRows();
            event.consume();
        } else if (!event.isAltDown() && !event.isShortcutDown() && !event.isMetaDown()) {
            BayAction.ofTypingKey(event.getCode().getName())
                    .or(() -> typing ? java.util.Optional.empty() : BayAction.ofKey(event.getCode().getName()))
                    .ifPresent(action -> {
                        act(action);
                        event.consume();
                    });
        }
    }

    /** A key whose press moved the focus is not typed as well into the field that has it by now. */
    private void characterTyped(KeyEvent event) {
        if (pressedAt != getScene().getFocusOwner()) {
            event.consume();
        }
    }

    /** The place has been entered: keys work at once. */
    void begin() {
        if (bay.feelStint().get() == null) {
            requestFocus();
        } else {
            feel.begin();
        }
    }
}
