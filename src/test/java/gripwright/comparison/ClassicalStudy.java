package gripwright.comparison;

/** The textbook procedures that the study holds against ours: t-tests, Tukey on shots, REML with two kinds of df. */
interface ClassicalStudy {

    /**
     * Counts for each procedure whether it calls any pair different at 5 %.
     *
     * @param claims sessions with a claim: t-tests, Tukey, Satterthwaite, Kenward-Roger
     * @param runs sessions in which the procedure could be done
     */
    void count(MetricRows rows, int[] claims, int[] runs);
}
