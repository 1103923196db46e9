package gripwright.comparison;

import java.util.List;

/**
 * What the model says of a metric beyond the configurations.
 *
 * @param residualSd shot-to-shot standard deviation within a stint, internal units; null where it can't be told
 * @param stintSd stint-to-stint standard deviation, internal units; null where it can't be told
 * @param driftPerShot change per swing over the test that was allowed for, internal units; null where there is none
 * @param driftOverSession the same from the first swing to the last, with its interval; null where there is none
 * @param stintPriorStrained whether this session's stint-to-stint variation is well above the shop's usual figure, so
 *     that claims are less sure than they say
 * @param notIdentified what this session can't tell
 */
public record MetricModel(Double residualSd, Double stintSd, Double driftPerShot, Estimate driftOverSession,
        boolean stintPriorStrained, List<NotIdentifiedPart> notIdentified) {

    public MetricModel {
        notIdentified = List.copyOf(notIdentified);
    }

    /** Whether there is a model at all; where there isn't, {@link #notIdentified()} says why. */
    public boolean isAvailable() {
        return notIdentified.stream().noneMatch(NotIdentifiedPart::prevents);
    }
}
