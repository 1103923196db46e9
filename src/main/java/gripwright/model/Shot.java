package gripwright.model;

import java.time.Instant;

/**
 * One strike with its readings.
 *
 * @param id unique in its session
 * @param at when it was taken in; null where not known
 * @param readings what was read
 * @param source where the readings came from
 * @param setAsideReason why it is left out of the comparison; null where it is not set aside
 * @param rehearsal whether it came from a rehearsal
 * @param provisional whether its line may still grow
 * @param note free text
 */
public record Shot(String id, Instant at, Readings readings, ShotSource source, String setAsideReason,
        boolean rehearsal, boolean provisional, String note) {

    /** A shot with nothing but readings. */
    public static Shot of(String id, Readings readings) {
        return new Shot(id, null, readings, ShotSource.keyboard(), null, false, false, "");
    }

    public Shot {
        Check.text(id, "identity of a shot");
        Check.present(readings, "readings of a shot");
        Check.present(source, "source of a shot");
        if (setAsideReason != null) {
            Check.text(setAsideReason, "reason for setting a shot aside");
        }
        note = Check.orEmpty(note);
    }

    public boolean isSetAside() {
        return setAsideReason != null;
    }

    public Shot withId(String id) {
        return new Shot(id, at, readings, source, setAsideReason, rehearsal, provisional, note);
    }

    public Shot withAt(Instant at) {
        return new Shot(id, at, readings, source, setAsideReason, rehearsal, provisional, note);
    }

    public Shot withReadings(Readings readings) {
        return new Shot(id, at, readings, source, setAsideReason, rehearsal, provisional, note);
    }

    public Shot withSource(ShotSource source) {
        return new Shot(id, at, readings, source, setAsideReason, rehearsal, provisional, note);
    }

    public Shot withSetAsideReason(String setAsideReason) {
        return new Shot(id, at, readings, source, setAsideReason, rehearsal, provisional, note);
    }

    public Shot withRehearsal(boolean rehearsal) {
        return new Shot(id, at, readings, source, setAsideReason, rehearsal, provisional, note);
    }

    public Shot withProvisional(boolean provisional) {
        return new Shot(id, at, readings, source, setAsideReason, rehearsal, provisional, note);
    }

    public Shot withNote(String note) {
        return new Shot(id, at, readings, source, setAsideReason, rehearsal, provisional, note);
    }
}
