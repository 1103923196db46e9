package gripwright.balance;

import gripwright.model.BuildUp;
import gripwright.model.ClubKind;
import gripwright.model.ClubPart;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Grip;
import gripwright.model.TestClub;
import java.util.ArrayList;
import java.util.List;

/** The worked 7-iron of docs/balance.md: invented, plausible parts, all places in inches from the butt end. */
public final class SevenIron {

    public static final double INCH = 25.4;

    private SevenIron() {
    }

    public static List<ClubPart> parts() {
        return List.of(part(ClubPart.Kind.HEAD, 270, 36.4, 0), part(ClubPart.Kind.SHAFT, 115, 17.8, 36),
                part(ClubPart.Kind.TAPE, 2, 4.4, 10), part(ClubPart.Kind.EPOXY, 4, 35.0, 0));
    }

    public static ClubPart part(ClubPart.Kind kind, double grams, double inches, double lengthInches) {
        return new ClubPart(kind, "", grams, inches * INCH, lengthInches * INCH, null);
    }

    /** A grip as a rod of 10.5 in without a cap, balancing at a measured place. */
    public static Grip grip(String id, double grams, double inches) {
        return Grip.weighed(id, "invented " + id, grams).withLengthMm(10.5 * INCH).withCapThicknessMm(0)
                .withBalancePointMm(inches * INCH);
    }

    public static TestClub club() {
        return TestClub.named(ClubKind.IRON, "7-iron").withParts(parts());
    }

    public static ClubTest test(TestClub club, Grip... grips) {
        List<Configuration> configurations = new ArrayList<>();
        for (Grip grip : grips) {
            int index = configurations.size();
            String label = String.valueOf((char) ('A' + index));
            configurations.add(Configuration.ofIndex(index, "c" + label, label, grip, BuildUp.none()));
        }
        return ClubTest.empty("t", club).withConfigurations(configurations);
    }

    public static ClubTest test() {
        return test(club(), grip("45", 45, 4.25), grip("50", 50, 4.25), grip("60", 60, 4.25), grip("70", 70, 4.5));
    }

    /** The bodies of the club with one more of that kind. */
    public static List<Body> bodies(Body grip) {
        List<Body> bodies = new ArrayList<>(parts().stream().map(part -> Body.of(part, 0)).toList());
        bodies.add(grip);
        return bodies;
    }

    public static Body gripBody(double grams, double inches) {
        return Body.rod(Body.Role.GRIP, "", grams, inches * INCH, 10.5 * INCH);
    }

    public static ClubBalance balance(double gripGrams, double gripInches) {
        return ClubBalance.of(bodies(gripBody(gripGrams, gripInches)), SwingweightScale.usual());
    }
}
