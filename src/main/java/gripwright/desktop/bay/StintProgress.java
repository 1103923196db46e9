package gripwright.desktop.bay;

import gripwright.model.Stint;

/**
 * How far a stint has come.
 *
 * @param settlingTaken settling swings taken
 * @param settlingPlanned settling swings that are to be taken
 * @param counted shots that count towards the plan: past the settling swings and not set aside
 * @param setAside shots set aside, settling swings included
 * @param planned shots that are to count
 */
public record StintProgress(int settlingTaken, int settlingPlanned, int counted, int setAside, int planned) {

    /** The progress of this stint. In a warm-up or settling stint every shot that isn't set aside counts. */
    public static StintProgress of(Stint stint) {
        int settling = stint.kind() == Stint.Kind.SCORED ? stint.settlingSwings() : 0;
        int taken = Math.min(settling, stint.shots().size());
        int counted = 0;
        int aside = 0;
        for (int index = 0; index < stint.shots().size(); index++) {
            if (stint.shots().get(index).isSetAside()) {
                aside++;
            } else if (index >= settling) {
                counted++;
            }
        }
        return new StintProgress(taken, settling, counted, aside, stint.plannedShots());
    }

    /** Shots still to be hit that count; never negative. */
    public int left() {
        return Math.max(0, planned - counted);
    }

    public boolean isComplete() {
        return left() == 0;
    }

    /** Whether the next swing is one that settles and isn't scored. */
    public boolean settles() {
        return settlingTaken < settlingPlanned;
    }

    /** The line beside the configuration: 'shot 4 of 6' for the one to come, 'settling swing 1 of 2', '6 of 6 in'. */
    public String text() {
        if (settles()) {
            return "settling swing " + (settlingTaken + 1) + " of " + settlingPlanned;
        }
        if (counted < planned) {
            return "shot " + (counted + 1) + " of " + planned;
        }
        return counted == planned ? "all " + planned + " in" : counted + " in, " + planned + " planned";
    }
}
