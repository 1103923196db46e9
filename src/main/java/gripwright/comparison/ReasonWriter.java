package gripwright.comparison;

import gripwright.model.Direction;
import gripwright.model.Metric;
import gripwright.model.ReadingText;
import gripwright.units.NumberText;
import java.util.ArrayList;
import java.util.List;

/** Says in plain words why a verdict is what it is. */
final class ReasonWriter {

    /** A drift below this share of the smallest difference that matters isn't worth a word. */
    private static final double DRIFT_WORTH_A_WORD = 0.25;
    private static final int FEW_SHOTS = 5;

    private final FittedMetric fitted;
    private final PlayedTest played;
    private final Circumstances circumstances;
    private final ReadingText text;
    private final Metric metric;
    private final int pairs;

    /** @param pairs how many pairs the verdicts are adjusted for */
    ReasonWriter(FittedMetric fitted, PlayedTest played, Circumstances circumstances, ReadingText text, int pairs) {
        this.fitted = fitted;
        this.played = played;
        this.circumstances = circumstances;
        this.text = text;
        this.metric = fitted.rows().metric();
        this.pairs = pairs;
    }

    /** The reasons for a ruling on this pair; never empty. */
    List<String> reasons(int of, int against, PairFigures figures, VerdictRule.Ruling ruling, Change change) {
        List<String> reasons = new ArrayList<>();
        if (!figures.isKnown()) {
            reasons.addAll(whyNothing(of, against));
            return reasons;
        }
        reasons.add(main(figures, ruling, change));
        if (fitted.aim().direction() == Direction.NEAR_TARGET && ruling.verdict() == Verdict.NOT_SETTLED
                && (change == Change.HIGHER || change == Change.LOWER)) {
            reasons.add("The two do differ; which of them is nearer the target is what isn't settled.");
        }
        if (ruling.verdict() == Verdict.NOT_SETTLED && fitted.aim().isScored()) {
            String alone = onlyAlone(figures);
            if (!alone.isEmpty()) {
                reasons.add(alone);
            }
        }
        reasons.addAll(oneStint(of, against));
        few(of, reasons);
        few(against, reasons);
        drift(reasons);
        reasons.addAll(circumstances.of(of, against));
        return reasons;
    }

    private List<String> whyNothing(int of, int against) {
        List<String> reasons = new ArrayList<>();
        for (int side : new int[] {of, against}) {
            if (fitted.rows().readings(side) == 0) {
                reasons.add(label(side) + " has no reading of " + metric.text() + ".");
            }
        }
        if (reasons.isEmpty()) {
            fitted.notIdentified().stream().filter(NotIdentifiedPart::prevents)
                    .forEach(part -> reasons.add(part.sentence()));
        }
        return reasons;
    }

    private String main(PairFigures f, VerdictRule.Ruling ruling, Change change) {
        String d = size(fitted.smallest());
        boolean scored = fitted.aim().isScored();
        return switch (ruling.verdict()) {
            case BETTER, PROBABLY_BETTER -> "The gain is above " + d + " with a probability of " + percent(f.mattersAdjusted())
                    + together() + ".";
            case WORSE, PROBABLY_WORSE -> "The loss is above " + d + " with a probability of " + percent(f.harmsAdjusted())
                    + together() + ".";
            case SAME -> "The difference is worth less than " + d + " either way with a probability of " + percent(f.same()) + ".";
            case NOT_SETTLED -> scored ? notSettled(f) : described(f, change);
        };
    }

    private String notSettled(PairFigures f) {
        Interval gain = f.gain().interval();
        String range = range(gain);
        double d = fitted.smallest();
        String what = fitted.aim().direction() == Direction.NEAR_TARGET ? "The gain in nearness" : "The gain";
        if (gain.low() < -d && gain.high() > d) {
            return what + " may lie anywhere " + range + ": a gain that matters and a loss that matters are both possible.";
        }
        if (gain.high() > d) {
            return what + " may lie anywhere " + range + ": it may matter or not.";
        }
        if (gain.low() < -d) {
            return what + " may lie anywhere " + range + ": a loss that matters is possible.";
        }
        return what + " lies " + range + ": too small to matter, but that is not sure enough to call it the same.";
    }

