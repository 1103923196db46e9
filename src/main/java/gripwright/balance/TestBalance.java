package gripwright.balance;

import java.util.List;
import java.util.Optional;

/**
 * The balance of all configurations of one test.
 *
 * @param testId the test
 * @param clubName its club
 * @param configurations in their order
 * @param scale the scale, with the shop's settings
 * @param readings what the swingweights read say; null where none was read
 * @param scaleOffsetPoints how much higher the shop's scale reads than parts and letters from memory would have it;
 *     null without parts or without readings
 * @param sentences what to measure, for the club as a whole
 * @param warnings what is unusual about the club
 */
public record TestBalance(String testId, String clubName, List<ConfigurationBalance> configurations,
        SwingweightScale scale, ReadingFit readings, Double scaleOffsetPoints, List<String> sentences,
        List<String> warnings) {

    public TestBalance {
        configurations = List.copyOf(configurations);
        sentences = List.copyOf(sentences);
        warnings = List.copyOf(warnings);
    }

    /** The balance of the configuration with this identity. */
    public Optional<ConfigurationBalance> configuration(String configurationId) {
        return configurations.stream().filter(c -> c.configurationId().equals(configurationId)).findFirst();
    }

    /** The balance of the configuration with this label, letter case ignored. */
    public Optional<ConfigurationBalance> labelled(String label) {
        return configurations.stream().filter(c -> c.label().equalsIgnoreCase(label)).findFirst();
    }
}
