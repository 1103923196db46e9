package gripwright.statistics;

import java.util.SplittableRandom;

/** Made-up values in blocks for tests: group effects, a drift, block effects and noise, all from a seed. */
record SimulatedSession(double[] response, int[] group, double[] order, int[] block) {

    /**
     * @param plan the group of each block in order of time
     * @param sizes the number of rows of each block
     */
    static SimulatedSession of(int[] plan, int[] sizes, double[] means, double drift, double tau, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int rows = java.util.Arrays.stream(sizes).sum();
        double[] response = new double[rows];
        double[] order = new double[rows];
        int[] group = new int[rows];
        int[] block = new int[rows];
        int i = 0;
        for (int j = 0; j < plan.length; j++) {
            double effect = tau * random.nextGaussian();
            for (int s = 0; s < sizes[j]; s++, i++) {
                group[i] = plan[j];
                block[i] = j;
                order[i] = i + 1;
                response[i] = means[plan[j]] + drift * ((double) i / rows - 0.5) + effect + random.nextGaussian();
            }
        }
        return new SimulatedSession(response, group, order, block);
    }

    /** The mirrored order 0 1 .. K-1 K-1 .. 1 0. */
    static int[] mirrored(int groups) {
        int[] plan = new int[2 * groups];
        for (int k = 0; k < groups; k++) {
            plan[k] = k;
            plan[2 * groups - 1 - k] = k;
        }
        return plan;
    }

    static int[] sizes(int blocks, int each) {
        int[] sizes = new int[blocks];
        java.util.Arrays.fill(sizes, each);
        return sizes;
    }

    MixedModelFit fit(MixedModelFitter fitter) {
        return fitter.fit(response, group, order, block);
    }

    /** The covariate as the model scales it. */
    double[] scaledOrder() {
        double mean = java.util.Arrays.stream(order).average().orElseThrow();
        double range = order[order.length - 1] - order[0];
        return java.util.Arrays.stream(order).map(x -> (x - mean) / range).toArray();
    }
}
