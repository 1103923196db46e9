package gripwright.desktop.bay;

import gripwright.desktop.support.Workbench;
import gripwright.model.Stint;

/** What each action of the bay does, whichever key, button or row asked for it. */
final class BayKeys {

    private final Workbench workbench;
    private final BayViewModel bay;
    private final Runnable chooseSource;

    BayKeys(Workbench workbench, BayViewModel bay, Runnable chooseSource) {
        this.workbench = workbench;
        this.bay = bay;
        this.chooseSource = chooseSource;
    }

    /** Does it; typing itself belongs to the entry line. */
    void act(BayAction action) {
        switch (action) {
            case TYPE -> workbench.say("Type the readings into the line below.");
            case SET_ASIDE -> bay.setAsideLast();
            case BRING_BACK -> bay.bringBackLast();
            case END_STINT -> bay.endStint();
            case START_NEXT -> bay.startNext();
            case NOTE -> bay.note();
            case SWITCH -> bay.switchConfiguration();
            case REPEAT -> bay.repeat();
            case FEEL -> bay.toggleFeel();
            case TRAY -> bay.tray();
            case TWIST -> bay.twistChecked();
            case HIDE -> bay.hideNext();
            case SOURCE -> chooseSource.run();
            case UNDO -> workbench.undo();
            case REDO -> workbench.redo();
        }
    }

    /** A row of the queue was chosen: a stint that was hit shows its feel, a planned one can be brought forward. */
    void openStint(String stintId) {
        bay.test().stint(stintId).ifPresent(stint -> {
            if (stint.state() == Stint.State.PLANNED) {
                bay.offerPlanned(stint);
            } else {
                bay.openFeel(stintId);
            }
        });
    }
}
