package gripwright.comparison;

/**
 * One metric of one configuration: what was read, and what the model makes of it.
 *
 * @param configurationId which configuration
 * @param label its label
 * @param shots scored shots with this reading
 * @param stints stints they were hit in
 * @param mean plain mean; null without a shot
 * @param sd plain standard deviation (n − 1); null below two shots
 * @param interval 95 % interval of the plain mean by Student's t; null below two shots
 * @param estimate the model's mean at the middle of the session, with its interval; null where there is no model
 * @param probabilityBest probability that it serves best under the prior for choosing; null where the metric isn't
 *     scored or there is no model
 */
public record ConfigurationFigures(String configurationId, String label, int shots, int stints, Double mean, Double sd,
        Interval interval, Estimate estimate, Double probabilityBest) {

    ConfigurationFigures withProbabilityBest(Double probability) {
        return new ConfigurationFigures(configurationId, label, shots, stints, mean, sd, interval, estimate,
                probability);
    }
}
