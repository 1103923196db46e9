package gripwright.model;

import gripwright.units.Swingweight;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * An unbroken run of shots with one configuration.
 *
 * @param id unique in its test
 * @param configurationId the configuration hit
 * @param kind warm-up, settling or scored
 * @param state planned, in hand or done
 * @param plannedShots how many shots are planned, settling swings not counted
 * @param settlingSwings how many of the first shots after the change are recorded and not scored
 * @param physicalClubId which physical club it was; null for the configuration's own
 * @param changedBefore whether the grip or the club was changed since the stint before; if not, and that stint had the
 *     same configuration, the two count as one
 * @param shots in order of play
 * @param feel the player's answers
 * @param swingweightRead swingweight off the scale at this stint; null where not read
 * @param gripPressurePercent mean grip pressure in % of the player's maximum; null where there is no gauge
 * @param chokedDownMm how far down the hands were, mm; null where not asked
 * @param started null before the first shot
 * @param ended null while it is not done
 * @param notes notes and changes
 */
public record Stint(String id, String configurationId, Kind kind, State state, int plannedShots, int settlingSwings,
        String physicalClubId, boolean changedBefore, List<Shot> shots, Feel feel, Swingweight swingweightRead,
        Double gripPressurePercent, Double chokedDownMm, Instant started, Instant ended, List<Note> notes) {

    /** What a stint is for. */
    public enum Kind {
        WARM_UP,
        SETTLING,
        SCORED
    }

    /** Where a stint stands in the queue. */
    public enum State {
        PLANNED,
        IN_HAND,
        DONE
    }

    /** A stint still to be hit. */
    public static Stint planned(String id, String configurationId, Kind kind, int shots, int settlingSwings) {
        return new Stint(id, configurationId, kind, State.PLANNED, shots, settlingSwings, null, true, List.of(),
                Feel.unanswered(), null, null, null, null, null, List.of());
    }

    public Stint {
        Check.text(id, "identity of a stint");
        Check.text(configurationId, "configuration of a stint");
        Check.present(kind, "kind of a stint");
        Check.present(state, "state of a stint");
        Check.atLeast(plannedShots, 0, "number of planned shots");
        Check.atLeast(settlingSwings, 0, "number of settling swings");
        shots = Check.list(shots);
        Check.present(feel, "feel answers of a stint");
        if (gripPressurePercent != null && !(gripPressurePercent >= 0 && gripPressurePercent <= 100)) {
            throw new IllegalArgumentException("The grip pressure runs from 0 to 100 % of the player's maximum, but is "
                    + gripPressurePercent + ".");
        }
        Check.optionalNotNegative(chokedDownMm, "distance choked down");
        notes = Check.list(notes);
    }

    /** Whether the shot at this place (from 0) counts as a shot of the comparison when it isn't set aside. */
    public boolean isScoredAt(int index) {
        return kind == Kind.SCORED && index >= settlingSwings;
    }

    /**
     * Whether it goes on from the stint before, so that the two count as one: the same configuration on the same club, and
     * nothing changed in between. False where there is none before.
     */
    public boolean goesOnFrom(Stint before) {
        return before != null && !changedBefore && configurationId.equals(before.configurationId)
                && (physicalClubId == null || before.physicalClubId == null || physicalClubId.equals(before.physicalClubId));
    }

    /** The shots that go into the comparison: of a scored stint, past its settling swings, not set aside. */
    public List<Shot> scoredShots() {
        List<Shot> scored = new ArrayList<>();
        for (int index = 0; index < shots.size(); index++) {
            if (isScoredAt(index) && !shots.get(index).isSetAside()) {
                scored.add(shots.get(index));
            }
        }
        return List.copyOf(scored);
    }

    public Stint withId(String id) {
        return new Stint(id, configurationId, kind, state, plannedShots, settlingSwings, physicalClubId,
                changedBefore, shots, feel, swingweightRead, gripPressurePercent, chokedDownMm, started, ended,
                notes);
    }

    public Stint withConfigurationId(String configurationId) {
        return new Stint(id, configurationId, kind, state, plannedShots, settlingSwings, physicalClubId,
                changedBefore, shots, feel, swingweightRead, gripPressurePercent, chokedDownMm, started, ended,
                notes);
    }

    public Stint withKind(Kind kind) {
        return new Stint(id, configurationId, kind, state, plannedShots, settlingSwings, physicalClubId,
                changedBefore, shots, feel, swingweightRead, gripPressurePercent, chokedDownMm, started, ended,
                notes);
    }

    public Stint withState(State state) {
        return new Stint(id, configurationId, kind, state, plannedShots, settlingSwings, physicalClubId,
                changedBefore, shots, feel, swingweightRead, gripPressurePercent, chokedDownMm, started, ended,
                notes);
    }

    public Stint withPlannedShots(int plannedShots) {
        return new Stint(id, configurationId, kind, state, plannedShots, settlingSwings, physicalClubId,
                changedBefore, shots, feel, swingweightRead, gripPressurePercent, chokedDownMm, started, ended,
                notes);
    }

    public Stint withSettlingSwings(int settlingSwings) {
        return new Stint(id, configurationId, kind, state, plannedShots, settlingSwings, physicalClubId,
                changedBefore, shots, feel, swingweightRead, gripPressurePercent, chokedDownMm, started, ended,
                notes);
    }

    public Stint withPhysicalClubId(String physicalClubId) {
        return new Stint(id, configurationId, kind, state, plannedShots, settlingSwings, physicalClubId,
                changedBefore, shots, feel, swingweightRead, gripPressurePercent, chokedDownMm, started, ended,
                notes);
    }

    public Stint withChangedBefore(boolean changedBefore) {
        return new Stint(id, configurationId, kind, state, plannedShots, settlingSwings, physicalClubId,
                changedBefore, shots, feel, swingweightRead, gripPressurePercent, chokedDownMm, started, ended,
                notes);
    }

    public Stint withShots(List<Shot> shots) {
        return new Stint(id, configurationId, kind, state, plannedShots, settlingSwings, physicalClubId,
                changedBefore, shots, feel, swingweightRead, gripPressurePercent, chokedDownMm, started, ended,
                notes);
    }

    public Stint withFeel(Feel feel) {
        return new Stint(id, configurationId, kind, state, plannedShots, settlingSwings, physicalClubId,
                changedBefore, shots, feel, swingweightRead, gripPressurePercent, chokedDownMm, started, ended,
                notes);
    }

    public Stint withSwingweightRead(Swingweight swingweightRead) {
        return new Stint(id, configurationId, kind, state, plannedShots, settlingSwings, physicalClubId,
                changedBefore, shots, feel, swingweightRead, gripPressurePercent, chokedDownMm, started, ended,
                notes);
    }

    public Stint withGripPressurePercent(Double gripPressurePercent) {
        return new Stint(id, configurationId, kind, state, plannedShots, settlingSwings, physicalClubId,
                changedBefore, shots, feel, swingweightRead, gripPressurePercent, chokedDownMm, started, ended,
                notes);
    }

    public Stint withChokedDownMm(Double chokedDownMm) {
        return new Stint(id, configurationId, kind, state, plannedShots, settlingSwings, physicalClubId,
                changedBefore, shots, feel, swingweightRead, gripPressurePercent, chokedDownMm, started, ended,
                notes);
    }

    public Stint withStarted(Instant started) {
        return new Stint(id, configurationId, kind, state, plannedShots, settlingSwings, physicalClubId,
                changedBefore, shots, feel, swingweightRead, gripPressurePercent, chokedDownMm, started, ended,
                notes);
    }

    public Stint withEnded(Instant ended) {
        return new Stint(id, configurationId, kind, state, plannedShots, settlingSwings, physicalClubId,
                changedBefore, shots, feel, swingweightRead, gripPressurePercent, chokedDownMm, started, ended,
                notes);
    }

    public Stint withNotes(List<Note> notes) {
        return new Stint(id, configurationId, kind, state, plannedShots, settlingSwings, physicalClubId,
                changedBefore, shots, feel, swingweightRead, gripPressurePercent, chokedDownMm, started, ended,
                notes);
    }
}
