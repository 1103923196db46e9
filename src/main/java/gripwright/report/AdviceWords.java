package gripwright.report;

import gripwright.comparison.Comparison;
import gripwright.comparison.Standing;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Session;
import java.util.Comparator;
import java.util.Optional;

/**
 * The advice as a player reads it: the fitter's own where the fitter has given one, beside what the numbers choose.
 *
 * @param configurationId what is advised; null where nothing is
 * @param headline one sentence
 * @param odds how likely it is that the change is worth it, as people say it; empty where nothing was worked out
 * @param beside what the numbers choose, where the fitter advises something else; else empty
 */
public record AdviceWords(String configurationId, String headline, String odds, String beside) {

    private static final String SERVES = " serves you noticeably better than ";
    private static final String IT_SERVES = " that it serves you noticeably better than ";

    public static AdviceWords of(Session session, ClubTest test, Comparison comparison) {
        Optional<Configuration> own = Optional.ofNullable(session.advisedConfigurationId()).flatMap(test::configuration);
        String worked = comparison.advice().configurationId();
        if (own.isEmpty() || own.get().id().equals(worked)) {
            return new AdviceWords(worked, comparison.advice().headline(), odds(comparison, worked), "");
        }
        return new AdviceWords(own.get().id(), "Your fitter advises " + own.get().label() + ", "
                + own.get().grip().name() + ".", odds(comparison, own.get().id()),
                "By the numbers alone: " + comparison.advice().headline());
    }

    private static String odds(Comparison comparison, String advised) {
        return comparison.overall().stream()
                .filter(s -> s.configurationId().equals(advised) && s.probabilityBest() != null).findFirst()
                .map(standing -> odds(comparison, standing)).orElse("");
    }

    private static String odds(Comparison comparison, Standing standing) {
        String reference = comparison.referenceId();
        if (standing.configurationId().equals(reference)) {
            return comparison.overall().stream().filter(s -> !s.configurationId().equals(reference))
                    .filter(s -> s.probabilityWorthIt() != null).max(Comparator.comparing(Standing::probabilityWorthIt))
                    .map(nearest -> "The odds: " + nearest.label() + " comes nearest, with "
                            + PlayerStory.chance(nearest.probabilityWorthIt()) + IT_SERVES + standing.label() + ".")
                    .orElse("");
        }
        String best = PlayerStory.chance(standing.probabilityBest()) + " that " + standing.label() + " is the best of all";
        String change = standing.probabilityWorthIt() == null || reference == null ? ""
                : PlayerStory.chance(standing.probabilityWorthIt()) + " that " + standing.label() + SERVES
                + comparison.label(reference) + "; ";
        return "The odds: " + change + best + ".";
    }
}
