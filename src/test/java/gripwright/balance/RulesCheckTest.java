package gripwright.balance;

import static gripwright.balance.SevenIron.INCH;
import static org.assertj.core.api.Assertions.assertThat;

import gripwright.model.BuildUp;
import gripwright.model.ClubKind;
import gripwright.model.Configuration;
import gripwright.model.Diameter;
import gripwright.model.Grip;
import gripwright.model.ShopSettings;
import gripwright.model.Tape;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Figures of the Equipment Rules (R&amp;A and USGA, 2019), Part 2, section 3: 7 in and 1.75 in. */
class RulesCheckTest {

    private static final Tape TAPE = new Tape("t", "tape", 0.25, 150, false, "");

    private static Grip grip(double... inches) {
        return Grip.weighed("g", "invented", 50).withCoreMm(0.6 * INCH).withLengthMm(10.5 * INCH)
                .withDiameters(List.of(new Diameter(2 * INCH, inches[0] * INCH),
                        new Diameter(4 * INCH, inches[1] * INCH), new Diameter(6 * INCH, inches[2] * INCH)));
    }

    private static RulesCheck check(Grip grip, BuildUp buildUp, ClubKind kind) {
        Configuration configuration = Configuration.ofIndex(0, "c", "A", grip, buildUp);
        ShaftProfile shaft = new ShaftProfile(List.of(new Diameter(0, 0.6 * INCH)));
        return RulesCheck.of(kind, configuration, GripShape.of(configuration, shaft, ShopSettings.usual()));
    }

    @Test
    void aPlainTaperedGripConforms() {
        assertThat(check(grip(0.9, 0.86, 0.8), BuildUp.none(), ClubKind.IRON).outcome())
                .isEqualTo(RulesCheck.Outcome.CONFORMS);
    }

    @Test
    void aGripUnderSevenInchesBreaksIt() {
        RulesCheck seven = check(grip(0.9, 0.86, 0.8).withLengthMm(177.8), BuildUp.none(), ClubKind.IRON);
        RulesCheck under = check(grip(0.9, 0.86, 0.8).withLengthMm(177.7), BuildUp.none(), ClubKind.IRON);
        assertThat(seven.outcome()).isEqualTo(RulesCheck.Outcome.CONFORMS);
        assertThat(under.outcome()).isEqualTo(RulesCheck.Outcome.BREAKS);
        assertThat(under.findings().get(0).sentence()).contains("177.7").contains("177.8");
    }

    @Test
    void aGripOverAnInchAndThreeQuartersBreaksIt() {
        assertThat(check(grip(1.75, 1.7, 1.7), BuildUp.none(), ClubKind.IRON).outcome())
                .isEqualTo(RulesCheck.Outcome.CONFORMS);
        RulesCheck over = check(grip(1.75, 1.7, 1.7), BuildUp.none().withTape(TAPE).withFullWraps(1), ClubKind.IRON);
        assertThat(over.outcome()).isEqualTo(RulesCheck.Outcome.BREAKS);
    }

    @Test
    void lowerTapeThatEndsInsideTheGripIsLookedAt() {
        BuildUp lower = BuildUp.none().withTape(TAPE).withLowerWraps(2).withLowerFromMm(100.0).withLowerToMm(180.0);
        RulesCheck check = check(grip(0.85, 0.85, 0.85), lower, ClubKind.IRON);
        assertThat(check.outcome()).isEqualTo(RulesCheck.Outcome.LOOK);
        assertThat(check.findings()).anyMatch(f -> f.sentence().contains("bulge of 0.50 mm"));
    }

    /** One wrap of 0.25 mm ends inside the grip: seen by a caliper, our threshold of 0.1 mm, and no more than that. */
    @Test
    void aSmallBulgeIsLookedAt() {
        BuildUp lower = BuildUp.none().withTape(TAPE).withLowerWraps(1).withLowerFromMm(100.0).withLowerToMm(180.0);
        assertThat(check(grip(0.85, 0.85, 0.85), lower, ClubKind.IRON).outcome()).isEqualTo(RulesCheck.Outcome.LOOK);
        BuildUp thin = lower.withTape(new Tape("thin", "tape", 0.09, 150, false, ""));
        assertThat(check(grip(0.85, 0.85, 0.85), thin, ClubKind.IRON).outcome()).isEqualTo(RulesCheck.Outcome.CONFORMS);
    }

    @Test
    void aWaistIsCalledOne() {
        RulesCheck check = check(grip(0.9, 0.8, 0.9), BuildUp.none(), ClubKind.IRON);
        assertThat(check.outcome()).isEqualTo(RulesCheck.Outcome.BREAKS);
        assertThat(check.findings()).anyMatch(f -> f.sentence().contains("waist of 2.54 mm"));
    }

    @Test
    void aRibIsAllowedAndAPutterIsNotLookedAt() {
        assertThat(check(grip(0.9, 0.86, 0.8).withRibbed(true), BuildUp.none(), ClubKind.IRON).findings())
                .anyMatch(f -> f.sentence().startsWith("Ribbed: allowed"));
        assertThat(check(grip(0.9, 0.5 + 0.3, 0.9), BuildUp.none(), ClubKind.PUTTER).outcome())
                .isEqualTo(RulesCheck.Outcome.BY_EYE);
    }

    @Test
    void whatWasNotMeasuredIsSaid() {
        RulesCheck check = check(Grip.weighed("g", "x", 50), BuildUp.none(), ClubKind.IRON);
        assertThat(check.outcome()).isEqualTo(RulesCheck.Outcome.LOOK);
        assertThat(check.findings()).anyMatch(f -> f.sentence().contains("was not measured"));
    }
}
