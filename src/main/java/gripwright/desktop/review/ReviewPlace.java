package gripwright.desktop.review;

import gripwright.charts.Look;
import gripwright.charts.Mark;
import gripwright.charts.MetricStrip;
import gripwright.charts.StripPicture;
import gripwright.comparison.Comparison;
import gripwright.comparison.MetricComparison;
import gripwright.desktop.support.MarkCanvas;
import gripwright.desktop.support.PictureCanvas;
import gripwright.desktop.support.Place;
import gripwright.desktop.support.PlaceKey;
import gripwright.desktop.support.Sheets;
import gripwright.desktop.support.Theme;
import gripwright.desktop.support.Workbench;
import gripwright.model.Configuration;
import gripwright.model.ReadingText;
import gripwright.model.ShopSettings;
import gripwright.report.PlayerStory;
import gripwright.report.StoryLine;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** Review: two configurations side by side for the player, read from three metres; nothing under 28 px. */
public final class ReviewPlace implements Place {

    private static final double LEAST_TEXT = 28;
    private static final double MOST_TEXT = 48;
    private static final double WIDTH_FOR_LEAST = 1366;
    private static final double HEIGHT_FOR_LEAST = 680;
    private static final double MARK_SHARE = 1.3;
    private static final int LINES = 3;

    private final Workbench workbench;
    private final ReviewViewModel model;
    private final StackPane root = new StackPane();
    private final VBox sheet = new VBox(3 * Sheets.STEP);
    private final ScrollPane scroll;
    private double textSize = LEAST_TEXT;

    public ReviewPlace(Workbench workbench) {
        this.workbench = workbench;
        this.model = new ReviewViewModel(workbench);
        sheet.getStyleClass().addAll("gw-page", "gw-review");
        sheet.setPadding(new Insets(4 * Sheets.STEP, 6 * Sheets.STEP, 4 * Sheets.STEP, 6 * Sheets.STEP));
        scroll = Sheets.scrolling(sheet);
        scroll.setFocusTraversable(true);
        root.getChildren().add(scroll);
        scroll.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        model.comparison().subscribe(now -> show());
        model.story().subscribe(now -> show());
        model.picture().subscribe(now -> show());
        workbench.settings().subscribe(now -> show());
        root.widthProperty().addListener((observed, before, now) -> resized());
        root.heightProperty().addListener((observed, before, now) -> resized());
    }

    /** Larger windows get larger letters, so that a television is used to its edges. */
    private void resized() {
        double fitting = LEAST_TEXT * Math.min(root.getWidth() / WIDTH_FOR_LEAST, root.getHeight() / HEIGHT_FOR_LEAST);
        double size = Math.rint(Math.max(LEAST_TEXT, Math.min(MOST_TEXT, fitting)));
        if (size != textSize) {
            textSize = size;
            sheet.setStyle("-fx-font-size: " + size + "px;");
            show();
        }
    }

    private void pressed(KeyEvent event) {
        if (event.isAltDown() || event.isShortcutDown()) {
            return;
        }
        KeyCode code = event.getCode();
        if (code == KeyCode.RIGHT || code == KeyCode.LEFT) {
            int step = code == KeyCode.RIGHT ? 1 : -1;
            if (event.isShiftDown()) {
                model.turnLeft(step);
            } else {
                model.turnRight(step);
            }
            event.consume();
        } else if (code == KeyCode.DOWN || code == KeyCode.UP) {
            model.turnPicture(code == KeyCode.DOWN ? 1 : -1);
            event.consume();
        } else if (code == KeyCode.F || code == KeyCode.ESCAPE && workbench.sheetOnly().get()) {
            workbench.sheetOnly().set(code == KeyCode.F && !workbench.sheetOnly().get());
            event.consume();
        }
    }

    private void show() {
        Comparison comparison = model.comparison().get();
        PlayerStory story = model.story().get();
        if (comparison == null || comparison.metrics().isEmpty() || story == null) {
            sheet.getChildren().setAll(empty(comparison));
            return;
        }
        sheet.getChildren().setAll(headline(), sides(), picture(comparison), columns(story));
        if (!model.advice().beside().isEmpty()) {
            sheet.getChildren().add(words(model.advice().beside()));
        }
        if (!comparison.advice().conflict().isBlank()) {
            sheet.getChildren().add(words(comparison.advice().conflict()));
        }
        sheet.getChildren().add(foot());
    }

    private Node empty(Comparison comparison) {
        String what = comparison != null && !comparison.metrics().isEmpty()
                ? "Here two configurations will stand side by side; so far there is only one."
                : "Here the player will see what got better, what got worse, and what nobody can tell yet.";
        boolean oneTried = workbench.test().get().configurations().size() < 2;
        PlaceKey next = oneTried ? PlaceKey.PLAN : PlaceKey.BAY;
        Button go = new Button("Go to " + next.title());
        go.setOnAction(event -> workbench.place().set(next));
        return Sheets.empty(what, oneTried ? "Choose two grips or more to try in Plan."
                : "Hit scored shots with two configurations in Bay.", go);
    }

    private Node headline() {
        Label headline = words(model.advice().headline());
        headline.getStyleClass().add("gw-review-headline");
        return headline;
    }

