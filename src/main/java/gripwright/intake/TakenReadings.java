package gripwright.intake;

import gripwright.model.Metric;
import gripwright.model.Readings;
import gripwright.model.Shot;
import gripwright.model.ShotSource;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Remembers the readings already taken from one source, and tells whether a row is one of them.
 *
 * <p>A row is known by the source's own shot id, by its time of day, or else by how many identical rows were already
 * taken. Numbering that begins again is no identity: a row with a known id whose readings differ in most columns is
 * another shot, since losing one is worse than asking twice.
 */
final class TakenReadings {

    /** A name that so many different rows share names nothing. */
    private static final int MOST_SHARING = 40;
    /** That many readings, to a tenth or so, are never all the same in two shots of one number. */
    private static final int TELLING_READINGS = 3;
    private static final double SAME = 2e-3;
    private static final double SAME_NEAR_ZERO = 0.06;

    private final Map<String, List<Candidate>> byId = new HashMap<>();
    private final Map<String, List<Candidate>> byTime = new HashMap<>();
    private final Map<String, Integer> byRow = new HashMap<>();
    /** Rows taken from sources of other names: an export that is made again often gets another name. */
    private final Set<String> elsewhere = new HashSet<>();

    /**
     * A row by what it is known by.
     *
     * @param id the source's own id; may be empty
     * @param time date and time as written; may be empty
     * @param timed whether the time has a time of day
     * @param rowKey digest of the cells
     * @param readings what was read
     */
    record Candidate(String id, String time, boolean timed, String rowKey, Readings readings) {

        /** Whether no other shot can have a row that is the same in every cell. */
        boolean isUnmistakable() {
            boolean named = timed || !id.isEmpty();
            return timed && !id.isEmpty() || named && readings.values().size() >= TELLING_READINGS;
        }
    }

    /** What a row turned out to be. */
    enum Outcome {
        NEW,
        KNOWN,
        /** New, though its id was there before. */
        NEW_WITH_OLD_ID,
        /** New, though a source of another name had a row like it. */
        NEW_LIKE_ANOTHER,
        /** The same shot again, further up in the same pass. */
        REPEATED
    }

    /** Nothing taken yet. */
    TakenReadings() {
    }

    /** What these shots hold from the source of this kind and name. */
    static TakenReadings of(Collection<Shot> shots, ShotSource.Kind kind, String name) {
        TakenReadings taken = new TakenReadings();
        for (Shot shot : shots) {
            ShotSource source = shot.source();
            if (source.rowKey().isEmpty()) {
                continue;
            }
            if (source.kind() == kind && source.name().equals(name)) {
                taken.add(candidate(shot));
            } else {
                taken.elsewhere.add(source.rowKey());
            }
        }
        return taken;
    }

    /** Begins a pass over a file from its first row. */
    Pass beginPass() {
        return new Pass();
    }

    private void add(Candidate row) {
        if (!row.id.isEmpty()) {
            byId.computeIfAbsent(row.id, k -> new ArrayList<>(1)).add(row);
        }
        if (row.timed) {
            byTime.computeIfAbsent(row.time, k -> new ArrayList<>(1)).add(row);
        }
        byRow.merge(row.rowKey, 1, Integer::sum);
    }

    private void forget(Candidate row) {
        byRow.computeIfPresent(row.rowKey, (k, count) -> count > 1 ? count - 1 : null);
        byId.getOrDefault(row.id, new ArrayList<>()).remove(row);
        byTime.getOrDefault(row.time, new ArrayList<>()).remove(row);
    }

    private static Candidate candidate(Shot shot) {
        ShotSource source = shot.source();
        boolean timed = TimeText.of(source.time()).time() != null;
        return new Candidate(source.shotId(), source.time(), timed, source.rowKey(), shot.readings());
    }

    /** One run over a file, in which each reading taken before can be met once. */
    final class Pass {

        private final Map<String, Integer> metRows = new HashMap<>();
        private final Set<Candidate> met = Collections.newSetFromMap(new IdentityHashMap<>());
        private String lastRow = "";

        /** How many identical rows this pass has met so far. */
        int occurrence(String rowKey) {
            return metRows.getOrDefault(rowKey, 0);
        }

        /** Tells whether the row is known; if not, it is from now on. */
        Outcome take(Candidate row) {
            List<Candidate> named = named(row);
            Outcome outcome = named == null ? byCount(row) : byName(row, named);
            if (outcome != Outcome.KNOWN && outcome != Outcome.REPEATED) {
                boolean like = elsewhere.contains(row.rowKey) && occurrence(row.rowKey) == 0;
                outcome = like ? row.isUnmistakable() ? Outcome.KNOWN : Outcome.NEW_LIKE_ANOTHER : outcome;
                add(row);
                met.add(row);
            }
            metRows.merge(row.rowKey, 1, Integer::sum);
            lastRow = row.rowKey;
            return outcome;
        }

        private Outcome byCount(Candidate row) {
            return occurrence(row.rowKey) < byRow.getOrDefault(row.rowKey, 0) ? Outcome.KNOWN : Outcome.NEW;
        }

        private Outcome byName(Candidate row, List<Candidate> named) {
            boolean metBefore = false;
            for (Candidate before : named) {
                if (before.rowKey.equals(row.rowKey)) {
                    if (met.add(before)) {
                        return Outcome.KNOWN;
                    }
                    metBefore = true;
                }
            }
            if (metBefore) {
                return row.isUnmistakable() || row.rowKey.equals(lastRow) ? Outcome.REPEATED
                        : row.id.isEmpty() ? Outcome.NEW : Outcome.NEW_WITH_OLD_ID;
            }
            for (Candidate before : named) {
                if (!met.contains(before) && isSame(row, before)) {
                    met.add(before);
                    return Outcome.KNOWN;
                }
            }
            return named.isEmpty() || row.id.isEmpty() ? Outcome.NEW : Outcome.NEW_WITH_OLD_ID;
        }

        /** Takes a reading of this pass back, so that another can stand in its place. */
        void forget(Shot shot) {
            Candidate row = candidate(shot);
            TakenReadings.this.forget(row);
            metRows.computeIfPresent(row.rowKey, (k, count) -> count > 1 ? count - 1 : null);
        }
    }

    /** The readings that share the row's name; null where it has none that names. */
    private List<Candidate> named(Candidate row) {
        List<Candidate> named = null;
        if (!row.id.isEmpty()) {
            named = byId.getOrDefault(row.id, List.of());
        } else if (row.timed) {
            named = byTime.getOrDefault(row.time, List.of());
        }
        return named != null && named.size() <= MOST_SHARING ? named : null;
    }

    private static boolean isSame(Candidate row, Candidate before) {
        boolean bothDated = !row.time.isEmpty() && !before.time.isEmpty();
        if (bothDated && !row.time.equals(before.time)) {
            return false;
        }
        if (bothDated && row.timed && !row.id.isEmpty()) {
            return true;
        }
        int common = 0;
        int equal = 0;
        for (Map.Entry<Metric, Double> reading : row.readings.values().entrySet()) {
            Double other = before.readings.values().get(reading.getKey());
            if (other != null) {
                common++;
                if (near(reading.getValue(), other)) {
                    equal++;
                }
            }
        }
        return equal * 2 >= common;
    }

    private static boolean near(double a, double b) {
        return Math.abs(a - b) <= Math.max(SAME_NEAR_ZERO, SAME * Math.max(Math.abs(a), Math.abs(b)));
    }
}
