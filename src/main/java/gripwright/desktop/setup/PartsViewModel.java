package gripwright.desktop.setup;

import gripwright.desktop.support.Choice;
import gripwright.desktop.support.Draft;
import gripwright.desktop.support.NumberEntry;
import gripwright.desktop.support.Quantity;
import gripwright.desktop.support.Subject;
import gripwright.desktop.support.Words;
import gripwright.model.ClubPart;
import gripwright.model.TestClub;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;

/** The parts of the test club without its grip: one row each, and a draft of the next one. */
public final class PartsViewModel {

    private final Subject<TestClub> club;
    private final ObjectProperty<ClubPart.Kind> draftKind = new SimpleObjectProperty<>(ClubPart.Kind.HEAD);
    private final Draft draft;

    PartsViewModel(Subject<TestClub> club) {
        this.club = club;
        draft = new Draft(club.workbench());
    }

    /** One part as fields. */
    record Row(Choice<ClubPart.Kind> kind, NumberEntry mass, NumberEntry balancePoint,
            NumberEntry length, NumberEntry ownInertia, Runnable remove, String what) {
    }

    /** How many parts there are; rows are made anew when it changes. */
    ObservableValue<Integer> count() {
        return club.value().map(now -> now.parts().size());
    }

    List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (int index = 0; index < club.get().parts().size(); index++) {
            rows.add(row(index));
        }
        return rows;
    }

    private Row row(int index) {
        Subject<ClubPart> part = club.element(index, TestClub::parts, TestClub::withParts);
        String what = Words.of(part.get().kind());
        return new Row(part.choice("kind of part", ClubPart::kind, ClubPart::withKind),
                part.needed("mass of the " + what, Quantity.MASS, ClubPart::massGrams, ClubPart::withMassGrams),
                part.needed("balance point of the " + what, Quantity.LENGTH, ClubPart::balancePointMm,
                        ClubPart::withBalancePointMm),
                part.needed("length of the " + what, Quantity.LENGTH, ClubPart::lengthMm, ClubPart::withLengthMm),
                part.number("own inertia of the " + what, Quantity.PLAIN, ClubPart::ownInertiaKgCm2,
                        ClubPart::withOwnInertiaKgCm2),
                () -> remove(index, what), "Remove the " + what);
    }

    private void remove(int index, String what) {
        club.editOrSay("Remove the " + what, now -> {
            List<ClubPart> parts = new ArrayList<>(now.parts());
            parts.remove(index);
            return now.withParts(parts);
        });
    }

    Choice<ClubPart.Kind> draftKind() {
        return new Choice<>("kind of the next part", draftKind, kind -> {
            draftKind.set(kind);
            return Optional.empty();
        });
    }

    NumberEntry draftMass() {
        return draft.number("mass", Quantity.MASS);
    }

    NumberEntry draftBalancePoint() {
        return draft.number("balance point", Quantity.LENGTH);
    }

    NumberEntry draftLength() {
        return draft.number("length", Quantity.LENGTH);
    }

    /** Adds the drafted part once its mass and balance point are there; a length left blank makes it a point. */
    Optional<String> add() {
        Optional<String> missing = draft.missing("mass", "balance point");
        if (missing.isPresent()) {
            return missing;
        }
        double length = draft.value("length") == null ? 0 : draft.value("length");
        ClubPart.Kind kind = draftKind.get();
        Optional<String> refused = club.edit("Add the " + Words.of(kind), now -> {
            List<ClubPart> parts = new ArrayList<>(now.parts());
            parts.add(new ClubPart(kind, "", draft.value("mass"), draft.value("balance point"), length, null));
            return now.withParts(parts);
        });
        if (refused.isEmpty()) {
            draft.clear();
            draftKind.set(nextKind());
        }
        return refused;
    }

    private ClubPart.Kind nextKind() {
        List<ClubPart.Kind> there = club.get().parts().stream().map(ClubPart::kind).toList();
        for (ClubPart.Kind kind : List.of(ClubPart.Kind.HEAD, ClubPart.Kind.SHAFT, ClubPart.Kind.FERRULE)) {
            if (!there.contains(kind)) {
                return kind;
            }
        }
        return ClubPart.Kind.OTHER;
    }
}
