package gripwright.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;

/**
 * Whether the grips of a test differ in size, in mass, or in both together, so that the test could not tell them apart.
 *
 * <p>Pearson's correlation r between size and mass over the configurations that have both. The variance of an effect of
 * size with mass in the model is 1 / (1 − r²) times what it would be without (the variance inflation factor of multiple
 * regression with two predictors; Marquardt 1970, Technometrics 12:591): at r = 0.95 ten times. From which range a size
 * or a mass counts as differing, and which r counts as together, is our judgement, no source.
 *
 * @param finding what it comes to
 * @param correlation r; null where one of the two does not differ or fewer than two configurations have both
 * @param inflation 1 / (1 − r²); infinite for |r| = 1; null as for r
 * @param sentence for people
 */
public record SizeAndMass(Finding finding, Double correlation, Double inflation, String sentence) {

    /** What the two do over the configurations of a test. */
    public enum Finding {
        /** Fewer than two configurations have a size and a mass. */
        UNKNOWN,
        /** Neither differs. */
        ALIKE,
        /** Only the size differs: the clean test of size. */
        SIZE_ALONE,
        /** Only the mass differs: the clean test of mass. */
        MASS_ALONE,
        /** Both differ, and the test can tell them apart. */
        SEPARABLE,
        /** Both differ, and the test can hardly tell them apart. */
        HARDLY_SEPARABLE,
        /** Both move together: the test can't tell them apart. */
        CONFOUNDED
    }

    /** One configuration: its label, its size and the mass of its grip with all that is in the butt; null for unknown. */
    public record Point(String label, Double sizeMm, Double massGrams) {
    }

    /** One wrap of thin tape, 0.010 in. */
    static final double SIZE_DIFFERS_MM = 0.254;
    /** What two grips of one label may differ by. */
    static final double MASS_DIFFERS_GRAMS = 2;
    private static final double TOGETHER = 0.9;
    private static final double HARDLY = 0.7;

    /** Looks at the configurations of a test. */
    public static SizeAndMass of(List<Point> configurations) {
        List<Point> known = configurations.stream()
                .filter(point -> Objects.nonNull(point.sizeMm()) && Objects.nonNull(point.massGrams())).toList();
        if (known.size() < 2) {
            return new SizeAndMass(Finding.UNKNOWN, null, null, configurations.size() < 2
                    ? "With two configurations or more it is shown here whether size and mass move together."
                    : "Measure size and weigh the grips of at least two configurations: whether size and mass move "
                            + "together can't be told yet.");
        }
        double[] sizes = known.stream().mapToDouble(Point::sizeMm).toArray();
        double[] masses = known.stream().mapToDouble(Point::massGrams).toArray();
        boolean size = range(sizes) >= SIZE_DIFFERS_MM;
        boolean mass = range(masses) >= MASS_DIFFERS_GRAMS;
        if (!size || !mass) {
            return oneAlone(size, mass, left(configurations, known));
        }
        return together(sizes, masses, left(configurations, known));
    }

    private static SizeAndMass oneAlone(boolean size, boolean mass, String left) {
        if (size) {
            return new SizeAndMass(Finding.SIZE_ALONE, null, null,
                    "The grips differ in size and hardly in mass: the test tells what size does." + left);
        }
        if (mass) {
            return new SizeAndMass(Finding.MASS_ALONE, null, null,
                    "The grips differ in mass and hardly in size: the test tells what mass does." + left);
        }
        return new SizeAndMass(Finding.ALIKE, null, null,
                "The grips differ neither in size nor in mass by more than a wrap or 2 g." + left);
    }

    private static SizeAndMass together(double[] sizes, double[] masses, String left) {
        double r = sizes.length == 2 ? Math.signum((sizes[1] - sizes[0]) * (masses[1] - masses[0]))
                : new PearsonsCorrelation().correlation(sizes, masses);
        double inflation = Math.abs(r) >= 1 ? Double.POSITIVE_INFINITY : 1 / (1 - r * r);
        String figure = String.format(Locale.ROOT, " (r = %s%.2f)", r < 0 ? "\u2212" : "", Math.abs(r));
        if (Math.abs(r) >= TOGETHER) {
            String way = r > 0 ? "The thicker grips are the heavier ones" : "The thicker grips are the lighter ones";
            return new SizeAndMass(Finding.CONFOUNDED, r, inflation,
                    way + figure + ": the test can't tell what size does from what mass does." + left);
        }
        if (Math.abs(r) >= HARDLY) {
            return new SizeAndMass(Finding.HARDLY_SEPARABLE, r, inflation,
                    "Size and mass move much together" + figure
                            + ": the test can hardly tell what size does from what mass does." + left);
        }
        return new SizeAndMass(Finding.SEPARABLE, r, inflation,
                "Size and mass both differ and do not move together" + figure + ": the test can tell them apart." + left);
    }

    private static String left(List<Point> all, List<Point> known) {
        List<String> labels = new ArrayList<>(all.stream().filter(point -> !known.contains(point))
                .map(Point::label).toList());
        return labels.isEmpty() ? "" : " Not counted, size or mass unknown: " + FairTest.listed(labels) + ".";
    }

    private static double range(double[] values) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        return high - low;
    }

    /** Whether ballast or other configurations would help. */
    public boolean wantsCure() {
        return finding == Finding.CONFOUNDED || finding == Finding.HARDLY_SEPARABLE;
    }
}
