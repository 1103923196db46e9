package gripwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The two ways to hold a posterior must agree where both apply: K operations for nested blocks, K^2 in general. */
class GridNodesTest {

    private static final SimulatedSession SESSION = SimulatedSession.of(new int[] {0, 1, 2, 3, 4, 2, 0},
        new int[] {6, 5, 6, 2, 7, 1, 4}, new double[] {0, 1, 0, 0.5, 0.2}, 1, 0.4, 5);
    private static final double[][] CONTRASTS = {{1, -1, 0, 0, 0, 0}, {0, 0, 1, 0, 0, 0}, {0.5, 0.5, -1, 0, 0, 0},
        {0, 0, 0, 0, 0, 1}, {0, 0, 0, 1, -1, 0.3}};

    private final BlockedData data =
        BlockedData.of(SESSION.response(), SESSION.group(), SESSION.order(), SESSION.block(), 5);
    private final GridNodes.FlatGrid grid =
        new GridNodes.FlatGrid(new LeastSquares(data, DriftPrior.USUAL), BlockPrior.USUAL);

    @Test
    void flatPosteriorsAgree() {
        compare(new NestedNodes(grid), new DenseNodes(grid));
    }

    @Test
    void exchangeablePosteriorsAgree() {
        compare(new NestedNodes(grid).exchangeable(GroupPrior.EXCHANGEABLE),
            new DenseNodes(grid).exchangeable(GroupPrior.EXCHANGEABLE));
    }

    @Test
    void drawsHaveTheMomentsOfTheirNode() {
        for (GridNodes nodes : new GridNodes[] {new NestedNodes(grid).exchangeable(GroupPrior.EXCHANGEABLE),
            new DenseNodes(grid).exchangeable(GroupPrior.EXCHANGEABLE), new DenseNodes(grid)}) {
            int node = nodes.size() / 2;
            double[] centre = nodes.coefficients(node);
            double[][] covariance = nodes.unscaledCovariance(node);
            double[][] root = new double[nodes.p][];
            for (int c = 0; c < nodes.p; c++) {
                double[] scores = new double[nodes.p];
                scores[c] = 1;
                root[c] = new double[nodes.p];
                nodes.draw(node, 2, scores, root[c]);
            }
            for (int r = 0; r < nodes.p; r++) {
                for (int q = 0; q < nodes.p; q++) {
                    double sum = 0;
                    for (int c = 0; c < nodes.p; c++) {
                        sum += (root[c][r] - centre[r]) * (root[c][q] - centre[q]);
                    }
                    assertThat(sum).isCloseTo(4 * covariance[r][q], within(1e-12));
                }
            }
        }
    }

    private static void compare(GridNodes nested, GridNodes dense) {
        assertThat(nested.size()).isEqualTo(dense.size()).isGreaterThan(20);
        double[] location = new double[nested.size()];
        double[] spread = new double[nested.size()];
        double[] otherLocation = new double[nested.size()];
        double[] otherSpread = new double[nested.size()];
        assertThat(nested.weight).containsExactly(dense.weight, within(1e-11));
        assertThat(nested.squares).containsExactly(dense.squares, within(1e-10));
        for (double[] c : CONTRASTS) {
            nested.contrast(c, 3, location, spread);
            dense.contrast(c, 3, otherLocation, otherSpread);
            assertThat(location).containsExactly(otherLocation, within(1e-10));
            assertThat(spread).containsExactly(otherSpread, within(1e-10));
        }
        for (int node = 0; node < nested.size(); node += 7) {
            assertThat(nested.coefficients(node)).containsExactly(dense.coefficients(node), within(1e-10));
            for (int r = 0; r < nested.p; r++) {
                assertThat(nested.unscaledCovariance(node)[r])
                    .containsExactly(dense.unscaledCovariance(node)[r], within(1e-10));
            }
        }
    }
}
