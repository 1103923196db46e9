package gripwright.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** The order in which a plan lets its configurations be hit. */
public final class StintOrder {

    private StintOrder() {
    }

    /**
     * The configurations in the order of their stints, warm-up not included.
     *
     * <p>One round is every configuration once. In turn: ABC ABC. First again: ABC ABC A. Mirrored: ABC CBA ABC.
     * Rotated: ABC BCA CAB. Random: each round shuffled by itself (Fisher and Yates) by a generator begun with the plan's
     * seed, so the same seed gives the same order on every machine. By hand there is no rule: the result is empty.
     *
     * @param configurations in the order of the test matrix; none gives an empty order
     */
    public static List<String> of(Plan plan, List<String> configurations) {
        if (configurations.isEmpty() || plan.order() == Plan.Order.BY_HAND) {
            return List.of();
        }
        List<String> order = new ArrayList<>();
        Random random = new Random(plan.seed());
        for (int round = 0; round < plan.rounds(); round++) {
            order.addAll(round(plan.order(), configurations, round, random));
        }
        if (plan.order() == Plan.Order.FIRST_AGAIN) {
            order.add(configurations.get(0));
        }
        return List.copyOf(order);
    }

    private static List<String> round(Plan.Order order, List<String> configurations, int round, Random random) {
        List<String> turn = new ArrayList<>(configurations);
        switch (order) {
            case MIRRORED -> {
                if (round % 2 == 1) {
                    Collections.reverse(turn);
                }
            }
            case ROTATED -> Collections.rotate(turn, -round);
            case RANDOM -> {
                for (int last = turn.size() - 1; last > 0; last--) {
                    Collections.swap(turn, last, random.nextInt(last + 1));
                }
            }
            default -> {
            }
        }
        return turn;
    }
}
