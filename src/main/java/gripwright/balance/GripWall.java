package gripwright.balance;

/**
 * How the outside of a grip follows what is under it.
 *
 * <p>Symbols: D outside and d inside diameter as moulded, d' what it is pulled over. Bench rule: the outside grows by
 * d' − d. Conserved cross-section at constant length: D'² = D² − d² + d'², the least that rubber which does not vanish can
 * do (exact geometry). The transfer factor t, measured by the shop for a material, is the share of d' − d that
 * arrives; whatever t, no less arrives than with a conserved cross-section. Lengthwise stretch of a grip of length L by s
 * conserves the volume: the cross-section shrinks by L/(L + s).
 */
public final class GripWall {

    private GripWall() {
    }

    /**
     * The outside over a shaft and tape of diameter {@code under}, mm.
     *
     * @param mouldedMm outside as moulded, above the core
     * @param coreMm inside as moulded
     * @param underMm what the grip is pulled over
     * @param transferFactor 1 for the bench rule; 0 for a conserved cross-section
     * @throws IllegalArgumentException when the core is not inside the grip
     */
    public static double outsideMm(double mouldedMm, double coreMm, double underMm, double transferFactor) {
        if (!(coreMm < mouldedMm)) {
            throw new IllegalArgumentException("The core (" + coreMm + " mm) must be thinner than the grip ("
                    + mouldedMm + " mm); check both.");
        }
        double bench = transferFactor * (underMm - coreMm);
        double conserved = Math.sqrt(mouldedMm * mouldedMm - coreMm * coreMm + underMm * underMm) - mouldedMm;
        return mouldedMm + (Math.abs(bench) > Math.abs(conserved) ? bench : conserved);
    }

    /**
     * The outside after a stretch, mm: √(d'² + (D'² − d'²) L/(L + s)).
     *
     * @param outsideMm before the stretch
     * @param underMm what the grip is over
     * @param lengthMm moulded length, above zero
     * @param stretchMm how much longer it was pulled, not negative
     */
    public static double stretchedMm(double outsideMm, double underMm, double lengthMm, double stretchMm) {
        double wall = outsideMm * outsideMm - underMm * underMm;
        return Math.sqrt(underMm * underMm + wall * lengthMm / (lengthMm + stretchMm));
    }
}
