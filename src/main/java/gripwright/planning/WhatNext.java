package gripwright.planning;

import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Note;
import gripwright.model.Stint;
import java.util.List;
import java.util.Optional;

/**
 * What to hit next, and why: a few words that read from two metres, and a sentence of reasons.
 *
 * @param headline 'two more, then D'
 * @param reason why
 * @param configurationId the configuration that is meant; null where none is
 * @param enough whether enough has been hit
 */
public record WhatNext(String headline, String reason, String configurationId, boolean enough) {

    private static final List<String> NUMBERS = List.of("none", "one", "two", "three", "four", "five", "six", "seven",
            "eight", "nine", "ten");

    /**
     * The advice from the queue alone, and where the queue is empty from what the stints lack.
     *
     * <p>In this order: pain noted since the last stint began stops; an unfinished stint is finished; a planned stint
     * is started; a configuration without a stint wants one; a test with one stint per configuration wants a retest of the first; the configuration with far fewer
     * shots than the others wants more; else enough has been hit, for the verdict as it stands.
     *
     * @param verdict the verdict so far in words, for the reason; empty where there is none yet
     */
    public static WhatNext of(ClubTest test, Optional<String> verdict) {
        return of(test, verdict, Optional.empty());
    }

    /**
     * The same with what it would take to settle more.
     *
     * @param outlook how many more shots would tell, in a sentence; empty where that isn't known
     */
    public static WhatNext of(ClubTest whole, Optional<String> verdict, Optional<String> outlook) {
        ClubTest test = whole.withoutRehearsals();
        if (test.configurations().isEmpty()) {
            return new WhatNext("nothing to hit yet", "Plan holds no configuration; add the gamer and one other there.",
                    null, false);
        }
        if (painJustNoted(test)) {
            return new WhatNext("stop: pain was noted", "Comfort comes first. Rest; if it stays, see a clinician "
                    + "before the next session.", null, true);
        }
        Optional<Stint> hand = test.stintInHand();
        if (hand.isPresent()) {
            return inHand(test, hand.get());
        }
        return next(test).map(stint -> start(test, stint)).orElseGet(() -> queueEmpty(test, verdict, outlook));
    }

    /** The stint that is planned next. */
    public static Optional<Stint> next(ClubTest test) {
        return test.stints().stream().filter(s -> s.state() == Stint.State.PLANNED).findFirst();
    }

    /** A small count in words, a larger one in figures. */
    public static String count(int number) {
        return number < NUMBERS.size() ? NUMBERS.get(number) : String.valueOf(number);
    }

    private static boolean painJustNoted(ClubTest test) {
        return test.stints().stream().filter(s -> s.state() != Stint.State.PLANNED).reduce((a, b) -> b)
                .map(s -> s.notes().stream().anyMatch(n -> n.kind() == Note.Kind.PAIN)).orElse(false);
    }

    private static WhatNext inHand(ClubTest test, Stint stint) {
        int settling = stint.kind() == Stint.Kind.SCORED
                ? Math.max(0, stint.settlingSwings() - stint.shots().size()) : 0;
        int left = Math.max(0, stint.plannedShots() - counted(stint));
        String after = next(test).map(s -> ", then " + name(test, s)).orElse("");
        String now = label(test, stint);
        if (settling > 0) {
            return new WhatNext(count(settling) + " to settle, then " + count(left),
                    "The first swings after a change are recorded and not scored.", stint.configurationId(), false);
        }
        if (left > 0) {
            return new WhatNext(count(left) + " more" + after, counted(stint) + " of " + stint.plannedShots()
                    + " planned shots with " + now + " are in" + setAside(stint) + ".", stint.configurationId(), false);
        }
        return new WhatNext("end this stint" + after, "All " + stint.plannedShots() + " planned shots with " + now
                + " are in; more than the others get would not be fair to them.", stint.configurationId(), false);
    }

    private static String setAside(Stint stint) {
        long aside = stint.shots().stream().filter(s -> s.isSetAside()).count();
        return aside == 0 ? "" : "; " + count((int) aside) + " set aside " + (aside == 1 ? "is" : "are")
                + " to be hit again";
    }

    private static int counted(Stint stint) {
        return stint.kind() == Stint.Kind.SCORED ? stint.scoredShots().size()
                : (int) stint.shots().stream().filter(s -> !s.isSetAside()).count();
    }

    private static WhatNext start(ClubTest test, Stint stint) {
        String settling = stint.kind() == Stint.Kind.SCORED && stint.settlingSwings() > 0
                ? count(stint.settlingSwings()) + " to settle, then " : "";
        return new WhatNext("next: " + name(test, stint), "Change the grip or club, check it is tight; " + settling
                + count(stint.plannedShots()) + (stint.kind() == Stint.Kind.WARM_UP ? " to warm up." : " that count."),
                stint.configurationId(), false);
    }

    private static WhatNext queueEmpty(ClubTest test, Optional<String> verdict, Optional<String> outlook) {
        var counts = FairTest.distinctStints(test);
        boolean retested = counts.values().stream().anyMatch(n -> n > 1);
        Optional<Configuration> first = test.stints().stream().filter(s -> s.kind() == Stint.Kind.SCORED).findFirst()
                .flatMap(s -> test.configuration(s.configurationId()));
        if (first.isEmpty()) {
            return new WhatNext("write the order", "No stint is planned; make the order in Plan, or repeat a stint "
                    + "from here.", null, false);
        }
        Optional<Configuration> unhit = test.configurations().stream()
                .filter(c -> counts.getOrDefault(c, 0) == 0).findFirst();
        if (unhit.isPresent()) {
            return new WhatNext("hit " + unhit.get().label(), "It is under test and has not been hit.",
                    unhit.get().id(), false);
        }
        if (!retested) {
            return new WhatNext("hit " + first.get().label() + " again", "It was hit first and nothing was hit twice, "
                    + "so warming up can't be told from the grip.", first.get().id(), false);
        }
        Optional<Configuration> scarce = shortest(test);
        if (scarce.isPresent()) {
            return new WhatNext("more with " + scarce.get().label(), "It has far fewer shots than the others.",
                    scarce.get().id(), false);
        }
        return new WhatNext("the plan is done", verdict.map(v -> "So far: " + (v.endsWith(".") ? v : v + ".") + " ").orElse("")
                + outlook.orElse("Hit more only where it could change the advice."), null, true);
    }

    private static Optional<Configuration> shortest(ClubTest test) {
        int most = 0;
        int fewest = Integer.MAX_VALUE;
        Configuration which = null;
        for (Configuration configuration : test.configurations()) {
            int shots = test.stints().stream().filter(s -> s.configurationId().equals(configuration.id()))
                    .mapToInt(s -> s.scoredShots().size()).sum();
            most = Math.max(most, shots);
            if (shots > 0 && shots < fewest) {
                fewest = shots;
                which = configuration;
            }
        }
        return which != null && most >= 2 * fewest + 1 ? Optional.of(which) : Optional.empty();
    }

    private static String name(ClubTest test, Stint stint) {
        String label = label(test, stint);
        boolean hitBefore = test.stints().stream().takeWhile(s -> !s.id().equals(stint.id()))
                .anyMatch(s -> s.kind() == Stint.Kind.SCORED && s.configurationId().equals(stint.configurationId()));
        return switch (stint.kind()) {
            case WARM_UP -> "warm-up with " + label;
            case SETTLING -> label + " to settle";
            case SCORED -> hitBefore ? label + " again" : label;
        };
    }

    private static String label(ClubTest test, Stint stint) {
        return test.configuration(stint.configurationId()).map(Configuration::label).orElse("?");
    }
}
