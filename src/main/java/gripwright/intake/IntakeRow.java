package gripwright.intake;

import gripwright.model.Shot;
import gripwright.model.Stint;

/**
 * One shot of a file with what its row says about its place.
 *
 * @param line the line it was read from, from 1
 * @param stint the stint as the file names it; empty where it doesn't
 * @param configuration the configuration as the file names it; empty where it doesn't
 * @param kind kind of stint or of this shot; null where the file doesn't say
 * @param changedBefore whether the grip was changed before the stint; null where the file doesn't say
 * @param club the club as the file names it; empty where it doesn't
 * @param shot the shot
 */
public record IntakeRow(int line, String stint, String configuration, Stint.Kind kind, Boolean changedBefore,
        String club, Shot shot) {
}
