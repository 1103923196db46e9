package gripwright.desktop.bay;

import gripwright.desktop.support.Choice;
import gripwright.desktop.support.Entry;
import gripwright.desktop.support.NumberEntry;
import gripwright.desktop.support.Quantity;
import gripwright.desktop.support.TextEntry;
import gripwright.desktop.support.Workbench;
import gripwright.model.ClubTest;
import gripwright.model.PhysicalClub;
import gripwright.model.Stint;
import gripwright.units.Swingweight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javafx.beans.value.ObservableValue;

/** What is typed at the end of a stint: a word of the player's, hands, pressure, swingweight; and which club it was. */
public final class FeelDetails {

    private final BayViewModel bay;
    private final Workbench workbench;
    private final TextEntry word;
    private final NumberEntry chokedDown;
    private final NumberEntry pressure;
    private final TextEntry swingweight;
    private final Choice<String> physicalClub;

    FeelDetails(BayViewModel bay, Workbench workbench) {
        this.bay = bay;
        this.workbench = workbench;
        word = new TextEntry("word of the player's", of(stint -> stint.feel().word()),
                typed -> edit("the player's word", stint -> stint.withFeel(stint.feel().withWord(typed))));
        chokedDown = number("hands down the grip by", Quantity.LENGTH, Stint::chokedDownMm, Stint::withChokedDownMm);
        pressure = number("grip pressure", Quantity.COUNT, Stint::gripPressurePercent,
                Stint::withGripPressurePercent);
        swingweight = new TextEntry("swingweight read",
                of(stint -> stint.swingweightRead() == null ? "" : stint.swingweightRead().text()), this::readSwingweight);
        physicalClub = new Choice<>("physical club", of(Stint::physicalClubId),
                chosen -> edit("the physical club", stint -> stint.withPhysicalClubId(chosen)));
    }

    /** A word of the player's. */
    public TextEntry word() {
        return word;
    }

    /** How far down the hands were. */
    public NumberEntry chokedDown() {
        return chokedDown;
    }

    /** Mean grip pressure in % of the player's maximum, where a gauge is at hand. */
    public NumberEntry pressure() {
        return pressure;
    }

    /** Swingweight off the scale. */
    public TextEntry swingweight() {
        return swingweight;
    }

    /** Which physical club it was; null for the configuration's own. */
    public Choice<String> physicalClub() {
        return physicalClub;
    }

    /** The clubs one can hold, the configuration's own first, as null. */
    public List<String> physicalClubs() {
        List<String> clubs = new ArrayList<>();
        clubs.add(null);
        test().physicalClubs().stream().map(PhysicalClub::id).forEach(clubs::add);
        return clubs;
    }

    /** The name of a club for people. */
    public String clubName(String id) {
        return test().physicalClubs().stream().filter(club -> club.id().equals(id)).map(PhysicalClub::name)
                .findFirst().orElse("as planned");
    }

    /** Keeps what is typed and not yet kept; called before the questions go away. */
    void keepAll() {
        for (Entry entry : List.of(word, chokedDown, pressure, swingweight)) {
            entry.commit();
        }
    }

    private ClubTest test() {
        return bay.test();
    }

    private <T> ObservableValue<T> of(Function<Stint, T> part) {
        return bay.feelStint().map(part);
    }

    private NumberEntry number(String name, Quantity quantity, Function<Stint, Double> get,
            BiFunction<Stint, Double, Stint> set) {
        return new NumberEntry(name, NumberEntry.Blank.MEANS_NOT_MEASURED, of(get), workbench.style(quantity),
                typed -> edit(name, stint -> set.apply(stint, typed)));
    }

    private Optional<String> readSwingweight(String typed) {
        if (typed.isBlank()) {
            return edit("swingweight read", stint -> stint.withSwingweightRead(null));
        }
        Optional<Swingweight> read = Swingweight.parse(typed);
        return read.isEmpty() ? Optional.of("'" + typed + "' is no swingweight; write it like D2 or C8.5.")
                : edit("swingweight read", stint -> stint.withSwingweightRead(read.get()));
    }

    private Optional<String> edit(String what, UnaryOperator<Stint> change) {
        Stint stint = bay.feelStint().get();
        return stint == null ? Optional.empty()
                : workbench.apply(bay.queue().stint("Set " + what, stint.id(), change));
    }
}
