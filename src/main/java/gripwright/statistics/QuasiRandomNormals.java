package gripwright.statistics;

import java.util.SplittableRandom;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.apache.commons.math3.special.Erf;

/**
 * Points that fill a multivariate standard normal distribution evenly: a Sobol sequence, its first point skipped,
 * shifted digitally by a fixed seed and mapped through the normal quantile.
 *
 * <p>The same arguments always give the same points. The shift (exclusive or with random bits per dimension) keeps the
 * balance of the sequence and removes the zeros that the bare sequence begins with. Sobol (1967), directions by S. Joe
 * and F. Y. Kuo (2008) as in Commons Math; digital shift: A. B. Owen's survey of randomised quasi-Monte Carlo (2003).
 */
public final class QuasiRandomNormals {

    /** Dimensions known to the direction numbers. */
    public static final int MOST_DIMENSIONS = 1000;

    private static final double TWO_POW_52 = 0x1p52;

    private QuasiRandomNormals() {
    }

    /**
     * Makes the points.
     *
     * @param draws      how many, best a power of two
     * @param dimensions how many columns, 1 to {@link #MOST_DIMENSIONS}
     * @param seed       the seed of the digital shift
     * @return draws x dimensions standard normal scores
     * @throws IllegalArgumentException if a count is out of range
     */
    public static double[][] points(int draws, int dimensions, long seed) {
        if (draws < 0 || dimensions < 1 || dimensions > MOST_DIMENSIONS) {
            throw new IllegalArgumentException("Draws must not be negative and dimensions from 1 to " + MOST_DIMENSIONS
                + ": " + draws + ", " + dimensions);
        }
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(dimensions);
        sobol.skipTo(1);
        SplittableRandom random = new SplittableRandom(seed);
        long[] shift = random.longs(dimensions).map(bits -> bits >>> 12).toArray();
        double[][] points = new double[draws][];
        for (int i = 0; i < draws; i++) {
            double[] point = sobol.nextVector();
            for (int d = 0; d < dimensions; d++) {
                long digits = (long) (point[d] * TWO_POW_52) ^ shift[d];
                point[d] = Math.sqrt(2) * Erf.erfInv(2 * ((digits + 0.5) / TWO_POW_52) - 1);
            }
            points[i] = point;
        }
        return points;
    }
}
