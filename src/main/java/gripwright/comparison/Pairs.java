package gripwright.comparison;

import gripwright.model.Configuration;
import java.util.ArrayList;
import java.util.List;

/** All pairs of configurations once, those with the reference first and against it, the others against the earlier. */
final class Pairs {

    private Pairs() {
    }

    /** Pairs {of, against} of indexes into the configurations. */
    static List<int[]> of(List<Configuration> configurations, String reference) {
        int base = 0;
        for (int k = 0; k < configurations.size(); k++) {
            if (configurations.get(k).id().equals(reference)) {
                base = k;
            }
        }
        List<int[]> pairs = new ArrayList<>();
        for (int k = 0; k < configurations.size(); k++) {
            if (k != base) {
                pairs.add(new int[] {k, base});
            }
        }
        for (int against = 0; against < configurations.size(); against++) {
            for (int of = against + 1; of < configurations.size(); of++) {
                if (against != base && of != base) {
                    pairs.add(new int[] {of, against});
                }
            }
        }
        return pairs;
    }
}
