package gripwright.desktop.compare;

import gripwright.charts.Look;
import gripwright.comparison.Comparison;
import gripwright.comparison.MetricComparison;
import gripwright.desktop.support.Place;
import gripwright.desktop.support.PlaceKey;
import gripwright.desktop.support.Sheets;
import gripwright.desktop.support.Theme;
import gripwright.desktop.support.Workbench;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.ReadingText;
import gripwright.model.ShopSettings;
import java.util.List;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** Compare: a list of topics on the left, the topic in depth on the right. */
public final class ComparePlace implements Place {

    private static final double LIST_WIDTH = 208;

    private final CompareViewModel model;
    private final Workbench workbench;
    private final BorderPane root = new BorderPane();
    private final ListView<Topic> list = new ListView<>();
    private final VBox sheet = new VBox(2 * Sheets.STEP);
    private final ScrollPane scroll;
    private final ComboBox<Configuration> reference = new ComboBox<>();
    private final Label state = Sheets.quiet("");
    private boolean showing;

    public ComparePlace(Workbench workbench) {
        this.workbench = workbench;
        this.model = new CompareViewModel(workbench);
        root.getStyleClass().add("gw-page");
        sheet.setPadding(new Insets(2 * Sheets.STEP, 4 * Sheets.STEP, 4 * Sheets.STEP, 3 * Sheets.STEP));
        scroll = Sheets.scrolling(sheet);
        buildList();
        buildReference();
        model.comparison().subscribe(now -> show());
        model.chosen().subscribe(now -> {
            list.getSelectionModel().select(now);
            show();
            scroll.setVvalue(0);
        });
        model.sensitivity().subscribe(now -> show());
        workbench.settings().subscribe(now -> show());
        model.derived().computing().subscribe(busy -> state.setText(busy ? "working it out \u2026" : ""));
        model.derived().problem().subscribe(problem -> show());
    }

    private void buildList() {
        list.setItems(model.topics());
        list.setPrefWidth(LIST_WIDTH);
        list.setMinWidth(LIST_WIDTH);
        list.setFixedCellSize(4 * Sheets.STEP);
        list.setAccessibleText("what to look at");
        list.getStyleClass().add("gw-topics");
        list.setCellFactory(view -> new ListCell<>() {
            @Override
            protected void updateItem(Topic topic, boolean empty) {
                super.updateItem(topic, empty);
                setText(empty || topic == null ? "" : topic.title());
                setStyle(!empty && topic != null && topic.primary() ? "-fx-font-weight: bold;" : "");
            }
        });
        list.getSelectionModel().selectedItemProperty().addListener((observed, before, now) -> {
            if (now != null) {
                model.chosen().set(now);
            }
        });
    }

    private void buildReference() {
        reference.setAccessibleText("configuration to compare with");
        reference.setConverter(new StringConverter<>() {
            @Override
            public String toString(Configuration configuration) {
                return configuration == null ? "" : configuration.label() + "  " + configuration.grip().name();
            }

            @Override
            public Configuration fromString(String typed) {
                return null;
            }
        });
        reference.valueProperty().addListener((observed, before, now) -> {
            if (!showing && now != null) {
                model.setReference(now);
            }
        });
        workbench.test().subscribe(this::showReference);
    }

    private void showReference(ClubTest test) {
        showing = true;
        reference.getItems().setAll(test.configurations());
        reference.setValue(test.reference().orElse(null));
        showing = false;
    }

    private void show() {
        Comparison comparison = model.comparison().get();
        if (!model.hasShots()) {
            root.setLeft(null);
            root.setTop(null);
            root.setCenter(empty());
            return;
        }
        HBox head = Sheets.pageHead(PlaceKey.COMPARE);
        head.getChildren().addAll(Sheets.spring(), state, Sheets.quiet("compared with"), reference);
        head.setAlignment(Pos.CENTER_LEFT);
        head.setPadding(new Insets(2 * Sheets.STEP, 4 * Sheets.STEP, Sheets.STEP, 4 * Sheets.STEP));
        root.setTop(head);
        root.setLeft(list);
        root.setCenter(scroll);
        Topic topic = model.chosen().get();
        if (topic != null) {
            sheet.getChildren().setAll(content(comparison, topic));
        }
    }

    private Node content(Comparison comparison, Topic topic) {
        ShopSettings shop = workbench.settings().get();
        ClubTest test = workbench.test().get();
        ReadingText text = ReadingText.of(shop, comparison.hand());
        Look look = Theme.pictures(shop.dark(), Theme.BODY_SIZE);
        OtherSheets others = new OtherSheets(test, comparison, text, look);
        MetricComparison metric = model.metric();
        return switch (topic.kind()) {
            case OVERALL -> new OverallSheet(model, test, comparison, text, look).node();
            case METRIC -> metric == null ? Sheets.quiet("Not read in this test.")
                    : new MetricSheet(test, comparison, metric, text, look).node();
            case PATTERNS -> others.patterns();
            case SPREAD -> others.spread();
            case SIZE -> others.size();
            case FEEL -> others.feel();
            case MISHITS -> others.mishits(model);
            case OTHERWISE -> others.otherwise(model);
        };
    }

    private Node empty() {
        String problem = model.derived().problem().get();
        if (!problem.isBlank()) {
            return Sheets.page(PlaceKey.COMPARE, Sheets.text(problem));
        }
        Button toBay = new Button("Go to Bay");
        toBay.setOnAction(event -> workbench.place().set(PlaceKey.BAY));
        return Sheets.page(PlaceKey.COMPARE, Sheets.empty(
                "Here every metric will stand by configuration, with what may be said of it and what may not.",
                "Record the first scored shots in Bay.", toBay));
    }

    @Override
    public PlaceKey key() {
        return PlaceKey.COMPARE;
    }

    @Override
    public Node node() {
        return root;
    }

    @Override
    public List<KeyLine> keys() {
        return List.of(new KeyLine("\u2191 \u2193", "another topic"), new KeyLine("Ctrl+C", "copy the table"));
    }

    @Override
    public void entered() {
        if (model.hasShots()) {
            list.requestFocus();
        }
    }
}
