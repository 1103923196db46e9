package gripwright.comparison;

import gripwright.model.Shot;
import gripwright.model.Stint;

/**
 * A shot with its place in the order of play.
 *
 * @param shot the shot
 * @param stint the stint it was hit in, as recorded
 * @param configuration index of its configuration in the test
 * @param run index of its unbroken run: recorded stints in a row without a change are one run
 * @param swing its number among all swings of the test, from 1; warm-up, settling and set-aside ones count
 * @param counts whether it counts as a shot of the comparison when it isn't set aside
 */
record PlayedShot(Shot shot, Stint stint, int configuration, int run, int swing, boolean counts) {

    boolean isScored() {
        return counts && !shot.isSetAside();
    }
}
