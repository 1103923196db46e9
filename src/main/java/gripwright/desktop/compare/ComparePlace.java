package gripwright.desktop.compare;

import gripwright.charts.Look;
import gripwright.comparison.Comparison;
import gripwright.comparison.MetricComparison;
import gripwright.desktop.support.PlaceKey;
import gripwright.desktop.support.Sheets;
import gripwright.desktop.support.Theme;
import gripwright.desktop.support.TopicPlace;
import gripwright.desktop.support.Workbench;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.ReadingText;
import gripwright.model.ShopSettings;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.util.StringConverter;

/** Compare: a list of topics on the left, the topic in depth on the right. */
public final class ComparePlace extends TopicPlace<Topic> {

    private static final double LIST_WIDTH = 208;

    private final CompareViewModel model;
    private final Workbench workbench;
    private final ComboBox<Configuration> reference = new ComboBox<>();
    private boolean showing;

    public ComparePlace(Workbench workbench) {
        this(workbench, new CompareViewModel(workbench));
    }

    private ComparePlace(Workbench workbench, CompareViewModel model) {
        super(PlaceKey.COMPARE, model.topics(), model.chosen(), Topic::title, Topic::primary, LIST_WIDTH);
        this.workbench = workbench;
        this.model = model;
        buildReference();
        addToHead(Sheets.quiet("Compared with"), reference);
        follow(model.derived());
        model.comparison().subscribe(now -> show());
        model.sensitivity().subscribe(now -> show());
        workbench.settings().subscribe(now -> show());
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

    @Override
    protected void show() {
        Topic topic = model.chosen().get();
        if (!model.hasShots() || topic == null) {
            showInstead(empty());
        } else {
            showSheet(content(model.comparison().get(), topic));
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
        if (model.comparison().get() == null && model.derived().computing().get()) {
            return Sheets.page(PlaceKey.COMPARE, Sheets.quiet("Working it out \u2026"));
        }
        boolean nothingTried = workbench.test().get().configurations().isEmpty();
        PlaceKey next = nothingTried ? PlaceKey.PLAN : PlaceKey.BAY;
        Button go = new Button("Go to " + next.title());
        go.setOnAction(event -> workbench.place().set(next));
        return Sheets.page(PlaceKey.COMPARE, Sheets.empty(
                "Here every metric will stand by configuration, with what may be said of it and what may not.",
                nothingTried ? "Choose the grips to try in Plan." : "Record the first scored shots in Bay.", go));
    }
}
