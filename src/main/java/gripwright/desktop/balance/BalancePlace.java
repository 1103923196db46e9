package gripwright.desktop.balance;

import gripwright.desktop.support.PlaceKey;
import gripwright.desktop.support.Sheets;
import gripwright.desktop.support.Theme;
import gripwright.desktop.support.TopicPlace;
import gripwright.desktop.support.Workbench;
import gripwright.model.ShopSettings;
import java.util.EnumMap;
import java.util.Map;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.Button;

/** Balance: a list of sheets on the left, the sheet on the right. */
public final class BalancePlace extends TopicPlace<Topic> {

    private static final double LIST_WIDTH = 184;

    private final BalanceViewModel model;
    private final Workbench workbench;
    private final Map<Topic, Node> kept = new EnumMap<>(Topic.class);

    public BalancePlace(Workbench workbench) {
        this(workbench, new BalanceViewModel(workbench));
    }

    private BalancePlace(Workbench workbench, BalanceViewModel model) {
        super(PlaceKey.BALANCE, FXCollections.observableArrayList(Topic.values()), model.topic(), Topic::title,
                topic -> false, LIST_WIDTH);
        this.workbench = workbench;
        this.model = model;
        follow(model.derived());
        model.tested().subscribe(now -> show());
        workbench.settings().subscribe(now -> show());
    }

    @Override
    protected void show() {
        if (!model.hasConfigurations() && model.topic().get() != Topic.SET) {
            showBesideList(empty());
        } else {
            showSheet(content());
        }
    }

    private Node content() {
        String problem = model.derived().problem().get();
        if (!problem.isBlank()) {
            return Sheets.text(problem);
        }
        return switch (model.topic().get()) {
            case LEVER -> kept.computeIfAbsent(Topic.LEVER, topic -> new LeverSheet(model).node());
            case BACKWARDS -> kept.computeIfAbsent(Topic.BACKWARDS, topic -> new BackwardsSheet(model).node());
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

    private Node empty() {
        Button toPlan = new Button("Go to Plan");
        toPlan.setOnAction(event -> workbench.place().set(PlaceKey.PLAN));
        return Sheets.empty("Here the club will lie as a lever: where its parts are, where it balances, and how each grip"
                + " moves that.", "Choose the grips to try in Plan, and write down the club in Setup.", toPlan);
    }
}
