package gripwright.statistics;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * The engine's share of a full comparison: twenty responses, eight groups, all pairs with their intervals and family
 * adjustment, and 4,096 draws under the exchangeable prior.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class MixedModelBenchmark {

    private static final int RESPONSES = 20;
    private static final int GROUPS = 8;
    private static final int DRAWS = 4096;
    private static final int PER_BLOCK = 6;

    /** Rows per response; 240 is a long session. */
    @Param({"240", "2400"})
    public int rows;

    private double[][] response;
    private int[] group;
    private int[] block;
    private double[] order;
    private double[][] points;
    private MixedModelFitter fitter;

    /** Mirrored order of blocks of six, drift, block effects of 0.3 and differences of 0.2 between neighbours. */
    @Setup
    public void prepare() {
        SplittableRandom random = new SplittableRandom(20260101);
        response = new double[RESPONSES][rows];
        group = new int[rows];
        block = new int[rows];
        order = new double[rows];
        for (int i = 0; i < rows; i++) {
            block[i] = i / PER_BLOCK;
            int place = block[i] % (2 * GROUPS);
            group[i] = place < GROUPS ? place : 2 * GROUPS - 1 - place;
            order[i] = i;
        }
        double[][] blockEffect = new double[RESPONSES][rows / PER_BLOCK + 1];
        for (int m = 0; m < RESPONSES; m++) {
            for (int j = 0; j < blockEffect[m].length; j++) {
                blockEffect[m][j] = 0.3 * random.nextGaussian();
            }
            for (int i = 0; i < rows; i++) {
                // Now and then a reading is missing, so that degrees of freedom differ between responses.
                boolean missing = m % 4 == 3 && random.nextInt(40) == 0;
                response[m][i] = missing ? Double.NaN
                    : 0.2 * group[i] + (double) i / rows + blockEffect[m][block[i]] + random.nextGaussian();
            }
        }
        fitter = MixedModelFitter.withDefaults();
        points = QuasiRandomNormals.points(DRAWS, fitter.fit(response[0], group, order, block).scoresPerDraw(), 1);
    }

    /** Everything. */
    @Benchmark
    public double comparison() {
        double sum = 0;
        for (double[] values : response) {
            MixedModelFit fit = fitter.fit(values, group, order, block);
            sum += pairs(fit);
            sum += choose(fit);
        }
        return sum;
    }

    /** Only the posterior on its grid. */
    @Benchmark
    public double fitOnly() {
        double sum = 0;
        for (double[] values : response) {
            sum += fitter.fit(values, group, order, block).degreesOfFreedom();
        }
        return sum;
    }

    /** The posterior, means and all pairs. */
    @Benchmark
    public double fitAndPairs() {
        double sum = 0;
        for (double[] values : response) {
            sum += pairs(fitter.fit(values, group, order, block));
        }
        return sum;
    }

    /** Restricted maximum likelihood with drift, all pairs. */
    @Benchmark
    public double reml() {
        double sum = 0;
        for (double[] values : response) {
            RemlFit fit = fitter.fit(values, group, order, block).reml(true);
            for (int a = 0; a < GROUPS; a++) {
                for (int b = 0; b < a; b++) {
                    sum += fit.difference(a, b).kenwardRogerDegrees();
                }
            }
        }
        return sum;
    }

    private double pairs(MixedModelFit fit) {
        double d = 0.25 * fit.residualStandardDeviation().estimate();
        double sum = fit.blockStandardDeviation().estimate() + fit.drift().interval(0.95).lower();
        for (int a = 0; a < GROUPS; a++) {
            sum += fit.mean(a).interval(0.95).lower();
            for (int b = 0; b < a; b++) {
                ContrastPosterior difference = fit.difference(a, b);
                sum += difference.estimate() + difference.interval(0.95).upper();
                sum += difference.probabilityAbove(0) + difference.probabilityAbove(d)
                    + difference.probabilityBelow(-d);
                sum += difference.familyProbabilityAbove(d) + difference.familyProbabilityBelow(-d)
                    + difference.familyTwoSidedP();
            }
        }
        return sum;
    }

    private double choose(MixedModelFit fit) {
        PosteriorDraws draws = fit.with(GroupPrior.EXCHANGEABLE).draw(points);
        return draws.probabilityBest(true)[0];
    }
}
