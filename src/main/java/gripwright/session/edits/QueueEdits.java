package gripwright.session.edits;

import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Feel;
import gripwright.model.Note;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.model.Stint;
import gripwright.session.Edit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * Edits of the queue of stints while a test is played: start, end, repeat, correct the configuration, note, feel.
 *
 * <p>Where the stint an edit is about is gone, the session stays as it is.
 */
public final class QueueEdits {

    /** Where a repeated stint goes. */
    public enum Repeat {
        /** Next, the grip stays on: the two count as one stint. */
        NEXT_UNCHANGED,
        /** Next, after the grip or club was changed and put back. */
        NEXT_CHANGED,
        /** At the end of the queue. */
        AT_THE_END
    }

    private final String testId;

    private QueueEdits(String testId) {
        this.testId = testId;
    }

    /** Edits of the test with this identity. */
    public static QueueEdits of(String testId) {
        return new QueueEdits(testId);
    }

    /** Takes a stint in hand; one that was in hand is ended first. */
    public Edit start(String stintId, Instant at) {
        return new Edit("Start a stint", session -> test(session, test -> {
            if (test.stint(stintId).isEmpty()) {
                return test;
            }
            List<Stint> stints = new ArrayList<>();
            for (Stint stint : test.stints()) {
                if (stint.id().equals(stintId)) {
                    stints.add(stint.withState(Stint.State.IN_HAND)
                            .withStarted(stint.started() == null ? at : stint.started()).withEnded(null));
                } else {
                    stints.add(stint.state() == Stint.State.IN_HAND ? ended(stint, at) : stint);
                }
            }
            return test.withStints(playedFirst(stints));
        }));
    }

    /** Ends a stint; one without a shot goes back into the queue. */
    public Edit end(String stintId, Instant at) {
        return stint("End a stint", stintId, stint -> ended(stint, at));
    }

    /** Adds a stint like another one. */
    public Edit repeat(String stintId, String newStintId, Repeat where) {
        return new Edit("Repeat a stint", session -> test(session, test -> {
            Stint like = test.stint(stintId).orElse(null);
            if (like == null) {
                return test;
            }
            Stint again = Stint.planned(newStintId, like.configurationId(), like.kind(), like.plannedShots(),
                    where == Repeat.NEXT_UNCHANGED ? 0 : like.settlingSwings())
                    .withChangedBefore(where != Repeat.NEXT_UNCHANGED).withPhysicalClubId(like.physicalClubId());
            return where == Repeat.AT_THE_END ? atTheEnd(test, again) : next(test, again);
        }));
    }

    /** Adds a stint of a configuration as the next one of the queue. */
    public Edit addNext(Stint planned) {
        return new Edit("Add a stint", session -> test(session, test -> next(test, planned)));
    }

    /** Makes a planned stint the next one of the queue. */
    public Edit bringForward(String stintId) {
        return new Edit("Bring a stint forward", session -> test(session, test -> test.stint(stintId)
                .filter(stint -> stint.state() == Stint.State.PLANNED)
                .map(stint -> next(test.withStints(test.stints().stream()
                        .filter(s -> !s.id().equals(stintId)).toList()), stint))
                .orElse(test)));
    }

    /**
     * Says that a whole stint was hit with another configuration. The first later planned stint of that configuration
     * becomes one of the configuration that was meant, so that the plan keeps its balance.
     */
    public Edit correct(String stintId, String configurationId) {
        return new Edit("Correct the configuration of a stint", session -> test(session, test -> {
            Stint wrong = test.stint(stintId).orElse(null);
            if (wrong == null || wrong.configurationId().equals(configurationId)) {
                return test;
            }
            boolean exchanged = false;
            List<Stint> stints = new ArrayList<>();
            for (Stint stint : test.stints()) {
                boolean exchange = !exchanged && stint.state() == Stint.State.PLANNED
                        && stint.configurationId().equals(configurationId) && !stint.id().equals(stintId);
                exchanged = exchanged || exchange;
                stints.add(stint.id().equals(stintId) ? reassigned(test, stint, configurationId)
                        : exchange ? reassigned(test, stint, wrong.configurationId()) : stint);
            }
            return test.withStints(stints);
        }));
    }

    /**
     * Says that a stint was hit with another configuration from a shot on: the stint ends before that shot, and the
     * shots from there on make a stint of their own, in the state of the old one. What is answered or read at a stint's
     * end (feel, swingweight, grip pressure, place of the hands) goes with it, since that club was in hand then.
     *
     * @param newStintId the identity of the stint that begins with the shot
     */
    public Edit correctFrom(String stintId, String shotId, String configurationId, String newStintId) {
        return new Edit("Correct the configuration from a shot on", session -> test(session, test -> {
            Stint stint = test.stint(stintId).orElse(null);
            int from = stint == null ? -1 : indexOf(stint, shotId);
            if (from < 0 || stint.configurationId().equals(configurationId)) {
                return test;
            }
            if (from == 0) {
                return test.withStint(reassigned(test, stint, configurationId));
            }
            List<Stint> stints = new ArrayList<>();
            for (Stint other : test.stints()) {
                if (other.id().equals(stintId)) {
                    stints.add(before(other, from));
                    stints.add(reassigned(test, after(other, from, newStintId), configurationId));
                } else {
                    stints.add(other);
                }
            }
            return test.withStints(stints);
        }));
    }

