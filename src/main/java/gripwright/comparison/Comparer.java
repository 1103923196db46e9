package gripwright.comparison;

import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Metric;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.statistics.MixedModelFitter;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Compares the configurations of a test: options in, one immutable result out, the same for the same session, on any
 * thread.
 */
public final class Comparer {

    private final ShopSettings shop;
    private final MixedModelFitter fitter = MixedModelFitter.withDefaults();
    private final ScorePoints points = new ScorePoints();
    private final RangeTables tables = new RangeTables();

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
        return compare(new ComparisonTask(session, shop, PlayedTest.of(test), reference, fitter, points, tables));
    }

    /** What would change if a test were read another way, against its own reference; see the other method. */
    public Sensitivity sensitivity(Session session, ClubTest test) {
        return sensitivity(session, test, null);
    }

    /**
     * What would change if a test were read another way: set-aside shots back in, each stint left out in turn, the
     * cautious prior. One full comparison each, so only on demand.
     *
     * @param session the session the test is of
     * @param test the test
     * @param referenceId identity of the reference; null for the test's own
     * @throws IllegalArgumentException if the test has no such configuration
     */
    public Sensitivity sensitivity(Session session, ClubTest test, String referenceId) {
        String reference = reference(test, referenceId);
        PlayedTest played = PlayedTest.of(test);
        ShopSettings cautious = shop.withVerdicts(shop.verdicts().cautious());
        return new SensitivityComparer(compare(session, test, referenceId), played,
                other -> compare(new ComparisonTask(session, shop, other, reference, fitter, points, tables)),
                other -> compare(new ComparisonTask(session, cautious, other, reference, fitter, points, tables)))
                .sensitivity();
    }

    private Comparison compare(ComparisonTask task) {
        PlayedTest played = task.played();
        Map<Metric, FittedMetric> fitted = fit(task);
        MetricComparer comparer = new MetricComparer(task);
        List<MetricComparison> metrics = fitted.values().stream().map(comparer::compare).toList();
        Map<Metric, FittedSpread> spreads = spreads(fitted);
        Chooser chooser = new Chooser(task, new GoalDraws(task, fitted, spreads));
        PatternComparer patterns = new PatternComparer(task);
        SizeComparer sizes = new SizeComparer(task);
        List<Standing> overall = chooser.standings();
        Advice advice = new Adviser(task, chooser, overall, metrics).advice();
        return new Comparison(played.test().id(), played.test().club().name(), task.session().player().hand(),
                task.reference(), task.settings(), counts(played, task.reference()), metrics,
                spreads.values().stream().map(s -> new SpreadComparer(task, s).compare()).toList(),
                new MishitComparer(played).rates(), patterns.patterns(), patterns.differences(), overall, advice,
                new MishitScreen(task).flags(), fitted.values().stream().flatMap(f -> sizes.responses(f).stream())
                .toList(), sentences(played));
    }

    private static Map<Metric, FittedMetric> fit(ComparisonTask task) {
        Map<Metric, FittedMetric> fitted = new EnumMap<>(Metric.class);
        for (Metric metric : Metric.values()) {
            FittedMetric one = task.fit(metric);
            if (one.rows().readings() > 0) {
                fitted.put(metric, one);
            }
        }
        return fitted;
    }

    private static Map<Metric, FittedSpread> spreads(Map<Metric, FittedMetric> fitted) {
        Map<Metric, FittedSpread> spreads = new EnumMap<>(Metric.class);
        fitted.forEach((metric, one) -> {
            FittedSpread spread = new FittedSpread(one.rows());
            if (spread.isAvailable()) {
                spreads.put(metric, spread);
            }
        });
        return spreads;
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
