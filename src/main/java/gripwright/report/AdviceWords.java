package gripwright.report;

import gripwright.comparison.Comparison;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Session;
import java.util.Optional;

/**
 * The advice as a player reads it: the fitter's own where the fitter has given one, beside what the numbers choose.
 *
 * @param configurationId what is advised; null where nothing is
 * @param headline one sentence
 * @param beside what the numbers choose, where the fitter advises something else; else empty
 */
public record AdviceWords(String configurationId, String headline, String beside) {

    public static AdviceWords of(Session session, ClubTest test, Comparison comparison) {
        Optional<Configuration> own = Optional.ofNullable(session.advisedConfigurationId()).flatMap(test::configuration);
        String worked = comparison.advice().configurationId();
        if (own.isEmpty() || own.get().id().equals(worked)) {
            return new AdviceWords(worked, comparison.advice().headline(), "");
        }
        return new AdviceWords(own.get().id(), "Your fitter advises " + own.get().label() + ", "
                + own.get().grip().name() + ".", "By the numbers alone: " + comparison.advice().headline());
    }
}
