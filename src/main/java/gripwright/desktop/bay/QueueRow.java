package gripwright.desktop.bay;

import gripwright.charts.Mark;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Shot;
import gripwright.model.Stint;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * One stint in the queue.
 *
 * @param stintId which stint
 * @param mark the mark of its configuration
 * @param title 'C', 'C, retest', 'warm-up with A'
 * @param state where it stands
 * @param stateText 'done', 'in hand', 'next', or empty
 * @param dots one a swing that was taken or is planned, in order of play
 */
public record QueueRow(String stintId, Mark mark, String title, Stint.State state, String stateText, List<Dot> dots) {

    /** A swing as it shows in the queue. */
    public enum Dot {
        SETTLING,
        SETTLING_OPEN,
        COUNTED,
        SET_ASIDE,
        OPEN
    }

    public QueueRow {
        dots = List.copyOf(dots);
    }

    /** The queue of a test in order of play. */
    public static List<QueueRow> queue(ClubTest test) {
        List<QueueRow> rows = new ArrayList<>();
        Set<String> hitBefore = new HashSet<>();
        boolean nextSeen = test.stintInHand().isPresent();
        for (Stint stint : test.stints()) {
            Configuration configuration = test.configuration(stint.configurationId()).orElseThrow();
            boolean retest = stint.kind() == Stint.Kind.SCORED && !hitBefore.add(configuration.id());
            boolean next = stint.state() == Stint.State.PLANNED && !nextSeen;
            nextSeen = nextSeen || next;
            rows.add(new QueueRow(stint.id(), Mark.of(configuration), title(stint, configuration.label(), retest),
                    stint.state(), stateText(stint, next), dots(stint)));
        }
        return List.copyOf(rows);
    }

    private static String title(Stint stint, String label, boolean retest) {
        return switch (stint.kind()) {
            case WARM_UP -> "warm-up, " + label;
            case SETTLING -> "settling, " + label;
            case SCORED -> retest ? label + ", retest" : label;
        };
    }

    private static String stateText(Stint stint, boolean next) {
        return switch (stint.state()) {
            case DONE -> "done";
            case IN_HAND -> "in hand";
            case PLANNED -> next ? "next" : "";
        };
    }

    private static List<Dot> dots(Stint stint) {
        int settling = stint.kind() == Stint.Kind.SCORED ? stint.settlingSwings() : 0;
        List<Dot> dots = new ArrayList<>();
        for (int index = 0; index < stint.shots().size(); index++) {
            Shot shot = stint.shots().get(index);
            dots.add(shot.isSetAside() ? Dot.SET_ASIDE : index < settling ? Dot.SETTLING : Dot.COUNTED);
        }
        if (stint.state() != Stint.State.DONE) {
            dots.addAll(Collections.nCopies(Math.max(0, settling - dots.size()), Dot.SETTLING_OPEN));
            dots.addAll(Collections.nCopies(StintProgress.of(stint).left(), Dot.OPEN));
        }
        return dots;
    }
}
