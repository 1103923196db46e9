package gripwright.desktop;

import gripwright.desktop.support.Entry;
import gripwright.desktop.support.Place;
import gripwright.desktop.support.PlaceKey;
import gripwright.desktop.support.Theme;
import gripwright.desktop.support.Typing;
import gripwright.desktop.support.Workbench;
import gripwright.desktop.take.TakeOverlay;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;

/** The one window: rail, header, foot, the place that is shown, and the keys that work everywhere. */
public final class WorkbenchWindow {

    private static final double FIRST_WIDTH = 1366;
    private static final double FIRST_HEIGHT = 768;
    private static final double LEAST_WIDTH = 1024;
    private static final double LEAST_HEIGHT = 640;

    private final Workbench workbench;
    private final Places places;
    private final Rail rail;
    private final KeysOverlay keys = new KeysOverlay();
    private final TakeOverlay takeOverlay;
    private final BorderPane frame = new BorderPane();
    private final Scene scene;
    private Place shown;

    /** Builds the window's content; the fonts must be loaded. */
    public WorkbenchWindow(Workbench workbench) {
        this.workbench = workbench;
        places = new Places(workbench);
        rail = new Rail(workbench);
        WindowViewModel model = new WindowViewModel(workbench);
        takeOverlay = new TakeOverlay(workbench);
        SessionActions actions = new SessionActions(workbench, this::keepTyping, takeOverlay::choose);
        Header header = new Header(workbench, model, actions.menu(), this::showKeys);
        Foot foot = new Foot(workbench, model);
        frame.getStyleClass().add("gw-frame");
        frame.setLeft(rail);
        frame.setTop(header);
        frame.setBottom(foot);
        scene = new Scene(new StackPane(frame, takeOverlay, keys), FIRST_WIDTH, FIRST_HEIGHT);
        workbench.settings().map(settings -> settings.dark()).subscribe(dark -> Theme.apply(scene, dark));
        workbench.sheetOnly().subscribe(alone -> {
            for (Node around : new Node[] {rail, header, foot}) {
                around.setVisible(!alone);
                around.setManaged(!alone);
            }
        });
        scene.addEventFilter(KeyEvent.KEY_PRESSED, this::beforeAnybody);
        scene.addEventHandler(KeyEvent.KEY_PRESSED, this::afterEverybody);
        scene.addEventHandler(KeyEvent.KEY_TYPED, this::typed);
        scene.setOnDragOver(event -> {
            if (event.getDragboard().hasFiles()) {
                event.acceptTransferModes(TransferMode.COPY);
            }
            event.consume();
        });
        scene.setOnDragDropped(event -> {
            List<File> files = event.getDragboard().getFiles();
            if (!files.isEmpty()) {
                takeOverlay.open(files.get(0).toPath());
            }
            event.setDropCompleted(!files.isEmpty());
            event.consume();
        });
        workbench.place().subscribe(this::show);
    }

    /** Puts the content into a stage and shows it. */
    public void open(Stage stage) {
        stage.setScene(scene);
        stage.setMinWidth(LEAST_WIDTH);
        stage.setMinHeight(LEAST_HEIGHT);
        stage.titleProperty().bind(new WindowViewModel(workbench).title());
        stage.setFullScreenExitHint("");
        stage.addEventHandler(WindowEvent.WINDOW_HIDING, event -> keepTyping());
        stage.show();
    }

    public Scene scene() {
        return scene;
    }

    /** Opens the sheet on which a CSV file is looked at before its shots are taken. */
    public void takeShots(Path file) {
        takeOverlay.open(file);
    }

    /** Opens the sheet on rows that were pasted. */
    public void takeRows(String rows) {
        takeOverlay.openRows(rows);
    }

    /** The place that is shown. */
    public Place shown() {
        return shown;
    }

    private void show(PlaceKey key) {
        if (shown != null) {
            shown.left();
        }
        shown = places.at(key);
        workbench.sheetOnly().set(false);
        frame.setCenter(shown.node());
        shown.entered();
        Node focused = scene.getFocusOwner();
        if (focused == null || isInside(focused, rail) || !isInside(focused, scene.getRoot())) {
            rail.focus(key);
        }
    }

    /** Keeps what is being typed, before the session it belongs to goes out of view. */
    private void keepTyping() {
        if (scene.getFocusOwner() != null && scene.getFocusOwner().getUserData() instanceof Entry entry) {
            entry.commit();
        }
    }

    private static boolean isInside(Node node, Parent root) {
        Node upper = node;
        while (upper != null && upper != root) {
            upper = upper.getParent();
        }
        return upper == root;
    }

    private void beforeAnybody(KeyEvent event) {
        if (keys.isVisible() && event.getCode() == KeyCode.ESCAPE) {
            keys.setVisible(false);
            event.consume();
        } else if (event.isAltDown() && !event.isShortcutDown()
                && (takeOverlay.isVisible() ? event.getCode().isDigitKey() : goToDigit(event.getCode()))) {
            event.consume();
        } else if (event.isShortcutDown() && !event.isAltDown() && undoOrRedo(event)) {
            event.consume();
        } else if (event.getCode() == KeyCode.F1) {
            showKeys();
            event.consume();
        } else if (event.getCode() == KeyCode.F11 && scene.getWindow() instanceof Stage stage) {
            stage.setFullScreen(!stage.isFullScreen());
            event.consume();
        }
    }

    private boolean undoOrRedo(KeyEvent event) {
        boolean undo = event.getCode() == KeyCode.Z && !event.isShiftDown();
        boolean redo = event.getCode() == KeyCode.Y || event.getCode() == KeyCode.Z && event.isShiftDown();
        if (!undo && !redo || Typing.hasUnkeptText(scene.getFocusOwner())) {
            return false;
        }
        if (undo) {
            workbench.undo();
        } else {
            workbench.redo();
        }
        return true;
    }

    private void afterEverybody(KeyEvent event) {
        if (event.isShortcutDown() && event.getCode() == KeyCode.V && !Typing.isTakenBy(scene.getFocusOwner())) {
            pasteRows();
            event.consume();
            return;
        }
        boolean bare = !event.isAltDown() && !event.isShortcutDown() && !event.isShiftDown();
        if (bare && !Typing.isTakenBy(scene.getFocusOwner()) && goToDigit(event.getCode())) {
            event.consume();
        }
    }

    /** Rows on the clipboard are looked at on the sheet; in the bay they are the bay's own, which takes them at once. */
    private void pasteRows() {
        String rows = Clipboard.getSystemClipboard().getString();
        if (rows != null && rows.strip().contains("\n")) {
            takeOverlay.openRows(rows);
        }
    }

    private void typed(KeyEvent event) {
        if ("?".equals(event.getCharacter()) && !Typing.isTakenBy(scene.getFocusOwner())) {
            showKeys();
            event.consume();
        }
    }

    private boolean goToDigit(KeyCode code) {
        if (!code.isDigitKey()) {
            return false;
        }
        String name = code.getName();
        int digit = name.charAt(name.length() - 1) - '0';
        return PlaceKey.ofDigit(digit).map(place -> {
            workbench.place().set(place);
            return true;
        }).orElse(false);
    }

    private void showKeys() {
        keys.show(shown);
    }
}
