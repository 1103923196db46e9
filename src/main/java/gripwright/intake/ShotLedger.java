package gripwright.intake;

import gripwright.model.Problem;
import gripwright.model.Shot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Keeps account of the shots a followed file has brought, so that each is brought once and a later reading of its line
 * replaces it.
 */
final class ShotLedger {

    private final Map<String, String> broughtAs = new HashMap<>();
    private final Set<String> skipped = new HashSet<>();
    private final Set<Problem> told = new HashSet<>();
    private List<Question> asked = List.of();
    private Provisional provisional;

    private final List<IntakeRow> added = new ArrayList<>();
    private final List<IntakeRow> replaced = new ArrayList<>();
    private final List<String> withdrawn = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private List<Question> news = List.of();

    /**
     * A shot brought from a line that had not ended.
     *
     * @param line the line
     * @param text the line as far as it was there
     * @param row the row as it was brought
     * @param natural the shot by the identity of its line
     */
    record Provisional(int line, String text, IntakeRow row, Shot natural) {
    }

    Provisional provisional() {
        return provisional;
    }

    /** Takes in the rows of whole lines. */
    void bring(IntakeResult result, boolean skip, boolean grown) {
        for (IntakeRow row : result.rows()) {
            if (skip) {
                skipped.add(row.shot().id());
            } else if (!skipped.contains(row.shot().id())) {
                boolean grownHere = grown && provisional != null && row.line() == provisional.line;
                place(row, grownHere ? provisional.row.shot().id() : null);
                provisional = grownHere ? null : provisional;
            }
        }
        if (grown && provisional != null) {
            withdrawn.add(provisional.row.shot().id());
            provisional = null;
        }
        tell(result);
    }

    /** Takes in the row of a line that hasn't ended; null where the line holds none yet. */
    void bringProvisional(IntakeRow row, int line, String text) {
        String before = provisional == null ? null : provisional.row.shot().id();
        if (row == null) {
            if (before != null) {
                withdrawn.add(before);
                provisional = null;
            }
            return;
        }
        if (skipped.contains(row.shot().id())) {
            return;
        }
        IntakeRow marked = with(row, row.shot().withProvisional(true));
        provisional = new Provisional(line, text, place(marked, before), row.shot());
    }

    void skip(Shot shot) {
        skipped.add(shot.id());
    }

    /** The provisional shot stands as it is. */
    void confirmProvisional() {
        if (provisional != null) {
            replaced.add(with(provisional.row, provisional.row.shot().withProvisional(false)));
            provisional = null;
        }
    }

    /** Nothing is provisional any more, since the whole file will be read again. */
    void forgetProvisional() {
        provisional = null;
    }

    private IntakeRow place(IntakeRow row, String inPlaceOf) {
        String natural = row.shot().id();
        String before = inPlaceOf != null ? inPlaceOf : broughtAs.get(natural);
        IntakeRow placed = before == null ? row : with(row, row.shot().withId(before));
        broughtAs.put(natural, placed.shot().id());
        (before == null ? added : replaced).add(placed);
        return placed;
    }

    private static IntakeRow with(IntakeRow row, Shot shot) {
        return new IntakeRow(row.line(), row.stint(), row.configuration(), row.kind(), row.changedBefore(), row.club(),
                shot);
    }

    private void tell(IntakeResult result) {
        result.problems().stream().filter(told::add).forEach(problems::add);
        if (!result.questions().equals(asked)) {
            asked = result.questions();
            news = asked;
        }
    }

    /** Tells a problem once. */
    void tell(Problem problem) {
        if (told.add(problem)) {
            problems.add(problem);
        }
    }

    /** What was taken in since the last time, to be brought to the listener. */
    Arrival drain() {
        Arrival arrival = new Arrival(added, replaced, withdrawn, problems, news);
        added.clear();
        replaced.clear();
        withdrawn.clear();
        problems.clear();
        news = List.of();
        return arrival;
    }
}
