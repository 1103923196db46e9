package gripwright.statistics;

/**
 * The spread of one group within its blocks, raw and drawn towards the common spread.
 *
 * @param group                       index of the group
 * @param degreesOfFreedom            f: values less blocks
 * @param standardDeviation           root of the sum of squares within blocks over f; from f = 1 on
 * @param shrunkStandardDeviation     root of (f0 s0^2 + f s^2)/(f0 + f); from f = 1 on
 * @param posteriorDegreesOfFreedom   f0 + f, or f where there is nothing to be drawn to
 * @param interval                    of the standard deviation, central, by chi squared; from f = 1 on
 */
public record GroupSpread(int group, int degreesOfFreedom, Figure<Double> standardDeviation,
                          Figure<Double> shrunkStandardDeviation, double posteriorDegreesOfFreedom,
                          Figure<Interval> interval) {
}
