package gripwright.comparison;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** The orders of play that the simulation study compares. */
enum StudyOrder {
    IN_TURN("in turn, 6 each", 6),
    FIRST_AGAIN("in turn, first again, 6 each", 6),
    MIRRORED_3("there and back, 3 each", 3),
    MIRRORED_6("there and back, 6 each", 6),
    RANDOM("two shuffled rounds, 3 each", 3),
    ROUNDS_10("ten shuffled rounds, 6 each", 6),
    ROUNDS_20("twenty shuffled rounds, 6 each", 6);

    /** The orders of an ordinary session. */
    static List<StudyOrder> usual() {
        return List.of(IN_TURN, FIRST_AGAIN, MIRRORED_3, MIRRORED_6, RANDOM);
    }

    private final String text;
    private final int shots;

    StudyOrder(String text, int shots) {
        this.text = text;
        this.shots = shots;
    }

    String text() {
        return text;
    }

    /** Shots of one stint. */
    int shots() {
        return shots;
    }

    /** The configuration of each stint. The grip comes off between all stints, also in the middle of there and back. */
    List<Integer> stints(int configurations, Random random) {
        List<Integer> round = new ArrayList<>();
        for (int k = 0; k < configurations; k++) {
            round.add(k);
        }
        List<Integer> stints = new ArrayList<>(round);
        switch (this) {
            case IN_TURN -> { }
            case FIRST_AGAIN -> stints.add(0);
            case MIRRORED_3, MIRRORED_6 -> {
                List<Integer> back = new ArrayList<>(round);
                Collections.reverse(back);
                stints.addAll(back);
            }
            case RANDOM, ROUNDS_10, ROUNDS_20 -> {
                stints.clear();
                for (int i = 0; i < (this == RANDOM ? 2 : this == ROUNDS_10 ? 10 : 20); i++) {
                    Collections.shuffle(round, random);
                    stints.addAll(round);
                }
            }
        }
        return stints;
    }
}
