package gripwright.desktop.plan;

import gripwright.desktop.support.Choice;
import gripwright.desktop.support.Draft;
import gripwright.desktop.support.NumberEntry;
import gripwright.desktop.support.Quantity;
import gripwright.desktop.support.ShopEdit;
import gripwright.desktop.support.Subject;
import gripwright.desktop.support.TextEntry;
import gripwright.desktop.support.Workbench;
import gripwright.model.Grip;
import gripwright.model.GripCondition;
import gripwright.model.Stock;
import gripwright.model.Tape;
import gripwright.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;

/** The shop's stock list: grips and tapes, added, copied, removed; the grip that is chosen is edited beside. */
public final class StockViewModel {

    private final Workbench workbench;
    private final Subject<Stock> stock;
    private final ObjectProperty<String> chosen = new SimpleObjectProperty<>();
    private final Draft draft;

    StockViewModel(Workbench workbench) {
        this.workbench = workbench;
        stock = Subject.stock(workbench);
        draft = new Draft(workbench);
    }

    /** One tape as fields. */
    record TapeRow(TextEntry name, NumberEntry perWrap, NumberEntry arealMass, Choice<Boolean> doubleSided,
            Runnable remove, String what) {
    }

    ObservableValue<List<Grip>> grips() {
        return stock.value().map(Stock::grips);
    }

    /** Identity of the grip that is edited; null for none. */
    ObjectProperty<String> chosen() {
        return chosen;
    }

    /** The place of the chosen grip in the list; −1 for none. */
    ObservableValue<Integer> chosenIndex() {
        return chosen.flatMap(id -> stock.value().map(now -> indexOf(now, id))).orElse(-1);
    }

    private static int indexOf(Stock now, String id) {
        return now.grips().stream().map(Grip::id).toList().indexOf(id);
    }

    Subject<Grip> grip(int index) {
        return stock.element(index, Stock::grips, Stock::withGrips);
    }

    // ---- what the table shows -----------------------------------------------------------------------------------

    String size(Grip grip) {
        return grip.diameters().stream()
                .filter(d -> Math.abs(d.positionMm() - workbench.settings().get().balance().sizePositionMm()) < 0.5)
                .findFirst().map(d -> workbench.numbers().format(diameterUnit().fromInternal(d.diameterMm()),
                        Quantity.DIAMETER.decimals(diameterUnit()))).orElse("");
    }

    /** The mass off the scale; one that is only the label's says so. */
    String mass(Grip grip) {
        if (grip.measuredMassGrams() != null) {
            return number(Quantity.MASS, grip.measuredMassGrams());
        }
        return grip.nominalMassGrams() == null ? "" : "label " + number(Quantity.MASS, grip.nominalMassGrams());
    }

    private String number(Quantity quantity, double internal) {
        return workbench.style(quantity).getValue().write(internal);
    }

    private Unit diameterUnit() {
        return workbench.settings().get().units().of(Quantity.DIAMETER.dimension());
    }

    String sizeHeading() {
        Unit unit = diameterUnit();
        double place = workbench.settings().get().balance().sizePositionMm();
        return "\u00D8 at " + new gripwright.desktop.support.NumberStyle(workbench.numbers(), unit, 0, 1).write(place)
                + " " + unit.symbol();
    }

    String massHeading() {
        return "Mass, " + workbench.unit(Quantity.MASS);
    }

    // ---- what is done -------------------------------------------------------------------------------------------

    TextEntry draftName() {
        return draft.text("name of the grip", text -> Optional.empty());
    }

    /** Adds a grip of the drafted name and chooses it; everything else of it is still blank or usual. */
    Optional<String> addGrip() {
        Optional<String> missing = draft.missing("name of the grip");
        if (missing.isPresent()) {
            return missing;
        }
        String name = draft.text("name of the grip");
        String id = freshId("grip", stock.get().grips().stream().map(Grip::id));
        Grip grip = Grip.weighed(id, name, 1).withMeasuredMassGrams(null);
        Optional<String> refused = addGrip("Add '" + name + "' to the stock list", grip);
        if (refused.isEmpty()) {
            draft.clear();
        }
        return refused;
    }

