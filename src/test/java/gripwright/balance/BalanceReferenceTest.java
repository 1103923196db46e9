package gripwright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.model.Stock;
import gripwright.storage.SessionFile;
import java.io.InputStream;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A whole bench against arithmetic done outside the program; where it comes from stands in reference/PROVENANCE.md. */
class BalanceReferenceTest {

    private static final String FOLDER = "/gripwright/balance/reference/";
    private static final double CLOSE = 1e-9;

    private static final JsonNode EXPECTED = expected();
    private static final SessionBalance BALANCE =
            SessionBalance.of(session(), ShopSettings.usual(), new Stock(List.of(), List.of()));

    private static Session session() {
        try (InputStream in = BalanceReferenceTest.class.getResourceAsStream(FOLDER + "session.json")) {
            return new SessionFile().parse(in.readAllBytes(), "session.json").value();
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private static JsonNode expected() {
        try (InputStream in = BalanceReferenceTest.class.getResourceAsStream(FOLDER + "expected.json")) {
            return new ObjectMapper().readTree(in);
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private static void close(String what, double actual, JsonNode expected) {
        assertThat(actual).as(what).isCloseTo(expected.asDouble(), within(CLOSE * Math.max(1, Math.abs(expected.asDouble()))));
    }

    private static void estimate(String what, Estimate actual, JsonNode value, JsonNode sd) {
        close(what, actual.value(), value);
        close(what + " SD", actual.standardDeviation(), sd);
    }

    @Test
    void massBalanceMomentInertiaAndTheirDoubts() {
        for (JsonNode e : EXPECTED.get("parts").get("configurations")) {
            String who = e.get("label").asText();
            ConfigurationBalance c = BALANCE.tests().get(0).balance().labelled(who).orElseThrow();
            estimate(who + " mass", c.totalMass(), e.get("mass"), e.get("massSd"));
            estimate(who + " balance point", c.balancePoint(), e.get("balancePoint"), e.get("balancePointSd"));
            estimate(who + " moment", c.moment(), e.get("moment"), e.get("momentSd"));
            estimate(who + " swingweight", c.swingweightPoints(), e.get("points"), e.get("pointsSd"));
            estimate(who + " inertia", c.inertia(), e.get("inertia"), e.get("inertiaSd"));
            close(who + " moment about 12 in", c.moment12GramInches(), e.get("moment12"));
            close(who + " inertia about the balance point", c.inertiaAboutBalancePointKgCm2(), e.get("inertiaAboutBalance"));
            close(who + " tape", c.gripEnd().tapeGrams(), e.get("tapeGrams"));
            for (GripShape.At at : c.shape().atRuler()) {
                close(who + " at " + at.positionMm(), at.diameterMm(), e.get("diameters").get(String.valueOf(at.positionMm())));
            }
        }
    }

    @Test
    void whatTheReadingsSay() {
        JsonNode e = EXPECTED.get("parts");
        ReadingFit fit = BALANCE.tests().get(0).balance().readings();
        estimate("place of the grips", fit.gripBalancePointMm(), e.get("place"), e.get("placeSd"));
        estimate("bare club", fit.bareSwingweight(), e.get("bare"), e.get("bareSd"));
        close("offset of the scale", BALANCE.tests().get(0).balance().scaleOffsetPoints(), e.get("offset"));
        for (JsonNode c : EXPECTED.get("readings").get("configurations")) {
            String who = "from readings, " + c.get("label").asText();
            ConfigurationBalance read = BALANCE.tests().get(1).balance().labelled(c.get("label").asText()).orElseThrow();
            close(who + " mass", read.totalMassGrams(), c.get("mass"));
            close(who + " balance point", read.balancePointMm(), c.get("balancePoint"));
            close(who + " moment", read.momentGramInches(), c.get("moment"));
            estimate(who + " swingweight", read.swingweightPoints(), c.get("points"), c.get("pointsSd"));
            assertThat(read.inertiaKgCm2()).isNull();
        }
    }

    @Test
    void backToTheReference() {
        for (JsonNode e : EXPECTED.get("parts").get("backwards")) {
            List<Remedy> ways = BALANCE.tests().get(0).backwards().stream().filter(b -> b.label().equals(e.get("label").asText()))
                    .findFirst().orElseThrow().remedies();
            close("head mass", ways.get(0).amount(), e.get("head"));
            close("butt weight", ways.get(1).amount(), e.get("butt"));
            assertThat(ways.get(2).amount()).isCloseTo(e.get("length").asDouble(), within(1e-6));
            assertThat(ways.get(2).after().inertiaKgCm2()).isCloseTo(e.get("lengthInertia").asDouble(), within(1e-5));
        }
    }

    @Test
    void ballast() {
        JsonNode e = EXPECTED.get("parts").get("ballast");
        List<BallastPlan> plans = BALANCE.tests().get(0).ballast();
        for (int k = 0; k < 4; k++) {
            close("equal mass", plans.get(0).rows().get(k).grams(), e.get("gripMass").get(k));
            close("equal swingweight", plans.get(1).rows().get(k).grams(), e.get("swingweight").get(k));
            close("equal inertia", plans.get(2).rows().get(k).grams(), e.get("inertia").get(k));
        }
    }

    @Test
    void theSet() {
        for (int k = 0; k < EXPECTED.get("set").size(); k++) {
            JsonNode e = EXPECTED.get("set").get(k);
            SetPlan.Row row = BALANCE.set().rows().get(k);
            String club = row.club().name();
            assertThat(row.build().fullWraps()).as(club).isEqualTo(e.get("full").asInt());
            assertThat(row.build().lowerWraps()).as(club).isEqualTo(e.get("lower").asInt());
            if (!e.get("off").isNull()) {
                close(club + " off at 2 in", row.build().offMm(), e.get("off"));
                close(club + " off under the lower hand", row.build().lowerHandOffMm(), e.get("lowerOff"));
            }
            close(club + " stripped", row.balance().barePredicted().value(), e.get("barePredicted"));
            close(club + " regripped", row.balance().regripped().value(), e.get("regripped"));
            close(club + " head", row.balance().headPlaceMm(), e.get("head"));
            close(club + " head mass", row.balance().headMass().grams(), e.get("headMass"));
            if (e.has("inertia")) {
                double head = e.get("head").asDouble();
                double grams = row.balance().headMass().feasible() ? row.balance().headMass().grams() : 0;
                LeverFigures before = row.balance().after().plus(-grams, head, SwingweightScale.usual());
                close(club + " mass", before.massGrams(), e.get("mass"));
                close(club + " balance point", before.balancePointMm(), e.get("balancePoint"));
                close(club + " inertia", before.inertiaKgCm2(), e.get("inertia"));
            }
        }
    }

    @Test
    void stockAndCost() {
        JsonNode e = EXPECTED.get("stock");
        assertThat(BALANCE.set().cost()).isEqualTo(e.get("cost").asDouble());
        assertThat(BALANCE.set().stock()).extracting(SetPlan.StockLine::needed)
                .usingComparatorForType((a, b) -> Math.abs(a - b) < CLOSE ? 0 : Double.compare(a, b), Double.class)
                .containsExactly(e.get("grips").asDouble(), e.get("wraps").asDouble(), e.get("headTape").asDouble());
    }
}
