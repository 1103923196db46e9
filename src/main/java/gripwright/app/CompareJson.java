package gripwright.app;

import gripwright.comparison.ClassicalFigures;
import gripwright.comparison.ComparedConfiguration;
import gripwright.comparison.Comparison;
import gripwright.comparison.ConfigurationFigures;
import gripwright.comparison.Difference;
import gripwright.comparison.FeelFigures;
import gripwright.comparison.MetricComparison;
import gripwright.comparison.MetricModel;
import gripwright.comparison.NotIdentifiedPart;
import gripwright.comparison.PatternDifference;
import gripwright.comparison.Sensitivity;
import gripwright.comparison.ShotPattern;
import gripwright.comparison.SizeResponse;
import gripwright.comparison.SpreadComparison;
import gripwright.comparison.Standing;
import gripwright.model.Direction;
import gripwright.model.Metric;
import gripwright.units.Dimension;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A comparison as a tree for JSON, in internal units; its schema is docs/json.md. */
final class CompareJson {

    private static final double WIDE = 0.95;

    private CompareJson() {
    }

    /** All tests under {@code tests}, the first one's content also at the top. */
    static Map<String, Object> of(List<Comparison> comparisons) {
        List<Object> tests = JsonTree.list(comparisons, CompareJson::test);
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("format", "gripwright-comparison");
        tree.put("formatVersion", 1);
        if (!comparisons.isEmpty()) {
            tree.putAll(test(comparisons.get(0)));
        }
        tree.put("tests", tests);
        return tree;
    }

