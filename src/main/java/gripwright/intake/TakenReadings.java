package gripwright.intake;

import gripwright.model.Metric;
import gripwright.model.Readings;
import gripwright.model.Shot;
import gripwright.model.ShotSource;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

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
    private static final double SAME = 2e-3;
    private static final double SAME_NEAR_ZERO = 0.06;

    private final Map<String, List<Entry>> byId = new HashMap<>();
    private final Map<String, List<Entry>> byTime = new HashMap<>();
    private final Map<String, Tally> byRow = new HashMap<>();
    private int pass;

    /** One reading that was taken, and the last pass over the file that met it. */
    private static final class Entry {
        private final Candidate row;
        private int metIn;

        Entry(Candidate row, int metIn) {
            this.row = row;
            this.metIn = metIn;
        }
    }

    /** How many identical rows were taken, and how many of them this pass has met. */
    private static final class Tally {
        private int taken;
        private int met;
        private int metIn;
    }

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
    }

    /** What a row turned out to be. */
    enum Outcome {
        NEW,
        KNOWN,
        /** New, though its id was there before. */
        NEW_WITH_OLD_ID
    }

    /** Nothing taken yet. */
    TakenReadings() {
    }

    /** What these shots hold from the source of this kind and name. */
    static TakenReadings of(Collection<Shot> shots, ShotSource.Kind kind, String name) {
        TakenReadings taken = new TakenReadings();
        for (Shot shot : shots) {
            ShotSource source = shot.source();
            if (source.kind() == kind && source.name().equals(name) && !source.rowKey().isEmpty()) {
                boolean timed = TimeText.of(source.time()).time() != null;
                taken.add(new Candidate(source.shotId(), source.time(), timed, source.rowKey(), shot.readings()));
            }
        }
        return taken;
    }

    /** Begins a pass over the whole source from its first row. */
    void beginPass() {
        pass++;
    }

    private void add(Candidate row) {
        Entry entry = new Entry(row, pass);
        if (!row.id.isEmpty()) {
            byId.computeIfAbsent(row.id, k -> new ArrayList<>(1)).add(entry);
        }
        if (row.timed) {
            byTime.computeIfAbsent(row.time, k -> new ArrayList<>(1)).add(entry);
        }
        byRow.computeIfAbsent(row.rowKey, k -> new Tally()).taken++;
    }

    /** Takes back a reading, so that another can stand in its place. */
    void remove(Candidate row) {
        Tally tally = byRow.get(row.rowKey);
        if (tally != null && tally.taken > 0) {
            tally.taken--;
            tally.met = Math.max(0, tally.met - 1);
        }
        byId.getOrDefault(row.id, List.of()).removeIf(entry -> entry.row.equals(row));
        byTime.getOrDefault(row.time, List.of()).removeIf(entry -> entry.row.equals(row));
    }

    /** How many identical rows this pass has met so far. */
    int occurrence(String rowKey) {
        Tally tally = byRow.get(rowKey);
        return tally == null || tally.metIn != pass ? 0 : tally.met;
    }

    /** Tells whether the row is known; if not, it is from now on. */
    Outcome take(Candidate row) {
        List<Entry> named = named(row);
        boolean known;
        if (named == null) {
            known = occurrence(row.rowKey) < taken(row.rowKey);
        } else {
            Entry same = match(row, named);
            known = same != null;
            if (known) {
                same.metIn = pass;
            }
        }
        boolean oldId = named != null && !row.id.isEmpty() && !named.isEmpty();
        if (!known) {
            add(row);
        }
        meet(row.rowKey);
        return known ? Outcome.KNOWN : oldId ? Outcome.NEW_WITH_OLD_ID : Outcome.NEW;
    }

    private int taken(String rowKey) {
        Tally tally = byRow.get(rowKey);
        return tally == null ? 0 : tally.taken;
    }

    private void meet(String rowKey) {
        Tally tally = byRow.computeIfAbsent(rowKey, k -> new Tally());
        tally.met = tally.metIn == pass ? tally.met + 1 : 1;
        tally.metIn = pass;
    }

    /** The readings that share the row's name; null where it has none that names. */
    private List<Entry> named(Candidate row) {
        List<Entry> named = null;
        if (!row.id.isEmpty()) {
            named = byId.getOrDefault(row.id, List.of());
        } else if (row.timed) {
            named = byTime.getOrDefault(row.time, List.of());
        }
        return named != null && named.size() <= MOST_SHARING ? named : null;
    }

    private Entry match(Candidate row, List<Entry> named) {
        for (Entry entry : named) {
            if (entry.row.rowKey.equals(row.rowKey)) {
                return entry;
            }
        }
        for (Entry entry : named) {
            if (entry.metIn != pass && isSame(row, entry.row)) {
                return entry;
            }
        }
        return null;
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
