package gripwright.desktop.setup;

import gripwright.desktop.support.ChoiceField;
import gripwright.desktop.support.EntryField;
import gripwright.desktop.support.Quantity;
import gripwright.desktop.support.RowGrid;
import gripwright.desktop.support.Sheets;
import gripwright.desktop.support.Words;
import gripwright.desktop.support.Workbench;
import gripwright.model.ClubKind;
import gripwright.model.ClubPart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The test club in view: what it is, its shaft, its parts, and its swingweights off the scale. */
final class ClubSection {

    private static final int NARROW = 4;
    private static final int NOTE = 8;

    private final Workbench workbench;
    private final ClubViewModel model;
    private final PartsViewModel parts;
    private final ScaleReadingsViewModel readings;

    ClubSection(Workbench workbench) {
        this.workbench = workbench;
        model = new ClubViewModel(workbench);
        parts = new PartsViewModel(model.club());
        readings = new ScaleReadingsViewModel(model.club());
    }

    VBox node() {
        GridPane form = Sheets.form(Sheets.FORM_WORD);
        Sheets.line(form, "Club", new EntryField(model.name()).columns(12).named("club-name"),
                new ChoiceField<>(model.kind(), List.of(ClubKind.values()), ClubKind::text).named("club-kind"));
        Sheets.line(form, "Length", new EntryField(model.length()),
                Sheets.quiet("as played, with the grip it came with"));
        Sheets.line(form, "Loft, lie", new HBox(2 * Sheets.STEP, new EntryField(model.loft()),
                new EntryField(model.lie())));
        RowGrid shaft = new RowGrid(List.of());
        model.shaftPlaces().subscribe(places -> showShaft(shaft, places));
        workbench.settings().subscribe(changed -> showShaft(shaft, model.shaftPlaces().getValue()));
        Sheets.line(form, "Shaft", shaft);
        return Sheets.section("Test club", tests(), form,
                Sheets.hint("Diameters of the shaft from the butt end down, tape off. A club can be known from its parts, "
                        + "or from one swingweight read with a weighed grip on."));
    }

    private HBox tests() {
        Button add = new Button("Add a test club");
        add.setId("add-test");
        add.setOnAction(event -> model.addTest());
        model.mayAdd().subscribe(may -> add.setDisable(!may));
        Button remove = new Button("Remove this one");
        remove.setId("remove-test");
        remove.setOnAction(event -> model.removeTest());
        model.mayRemove().subscribe(may -> remove.setDisable(!may));
        return new HBox(Sheets.STEP, add, remove);
    }

    private void showShaft(RowGrid grid, List<Double> places) {
        List<Node> headings = new ArrayList<>();
        List<Node> fields = new ArrayList<>();
        for (double place : places) {
            Label heading = Sheets.hint(model.place(place));
            heading.setWrapText(false);
            headings.add(heading);
            EntryField field = new EntryField(model.shaftDiameter(place)).columns(NARROW).withoutUnit();
            fields.add(field);
        }
        Label unit = Sheets.quiet(workbench.unit(Quantity.DIAMETER));
        unit.getStyleClass().add("gw-form-word");
        fields.add(unit);
        grid.show(List.of(headings, fields));
    }

    VBox parts() {
        RowGrid grid = new RowGrid(List.of("Part", "Mass", "Balances at", "Length", "Own inertia", ""));
        Label problem = problem();
        parts.count().subscribe(count -> showParts(grid, problem));
        return Sheets.section("Parts without the grip", grid, problem, Sheets.hint("Balance points from the shaft's butt "
                + "end. Length blank: a point. Own inertia, kg\u00B7cm\u00B2, about its own balance point; blank: a uniform "
                + "rod."));
    }

    private void showParts(RowGrid grid, Label problem) {
        List<List<Node>> rows = new ArrayList<>();
        for (PartsViewModel.Row row : parts.rows()) {
            rows.add(List.of(new ChoiceField<>(row.kind(), List.of(ClubPart.Kind.values()), Words::of),
                    cell(row.mass()), cell(row.balancePoint()), cell(row.length()),
                    cell(row.ownInertia()), RowGrid.remove(row.what(), row.remove())));
        }
        rows.add(List.of(new ChoiceField<>(parts.draftKind(), List.of(ClubPart.Kind.values()), Words::of),
                draft(parts.draftMass(), problem, true).named("draft-part-mass"),
                draft(parts.draftBalancePoint(), problem, true).named("draft-part-balance"),
                draft(parts.draftLength(), problem, true), add(problem, true)));
        grid.show(rows);
    }

    private EntryField draft(gripwright.desktop.support.Entry entry, Label problem, boolean part) {
        return new EntryField(entry).columns(NARROW).onEnter(() -> say(problem, part ? parts.add() : readings.add()));
    }

    private Button add(Label problem, boolean part) {
        Button add = new Button("Add");
        add.setId(part ? "add-part" : "add-reading");
        add.setMinWidth(Button.USE_PREF_SIZE);
        add.setOnAction(event -> say(problem, part ? parts.add() : readings.add()));
        return add;
    }

    private static void say(Label problem, Optional<String> sentence) {
        problem.setText(sentence.orElse(""));
        problem.setVisible(sentence.isPresent());
        problem.setManaged(sentence.isPresent());
    }

    private static Label problem() {
        Label problem = new Label();
        problem.getStyleClass().add("gw-problem");
        say(problem, Optional.empty());
        return problem;
    }

    private static EntryField cell(gripwright.desktop.support.Entry entry) {
        return new EntryField(entry).columns(NARROW);
    }

    VBox readings() {
        RowGrid grid = new RowGrid(List.of("Swingweight", "Grip and tape", "Whole club", "Balances at", "Note", ""));
        Label problem = problem();
        readings.count().subscribe(count -> showReadings(grid, problem));
        return Sheets.section("Read off the scale", grid, problem, Sheets.hint("Weigh the grip with its tape; 0 for the "
                + "bare club. Whole club and balance point (from the butt end, cap included) may be left blank."));
    }

    private void showReadings(RowGrid grid, Label problem) {
        List<List<Node>> rows = new ArrayList<>();
        for (ScaleReadingsViewModel.Row row : readings.rows()) {
            rows.add(List.of(new EntryField(row.swingweight()).columns(5), cell(row.gripMass()), cell(row.totalMass()),
                    cell(row.balancePoint()), new EntryField(row.note()).columns(NOTE),
                    RowGrid.remove(row.what(), row.remove())));
        }
        rows.add(List.of(draft(readings.draftSwingweight(), problem, false).columns(5).named("draft-reading-swingweight"),
                draft(readings.draftGripMass(), problem, false).named("draft-reading-grip"),
                draft(readings.draftTotalMass(), problem, false), draft(readings.draftBalancePoint(), problem, false),
                add(problem, false)));
        grid.show(rows);
    }
}
