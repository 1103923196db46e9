package gripwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gripwright.balance.SevenIron;
import gripwright.model.BuildUp;
import gripwright.model.ClubKind;
import gripwright.model.ClubReading;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Diameter;
import gripwright.model.Session;
import gripwright.model.SetClub;
import gripwright.model.ShopSettings;
import gripwright.model.Tape;
import gripwright.model.TestClub;
import gripwright.storage.JsonText;
import gripwright.units.Swingweight;
import gripwright.units.UnitChoice;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class BalanceJsonTest {

    private static final double INCH = 25.4;

    static Session session() {
        Tape tape = new Tape("t", "tape, 0.010 in", 0.254, 150, false, "");
        TestClub club = SevenIron.club().withLengthMm(36.9 * INCH)
                .withShaftDiameters(List.of(new Diameter(0, 15.24), new Diameter(152.4, 14.9)))
                .withReadings(List.of(new ClubReading(new Swingweight(30.5), 50, null, null, "cA", ""),
                        new ClubReading(new Swingweight(28.5), 60, null, null, "cB", ""),
                        new ClubReading(new Swingweight(35), 50, null, null, "cA", "")));
        ClubTest test = SevenIron.test(club, SevenIron.grip("50", 50, 4.25).withCoreMm(15.24)
                .withDiameters(List.of(new Diameter(50.8, 22.86), new Diameter(152.4, 20.3))).withPrice(9.5),
                SevenIron.grip("60", 60, 4.25));
        Configuration built = test.configurations().get(0).withGamer(true)
                .withBuildUp(BuildUp.none().withTape(tape).withFullWraps(2));
        return Session.blank("s", LocalDate.of(2026, 1, 1)).withInvented(true)
                .withTests(List.of(test.withConfigurations(List.of(built, test.configurations().get(1)))))
                .withAdvisedConfigurationId("cA")
                .withSet(List.of(SetClub.named("8", "8-iron", ClubKind.IRON).withLengthMm(920.0)
                        .withGripOffGrams(52.0).withPresentSwingweight(new Swingweight(31))
                        .withShaftDiameters(List.of(new Diameter(0, 15.0))),
                        SetClub.named("p", "putter", ClubKind.PUTTER)));
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> list(Object value) {
        return (List<Map<String, Object>>) value;
    }

    @Test
    void everyConfigurationHasTheSixFigures() {
        Session bare = session().withTests(List.of(SevenIron.test()));
        Map<String, Object> tree = BalanceJson.of(bare, ShopSettings.usual());
        Map<String, Object> second = list(tree.get("configurations")).get(1);
        assertThat(second).containsEntry("label", "B").containsEntry("swingweight", "D0.2");
        assertThat((Double) second.get("totalMassGrams")).isCloseTo(441, within(1e-9));
        assertThat((Double) second.get("balancePointMm")).isCloseTo(27.747 * INCH, within(0.02));
        assertThat((Double) second.get("momentGramInches")).isCloseTo(6062.3, within(0.005));
        assertThat((Double) second.get("inertiaKgCm2")).isCloseTo(2664.0, within(0.05));
        assertThat(list(tree.get("tests"))).hasSize(1);
    }

    @Test
    void whatCantBeKnownIsNullWithASentence() {
        ClubTest unknown = SevenIron.test(TestClub.named(ClubKind.IRON, "7-iron"), SevenIron.grip("50", 50, 4.25));
        Map<String, Object> tree = BalanceJson.of(session().withTests(List.of(unknown)), ShopSettings.usual());
        Map<String, Object> first = list(tree.get("configurations")).get(0);
        assertThat(first).containsEntry("totalMassGrams", null).containsEntry("balancePointMm", null)
                .containsEntry("swingweight", null).containsEntry("momentGramInches", null)
                .containsEntry("inertiaKgCm2", null);
        assertThat((List<?>) tree.get("sentences")).isNotEmpty();
    }

    @Test
    void allOfItIsThereAndCanBeWritten() {
        Map<String, Object> tree = BalanceJson.of(session(), ShopSettings.usual());
        assertThat(tree).containsKeys("scale", "readings", "scaleOffsetPoints", "backwards", "ballast", "set");
        Map<String, Object> set = list(List.of(tree.get("set"))).get(0);
        assertThat(list(set.get("clubs"))).hasSize(2);
        assertThat(list(set.get("clubs")).get(1)).containsEntry("balance", null);
        String json = JsonText.write(tree);
        assertThat(json).contains("\"flagged\": true").contains("can't be right").contains("\"head-mass\"")
                .doesNotContain("NaN");
    }

    @Test
    void theTextSpeaksTheShopsUnits() {
        String imperial = new BalanceText(ShopSettings.usual()).of(session());
        String metric = new BalanceText(ShopSettings.usual().withUnits(UnitChoice.metric()).withDecimalMark(','))
                .of(session());
        assertThat(imperial).contains("balance, in").contains("27.").contains("Invented demo data");
        assertThat(metric).contains("balance, mm").containsPattern(" 23,2\\d ").doesNotContain("balance, in");
        assertThat(imperial).contains("The set").contains("8-iron").contains("Stock to take");
        assertThat(imperial.lines().allMatch(line -> line.equals(line.stripTrailing()))).isTrue();
    }
}
