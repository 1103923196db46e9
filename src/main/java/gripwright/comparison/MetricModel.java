package gripwright.comparison;

import java.util.List;

/**
 * What the model says of a metric beyond the configurations.
 *
 * @param residualSd shot-to-shot standard deviation within a stint, internal units
 * @param stintSd stint-to-stint standard deviation, internal units
 * @param driftPerShot change per swing over the session that was allowed for; null where there is no drift term
 * @param driftOverSession the same from the first shot to the last, with its interval; null where there is none
 * @param stintPriorStrained whether the session's stint-to-stint variation and the shop's usual figure disagree
 * @param notIdentified what this session can't tell apart
 */
public record MetricModel(double residualSd, double stintSd, Double driftPerShot, Estimate driftOverSession,
        boolean stintPriorStrained, List<NotIdentifiedPart> notIdentified) {

    public MetricModel {
        notIdentified = List.copyOf(notIdentified);
    }
}
