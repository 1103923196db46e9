package gripwright.desktop.setup;

import gripwright.desktop.support.Draft;
import gripwright.desktop.support.NumberEntry;
import gripwright.desktop.support.Quantity;
import gripwright.desktop.support.Subject;
import gripwright.desktop.support.SwingweightText;
import gripwright.desktop.support.TextEntry;
import gripwright.model.ClubReading;
import gripwright.model.TestClub;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;

/** Swingweights read off the scale with weighed grips on: one row each, and a draft of the next one. */
public final class ScaleReadingsViewModel {

    private final Subject<TestClub> club;
    private final Draft draft;

    ScaleReadingsViewModel(Subject<TestClub> club) {
        this.club = club;
        draft = new Draft(club.workbench());
    }

    /** One reading as fields. */
    record Row(TextEntry swingweight, NumberEntry gripMass, NumberEntry totalMass, NumberEntry balancePoint,
            TextEntry note, Runnable remove, String what) {
    }

    ObservableValue<Integer> count() {
        return club.value().map(now -> now.readings().size());
    }

    List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (int index = 0; index < club.get().readings().size(); index++) {
            rows.add(row(index));
        }
        return rows;
    }

    private Row row(int index) {
        Subject<ClubReading> reading = club.element(index, TestClub::readings, TestClub::withReadings);
        String what = "reading " + (index + 1);
        return new Row(
                reading.text("swingweight of " + what, now -> now.swingweight().text(),
                        (now, text) -> now.withSwingweight(SwingweightText.needed(text))),
                reading.needed("mass of the grip of " + what, Quantity.MASS, ClubReading::gripMassGrams,
                        ClubReading::withGripMassGrams),
                reading.number("mass of the whole club of " + what, Quantity.MASS, ClubReading::totalMassGrams,
                        ClubReading::withTotalMassGrams),
                reading.number("balance point of " + what, Quantity.LENGTH, ClubReading::balancePointMm,
                        ClubReading::withBalancePointMm),
                reading.text("note on " + what, ClubReading::note, ClubReading::withNote),
                () -> remove(index, what), "Remove " + what);
    }

    private void remove(int index, String what) {
        club.editOrSay("Remove " + what, now -> {
            List<ClubReading> readings = new ArrayList<>(now.readings());
            readings.remove(index);
            return now.withReadings(readings);
        });
    }

    TextEntry draftSwingweight() {
        return draft.text("swingweight", SwingweightText::problem);
    }

    NumberEntry draftGripMass() {
        return draft.number("mass of the grip", Quantity.MASS);
    }

    NumberEntry draftTotalMass() {
        return draft.number("mass of the whole club", Quantity.MASS);
    }

    NumberEntry draftBalancePoint() {
        return draft.number("balance point", Quantity.LENGTH);
    }

    /** Adds the drafted reading once its swingweight and the mass of the grip are there. */
    Optional<String> add() {
        Optional<String> missing = draft.missing("swingweight", "mass of the grip");
        if (missing.isPresent()) {
            return missing;
        }
        Optional<String> refused = club.edit("Add a reading off the scale", now -> {
            List<ClubReading> readings = new ArrayList<>(now.readings());
            readings.add(new ClubReading(SwingweightText.needed(draft.text("swingweight")),
                    draft.value("mass of the grip"), draft.value("mass of the whole club"),
                    draft.value("balance point"), null, ""));
            return now.withReadings(readings);
        });
        if (refused.isEmpty()) {
            draft.clear();
        }
        return refused;
    }
}
