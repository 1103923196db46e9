package gripwright.intake.rehearsal;

import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Readings;
import gripwright.model.Shot;
import gripwright.model.Stint;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Where a rehearsal takes its shots from, one after the other. */
@FunctionalInterface
public interface RehearsedShots {

    /** The next shot's readings with what is known of its place; empty when there are no more. */
    Optional<Rehearsed> next();

    /**
     * A shot to be played.
     *
     * @param readings its readings
     * @param configuration the configuration it belongs to; empty where it is the one in hand
     * @param kind kind of its stint; null where it is the one in hand
     */
    record Rehearsed(Readings readings, String configuration, Stint.Kind kind) {
    }

    /** The shots of a recorded test, in the order they were hit. */
    static RehearsedShots of(ClubTest recorded) {
        List<Rehearsed> shots = new ArrayList<>();
        for (Stint stint : recorded.stints()) {
            String label = recorded.configuration(stint.configurationId()).map(Configuration::label).orElse("");
            for (Shot shot : stint.shots()) {
                shots.add(new Rehearsed(shot.readings(), label, stint.kind()));
            }
        }
        Iterator<Rehearsed> each = shots.iterator();
        return () -> each.hasNext() ? Optional.of(each.next()) : Optional.empty();
    }

    /**
     * A simulated player, who never stops.
     *
     * @param player the player
     * @param labelInHand tells the label of the configuration in hand whenever a shot is hit; a new label is a new stint
     * @param shotsInSession how many shots the player's drift is spread over; from there on it stays
     */
    static RehearsedShots of(SimulatedPlayer player, Supplier<String> labelInHand, int shotsInSession) {
        return new RehearsedShots() {
            private final SimulatedPlayer.Visit visit = player.visit();
            private String label;
            private int hit;

            @Override
            public Optional<Rehearsed> next() {
                String inHand = labelInHand.get();
                if (!inHand.equals(label)) {
                    label = inHand;
                    visit.beginStint(inHand);
                }
                double progress = shotsInSession < 2 ? 0 : Math.min(1, hit / (shotsInSession - 1.0));
                hit++;
                return Optional.of(new Rehearsed(visit.hit(progress).readings(), "", null));
            }
        };
    }
}
