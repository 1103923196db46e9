package gripwright.balance;

import gripwright.model.ClubPart;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.ShopSettings;
import gripwright.model.TestClub;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One test's club as it lies on the bench: its parts as bodies, and what each configuration puts on it.
 *
 * @param test the test
 * @param settings the shop's
 * @param scale the swingweight scale
 * @param shaft the shaft's outside
 * @param gripEnds by configuration, in their order
 */
record Bench(ClubTest test, ShopSettings settings, SwingweightScale scale, ShaftProfile shaft,
        Map<String, GripEnd> gripEnds) {

    static Bench of(ClubTest test, ShopSettings settings) {
        ShaftProfile shaft = new ShaftProfile(test.club().shaftDiameters());
        Map<String, GripEnd> ends = new LinkedHashMap<>();
        for (Configuration configuration : test.configurations()) {
            ends.put(configuration.id(), GripEnd.of(configuration, shaft, settings));
        }
        return new Bench(test, settings, SwingweightScale.of(settings.balance()), shaft, ends);
    }

    TestClub club() {
        return test.club();
    }

    /** Whether head and shaft are there, without which the parts are no club. */
    boolean hasParts() {
        return has(ClubPart.Kind.HEAD) && has(ClubPart.Kind.SHAFT);
    }

    private boolean has(ClubPart.Kind kind) {
        return club().parts().stream().anyMatch(part -> part.kind() == kind && part.massGrams() > 0);
    }

    /** The club's own parts with a cap of this thickness before them. */
    List<Body> parts(double capMm) {
        return club().parts().stream().map(part -> Body.of(part, capMm)).toList();
    }

    /** Where the head's centre lies from the butt end with this cap: measured, else from the length; null for neither. */
    Double headPlaceMm(double capMm) {
        for (ClubPart part : club().parts()) {
            if (part.kind() == ClubPart.Kind.HEAD) {
                return part.balancePointMm() + capMm;
            }
        }
        return club().lengthMm() == null ? null
                : Double.valueOf(club().lengthMm() - settings.balance().headCentreOffsetMm());
    }

    /** All bodies of the finished club; the grip must be weighed and the parts known. */
    List<Body> assembled(Configuration configuration) {
        GripEnd end = gripEnds.get(configuration.id());
        List<Body> bodies = new ArrayList<>(parts(end.capMm()));
        bodies.addAll(end.bodies());
        if (configuration.headMassAddedGrams() > 0) {
            bodies.add(headWeight(configuration, end));
        }
        return bodies;
    }

    private Body headWeight(Configuration configuration, GripEnd end) {
        return Body.point(Body.Role.HEAD_WEIGHT, "", configuration.headMassAddedGrams(), headPlaceMm(end.capMm()));
    }

    /** What the configuration stands on the bare club; null where the grip's mass or the head's place is not known. */
    ScaleReading.Load load(Configuration configuration) {
        GripEnd end = gripEnds.get(configuration.id());
        if (!end.weighed()) {
            return null;
        }
        return load(configuration, end.grip(), end.tape());
    }

    /** As {@link #load(Configuration)} with grip and tape weighed together on the club. */
    ScaleReading.Load load(Configuration configuration, double gripAndTapeGrams) {
        GripEnd end = gripEnds.get(configuration.id());
        double place = end.weighed() ? end.grip().positionMm() : settings.gripBalancePointMm();
        return load(configuration, Body.point(Body.Role.GRIP, "", gripAndTapeGrams, place), List.of());
    }

    private ScaleReading.Load load(Configuration configuration, Body grip, List<Body> tape) {
        GripEnd end = gripEnds.get(configuration.id());
        boolean placed = end.balanceMeasured();
        double known = placed ? momentOf(grip) : 0;
        known += tape.stream().mapToDouble(this::momentOf).sum();
        known += end.ballast() == null ? 0 : momentOf(end.ballast());
        if (configuration.headMassAddedGrams() > 0) {
            if (headPlaceMm(end.capMm()) == null) {
                return null;
            }
            known += momentOf(headWeight(configuration, end));
        }
        double massSd = scale.points(BalanceDoubt.gripMassSd(end), grip.positionMm());
        double placeSd = placed ? grip.massGrams() * BalanceDoubt.MEASURED_MM / scale.pointGramMm() : 0;
        return new ScaleReading.Load(placed ? 0 : grip.massGrams(), known, end.capMm(), Math.hypot(massSd, placeSd));
    }

    private double momentOf(Body body) {
        return scale.momentGramMm(body.massGrams(), body.positionMm());
    }
}
