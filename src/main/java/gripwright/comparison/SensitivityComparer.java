package gripwright.comparison;

import gripwright.model.Configuration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** Reads a test in other ways and says which verdicts come out otherwise. */
final class SensitivityComparer {

    private static final String[] ORDINALS = {"first", "second", "third", "fourth", "fifth", "sixth", "seventh",
        "eighth", "ninth", "tenth"};

    private final Comparison stands;
    private final PlayedTest played;
    private final Function<PlayedTest, Comparison> usual;
    private final Function<PlayedTest, Comparison> cautious;
    private final List<Sensitivity.Variation> variations = new ArrayList<>();

    /**
     * @param stands the comparison as it stands
     * @param usual compares with the settings as they are
     * @param cautious compares with the cautious prior
     */
    SensitivityComparer(Comparison stands, PlayedTest played, Function<PlayedTest, Comparison> usual,
            Function<PlayedTest, Comparison> cautious) {
        this.stands = stands;
        this.played = played;
        this.usual = usual;
        this.cautious = cautious;
    }

    Sensitivity sensitivity() {
        long aside = played.shots().stream().filter(s -> s.counts() && s.shot().isSetAside()).count();
        if (aside > 0) {
            add(Sensitivity.Kind.SET_ASIDE_BACK, aside == 1 ? "with the shot that was set aside"
                    : "with the " + aside + " shots that were set aside", usual.apply(played.withSetAsideBack()));
        }
        leaveEachRunOut();
        add(Sensitivity.Kind.CAUTIOUS_PRIOR, "with the cautious figure for stint-to-stint variation",
                cautious.apply(played));
        return new Sensitivity(variations);
    }

    private void leaveEachRunOut() {
        Set<Integer> runs = new LinkedHashSet<>();
        played.shots().stream().filter(PlayedShot::isScored).forEach(s -> runs.add(s.run()));
        if (runs.size() < 2) {
            return;
        }
        int place = 0;
        for (int run : runs) {
            PlayedShot first = played.shots().stream().filter(s -> s.run() == run && s.isScored()).findFirst()
                    .orElseThrow();
            Configuration configuration = played.configurations().get(first.configuration());
            add(Sensitivity.Kind.WITHOUT_STINT, "without the " + ordinal(place) + " stint (" + configuration.label() + ")",
                    usual.apply(played.only(s -> s.run() != run || !s.counts())));
            place++;
        }
    }

    private static String ordinal(int place) {
        return place < ORDINALS.length ? ORDINALS[place] : (place + 1) + "th";
    }

    private void add(Sensitivity.Kind kind, String description, Comparison other) {
        List<Sensitivity.VerdictChange> changes = new ArrayList<>();
        for (MetricComparison metric : stands.metrics()) {
            for (Difference difference : metric.differences()) {
                other.metric(metric.metric()).flatMap(m -> m.difference(difference.of(), difference.against()))
                        .filter(d -> d.verdict() != difference.verdict() || d.leaning() != difference.leaning())
                        .ifPresent(d -> changes.add(new Sensitivity.VerdictChange(metric.metric(), difference.of(),
                                difference.ofLabel(), difference.against(), difference.againstLabel(),
                                difference.verdict(), difference.leaning(), d.verdict(), d.leaning())));
            }
        }
        String choice = stands.advice().configurationId();
        boolean changed = choice != null && !choice.equals(other.advice().configurationId());
        variations.add(new Sensitivity.Variation(kind, description, changes, other.advice().label(), changed, other));
    }
}
