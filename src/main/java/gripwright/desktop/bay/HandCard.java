package gripwright.desktop.bay;

import gripwright.balance.ConfigurationBalance;
import gripwright.balance.TestBalance;
import gripwright.charts.Mark;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Grip;
import gripwright.model.ReadingText;
import gripwright.model.Stint;
import gripwright.units.Dimension;
import gripwright.units.NumberText;
import gripwright.units.Swingweight;
import gripwright.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The configuration in hand, in letters that read from two metres.
 *
 * @param mark its mark; null between stints
 * @param name the size of its grip, else the grip's name
 * @param facts mass and swingweight
 * @param progress 'shot 4 of 6'
 * @param under what stands below in small letters: the grip's name, and that a stint or swing isn't scored
 * @param inHand whether a stint is in hand
 */
public record HandCard(Mark mark, String name, List<String> facts, String progress, String under, boolean inHand) {

    private static final HandCard NOTHING =
            new HandCard(null, "between stints", List.of(), "", "shots that arrive wait in the tray", false);

    public HandCard {
        facts = List.copyOf(facts);
    }

    /** The card of the stint in hand, else of no stint; the balance may be null. */
    static HandCard of(ClubTest test, TestBalance balance, ReadingText text, boolean namesHidden) {
        Optional<Stint> hand = test.stintInHand();
        if (hand.isEmpty()) {
            return NOTHING;
        }
        Stint stint = hand.get();
        Configuration configuration = test.configuration(stint.configurationId()).orElseThrow();
        StintProgress progress = StintProgress.of(stint);
        String kind = switch (stint.kind()) {
            case WARM_UP -> "warm-up, recorded and not scored";
            case SETTLING -> "settling, recorded and not scored";
            case SCORED -> progress.settles() ? "recorded and not scored" : "";
        };
        String named = namesHidden || configuration.grip().sizeName().isBlank() ? "" : configuration.grip().name();
        String under = named.isEmpty() || kind.isEmpty() ? named + kind : named + "; " + kind;
        return new HandCard(Mark.of(configuration), namesHidden ? "" : name(configuration),
                namesHidden ? List.of() : facts(configuration, stint, balance, text), progress.text(), under, true);
    }

    private static String name(Configuration configuration) {
        Grip grip = configuration.grip();
        return grip.sizeName().isBlank() ? grip.name() : grip.sizeName();
    }

    private static List<String> facts(Configuration configuration, Stint stint, TestBalance balance,
            ReadingText text) {
        List<String> facts = new ArrayList<>();
        Grip grip = configuration.grip();
        if (grip.massGrams() != null) {
            Unit unit = text.units().of(Dimension.MASS);
            facts.add(NumberText.withDecimalMark(text.decimalMark()).format(unit.fromInternal(grip.massGrams()),
                    unit == Unit.GRAM ? 0 : 2) + "\u00A0" + unit.symbol());
        }
        Swingweight swingweight = swingweight(configuration, stint, balance);
        if (swingweight != null) {
            facts.add(swingweight.text());
        }
        return facts;
    }

    /** Read at this stint, else with this configuration, else predicted; null where none can be had. */
    private static Swingweight swingweight(Configuration configuration, Stint stint, TestBalance balance) {
        if (stint.swingweightRead() != null) {
            return stint.swingweightRead();
        }
        if (configuration.swingweightRead() != null || balance == null) {
            return configuration.swingweightRead();
        }
        return balance.configuration(configuration.id()).map(ConfigurationBalance::swingweight).orElse(null);
    }
}
