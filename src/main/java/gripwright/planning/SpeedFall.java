package gripwright.planning;

import gripwright.model.Metric;
import gripwright.model.Stint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * How much the club speed fell within one stint, and whether noise alone would do that: the sign of a player who tires.
 *
 * @param fall how much slower the last shot is than the first along the straight line, m/s; negative where speed rose
 * @param chance probability that a stint without any trend shows a fall at least as large
 * @param shots readings that the line went through
 */
public record SpeedFall(double fall, double chance, int shots) {

    /** A fall that noise brings once in a hundred looks; looked at after every shot, so no larger. Our judgement. */
    static final double ALARM = 0.01;

    /** Fewer shots make no trend, whatever they do. Our judgement. */
    static final int FEWEST_SHOTS = 5;

    private record Line(double slope, double sxx, double residualSquares, int n, double span) {
    }

    /**
     * The fall within a stint, judged by the noise that all stints show.
     *
     * <p>In each stint a straight line y = a + b t by least squares, t the number of the shot in its stint (shots set
     * aside keep their number, settling swings are left out). Noise: s² = Σ RSS / Σ (n − 2) over all stints with three
     * readings or more. For this stint T = b √Sxx / s with Σ (n − 2) degrees of freedom, one-sided towards slower.
     * Standard theory of simple regression with a pooled variance.
     *
     * @return empty with fewer than five readings or where nothing varies
     */
    public static Optional<SpeedFall> within(Stint stint, List<Stint> all) {
        Optional<Line> own = line(stint).filter(line -> line.n() >= FEWEST_SHOTS);
        if (own.isEmpty()) {
            return Optional.empty();
        }
        double squares = 0;
        int degrees = 0;
        for (Stint other : all) {
            Optional<Line> line = line(other);
            if (line.isPresent()) {
                squares += line.get().residualSquares();
                degrees += line.get().n() - 2;
            }
        }
        if (degrees < 1 || squares <= 0) {
            return Optional.empty();
        }
        Line line = own.get();
        double t = line.slope() * Math.sqrt(line.sxx()) / Math.sqrt(squares / degrees);
        double chance = new TDistribution(null, degrees).cumulativeProbability(t);
        return Optional.of(new SpeedFall(-line.slope() * line.span(), chance, line.n()));
    }

    /** Whether the fall is more than noise would bring. */
    public boolean beyondNoise() {
        return fall > 0 && chance < ALARM;
    }

    private static Optional<Line> line(Stint stint) {
        List<double[]> points = points(stint);
        int n = points.size();
        if (n < 3) {
            return Optional.empty();
        }
        double meanT = points.stream().mapToDouble(p -> p[0]).average().orElseThrow();
        double meanY = points.stream().mapToDouble(p -> p[1]).average().orElseThrow();
        double sxx = 0;
        double sxy = 0;
        double syy = 0;
        for (double[] point : points) {
            sxx += (point[0] - meanT) * (point[0] - meanT);
            sxy += (point[0] - meanT) * (point[1] - meanY);
            syy += (point[1] - meanY) * (point[1] - meanY);
        }
        double slope = sxy / sxx;
        return Optional.of(new Line(slope, sxx, Math.max(0, syy - slope * sxy), n,
                points.get(n - 1)[0] - points.get(0)[0]));
    }

    private static List<double[]> points(Stint stint) {
        List<double[]> points = new ArrayList<>();
        for (int index = 0; index < stint.shots().size(); index++) {
            var shot = stint.shots().get(index);
            var speed = shot.readings().given(Metric.CLUB_SPEED);
            if (stint.isScoredAt(index) && !shot.isSetAside() && speed.isPresent()) {
                points.add(new double[] {index, speed.getAsDouble()});
            }
        }
        return points;
    }
}