    private Node sides() {
        HBox right = side(model.right(), 1, "shown");
        Label against = new Label("against");
        against.setMinWidth(javafx.scene.layout.Region.USE_PREF_SIZE);
        against.getStyleClass().add("gw-quiet");
        HBox left = side(model.left(), -1, "held against");
        FlowPane sides = new FlowPane(3 * Sheets.STEP, Sheets.STEP, right, against, left);
        sides.setAlignment(Pos.CENTER_LEFT);
        return sides;
    }

    private HBox side(ObjectProperty<String> id, int which, String name) {
        Configuration configuration = model.configuration(id.get());
        HBox side = new HBox(2 * Sheets.STEP);
        side.setAlignment(Pos.CENTER_LEFT);
        if (configuration == null) {
            return side;
        }
        MarkCanvas mark = new MarkCanvas(new javafx.beans.property.SimpleObjectProperty<>(Mark.of(configuration)),
                workbench.pictureLook(textSize), textSize * MARK_SHARE);
        Button next = new Button(configuration.label() + "  " + configuration.grip().name());
        next.getStyleClass().add("gw-review-side");
        next.setMinWidth(javafx.scene.layout.Region.USE_PREF_SIZE);
        next.setAccessibleText("configuration " + name + ": " + next.getText() + "; press for the next one");
        next.setFocusTraversable(false);
        next.setOnAction(event -> {
            if (which > 0) {
                model.turnRight(1);
            } else {
                model.turnLeft(1);
            }
        });
        side.getChildren().addAll(mark, next);
        return side;
    }

    private Node picture(Comparison comparison) {
        MetricComparison metric = model.picture().get();
        PictureCanvas canvas = new PictureCanvas();
        if (metric == null) {
            return canvas;
        }
        ShopSettings shop = workbench.settings().get();
        Look look = Theme.pictures(shop.dark(), textSize);
        List<Configuration> shown = Stream.of(model.left().get(), model.right().get()).map(model::configuration)
                .filter(Objects::nonNull).toList();
        MetricStrip strips = new MetricStrip(workbench.test().get(), comparison,
                ReadingText.of(shop, comparison.hand()), null);
        canvas.setLook(look);
        canvas.setAccessibleText("Every shot of " + metric.metric().text() + " with these two");
        canvas.setPicture(new StripPicture(strips.of(metric, shown)));
        return canvas;
    }

    private Node columns(PlayerStory story) {
        GridPane columns = new GridPane();
        columns.setHgap(5 * Sheets.STEP);
        List<List<StoryLine>> lists = List.of(story.better(), story.worse(), story.open());
        double shares = lists.stream().mapToDouble(ReviewPlace::share).sum();
        for (List<StoryLine> lines : lists) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(100 * share(lines) / shares);
            column.setHgrow(Priority.ALWAYS);
            columns.getColumnConstraints().add(column);
        }
        columns.addRow(0, column("Better", story.better(), "Nothing that the shots can show."),
                column("Worse", story.worse(), "Nothing that the shots can show."),
                column("Nobody can tell yet", primaryFirst(story.open()), "Nothing left open."));
        return columns;
    }

    /** A column with nothing in it takes half the room. */
    private static double share(List<StoryLine> lines) {
        return lines.isEmpty() ? 1 : 2;
    }

    private static List<StoryLine> primaryFirst(List<StoryLine> lines) {
        List<StoryLine> primary = lines.stream().filter(StoryLine::primary).toList();
        return primary.isEmpty() ? lines : primary;
    }

    private static Node column(String heading, List<StoryLine> lines, String none) {
        Label head = words(heading);
        head.getStyleClass().add("gw-heading-text");
        VBox column = new VBox(2 * Sheets.STEP, head);
        for (StoryLine line : lines.stream().limit(LINES).toList()) {
            Label what = words(line.what() + ": " + line.words());
            VBox entry = new VBox(what);
            String how = line.by() + (line.chance().isEmpty() ? "" : (line.by().isEmpty() ? "" : ", ") + line.chance());
            if (!how.isBlank()) {
                Label amount = words(how);
                amount.getStyleClass().add("gw-quiet");
                entry.getChildren().add(amount);
            }
            column.getChildren().add(entry);
        }
        if (lines.isEmpty()) {
            Label nothing = words(none);
            nothing.getStyleClass().add("gw-quiet");
            column.getChildren().add(nothing);
        }
        return column;
    }

    private Node foot() {
        Button whole = new Button(workbench.sheetOnly().get() ? "Show the rail (Esc)" : "Whole window (F)");
        whole.setOnAction(event -> workbench.sheetOnly().set(!workbench.sheetOnly().get()));
        Button picture = new Button("Another picture (\u2193)");
        picture.setOnAction(event -> model.turnPicture(1));
        HBox foot = new HBox(2 * Sheets.STEP, picture, whole);
        foot.getStyleClass().add("gw-review-foot");
        return foot;
    }

    private static Label words(String text) {
        Label label = Sheets.text(text);
        label.getStyleClass().add("gw-review-text");
        return label;
    }

    @Override
    public PlaceKey key() {
        return PlaceKey.REVIEW;
    }

    @Override
    public Node node() {
        return root;
    }

    @Override
    public List<KeyLine> keys() {
        return List.of(new KeyLine("\u2190 \u2192", "another configuration"),
                new KeyLine("Shift+\u2190 \u2192", "another one to hold it against"),
                new KeyLine("\u2191 \u2193", "another picture"), new KeyLine("F", "the whole window, and back"));
    }

    @Override
    public void entered() {
        scroll.requestFocus();
    }
}