    private static Map<String, Object> test(Comparison comparison) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("test", comparison.testId());
        tree.put("club", comparison.clubName());
        tree.put("reference", comparison.referenceId() == null ? null : comparison.label(comparison.referenceId()));
        tree.put("configurations", JsonTree.list(comparison.configurations(), CompareJson::counts));
        tree.put("metrics", JsonTree.list(comparison.metrics(), CompareJson::metric));
        tree.put("spread", JsonTree.list(comparison.spread(), CompareJson::spread));
        tree.put("mishitRates", JsonTree.list(comparison.mishitRates(), rate -> map("label", rate.label(),
                "shots", rate.shots(), "setAside", rate.setAside(), "rate", JsonTree.estimate(rate.rate()))));
        tree.put("patterns", JsonTree.list(comparison.patterns(), CompareJson::pattern));
        tree.put("patternDifferences", JsonTree.list(comparison.patternDifferences(),
                CompareJson::patternDifference));
        tree.put("overall", JsonTree.list(comparison.overall(), CompareJson::standing));
        tree.put("advice", map("label", comparison.advice().label(), "keepsGamer", comparison.advice().keepsGamer(),
                "proven", comparison.advice().proven(), "headline", comparison.advice().headline(),
                "carriedBy", comparison.advice().carriedBy(), "conflict", comparison.advice().conflict(),
                "reasons", comparison.advice().reasons()));
        tree.put("flags", JsonTree.list(comparison.flags(), flag -> map("shot", flag.shotId(), "stint",
                flag.stintId(), "label", comparison.label(flag.configurationId()),
                "metrics", flag.metrics().stream().map(Metric::key).toList(), "sentence", flag.sentence())));
        tree.put("sizeResponses", JsonTree.list(comparison.sizeResponses(), CompareJson::sizeResponse));
        tree.put("sentences", comparison.sentences());
        return tree;
    }

    private static Map<String, Object> counts(ComparedConfiguration configuration) {
        return map("label", configuration.label(), "gamer", configuration.gamer(),
                "reference", configuration.reference(), "swings", configuration.swings(),
                "scored", configuration.scored(), "setAside", configuration.setAside(),
                "stints", configuration.stints());
    }

    private static Map<String, Object> metric(MetricComparison metric) {
        Map<String, Object> tree = map("metric", metric.metric().key(), "unit", unit(metric.metric().dimension()),
                "direction", direction(metric.direction()), "target", JsonTree.number(metric.target()),
                "smallestDifference", metric.smallestDifference(),
                "smallestDifferenceRaised", metric.smallestDifferenceRaised(), "primary", metric.primary(),
                "modelled", metric.modelled());
        tree.put("model", model(metric.model()));
        tree.put("configurations", JsonTree.list(metric.configurations(), CompareJson::figures));
        tree.put("differences", JsonTree.list(metric.differences(), CompareJson::difference));
        tree.put("classical", classical(metric.classical()));
        tree.put("sentences", metric.sentences());
        return tree;
    }

    private static Map<String, Object> model(MetricModel model) {
        if (model == null) {
            return null;
        }
        return map("stintSd", JsonTree.number(model.stintSd()), "residualSd", JsonTree.number(model.residualSd()),
                "driftPerShot", JsonTree.number(model.driftPerShot()),
                "driftOverSession", JsonTree.estimate(model.driftOverSession()),
                "stintPriorStrained", model.stintPriorStrained(),
                "notIdentified", model.notIdentified().stream().map(NotIdentifiedPart::wire).toList());
    }

    private static Map<String, Object> figures(ConfigurationFigures figures) {
        return map("label", figures.label(), "shots", figures.shots(), "stints", figures.stints(),
                "mean", JsonTree.number(figures.mean()), "sd", JsonTree.number(figures.sd()),
                "interval", JsonTree.interval(figures.interval()), "estimate", JsonTree.estimate(figures.estimate()),
                "probabilityBest", JsonTree.number(figures.probabilityBest()));
    }

    private static Map<String, Object> difference(Difference difference) {
        return map("of", difference.ofLabel(), "against", difference.againstLabel(),
                "estimate", JsonTree.number(difference.estimate()), "interval", JsonTree.interval(difference.interval()),
                "gain", JsonTree.estimate(difference.gain()),
                "probabilityHigher", JsonTree.number(difference.probabilityHigher()),
                "probabilityPositive", JsonTree.number(difference.probabilityPositive()),
                "probabilityMatters", JsonTree.number(difference.probabilityMatters()),
                "probabilityMattersAdjusted", JsonTree.number(difference.probabilityMattersAdjusted()),
                "probabilityHarms", JsonTree.number(difference.probabilityHarms()),
                "probabilityHarmsAdjusted", JsonTree.number(difference.probabilityHarmsAdjusted()),
                "probabilitySame", JsonTree.number(difference.probabilitySame()),
                "verdict", difference.verdict().wire(), "leaning", difference.leaning().wire(),
                "change", difference.change().wire(), "reasons", difference.reasons());
    }

    private static Map<String, Object> classical(ClassicalFigures classical) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("anova", test(classical.anova()));
        tree.put("welchAnova", test(classical.welchAnova()));
        tree.put("brownForsythe", test(classical.brownForsythe()));
        tree.put("noiseDiffers", classical.noiseDiffers());
        tree.put("welch", JsonTree.list(classical.welch(), CompareJson::pair));
        tree.put("tukeyKramer", JsonTree.list(classical.tukeyKramer(), CompareJson::pair));
        tree.put("gamesHowell", JsonTree.list(classical.gamesHowell(), CompareJson::pair));
        ClassicalFigures.Reml reml = classical.reml();
        tree.put("reml", reml == null ? null : map("stintSd", JsonTree.number(reml.stintSd()),
                "residualSd", JsonTree.number(reml.residualSd()), "atBoundary", reml.atBoundary(),
                "satterthwaite", JsonTree.list(reml.satterthwaite(), CompareJson::pair),
                "kenwardRoger", JsonTree.list(reml.kenwardRoger(), CompareJson::pair)));
        return tree;
    }

    private static Map<String, Object> test(ClassicalFigures.FTest test) {
        return test == null ? null : map("f", JsonTree.number(test.f()), "df1", JsonTree.number(test.df1()),
                "df2", JsonTree.number(test.df2()), "p", JsonTree.number(test.p()));
    }

    private static Map<String, Object> pair(ClassicalFigures.PairTest pair) {
        return map("of", pair.of(), "against", pair.against(), "estimate", JsonTree.number(pair.estimate()),
                "interval", JsonTree.interval(pair.interval()), "df", JsonTree.number(pair.df()),
                "p", JsonTree.number(pair.p()));
    }

    private static Map<String, Object> spread(SpreadComparison spread) {
        return map("metric", spread.metric().key(), "unit", unit(spread.metric().dimension()),
                "primary", spread.primary(), "smallestDifference", spread.smallestDifference(),
                "priorDegreesOfFreedom", spread.priorDegreesOfFreedom(),
                "configurations", JsonTree.list(spread.configurations(), c -> map("label", c.label(),
                        "shots", c.shots(), "degreesOfFreedom", c.degreesOfFreedom(), "sd", JsonTree.number(c.sd()),
                        "shrunkSd", JsonTree.estimate(c.shrunkSd()),
                        "probabilitySteadiest", JsonTree.number(c.probabilitySteadiest()))),
                "ratios", JsonTree.list(spread.ratios(), r -> map("of", r.ofLabel(), "against", r.againstLabel(),
                        "ratio", JsonTree.estimate(r.ratio()), "probabilitySteadier", r.probabilitySteadier(),
                        "probabilityMattersAdjusted", r.probabilityMattersAdjusted(),
                        "probabilityHarmsAdjusted", r.probabilityHarmsAdjusted(),
                        "probabilitySame", r.probabilitySame(), "verdict", r.verdict().wire(),
                        "leaning", r.leaning().wire(), "reasons", r.reasons())),
                "brownForsythe", test(spread.brownForsythe()), "sentences", spread.sentences());
    }

    private static Map<String, Object> pattern(ShotPattern pattern) {
        ShotPattern.Ellipse wide = pattern.ellipse(WIDE);
        Map<String, Object> tree = map("label", pattern.label(), "shots", pattern.shots(),
                "centreCarry", JsonTree.number(pattern.centreCarry()),
                "centreOffline", JsonTree.number(pattern.centreOffline()),
                "semiMajor95", wide == null ? null : wide.semiMajor(),
                "semiMinor95", wide == null ? null : wide.semiMinor(),
                "angleDegrees", wide == null ? null : wide.angleDegrees(),
                "area95", wide == null ? null : wide.area(), "predictionSet", pattern.distribution());
        tree.put("ellipses", JsonTree.list(pattern.ellipses(), e -> map("coverage", e.coverage(),
                "semiMajor", e.semiMajor(), "semiMinor", e.semiMinor(), "angleDegrees", e.angleDegrees(),
                "area", e.area())));
        tree.put("varianceCarry", JsonTree.number(pattern.varianceCarry()));
        tree.put("varianceOffline", JsonTree.number(pattern.varianceOffline()));
        tree.put("covariance", JsonTree.number(pattern.covariance()));
        tree.put("distanceToTarget", JsonTree.estimate(pattern.distanceToTarget()));
        tree.put("misses", JsonTree.list(pattern.misses(), miss -> map("side", lower(miss.side()),
                "distance", miss.distance(), "probability", JsonTree.estimate(miss.probability()))));
        tree.put("sentences", pattern.sentences());
        return tree;
    }

    private static Map<String, Object> patternDifference(PatternDifference difference) {
        return map("of", difference.ofLabel(), "against", difference.againstLabel(),
                "carry", JsonTree.number(difference.carry()), "offline", JsonTree.number(difference.offline()),
                "tSquared", JsonTree.number(difference.tSquared()), "p", JsonTree.number(difference.p()));
    }

    private static Map<String, Object> standing(Standing standing) {
        Map<String, Object> tree = map("label", standing.label(),
                "probabilityBest", JsonTree.number(standing.probabilityBest()),
                "expectedGain", JsonTree.number(standing.expectedGain()),
                "probabilityWorthIt", JsonTree.number(standing.probabilityWorthIt()));
        tree.put("parts", JsonTree.list(standing.parts(), part -> map("name", part.name(), "metric", part.metricKey(),
                "spread", part.spread(), "weight", part.weight(), "expectedGain", JsonTree.number(part.expectedGain()),
                "probabilityBest", JsonTree.number(part.probabilityBest()))));
        tree.put("guardrails", JsonTree.list(standing.guardrails(), check -> map("sentence", check.sentence(),
                "metric", check.metricKey(), "spread", check.spread(), "probabilityKept", JsonTree.number(check.probabilityKept()))));
        tree.put("feel", feel(standing.feel()));
        return tree;
    }

    private static Map<String, Object> feel(FeelFigures feel) {
        return feel == null ? null : map("answers", feel.answers(), "comfort", feel.comfort(),
                "control", feel.control(), "confidence", feel.confidence(), "headWeight", feel.headWeight(),
                "size", feel.size(), "wouldPlay", feel.wouldPlay(), "wouldNotPlay", feel.wouldNotPlay(),
                "score", JsonTree.number(feel.score()));
    }

    private static Map<String, Object> sizeResponse(SizeResponse response) {
        return map("metric", response.metric().key(), "unit", unit(response.metric().dimension()),
                "place", response.place() == SizeResponse.Place.UPPER_HAND ? "upper-hand" : "lower-hand",
                "points", JsonTree.list(response.points(), p -> map("label", p.label(), "diameterMm", p.diameterMm(),
                        "estimate", JsonTree.estimate(p.estimate()))),
                "slopePerMm", JsonTree.estimate(response.slopePerMm()),
                "curvature", JsonTree.estimate(response.curvature()),
                "bestDiameterMm", JsonTree.number(response.bestDiameterMm()),
                "bestInterval", JsonTree.interval(response.bestInterval()), "sentence", response.sentence());
    }

    /** What changes when the sessions' tests are read another way, one list a test. */
    static List<Object> sensitivities(List<Sensitivity> sensitivities) {
        return JsonTree.list(sensitivities, sensitivity -> JsonTree.list(sensitivity.variations(),
                CompareJson::variation));
    }

    private static Object variation(Sensitivity.Variation variation) {
        return map("kind", lower(variation.kind()), "description", variation.description(),
                "adviceLabel", variation.adviceLabel(), "adviceChanges", variation.adviceChanges(),
                "changes", JsonTree.list(variation.changes(), change -> map("metric", change.metric().key(),
                        "of", change.ofLabel(), "against", change.againstLabel(), "verdict", change.verdict().wire(),
                        "leaning", change.leaning().wire(), "otherVerdict", change.otherVerdict().wire(),
                        "otherLeaning", change.otherLeaning().wire())));
    }

    private static String lower(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static String direction(Direction direction) {
        return lower(direction);
    }

    /** The internal unit in plain letters. */
    private static String unit(Dimension dimension) {
        return switch (dimension) {
            case ANGLE -> "deg";
            case ANGULAR_RATE -> "deg/s";
            case RATIO -> "1";
            default -> dimension.internalUnit().symbol();
        };
    }

    private static Map<String, Object> map(Object... keysAndValues) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int at = 0; at < keysAndValues.length; at += 2) {
            map.put((String) keysAndValues[at], keysAndValues[at + 1]);
        }
        return map;
    }
}