    /** Writes down what the player felt over a stint. */
    public Edit feel(String stintId, Feel feel) {
        return stint("Note the feel", stintId, stint -> stint.withFeel(feel));
    }

    /** Adds a note to a stint. */
    public Edit note(String stintId, Note note) {
        return stint(label(note), stintId, stint -> {
            List<Note> notes = new ArrayList<>(stint.notes());
            notes.add(note);
            return stint.withNotes(notes);
        });
    }

    /** Any other change of one stint, under a name of its own. */
    public Edit stint(String label, String stintId, UnaryOperator<Stint> change) {
        return new Edit(label, session -> test(session,
                test -> test.stint(stintId).map(stint -> test.withStint(change.apply(stint))).orElse(test)));
    }

    private static String label(Note note) {
        return switch (note.kind()) {
            case NOTE -> "Add a note";
            case BALL_CHANGED -> "Note a change of ball";
            case GLOVE_CHANGED -> "Note a change of glove";
            case MAT_CHANGED -> "Note a change of mat";
            case TWIST_CHECKED -> "Note the twist check";
            case PAIN -> "Note pain";
        };
    }

    private Session test(Session session, UnaryOperator<ClubTest> change) {
        return session.test(testId).map(test -> session.withTest(change.apply(test))).orElse(session);
    }

    private static Stint ended(Stint stint, Instant at) {
        return stint.shots().isEmpty() ? stint.withState(Stint.State.PLANNED).withStarted(null)
                : stint.withState(Stint.State.DONE).withEnded(at);
    }

    /** Stints that were or are played stand before those that are planned, each group in its order. */
    private static List<Stint> playedFirst(List<Stint> stints) {
        List<Stint> ordered = new ArrayList<>();
        stints.stream().filter(s -> s.state() == Stint.State.DONE).forEach(ordered::add);
        stints.stream().filter(s -> s.state() == Stint.State.IN_HAND).forEach(ordered::add);
        stints.stream().filter(s -> s.state() == Stint.State.PLANNED).forEach(ordered::add);
        return ordered;
    }

    private static ClubTest next(ClubTest test, Stint planned) {
        List<Stint> stints = new ArrayList<>(test.stints());
        int at = 0;
        while (at < stints.size() && stints.get(at).state() != Stint.State.PLANNED) {
            at++;
        }
        stints.add(at, planned);
        return test.withStints(stints);
    }

    private static ClubTest atTheEnd(ClubTest test, Stint planned) {
        List<Stint> stints = new ArrayList<>(test.stints());
        stints.add(planned);
        return test.withStints(stints);
    }

    private static Stint reassigned(ClubTest test, Stint stint, String configurationId) {
        String club = test.configuration(configurationId).map(Configuration::physicalClubId).orElse(null);
        return stint.withConfigurationId(configurationId)
                .withPhysicalClubId(stint.physicalClubId() == null ? null : club);
    }

    private static int indexOf(Stint stint, String shotId) {
        for (int index = 0; index < stint.shots().size(); index++) {
            if (stint.shots().get(index).id().equals(shotId)) {
                return index;
            }
        }
        return -1;
    }

    private static Stint before(Stint stint, int from) {
        List<Shot> kept = stint.shots().subList(0, from);
        Set<String> ids = kept.stream().map(Shot::id).collect(Collectors.toSet());
        return stint.withShots(kept).withState(Stint.State.DONE).withEnded(stint.shots().get(from).at())
                .withFeel(Feel.unanswered()).withSwingweightRead(null).withGripPressurePercent(null)
                .withChokedDownMm(null)
                .withNotes(stint.notes().stream()
                        .filter(n -> n.afterShotId() == null || ids.contains(n.afterShotId())).toList());
    }

    private static Stint after(Stint stint, int from, String newStintId) {
        List<Shot> moved = stint.shots().subList(from, stint.shots().size());
        Set<String> ids = moved.stream().map(Shot::id).collect(Collectors.toSet());
        return stint.withId(newStintId).withShots(moved).withChangedBefore(true).withStarted(moved.get(0).at())
                .withNotes(stint.notes().stream()
                        .filter(n -> n.afterShotId() != null && ids.contains(n.afterShotId())).toList());
    }
}
