package gripwright.desktop;

import gripwright.desktop.support.Workbench;
import gripwright.desktop.support.WorkbenchServices;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyCombination;
import javafx.stage.FileChooser;

/** New, open, recent, save as and demo: the session's menu and its keys. */
final class SessionActions {

    private static final String EXTENSION = ".json";

    private final Workbench workbench;
    private final Runnable keepTyping;
    private final MenuButton menu = new MenuButton("Session");
    private final Menu recent = new Menu("Recent");

    /**
     * @param keepTyping keeps what is being typed into the session before another one is shown
     * @param takeShots asks for a CSV file and opens the sheet on it
     */
    SessionActions(Workbench workbench, Runnable keepTyping, Runnable takeShots) {
        this.workbench = workbench;
        this.keepTyping = keepTyping;
        menu.setId("session-menu");
        menu.setMinWidth(MenuButton.USE_PREF_SIZE);
        menu.getItems().addAll(
                item("New", "Shortcut+N", this::fresh),
                item("Open\u2026", "Shortcut+O", this::open),
                recent,
                item("Save as\u2026", "Shortcut+Shift+S", this::saveAs),
                item("Demo session", null, this::demo),
                new SeparatorMenuItem(),
                item("Take shots from a CSV file\u2026", "Shortcut+I", takeShots),
                new SeparatorMenuItem(),
                lessMotion());
        menu.setOnShowing(event -> listRecent());
    }

    MenuButton menu() {
        return menu;
    }

    private static MenuItem item(String text, String keys, Runnable action) {
        MenuItem item = new MenuItem(text);
        item.setOnAction(event -> action.run());
        if (keys != null) {
            item.setAccelerator(KeyCombination.valueOf(keys));
        }
        return item;
    }

    private CheckMenuItem lessMotion() {
        CheckMenuItem item = new CheckMenuItem("Nothing moves by itself");
        item.selectedProperty().bindBidirectional(workbench.lessMotion());
        return item;
    }

    private void listRecent() {
        List<WorkbenchServices.Recent> sessions = workbench.services().recent();
        recent.setDisable(sessions.isEmpty());
        recent.getItems().setAll(sessions.stream().map(this::recentItem).toList());
    }

    private MenuItem recentItem(WorkbenchServices.Recent session) {
        String player = session.player().isBlank() ? "no player named" : session.player();
        String text = session.date() + ", " + player + (session.invented() ? " (invented)" : "");
        MenuItem item = new MenuItem(text);
        item.setMnemonicParsing(false);
        item.setOnAction(event -> open(session.file()));
        return item;
    }

    void fresh() {
        keepTyping.run();
        workbench.open(workbench.services().fresh());
        workbench.say("A new session. The one before is kept under Session, Recent.");
    }

    void demo() {
        keepTyping.run();
        workbench.inBackground(workbench.services()::demo, this::show, this::failed);
    }

    private void open() {
        File chosen = chooser("Open a session").showOpenDialog(menu.getScene().getWindow());
        if (chosen != null) {
            open(chosen.toPath());
        }
    }

    private void open(Path file) {
        keepTyping.run();
        workbench.say("Opening " + file.getFileName() + "\u2026");
        workbench.inBackground(() -> workbench.services().open(file), this::show, this::failed);
    }

    private void show(WorkbenchServices.Opened opened) {
        workbench.say(opened.place().map(file -> "Opened " + file.getFileName() + ".").orElse("Opened."));
        workbench.open(opened);
    }

    private void saveAs() {
        keepTyping.run();
        File chosen = chooser("Save the session as").showSaveDialog(menu.getScene().getWindow());
        if (chosen == null) {
            return;
        }
        Path file = chosen.getName().endsWith(EXTENSION)
                ? chosen.toPath() : chosen.toPath().resolveSibling(chosen.getName() + EXTENSION);
        var session = workbench.session().get();
        workbench.inBackground(() -> {
            workbench.services().saveAs(session, file);
            return file;
        }, saved -> workbench.say("Saved as " + saved.getFileName() + "."), this::failed);
    }

    private static FileChooser chooser(String title) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter("Sessions", "*" + EXTENSION));
        return chooser;
    }

    private void failed(Throwable failure) {
        workbench.sayProblem(failure.getMessage() == null ? failure.toString() : failure.getMessage());
    }
}
