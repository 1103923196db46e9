package gripwright.desktop.support;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.model.Player;
import gripwright.model.Session;
import gripwright.units.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberEntryTest {

    private final Workbench workbench = Workbenches.blank();
    private final NumberEntry hand = Subject.session(workbench).part(Session::player, Session::withPlayer)
            .number("hand length", Quantity.LENGTH, Player::handLengthMm, Player::withHandLengthMm);

    private Double kept() {
        return workbench.session().get().player().handLengthMm();
    }

    private void decimalMark(char mark) {
        workbench.apply(ShopEdit.settings("Set decimal mark", settings -> settings.withDecimalMark(mark)));
    }

    private boolean type(String text) {
        hand.text().set(text);
        return hand.commit();
    }

    /** 7.5 in are 190.5 mm: an inch is 25.4 mm by definition (international yard and pound agreement, 1959). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {". | 7.5", ". | 7,5", ", | 7,5", ", | 7.5", ", | ' 7,50 '"})
    void readsEitherDecimalMarkInTheShopsUnitAndKeepsMillimetres(char mark, String typed) {
        decimalMark(mark);
        assertThat(type(typed)).isTrue();
        assertThat(kept()).isEqualTo(190.5);
        assertThat(hand.text().get()).isEqualTo("7" + mark + "50");
        assertThat(hand.unit().get()).isEqualTo("in");
    }

    @Test
    void isReadToTheDecimalsOfItsKindAndEditedAsFineAsItWasTyped() {
        assertThat(type("7.523")).isTrue();
        assertThat(hand.text().get()).isEqualTo("7.52");
        hand.begin();
        assertThat(hand.text().get()).isEqualTo("7.523");
        assertThat(hand.isDirty()).isFalse();
        assertThat(hand.commit()).isTrue();
        assertThat(hand.text().get()).isEqualTo("7.52");
        assertThat(kept()).isEqualTo(7.523 * 25.4);
    }

    @Test
    void aRefusalNamesNoNumberInOtherUnits() {
        assertThat(type("-4")).isFalse();
        assertThat(hand.problem().get()).contains("above zero").endsWith(".").doesNotContain("101.6");
    }

    @Test
    void blankMeansNotMeasuredAndNeverZero() {
        type("7.5");
        assertThat(type("  ")).isTrue();
        assertThat(kept()).isNull();
        assertThat(hand.text().get()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"seven", "7..5", "7 1/2 in", "-", "1,2,3"})
    void whatIsNoNumberStaysWithItsProblemAndChangesNothing(String typed) {
        type("7.5");
        assertThat(type(typed)).isFalse();
        assertThat(hand.problem().get()).contains("is not a number");
        assertThat(hand.text().get()).isEqualTo(typed);
        assertThat(kept()).isEqualTo(190.5);
        hand.restore();
        assertThat(hand.problem().get()).isEmpty();
        assertThat(hand.text().get()).isEqualTo("7.50");
    }

    @Test
    void whatTheRecordRefusesIsSaidBesideTheField() {
        assertThat(type("-3")).isFalse();
        assertThat(hand.problem().get()).contains("hand length").contains("above zero");
        assertThat(kept()).isNull();
    }

    @Test
    void aCommitIsOneEditNamedForTheField() {
        type("7.5");
        type("7.5");
        assertThat(workbench.undoLabel().get()).isEqualTo("Set hand length");
        workbench.undo();
        assertThat(kept()).isNull();
        assertThat(hand.text().get()).isEmpty();
        assertThat(workbench.undoLabel().get()).isEmpty();
    }

    @Test
    void leavingTheTextAsShownKeepsTheLastDigit() {
        workbench.apply(new gripwright.session.Edit("Set hand length",
                session -> session.withPlayer(session.player().withHandLengthMm(190.512345))));
        assertThat(hand.commit()).isTrue();
        assertThat(kept()).isEqualTo(190.512345);
        assertThat(workbench.undoLabel().get()).isEqualTo("Set hand length");
    }

    @Test
    void anotherUnitShowsTheSameLength() {
        type("7.5");
        workbench.apply(ShopEdit.settings("Set unit",
                settings -> settings.withUnits(settings.units().with(Unit.MILLIMETRE))));
        assertThat(hand.text().get()).isEqualTo("190.5");
        assertThat(hand.unit().get()).isEqualTo("mm");
        assertThat(kept()).isEqualTo(190.5);
    }

    @Test
    void textThatIsBeingTypedIsNotSweptAwayByAnotherEdit() {
        hand.text().set("7.");
        workbench.apply(new gripwright.session.Edit("Set ball", session -> session.withBall("two-piece")));
        assertThat(hand.text().get()).isEqualTo("7.");
    }

    @Test
    void aNumberThatMustBeThereSaysSoWhenBlank() {
        NumberEntry weight = Subject.session(workbench).needed("weight of feel", Quantity.PLAIN,
                session -> session.goal().feelWeight(),
                (session, value) -> session.withGoal(session.goal().withFeelWeight(value)));
        weight.text().set("");
        assertThat(weight.commit()).isFalse();
        assertThat(weight.problem().get()).contains("weight of feel is needed");
        assertThat(workbench.session().get().goal().feelWeight()).isEqualTo(0.25);
    }

    @Test
    void aCountRefusesAFraction() {
        NumberEntry wraps = Subject.session(workbench).part(Session::player, Session::withPlayer)
                .optionalCount("wraps", Player::currentWraps, Player::withCurrentWraps);
        wraps.text().set("1.5");
        assertThat(wraps.commit()).isFalse();
        assertThat(wraps.problem().get()).contains("whole number");
        wraps.text().set("2");
        assertThat(wraps.commit()).isTrue();
        assertThat(workbench.session().get().player().currentWraps()).isEqualTo(2);
    }
}
