package gripwright.planning;

import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Metric;
import gripwright.model.ReadingText;
import gripwright.model.Stint;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Looks whether a test, as it is being hit, still treats its configurations alike, and says where it doesn't. */
public final class FairTest {

    /** Shots per stint differ much when one has twice as many as another and at least this many more. Our judgement. */
    private static final int MANY_MORE = 3;

    /** What is not fair. */
    public enum Kind {
        ONE_STINT_ONLY,
        SHOTS_UNEVEN,
        DRIFT_LARGE,
        TIRING
    }

    /**
     * One warning.
     *
     * @param kind what about
     * @param sentence what it is, what it does to the result, what to do
     */
    public record Warning(Kind kind, String sentence) {
    }

    /**
     * A drift that the comparison found.
     *
     * @param metric of which metric
     * @param overSession from the first shot to the last, internal units
     * @param noise SD of a shot about its stint, internal units
     */
    public record Drift(Metric metric, double overSession, double noise) {

        /** A drift of one noise SD over the session is as much as the model expects of an ordinary one. */
        boolean isLarge() {
            return noise > 0 && Math.abs(overSession) > noise;
        }
    }

    private final ReadingText text;

    private FairTest(ReadingText text) {
        this.text = text;
    }

    /** Warnings in the units and words of this shop and player. */
    public static FairTest inWordsOf(ReadingText text) {
        return new FairTest(text);
    }

    /** All warnings of a test, the ones that can still be cured first. */
    public List<Warning> warnings(ClubTest whole, List<Drift> drifts) {
        ClubTest test = whole.withoutRehearsals();
        List<Warning> warnings = new ArrayList<>();
        tiring(test).ifPresent(warnings::add);
        uneven(test).ifPresent(warnings::add);
        oneStintOnly(test).ifPresent(warnings::add);
        drifts.stream().filter(Drift::isLarge).findFirst().ifPresent(drift -> warnings.add(drifting(drift)));
        return List.copyOf(warnings);
    }

    /** The distinct stints of each configuration, in the test's order: hit or still planned, warm-up left out. */
    static Map<Configuration, Integer> distinctStints(ClubTest test) {
        Map<Configuration, Integer> counts = new LinkedHashMap<>();
        test.configurations().forEach(configuration -> counts.put(configuration, 0));
        Stint before = null;
        boolean counted = false;
        for (Stint stint : test.stints()) {
            counted &= stint.goesOnFrom(before);
            if (stint.kind() == Stint.Kind.SCORED && !counted) {
                test.configuration(stint.configurationId()).ifPresent(c -> counts.merge(c, 1, Integer::sum));
                counted = true;
            }
            before = stint;
        }
        return counts;
    }

    private static Optional<Warning> oneStintOnly(ClubTest test) {
        List<String> hit = test.configurations().stream()
                .filter(c -> test.stints().stream().anyMatch(
                        s -> s.configurationId().equals(c.id()) && !s.scoredShots().isEmpty()))
                .map(Configuration::label).toList();
        Map<Configuration, Integer> counts = distinctStints(test);
        List<String> single = counts.entrySet().stream()
                .filter(e -> e.getValue() == 1 && hit.contains(e.getKey().label()))
                .map(e -> e.getKey().label()).toList();
        if (hit.size() < 2 || single.isEmpty()) {
            return Optional.empty();
        }
        String sentence = single.size() == counts.size()
                ? "Every configuration has one stint only, so a grip can't be told from warming up or tiring; "
                        + "hit one again at the end."
                : listed(single) + (single.size() == 1 ? " has" : " have") + " one stint only; a retest would tell "
                        + "the grip from the order.";
        return Optional.of(new Warning(Kind.ONE_STINT_ONLY, sentence));
    }

    private static Optional<Warning> uneven(ClubTest test) {
        List<Stint> done = test.stints().stream()
                .filter(s -> s.state() == Stint.State.DONE && s.kind() == Stint.Kind.SCORED).toList();
        Stint fewest = null;
        Stint most = null;
        for (Stint stint : done) {
            fewest = fewest == null || shots(stint) < shots(fewest) ? stint : fewest;
            most = most == null || shots(stint) > shots(most) ? stint : most;
        }
        if (fewest == null || shots(most) < 2 * shots(fewest) || shots(most) - shots(fewest) < MANY_MORE) {
            return Optional.empty();
        }
        return Optional.of(new Warning(Kind.SHOTS_UNEVEN, "Shots per stint differ much: " + shots(fewest) + " with "
                + label(test, fewest) + ", " + shots(most) + " with " + label(test, most)
                + "; the shorter one decides how much can be told."));
    }

    private Optional<Warning> tiring(ClubTest test) {
        Optional<Stint> latest = test.stintInHand().or(() -> test.stints().stream()
                .filter(s -> s.state() == Stint.State.DONE).reduce((a, b) -> b));
        return latest.flatMap(stint -> SpeedFall.within(stint, test.stints()))
                .filter(SpeedFall::beyondNoise)
                .map(fall -> new Warning(Kind.TIRING, "Club speed fell by "
                        + text.mean(Metric.CLUB_SPEED, fall.fall()) + " " + text.unit(Metric.CLUB_SPEED).symbol()
                        + " over this stint, more than chance: probably tiring. Rest, or stop here."));
    }

    private Warning drifting(Drift drift) {
        return new Warning(Kind.DRIFT_LARGE, "Large drift: " + drift.metric().text() + " moved by "
                + text.difference(drift.metric(), drift.overSession()) + " "
                + text.unit(drift.metric()).symbol()
                + " over the session. It is allowed for; retests make that surer.");
    }

    private static int shots(Stint stint) {
        return stint.scoredShots().size();
    }

    private static String label(ClubTest test, Stint stint) {
        return test.configuration(stint.configurationId()).map(Configuration::label).orElse("?");
    }

    /** 'A', 'A and B', 'A, B and C'. */
    static String listed(List<String> labels) {
        if (labels.size() < 2) {
            return String.join("", labels);
        }
        return labels.subList(0, labels.size() - 1).stream().collect(Collectors.joining(", "))
                + " and " + labels.get(labels.size() - 1);
    }
}
