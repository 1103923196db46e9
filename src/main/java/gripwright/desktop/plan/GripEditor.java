package gripwright.desktop.plan;

import gripwright.desktop.support.ChoiceField;
import gripwright.desktop.support.EntryField;
import gripwright.desktop.support.NumberEntry;
import gripwright.desktop.support.Quantity;
import gripwright.desktop.support.RowGrid;
import gripwright.desktop.support.Sheets;
import gripwright.desktop.support.Subject;
import gripwright.desktop.support.SwitchField;
import gripwright.desktop.support.Words;
import gripwright.desktop.support.Workbench;
import gripwright.model.Diameter;
import gripwright.model.Firmness;
import gripwright.model.Grip;
import gripwright.model.GripCondition;
import gripwright.model.Texture;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** Every field of one grip of the stock list. */
final class GripEditor {

    private static final int WIDE = 24;
    private static final int NARROW = 4;
    private static final double SAME_PLACE_MM = 0.5;

    private final Workbench workbench;
    private final Subject<Grip> grip;

    GripEditor(Workbench workbench, Subject<Grip> grip) {
        this.workbench = workbench;
        this.grip = grip;
    }

    VBox node() {
        GridPane form = Sheets.form();
        Sheets.line(form, "Name", new EntryField(grip.text("name of the grip", Grip::name, Grip::withName))
                .columns(WIDE).named("grip-name"));
        Sheets.line(form, "Size on the label", new EntryField(grip.text("size on the label", Grip::sizeName,
                Grip::withSizeName)).columns(10), Sheets.quiet("core"), new EntryField(grip.number("core",
                Quantity.DIAMETER, Grip::coreMm, Grip::withCoreMm)).columns(NARROW));
        Sheets.line(form, "Mass weighed", new EntryField(grip.number("mass off the scale", Quantity.MASS,
                Grip::measuredMassGrams, Grip::withMeasuredMassGrams)).columns(NARROW).named("grip-mass"),
                Sheets.quiet("on the label"), new EntryField(grip.number("mass on the label", Quantity.MASS,
                Grip::nominalMassGrams, Grip::withNominalMassGrams)).columns(NARROW));
        Sheets.line(form, "Length", new EntryField(grip.needed("length of the grip", Quantity.LENGTH, Grip::lengthMm,
                Grip::withLengthMm)).columns(NARROW), Sheets.quiet("cap"), new EntryField(grip.needed("cap thickness",
                Quantity.DIAMETER, Grip::capThicknessMm, Grip::withCapThicknessMm)).columns(NARROW));
        Sheets.line(form, "Balances at", new EntryField(grip.number("balance point of the grip", Quantity.LENGTH,
                Grip::balancePointMm, Grip::withBalancePointMm)).columns(NARROW),
                Sheets.quiet("from the cap's face; blank: as usual"));
        Sheets.line(form, "Outside", diameters());
        Sheets.line(form, "Feels", new ChoiceField<>(grip.choice("firmness", Grip::firmness, Grip::withFirmness),
                withNull(Firmness.values()), Words::orNotSaid), new ChoiceField<>(grip.choice("texture",
                Grip::texture, Grip::withTexture), withNull(Texture.values()), Words::orNotSaid),
                new SwitchField("ribbed", grip.choice("rib", Grip::ribbed, Grip::withRibbed)));
        Sheets.line(form, "Condition", new ChoiceField<>(grip.choice("condition", Grip::condition,
                Grip::withCondition), List.of(GripCondition.values()), Words::of), new SwitchField("the player's own",
                grip.choice("whose it is", Grip::playersOwn, Grip::withPlayersOwn)));
        Sheets.line(form, "Price", new EntryField(grip.number("price", Quantity.PLAIN, Grip::price, Grip::withPrice))
                .columns(NARROW), Sheets.quiet("in stock"), new EntryField(grip.optionalCount("pieces in stock",
                Grip::inStock, Grip::withInStock)).columns(3));
        Sheets.line(form, "Transfer", new EntryField(grip.number("transfer factor", Quantity.RATIO,
                Grip::transferFactor, Grip::withTransferFactor)).columns(NARROW),
                Sheets.quiet("0 to 1; blank: the shop's"));
        return new VBox(form);
    }

    private static <E> List<E> withNull(E[] values) {
        List<E> all = new ArrayList<>();
        all.add(null);
        all.addAll(Arrays.asList(values));
        return all;
    }

    private Node diameters() {
        MatrixFigures figures = new MatrixFigures(workbench);
        RowGrid grid = new RowGrid(List.of());
        List<Node> headings = new ArrayList<>();
        List<Node> fields = new ArrayList<>();
        for (double place : workbench.settings().get().rulerPositionsMm()) {
            Label heading = Sheets.hint(figures.place(place));
            heading.setWrapText(false);
            headings.add(heading);
            fields.add(new EntryField(diameter(place)).columns(NARROW).withoutUnit());
        }
        Label unit = Sheets.quiet(workbench.unit(Quantity.DIAMETER));
        unit.getStyleClass().add("gw-form-word");
        fields.add(unit);
        grid.show(List.of(headings, fields));
        return grid;
    }

    private NumberEntry diameter(double placeMm) {
        return grip.number("outside diameter of the grip", Quantity.DIAMETER,
                now -> now.diameters().stream().filter(d -> same(d, placeMm)).findFirst().map(Diameter::diameterMm)
                        .orElse(null),
                (now, diameter) -> {
                    List<Diameter> changed = new ArrayList<>(now.diameters());
                    changed.removeIf(d -> same(d, placeMm));
                    if (diameter != null) {
                        changed.add(new Diameter(placeMm, diameter));
                    }
                    changed.sort(Comparator.comparingDouble(Diameter::positionMm));
                    return now.withDiameters(changed);
                });
    }

    private static boolean same(Diameter diameter, double placeMm) {
        return Math.abs(diameter.positionMm() - placeMm) < SAME_PLACE_MM;
    }
}
