package gripwright.desktop.setup;

import gripwright.desktop.support.ChoiceField;
import gripwright.desktop.support.EntryField;
import gripwright.desktop.support.Place;
import gripwright.desktop.support.PlaceKey;
import gripwright.desktop.support.SectionColumns;
import gripwright.desktop.support.SegmentField;
import gripwright.desktop.support.Sheets;
import gripwright.desktop.support.Words;
import gripwright.desktop.support.Workbench;
import gripwright.model.Handedness;
import gripwright.model.Metric;
import gripwright.model.ReadingSource;
import gripwright.units.Dimension;
import gripwright.units.Unit;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** Setup on one sheet: player, goal, test clubs, the day, readings, units, smallest differences. */
public final class SetupView implements Place {

    private static final double COLUMN = 560;
    private static final int WIDE = 24;

    private final SetupViewModel model;
    private final Node node;
    private final EntryField player;

    public SetupView(Workbench workbench) {
        model = new SetupViewModel(workbench);
        player = new EntryField(model.label()).columns(WIDE).prompt("what the shop calls the player").named("player");
        ClubSection club = new ClubSection(workbench);
        node = Sheets.page(PlaceKey.SETUP, new SectionColumns(COLUMN, player(), new GoalSection(workbench).node(),
                day(), source(), club.node(), club.parts(), club.readings(), new DifferencesSection(workbench).node(),
                units()));
    }

    @Override
    public PlaceKey key() {
        return PlaceKey.SETUP;
    }

    @Override
    public Node node() {
        return node;
    }

    @Override
    public void entered() {
        if (model.isNameless()) {
            player.input().requestFocus();
        }
    }

    private VBox player() {
        GridPane form = Sheets.form(Sheets.FORM_WORD);
        Sheets.line(form, "Player", player);
        Sheets.line(form, "Plays", new SegmentField<>(model.hand(), List.of(Handedness.values()), Handedness::text));
        Sheets.line(form, "Hand length", new EntryField(model.handLength()),
                Sheets.quiet("wrist crease to fingertip"));
        Sheets.line(form, "Longest finger", new EntryField(model.longestFinger()));
        Sheets.line(form, "Glove size", new EntryField(model.gloveSize()).columns(14));
        Sheets.line(form, "Plays now", new EntryField(model.currentGrip()).columns(WIDE)
                .prompt("grip, size, how worn"));
        Sheets.line(form, "Wraps under it", new EntryField(model.currentWraps()),
                Sheets.quiet("the double-sided layer not counted"));
        Sheets.line(form, "Where hands hurt", pain());
        Sheets.line(form, "Note", new EntryField(model.playerNote()).columns(WIDE));
        return Sheets.section("Player", form);
    }

    private VBox pain() {
        EntryField field = new EntryField(model.painSites()).columns(WIDE).prompt("nowhere");
        Label caution = Sheets.hint("Comfort decides before numbers, and the number of swings is kept small. Stop on pain "
                + "and see a clinician.");
        caution.visibleProperty().bind(model.hurts());
        caution.managedProperty().bind(caution.visibleProperty());
        caution.getStyleClass().remove("gw-quiet");
        return new VBox(Sheets.STEP / 2, field,
                Sheets.hint("Private: stays in the session, never on work orders or anonymous copies."), caution);
    }

    private VBox day() {
        GridPane form = Sheets.form(Sheets.FORM_WORD);
        Sheets.line(form, "Day", new EntryField(model.date()).columns(8).named("date"),
                Sheets.quiet("year, month, day"));
        Sheets.line(form, "Ball", new EntryField(model.ball()).columns(WIDE));
        Sheets.line(form, "Glove", new EntryField(model.glove()).columns(WIDE).prompt("new, dry, worn"));
        Sheets.line(form, "Bay and mat", new EntryField(model.place()).columns(WIDE));
        Sheets.line(form, "Note", new EntryField(model.sessionNote()).columns(WIDE));
        return Sheets.section("The day", form);
    }

    private VBox source() {
        GridPane form = Sheets.form(Sheets.FORM_WORD);
        Sheets.line(form, "Readings come from", new EntryField(model.sourceName()).columns(WIDE)
                .prompt("the shop's name for it"));
        Sheets.line(form, "Closure rate about", new ChoiceField<>(model.closureAxis(),
                List.of(ReadingSource.ClosureAxis.values()), SetupView::axis));
        Sheets.line(form, "Modelled readings", modelled());
        return Sheets.section("Readings", form, Sheets.hint("Closure rates about different axes never meet in one "
                + "comparison. Modelled readings are shown, and not scored."));
    }

    private static String axis(ReadingSource.ClosureAxis axis) {
        return switch (axis) {
            case NOT_SAID -> "not said";
            case SHAFT -> "the shaft";
            case TARGET_LINE -> "the target line";
        };
    }

    private MenuButton modelled() {
        MenuButton menu = new MenuButton();
        menu.textProperty().bind(model.modelledText());
        menu.setAccessibleText("Modelled readings");
        for (Metric metric : Metric.values()) {
            var choice = model.modelled(metric);
            CheckMenuItem item = new CheckMenuItem(Words.capitalised(metric.text()));
            choice.kept().subscribe(item::setSelected);
            item.setOnAction(event -> choice.keep().apply(item.isSelected()));
            menu.getItems().add(item);
        }
        return menu;
    }

    private VBox units() {
        Button imperial = new Button("All imperial");
        imperial.setOnAction(event -> model.useImperial());
        imperial.setId("imperial");
        Button metric = new Button("All metric");
        metric.setOnAction(event -> model.useMetric());
        metric.setId("metric");
        GridPane form = Sheets.form(Sheets.FORM_WORD);
        for (Dimension dimension : SetupViewModel.CHOSEN) {
            Sheets.line(form, Words.capitalised(SetupViewModel.text(dimension)), new SegmentField<>(
                    model.unit(dimension), SetupViewModel.units(dimension), Unit::symbol));
        }
        Sheets.line(form, "Decimal mark", new SegmentField<>(model.decimalMark(), List.of('.', ','),
                mark -> mark == '.' ? "12.5" : "12,5"));
        return Sheets.section("Units of the shop", new FlowPane(Sheets.STEP, Sheets.STEP, imperial, metric), form);
    }
}
