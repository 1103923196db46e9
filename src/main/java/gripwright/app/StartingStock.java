package gripwright.app;

import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Grip;
import gripwright.model.Session;
import gripwright.model.Stock;
import gripwright.model.Tape;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a shop's stock list begins with until the shop has one of its own: the invented grips of the demo session, and
 * tapes with the published, contradictory build-ups as values to begin from.
 */
final class StartingStock {

    private static final double INCH = 25.4;
    private static final double USUAL_AREAL_MASS = 150;
    private static final String MEASURE = "Published values of the build-up per wrap contradict each other (0.010 in, "
            + "0.015 in, 1/64 in): measure yours over ten wraps and write it here.";

    private StartingStock() {
    }

    static Stock of(Session demo) {
        Map<String, Grip> grips = new LinkedHashMap<>();
        for (ClubTest test : demo.tests()) {
            for (Configuration configuration : test.configurations()) {
                grips.putIfAbsent(configuration.grip().id(), configuration.grip());
            }
        }
        return new Stock(List.copyOf(grips.values()), List.of(
                tape("tape-10", "Build-up tape, 0.010 in a wrap", 0.010),
                tape("tape-15", "Build-up tape, 0.015 in a wrap", 0.015),
                tape("tape-64", "Build-up tape, 1/64 in a wrap", 1.0 / 64),
                new Tape("tape-double", "Double-sided tape, not counted as a wrap", 0.010 * INCH, USUAL_AREAL_MASS, true,
                        MEASURE)));
    }

    private static Tape tape(String id, String name, double inchesPerWrap) {
        return new Tape(id, name, inchesPerWrap * INCH, USUAL_AREAL_MASS, false, MEASURE);
    }
}
