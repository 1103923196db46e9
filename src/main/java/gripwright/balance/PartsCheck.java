package gripwright.balance;

import gripwright.model.ClubPart;
import gripwright.model.TestClub;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Refuses parts of a club that can't be, with a sentence, and warns of those that are unusual. */
final class PartsCheck {

    private static final double[] USUAL_HEAD_GRAMS = {150, 360};
    private static final double[] USUAL_SHAFT_GRAMS = {35, 145};
    private static final double[] USUAL_SHAFT_BALANCE = {0.40, 0.58};

    private PartsCheck() {
    }

    /** Why these parts can't be a club; empty where they can. */
    static Optional<String> refusal(TestClub club) {
        Double shaftEnd = shaftLength(club);
        for (ClubPart part : club.parts()) {
            boolean fromButt = part.kind() == ClubPart.Kind.SHAFT || part.kind() == ClubPart.Kind.TAPE;
            if (part.balancePointMm() < 0) {
                return Optional.of(outside(part, "in front of the butt end"));
            }
            if (fromButt && part.lengthMm() > 0 && part.balancePointMm() > part.lengthMm()) {
                return Optional.of(outside(part, "outside its own length of " + mm(part.lengthMm())));
            }
            if (part.kind() == ClubPart.Kind.COUNTERWEIGHT && shaftEnd != null && part.balancePointMm() > shaftEnd) {
                return Optional.of(outside(part, "outside the shaft of " + mm(shaftEnd)));
            }
        }
        return Optional.empty();
    }

    private static String outside(ClubPart part, String where) {
        String name = part.name().isBlank() ? Body.Role.of(part.kind()).text() : part.name();
        return "The balance point of the " + name + " at " + mm(part.balancePointMm()) + " lies " + where
                + "; measure it from the shaft's butt end.";
    }

    /** Why a grip can't go on this club; empty where it can. */
    static Optional<String> refusal(TestClub club, GripEnd grip) {
        Double shaft = shaftLength(club);
        if (shaft != null && grip.lengthMm() > shaft) {
            return Optional.of("The grip of " + grip.label() + " (" + mm(grip.lengthMm())
                    + ") is longer than the shaft (" + mm(shaft) + "); check both lengths.");
        }
        if (club.lengthMm() != null && grip.lengthMm() > club.lengthMm()) {
            return Optional.of("The grip of " + grip.label() + " (" + mm(grip.lengthMm())
                    + ") is longer than the club (" + mm(club.lengthMm()) + "); check both lengths.");
        }
        if (grip.ballast() != null && shaft != null && grip.ballast().positionMm() - grip.capMm() > shaft) {
            return Optional.of("The ballast of " + grip.label() + " lies beyond the shaft; check its place.");
        }
        return Optional.empty();
    }

    /** What is unusual about the parts. */
    static List<String> warnings(TestClub club) {
        List<String> warnings = new ArrayList<>();
        for (ClubPart part : club.parts()) {
            if (part.kind() == ClubPart.Kind.HEAD) {
                range(warnings, "A head of %.0f g is unusual; weigh it again.", part.massGrams(), USUAL_HEAD_GRAMS);
            }
            if (part.kind() == ClubPart.Kind.SHAFT) {
                range(warnings, "A shaft of %.0f g is unusual; weigh it again.", part.massGrams(), USUAL_SHAFT_GRAMS);
                if (part.lengthMm() > 0) {
                    range(warnings, "A shaft that balances at %.2f of its length is unusual; measure it again.",
                            part.balancePointMm() / part.lengthMm(), USUAL_SHAFT_BALANCE);
                }
            }
        }
        return warnings;
    }

    private static void range(List<String> warnings, String sentence, double value, double[] usual) {
        if (value < usual[0] || value > usual[1]) {
            warnings.add(String.format(Locale.ROOT, sentence, value));
        }
    }

    static Double shaftLength(TestClub club) {
        return club.parts().stream()
                .filter(part -> part.kind() == ClubPart.Kind.SHAFT && part.lengthMm() > 0)
                .map(ClubPart::lengthMm).findFirst().orElse(null);
    }

    private static String mm(double value) {
        return Math.round(value) + " mm";
    }
}
