package gripwright.balance;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Estimates the bare club and the grips' effective balance point from swingweight readings.
 *
 * <p>Model, in points above A0: y = b + k + (g / p) (x − x₀) + e, where k is what the load makes with the grip at the
 * prior place x₀, g the mass whose place is not known, p the point. b has a flat prior, x ~ N(x₀, s²), and
 * e ~ N(0, σ² + s_load²) is the scale's noise with the doubt of the load. The posterior is normal, its precision the sum
 * of a a'/var over the readings plus the prior's (conjugate linear regression). With one reading x stays at its prior
 * and b is that reading's. Half a point of noise leaves a doubt of about an inch in x from two grips that differ by
 * 25 g or so, which is why the prior decides unless many readings are taken.
 *
 * @param scale the scale
 * @param noisePoints SD of one reading, points
 * @param prior prior of the grips' balance point from the cap's face, mm
 * @param bareMass mass of the bare club, g: only the lever of different caps acts on it
 */
public record ReadingFitter(SwingweightScale scale, double noisePoints, Estimate prior, Estimate bareMass) {

    /** A reading this many SDs from what the rest predicts can't be right (one in 370 by chance). */
    static final double FLAG_SDS = 3;
    private static final int FEWEST_TO_FLAG = 3;

    /**
     * Fits, leaving out what can't be right: from three readings on the one furthest from what the others predict is
     * flagged when it is more than three SDs off, and the fit repeated while three unflagged readings remain.
     *
     * @param readings at least one
     * @throws IllegalArgumentException without a reading
     */
    public ReadingFit fit(List<ScaleReading> readings) {
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("Read the swingweight of the club at least once, with a weighed grip on.");
        }
        Set<Integer> flagged = new HashSet<>();
        int worst = worst(readings, flagged);
        while (worst >= 0) {
            flagged.add(worst);
            worst = worst(readings, flagged);
        }
        ReadingFit solved = solve(without(readings, flagged), readings);
        List<ReadingFit.Residual> residuals = new ArrayList<>();
        for (int index = 0; index < readings.size(); index++) {
            residuals.add(residual(readings, index, flagged, solved));
        }
        return new ReadingFit(solved.bare(), solved.gripBalancePointMm(), solved.covariance(), residuals, bareMass,
                solved.referenceCapMm(), scale);
    }

    /** The reading that can't be right, by its place; −1 where all can. */
    private int worst(List<ScaleReading> readings, Set<Integer> flagged) {
        if (readings.size() - flagged.size() < FEWEST_TO_FLAG) {
            return -1;
        }
        int worst = -1;
        double most = FLAG_SDS;
        for (int index = 0; index < readings.size(); index++) {
            if (flagged.contains(index)) {
                continue;
            }
            Estimate rest = fromTheRest(readings, index, flagged);
            double off = Math.abs(readings.get(index).read().points() - rest.value());
            double sds = off / Math.hypot(rest.standardDeviation(), noisePoints);
            if (sds > most) {
                most = sds;
                worst = index;
            }
        }
        return worst;
    }

    private Estimate fromTheRest(List<ScaleReading> readings, int index, Set<Integer> flagged) {
        Set<Integer> out = new HashSet<>(flagged);
        out.add(index);
        return solve(without(readings, out), readings).predict(readings.get(index).load());
    }

    private static List<ScaleReading> without(List<ScaleReading> readings, Set<Integer> out) {
        List<ScaleReading> rest = new ArrayList<>();
        for (int index = 0; index < readings.size(); index++) {
            if (!out.contains(index)) {
                rest.add(readings.get(index));
            }
        }
        return rest;
    }

    private ReadingFit.Residual residual(List<ScaleReading> readings, int index, Set<Integer> flagged,
            ReadingFit solved) {
        ScaleReading reading = readings.get(index);
        double fitted = solved.predict(reading.load()).value();
        double misfit = reading.read().points() - fitted;
        Estimate rest = readings.size() > 1 ? fromTheRest(readings, index, flagged) : null;
        boolean wrong = flagged.contains(index);
        String sentence = "";
        if (wrong) {
            sentence = String.format(Locale.ROOT,
                    "%s: %s can't be right, the other readings predict %s \u00B1 %.1f; read it again. It is left out.",
                    reading.source(), reading.read().text(),
                    new gripwright.units.Swingweight(rest.value()).text(), rest.standardDeviation());
        } else if (readings.size() == 2 && Math.abs(reading.read().points() - rest.value())
                > FLAG_SDS * Math.hypot(rest.standardDeviation(), noisePoints)) {
            sentence = "The two readings do not agree; read a third to see which of them is off.";
        }
        return new ReadingFit.Residual(reading, fitted, misfit, wrong, rest, sentence);
    }

    /** The posterior from these readings; the reference cap is that of all, so that fits of subsets compare. */
    private ReadingFit solve(List<ScaleReading> used, List<ScaleReading> all) {
        double cap = all.stream().mapToDouble(reading -> reading.load().capMm()).average().orElse(0);
        double point = scale.pointGramMm();
        double place = prior.standardDeviation();
        RealMatrix precision = new Array2DRowRealMatrix(new double[][] {{0, 0}, {0, 1 / (place * place)}});
        RealVector weighted = new ArrayRealVector(2);
        for (ScaleReading reading : used) {
            ScaleReading.Load load = reading.load();
            double known = (load.knownMomentGramMm() + load.gripGrams() * (prior.value() - scale.fulcrumMm())
                    + bareMass.value() * (load.capMm() - cap)) / point;
            double bareSd = bareMass.standardDeviation() * (load.capMm() - cap) / point;
            double variance = noisePoints * noisePoints + load.pointsSd() * load.pointsSd() + bareSd * bareSd;
            RealVector row = new ArrayRealVector(new double[] {1, load.gripGrams() / point});
            precision = precision.add(row.outerProduct(row).scalarMultiply(1 / variance));
            weighted = weighted.add(row.mapMultiply((reading.read().points() - known) / variance));
        }
        RealMatrix covariance = new CholeskyDecomposition(precision).getSolver().getInverse();
        RealVector solution = covariance.operate(weighted);
        return new ReadingFit(new Estimate(solution.getEntry(0), Math.sqrt(covariance.getEntry(0, 0))),
                new Estimate(prior.value() + solution.getEntry(1), Math.sqrt(covariance.getEntry(1, 1))),
                covariance.getEntry(0, 1), List.of(), bareMass, cap, scale);
    }
}
