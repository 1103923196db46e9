package gripwright.statistics;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Sums of squares within blocks, gathered by group, with their degrees of freedom.
 *
 * @param sumOfSquares     one for each group
 * @param degreesOfFreedom one for each group: values less blocks
 */
record WithinBlockSquares(double[] sumOfSquares, int[] degreesOfFreedom) {

    private record Cell(int group, int block) {
    }

    static WithinBlockSquares of(double[] values, int[] group, int[] block, int groups) {
        if (values.length != group.length || values.length != block.length) {
            throw new IllegalArgumentException("Values, groups and blocks differ in length: " + values.length + ", "
                + group.length + ", " + block.length);
        }
        Map<Cell, double[]> cells = new LinkedHashMap<>();
        for (int i = 0; i < values.length; i++) {
            if (group[i] < 0 || group[i] >= groups) {
                throw new IllegalArgumentException("Row " + i + " has group " + group[i] + " of " + groups);
            }
            if (!Double.isNaN(values[i])) {
                double[] appended = cells.getOrDefault(new Cell(group[i], block[i]), new double[0]);
                appended = Arrays.copyOf(appended, appended.length + 1);
                appended[appended.length - 1] = values[i];
                cells.put(new Cell(group[i], block[i]), appended);
            }
        }
        double[] sums = new double[groups];
        int[] freedom = new int[groups];
        cells.forEach((cell, inside) -> {
            Sample sample = Sample.of(inside);
            sums[cell.group()] += sample.sumOfSquares();
            freedom[cell.group()] += sample.count() - 1;
        });
        return new WithinBlockSquares(sums, freedom);
    }

    int totalDegreesOfFreedom() {
        return Arrays.stream(degreesOfFreedom).sum();
    }

    double totalSumOfSquares() {
        return Arrays.stream(sumOfSquares).sum();
    }

    int groupsWithFreedom() {
        return (int) Arrays.stream(degreesOfFreedom).filter(f -> f > 0).count();
    }
}
