package gripwright.comparison;

import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Metric;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Compares the configurations of a test: options in, one immutable result out, the same for the same session, on any
 * thread.
 */
public final class Comparer {

    private final ShopSettings shop;

    private Comparer(ShopSettings shop) {
        this.shop = shop;
    }

    /** A comparer with a shop's thresholds, priors and smallest differences. */
    public static Comparer withSettings(ShopSettings shop) {
        return new Comparer(Objects.requireNonNull(shop, "settings of the shop"));
    }

    /** All tests of a session, each by itself: readings of different clubs never meet. */
    public List<Comparison> compareAll(Session session) {
        return session.tests().stream().map(test -> compare(session, test)).toList();
    }

    /** One test against its own reference. */
    public Comparison compare(Session session, ClubTest test) {
        return compare(session, test, null);
    }

    /**
     * One test against a chosen reference.
     *
     * @param session the session the test is of, for the goal, the player and the smallest differences
     * @param test the test
     * @param referenceId identity of the reference; null for the test's own
     * @throws IllegalArgumentException if the test has no such configuration
     */
    public Comparison compare(Session session, ClubTest test, String referenceId) {
        String reference = reference(test, referenceId);
        PlayedTest played = PlayedTest.of(test);
        List<MetricComparison> metrics = new ArrayList<>();
        for (Metric metric : Metric.values()) {
            MetricRows rows = played.rows(metric);
            if (rows.size() > 0) {
                metrics.add(new MetricComparer(session, test, shop, reference).compare(rows));
            }
        }
        return new Comparison(test.id(), test.club().name(), session.player().hand(), reference, shop.verdicts(),
                counts(played, reference), metrics, List.of(), List.of(), List.of(), List.of(), List.of(),
                nothingToAdvise(), List.of(), List.of(), sentences(played));
    }

    private static String reference(ClubTest test, String referenceId) {
        if (referenceId == null) {
            return test.reference().map(Configuration::id).orElse(null);
        }
        return test.configuration(referenceId).map(Configuration::id).orElseThrow(() -> new IllegalArgumentException(
                "The " + test.club().name() + " test has no configuration '" + referenceId
                        + "' to compare with; name one of its own."));
    }

    private static List<ComparedConfiguration> counts(PlayedTest played, String reference) {
        List<ComparedConfiguration> counts = new ArrayList<>();
        for (int k = 0; k < played.configurations().size(); k++) {
            Configuration configuration = played.configurations().get(k);
            int index = k;
            List<PlayedShot> all = played.shots().stream().filter(s -> s.configuration() == index).toList();
            counts.add(new ComparedConfiguration(configuration.id(), configuration.label(), configuration.gamer(),
                    configuration.id().equals(reference), all.size(),
                    (int) all.stream().filter(PlayedShot::isScored).count(),
                    (int) all.stream().filter(s -> s.counts() && s.shot().isSetAside()).count(),
                    (int) all.stream().filter(PlayedShot::isScored).mapToInt(PlayedShot::run).distinct().count()));
        }
        return counts;
    }

    private static Advice nothingToAdvise() {
        return new Advice(null, null, false, false, "Nothing to advise yet.", "", "",
                List.of("No shot has been scored."));
    }

    private static List<String> sentences(PlayedTest played) {
        List<String> sentences = new ArrayList<>();
        if (played.shots().stream().noneMatch(PlayedShot::isScored)) {
            sentences.add("No shot has been scored yet; hit some, or take set-aside ones back in.");
        }
        if (played.rehearsalsLeftOut() > 0) {
            sentences.add(played.rehearsalsLeftOut() + " rehearsal shots are left out of the comparison.");
        }
        return sentences;
    }
}