    /** Adds a copy of the chosen grip, fresh and of the shop, for one that differs in a little. */
    void copyGrip() {
        int index = chosenIndex().getValue();
        if (index >= 0) {
            Grip like = stock.get().grips().get(index);
            String id = freshId("grip", stock.get().grips().stream().map(Grip::id));
            addGrip("Copy '" + like.name() + "'", like.withId(id).withName(like.name() + ", copy")
                    .withCondition(GripCondition.FRESH).withPlayersOwn(false).withMeasuredMassGrams(null));
        }
    }

    private Optional<String> addGrip(String label, Grip grip) {
        Optional<String> refused = workbench.apply(ShopEdit.stock(label, now -> {
            List<Grip> grips = new ArrayList<>(now.grips());
            grips.add(grip);
            return now.withGrips(grips);
        }));
        if (refused.isEmpty()) {
            chosen.set(grip.id());
        }
        return refused;
    }

    /** Takes the chosen grip off the list; tests that use it keep it as it was. */
    void removeGrip() {
        int index = chosenIndex().getValue();
        if (index >= 0) {
            Grip gone = stock.get().grips().get(index);
            stock.editOrSay("Remove '" + gone.name() + "' from the stock list", now -> now.withGrips(
                    now.grips().stream().filter(grip -> !grip.id().equals(gone.id())).toList()));
            chosen.set(null);
        }
    }

    ObservableValue<Integer> tapeCount() {
        return stock.value().map(now -> now.tapes().size());
    }

    List<TapeRow> tapes() {
        List<TapeRow> rows = new ArrayList<>();
        for (int index = 0; index < stock.get().tapes().size(); index++) {
            Subject<Tape> tape = stock.element(index, Stock::tapes, Stock::withTapes);
            String id = tape.get().id();
            String what = "Remove '" + tape.get().name() + "'";
            rows.add(new TapeRow(tape.text("name of a tape", Tape::name, Tape::withName),
                    tape.needed("build-up per wrap", Quantity.DIAMETER, Tape::perWrapMm, Tape::withPerWrapMm),
                    tape.needed("mass by area of a tape", Quantity.PLAIN, Tape::arealMassGramsPerSquareMetre,
                            Tape::withArealMassGramsPerSquareMetre),
                    tape.choice("double-sided", Tape::doubleSided, Tape::withDoubleSided),
                    () -> stock.editOrSay(what, now -> now.withTapes(
                            now.tapes().stream().filter(one -> !one.id().equals(id)).toList())), what));
        }
        return rows;
    }

    TextEntry draftTapeName() {
        return draft.text("name of the tape", text -> Optional.empty());
    }

    NumberEntry draftPerWrap() {
        return draft.number("build-up per wrap", Quantity.DIAMETER);
    }

    NumberEntry draftArealMass() {
        return draft.number("mass by area", Quantity.PLAIN);
    }

    /** Adds the drafted tape once its name, build-up and mass by area are there. */
    Optional<String> addTape() {
        Optional<String> missing = draft.missing("name of the tape", "build-up per wrap", "mass by area");
        if (missing.isPresent()) {
            return missing;
        }
        String id = freshId("tape", stock.get().tapes().stream().map(Tape::id));
        Tape tape = new Tape(id, draft.text("name of the tape"), draft.value("build-up per wrap"),
                draft.value("mass by area"), false, "");
        Optional<String> refused = stock.edit("Add '" + tape.name() + "'", now -> {
            List<Tape> tapes = new ArrayList<>(now.tapes());
            tapes.add(tape);
            return now.withTapes(tapes);
        });
        if (refused.isEmpty()) {
            draft.clear();
        }
        return refused;
    }

    private static String freshId(String kind, Stream<String> taken) {
        List<String> ids = taken.toList();
        int number = ids.size() + 1;
        while (ids.contains(kind + "-" + number)) {
            number++;
        }
        return kind + "-" + number;
    }
}