    private String described(PairFigures f, Change change) {
        String why = fitted.aim().targetMissing() ? "nobody said which number to be near"
                : "whether more or less serves this player isn't said";
        return switch (change) {
            case HIGHER, PROBABLY_HIGHER -> "Not scored, since " + why + "; higher by more than "
                    + size(fitted.smallest()) + " with a probability of " + percent(f.up()) + together() + ".";
            case LOWER, PROBABLY_LOWER -> "Not scored, since " + why + "; lower by more than "
                    + size(fitted.smallest()) + " with a probability of " + percent(f.down()) + together() + ".";
            default -> "Not scored, since " + why + "; the difference may lie anywhere " + range(f.interval()) + ".";
        };
    }

    private String onlyAlone(PairFigures f) {
        double probable = fitted.probable();
        if (pairs > 1 && f.matters() >= probable) {
            return "Taken alone this pair would probably gain (" + percent(f.matters()) + "); among " + pairs
                    + " pairs some look so by chance.";
        }
        if (pairs > 1 && f.harms() >= probable) {
            return "Taken alone this pair would probably lose (" + percent(f.harms()) + "); among " + pairs
                    + " pairs some look so by chance.";
        }
        return "";
    }

    private List<String> oneStint(int of, int against) {
        List<String> one = new ArrayList<>();
        for (int side : new int[] {of, against}) {
            if (fitted.rows().runCount(side) == 1) {
                one.add(label(side));
            }
        }
        return one.isEmpty() ? List.of() : List.of(String.join(" and ", one)
                + (one.size() == 1 ? " was" : " were") + " hit in one stint only" + (one.size() == 1 ? "" : " each")
                + "; what was the stint and what the grip can't be told apart.");
    }

    private void few(int side, List<String> reasons) {
        int shots = fitted.rows().readings(side);
        if (shots < FEW_SHOTS) {
            reasons.add("Only " + shots + (shots == 1 ? " shot" : " shots") + " of " + label(side) + ".");
        }
    }

    private void drift(List<String> reasons) {
        Estimate drift = fitted.drift();
        if (drift == null) {
            return;
        }
        if (fitted.notIdentified().contains(NotIdentifiedPart.DRIFT)) {
            reasons.add("Drift can't be told from the configurations in this order; the usual figure widens the interval.");
        } else if (Math.abs(drift.value()) > DRIFT_WORTH_A_WORD * fitted.smallest()
                && text.difference(metric, drift.value()).chars().anyMatch(c -> c >= '1' && c <= '9')) {
            reasons.add("A drift of " + signed(drift.value()) + " over the test was allowed for.");
        }
    }

    private String label(int configuration) {
        return played.configurations().get(configuration).label();
    }

    private String together() {
        return pairs > 1 ? ", all " + pairs + " pairs judged together" : "";
    }

    private String range(Interval interval) {
        return "between " + number(interval.low()) + " and " + signed(interval.high());
    }

    private String number(double internal) {
        return text.difference(metric, internal);
    }

    private String signed(double internal) {
        return text.difference(metric, internal) + unit();
    }

    private String size(double internal) {
        return text.mean(metric, internal) + unit();
    }

    private String unit() {
        String symbol = text.unit(metric).symbol();
        return symbol.isEmpty() || symbol.equals("°") ? symbol : "\u00a0" + symbol;
    }

    private String percent(double probability) {
        return percent(probability, text.decimalMark());
    }

    /** '97 %'; never a round 0 or 100, since nothing is that sure. */
    static String percent(double probability, char decimalMark) {
        if (probability > 0.99) {
            return "over 99\u00a0%";
        }
        if (probability < 0.01) {
            return "under 1\u00a0%";
        }
        return NumberText.withDecimalMark(decimalMark).format(100 * probability, 0) + "\u00a0%";
    }
}
