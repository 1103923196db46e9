package gripwright.comparison;

import gripwright.balance.GripEnd;
import gripwright.balance.GripProfile;
import gripwright.balance.ShaftProfile;
import gripwright.model.Configuration;
import gripwright.model.Metric;
import gripwright.statistics.Figure;
import gripwright.statistics.FiellerSet;
import gripwright.statistics.LevelCurve;
import gripwright.statistics.LevelResponse;
import gripwright.statistics.LevelResponseFitter;
import gripwright.statistics.TurningPoint;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** How metrics answer to the size of the grip: a straight line, a curve with a best size, or an honest 'can't tell'. */
final class SizeComparer {

    /** Diameters that differ by less are one size at the bench. */
    private static final double SAME_SIZE_MM = 0.05;
    private static final int LEAST_FREEDOM = 3;

    private final ComparisonTask task;
    private final Double[] upper;
    private final Double[] lower;
    private final Double[] mass;

    SizeComparer(ComparisonTask task) {
        this.task = task;
        List<Configuration> configurations = task.played().configurations();
        ShaftProfile shaft = new ShaftProfile(task.played().test().club().shaftDiameters());
        this.upper = new Double[configurations.size()];
        this.lower = new Double[configurations.size()];
        this.mass = new Double[configurations.size()];
        double lowerHand = task.shop().rulerPositionsMm().stream().mapToDouble(Double::doubleValue).max().orElse(0);
        for (int k = 0; k < upper.length; k++) {
            GripProfile profile = GripProfile.of(configurations.get(k), shaft, task.shop());
            if (profile.known()) {
                upper[k] = profile.at(task.shop().balance().sizePositionMm());
                lower[k] = lowerHand > 0 && lowerHand <= profile.lengthMm() ? profile.at(lowerHand) : null;
            }
            mass[k] = GripEnd.of(configurations.get(k), shaft, task.shop()).massGrams();
        }
    }

    /** The response of one metric at both places; empty where sizes are not known or not different. */
    List<SizeResponse> responses(FittedMetric fitted) {
        List<SizeResponse> responses = new ArrayList<>();
        if (fitted.fit().isAvailable() && fitted.fit().degreesOfFreedom() >= LEAST_FREEDOM) {
            add(fitted, SizeResponse.Place.UPPER_HAND, upper, responses);
            add(fitted, SizeResponse.Place.LOWER_HAND, lower, responses);
        }
        return responses;
    }

    private void add(FittedMetric fitted, SizeResponse.Place place, Double[] diameters, List<SizeResponse> responses) {
        int[] used = Arrays.stream(fitted.present()).filter(k -> diameters[k] != null).toArray();
        if (Arrays.stream(used).mapToObj(k -> sized(diameters[k])).distinct().count() < 2) {
            return;
        }
        double[] levels = Arrays.stream(used).mapToDouble(k -> sized(diameters[k])).toArray();
        double[] means = Arrays.stream(used).mapToDouble(k -> fitted.fit().mean(k).estimate()).toArray();
        LevelResponse response = LevelResponseFitter.withDefaults().fit(levels, means, fitted.covariance(used),
                fitted.fit().degreesOfFreedom(), covariate(used));
        responses.add(response(fitted, place, used, levels, response));
    }

    private static double sized(double diameter) {
        return Math.round(diameter / SAME_SIZE_MM) * SAME_SIZE_MM;
    }

    /** Mass of what is under the hands, where it is known for all and differs. */
    private double[] covariate(int[] used) {
        return Arrays.stream(used).allMatch(k -> mass[k] != null)
                && Arrays.stream(used).mapToObj(k -> mass[k]).distinct().count() > 1
                ? Arrays.stream(used).mapToDouble(k -> mass[k]).toArray() : null;
    }

    private SizeResponse response(FittedMetric fitted, SizeResponse.Place place, int[] used, double[] levels,
            LevelResponse response) {
        List<SizeResponse.Point> points = new ArrayList<>();
        for (int i = 0; i < used.length; i++) {
            Configuration c = task.played().configurations().get(used[i]);
            points.add(new SizeResponse.Point(c.id(), c.label(), levels[i], fitted.mean(used[i])));
        }
        boolean told = response.finding() != LevelResponse.Finding.CANNOT_TELL;
        TurningPoint turning = response.turningPoint().toOptional().orElse(null);
        boolean best = turning != null && turning.withinLevels() && servesAtTurn(fitted.aim(), turning);
        return new SizeResponse(fitted.rows().metric(), place, points, coefficient(response.line(), 1, 1),
                coefficient(response.curve(), 2, 2), best && told ? turning.level() : null,
                best && told ? set(turning.confidenceSet()) : null, sentence(fitted, place, response, best, turning));
    }

    /** Whether the turn of the curve is where the metric serves best. */
    private static boolean servesAtTurn(Aim aim, TurningPoint turning) {
        return switch (aim.direction()) {
            case HIGHER -> turning.highest();
            case LOWER -> !turning.highest();
            case NEAR_TARGET, NOT_SCORED -> false;
        };
    }

    private static Estimate coefficient(Figure<LevelCurve> curve, int power, double factor) {
        return curve.toOptional().map(c -> {
            gripwright.statistics.Interval interval = c.coefficientInterval(power);
            return new Estimate(factor * c.coefficient(power),
                    new Interval(factor * interval.lower(), factor * interval.upper()));
        }).orElse(null);
    }

    private static Interval set(FiellerSet set) {
        return set.isBounded() ? new Interval(set.interval().lower(), set.interval().upper())
                : new Interval(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    private String sentence(FittedMetric fitted, SizeResponse.Place place, LevelResponse response, boolean best,
            TurningPoint turning) {
        String where = place == SizeResponse.Place.UPPER_HAND ? "grip" : "lower hand of the grip";
        String metric = fitted.rows().metric().text();
        VerdictWords words = VerdictWords.forHand(task.session().player().hand());
        Metric which = fitted.rows().metric();
        String text = switch (response.finding()) {
            case TOO_FEW_LEVELS, CANNOT_TELL -> "These sizes can't tell whether " + metric + " answers to the size of the "
                    + where + "; that is not the same as no effect.";
            case RISING -> "Thicker " + where + ": " + words.changeWord(which, true)
                    + ", as far as these sizes go.";
            case FALLING -> "Thicker " + where + ": " + words.changeWord(which, false)
                    + ", as far as these sizes go.";
            case PEAK_WITHIN -> "A size in between is highest in " + metric + "; thinner and thicker are lower.";
            case VALLEY_WITHIN -> "A size in between is lowest in " + metric + "; thinner and thicker are higher.";
        };
        StringBuilder all = new StringBuilder(text);
        if (best && !turning.confidenceSet().isBounded()) {
            all.append(" Where the best size lies can't be bounded by these shots.");
        }
        if (response.distinctLevels() < LevelResponseFitter.LEVELS_FOR_CURVE) {
            all.append(" A curve needs four sizes or more.");
        }
        switch (response.covariateUse()) {
            case LEFT_OUT_COLLINEAR -> all.append(" Size and mass move together here: what is size and what is mass "
                    + "can't be told apart.");
            case LEFT_OUT_TOO_FEW_GROUPS -> all.append(" Too few configurations to allow for their mass.");
            case USED -> all.append(" The mass of the grips is allowed for.");
            case NOT_GIVEN -> { }
        }
        return all.toString();
    }
}
