package gripwright.desktop.balance;

import gripwright.desktop.support.Place;
import gripwright.desktop.support.PlaceKey;
import gripwright.desktop.support.Sheets;
import gripwright.desktop.support.Theme;
import gripwright.desktop.support.Workbench;
import gripwright.model.ShopSettings;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Balance: a list of sheets on the left, the sheet on the right. */
public final class BalancePlace implements Place {

    private static final double LIST_WIDTH = 184;

    private final BalanceViewModel model;
    private final Workbench workbench;
    private final BorderPane root = new BorderPane();
    private final ListView<Topic> list = new ListView<>();
    private final VBox sheet = new VBox();
    private final ScrollPane scroll;
    private final Map<Topic, Node> kept = new EnumMap<>(Topic.class);
    private final Label state = Sheets.quiet("");
    private LeverSheet lever;
    private BackwardsSheet backwards;

    public BalancePlace(Workbench workbench) {
        this.workbench = workbench;
        this.model = new BalanceViewModel(workbench);
        root.getStyleClass().add("gw-page");
        sheet.setPadding(new Insets(2 * Sheets.STEP, 3 * Sheets.STEP, 4 * Sheets.STEP, 3 * Sheets.STEP));
        scroll = Sheets.scrolling(sheet);
        buildList();
        HBox head = Sheets.pageHead(PlaceKey.BALANCE);
        head.getChildren().addAll(Sheets.spring(), state);
        head.setPadding(new Insets(2 * Sheets.STEP, 4 * Sheets.STEP, Sheets.STEP, 4 * Sheets.STEP));
        root.setTop(head);
        model.topic().subscribe(topic -> {
            list.getSelectionModel().select(topic);
            show();
            scroll.setVvalue(0);
        });
        model.tested().subscribe(now -> show());
        workbench.settings().subscribe(now -> show());
        model.derived().computing().subscribe(busy -> state.setText(busy ? "working it out \u2026" : ""));
        model.derived().problem().subscribe(problem -> show());
    }

    private void buildList() {
        list.getItems().setAll(Topic.values());
        list.setPrefWidth(LIST_WIDTH);
        list.setMinWidth(LIST_WIDTH);
        list.setAccessibleText("what to look at");
        list.getStyleClass().add("gw-topics");
        list.setCellFactory(view -> new ListCell<>() {
            @Override
            protected void updateItem(Topic topic, boolean empty) {
                super.updateItem(topic, empty);
                setText(empty || topic == null ? "" : topic.title());
            }
        });
        list.getSelectionModel().selectedItemProperty().addListener((observed, before, now) -> {
            if (now != null) {
                model.topic().set(now);
            }
        });
    }

    private void show() {
        boolean set = model.topic().get() == Topic.SET;
        if (!model.hasConfigurations() && !set) {
            root.setLeft(list);
            root.setCenter(padded(empty()));
            return;
        }
        root.setLeft(list);
        root.setCenter(scroll);
        Node content = content();
        if (!sheet.getChildren().equals(List.of(content))) {
            sheet.getChildren().setAll(content);
        }
    }

    private Node content() {
        String problem = model.derived().problem().get();
        if (!problem.isBlank()) {
            return Sheets.text(problem);
        }
        return switch (model.topic().get()) {
            case LEVER -> kept.computeIfAbsent(Topic.LEVER, topic -> {
                lever = new LeverSheet(model);
                return lever.node();
            });
            case BACKWARDS -> kept.computeIfAbsent(Topic.BACKWARDS, topic -> {
                backwards = new BackwardsSheet(model);
                return backwards.node();
            });
            case SET -> kept.computeIfAbsent(Topic.SET, topic -> new SetSheet(model).node());
            default -> read();
        };
    }

    /** The sheets that are only read are made anew with each result. */
    private Node read() {
        if (model.tested().get() == null) {
            return Sheets.quiet("");
        }
        ShopSettings settings = workbench.settings().get();
        OtherSheets sheets = new OtherSheets(workbench.test().get(), model.tested().get(), settings,
                Theme.pictures(settings.dark(), Theme.BODY_SIZE));
        return switch (model.topic().get()) {
            case READINGS -> sheets.readings();
            case BALLAST -> sheets.ballast();
            default -> sheets.shapes();
        };
    }

    private static Node padded(Node content) {
        VBox box = new VBox(content);
        box.setPadding(new Insets(Sheets.STEP, 4 * Sheets.STEP, 4 * Sheets.STEP, 3 * Sheets.STEP));
        return box;
    }

    private Node empty() {
        Button toPlan = new Button("Go to Plan");
        toPlan.setOnAction(event -> workbench.place().set(PlaceKey.PLAN));
        return Sheets.empty("Here the club will lie as a lever: where its parts are, where it balances, and how each grip"
                + " moves that.", "Choose the grips to try in Plan, and write down the club in Setup.", toPlan);
    }

    @Override
    public PlaceKey key() {
        return PlaceKey.BALANCE;
    }

    @Override
    public Node node() {
        return root;
    }

    @Override
    public List<KeyLine> keys() {
        return List.of(new KeyLine("\u2191 \u2193", "another sheet"), new KeyLine("Ctrl+C", "copy the table"));
    }

    @Override
    public void entered() {
        list.requestFocus();
    }
}
