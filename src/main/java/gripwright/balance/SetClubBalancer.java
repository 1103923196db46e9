package gripwright.balance;

import gripwright.model.ClubPart;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.SetClub;
import gripwright.model.ShopSettings;
import gripwright.units.Swingweight;
import gripwright.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Brings one club of the set through the passes: stripped, regripped, head mass to its target, read when done.
 *
 * <p>In points: bare = present − [g_off (x_usual − f) + B c_old] / p; regripped = bare + [Σ m (x − f) + B c_new] / p over grip,
 * wraps and the layer that holds it, B the bare mass and c the cap; head mass (S_target − S) p / (x_h − f). A bare reading
 * replaces the first, a final reading shows what was off.
 *
 * @param settings the shop's
 * @param test the test that the advice is from
 * @param testBalance its balance
 * @param configuration the configuration the club gets
 */
record SetClubBalancer(ShopSettings settings, ClubTest test, TestBalance testBalance, Configuration configuration) {

    /** The layer that holds a grip where the test club's own was not weighed, g: from memory 1 to 5 g. */
    private static final double HOLDING_LAYER_GRAMS = 2;
    private static final Estimate USUAL_BARE_GRAMS = new Estimate(390, 60);
    private static final double CAP_SD_MM = 0.8;
    private static final double USUAL_SHAFT_SHARE = 0.49;
    private static final double SURPRISING_POINTS = 1.5;

    SetBalance balance(SetClub club, SetBuild build, List<String> sentences) {
        Estimate predicted = barePredicted(club);
        Estimate bare = club.bareSwingweight() == null ? predicted
                : new Estimate(club.bareSwingweight().points(), settings.scaleNoisePoints());
        if (bare == null) {
            sentences.add(club.presentSwingweight() == null
                    ? "Read its swingweight as it is, or once stripped."
                    : "Weigh the grip and tape that come off, or read the club once stripped.");
        }
        GripEnd end = gripEnd(club, build);
        Estimate regripped = bare == null || !end.weighed() ? null : regripped(club, bare, end);
        if (!end.weighed()) {
            sentences.addAll(end.sentences());
        }
        Double head = headPlaceMm(club);
        LeverFigures now = figures(club, bare, regripped, end, head);
        Wanted wanted = wanted(club, sentences);
        HeadMass mass = headMass(now, wanted, head, sentences);
        LeverFigures after = mass == null || !mass.feasible() || mass.way() == HeadMass.Way.NOTHING ? now
                : now.plus(mass.grams(), head, scale());
        Double bareOff = off(club.bareSwingweight(), predicted == null ? null : new Swingweight(predicted.value()));
        Double finalOff = off(club.finalSwingweight(), after.swingweight());
        surprise(bareOff, "The stripped club reads", sentences);
        surprise(finalOff, "The finished club reads", sentences);
        return new SetBalance(pass(club, bare), predicted, bare, regripped, wanted, mass, head, after, bareOff, finalOff,
                offTarget(club, wanted, after));
    }

    private SwingweightScale scale() {
        return testBalance.scale();
    }

    private static SetBalance.Pass pass(SetClub club, Estimate bare) {
        if (club.finalSwingweight() != null) {
            return SetBalance.Pass.FINAL_READ;
        }
        if (club.bareSwingweight() != null) {
            return SetBalance.Pass.BARE_READ;
        }
        return bare == null ? SetBalance.Pass.NOTHING_READ : SetBalance.Pass.PREDICTED;
    }

    private static Double off(Swingweight read, Swingweight expected) {
        return read == null || expected == null ? null : Double.valueOf(read.points() - expected.points());
    }

    private static Double offTarget(SetClub club, Wanted wanted, LeverFigures after) {
        Swingweight last = club.finalSwingweight() != null ? club.finalSwingweight() : after.swingweight();
        return wanted instanceof Wanted.AtSwingweight at ? off(last, at.swingweight()) : null;
    }

    private void surprise(Double off, String what, List<String> sentences) {
        if (off != null && Math.abs(off) > SURPRISING_POINTS) {
            sentences.add(Wording.of(settings).format("%s %.1f points %s than computed: read it again, and weigh what came"
                    + " off.", what, Math.abs(off), off > 0 ? "higher" : "lower"));
        }
    }

    /** Mass of the stripped club, g: weighed, else the test club's, else the usual of an iron. */
    private Estimate bareGrams(SetClub club) {
        if (club.totalMassGrams() != null && club.gripOffGrams() != null) {
            return new Estimate(club.totalMassGrams() - club.gripOffGrams(), BalanceDoubt.WEIGHED_GRAMS);
        }
        double parts = test.club().parts().stream().filter(part -> part.kind() != ClubPart.Kind.TAPE)
                .mapToDouble(ClubPart::massGrams).sum();
        return parts > 0 ? new Estimate(parts, USUAL_BARE_GRAMS.standardDeviation() / 2) : USUAL_BARE_GRAMS;
    }

    private double oldCapMm() {
        return test.configurations().stream().filter(Configuration::gamer).findFirst().orElse(configuration).grip()
                .capThicknessMm();
    }

    private Estimate barePredicted(SetClub club) {
        if (club.presentSwingweight() == null || club.gripOffGrams() == null) {
            return null;
        }
        Estimate bare = bareGrams(club);
        double point = scale().pointGramMm();
        double points = club.presentSwingweight().points()
                - scale().points(club.gripOffGrams(), settings.gripBalancePointMm()) - bare.value() * oldCapMm() / point;
        double placeSd = club.gripOffGrams() * settings.balance().gripBalanceSdMm() / point;
        double capSd = Math.hypot(bare.value() * CAP_SD_MM, bare.standardDeviation() * oldCapMm()) / point;
        double massSd = scale().points(BalanceDoubt.WEIGHED_GRAMS, settings.gripBalancePointMm());
        return new Estimate(points, Math.hypot(Math.hypot(settings.scaleNoisePoints(), placeSd),
                Math.hypot(capSd, massSd)));
    }

    private GripEnd gripEnd(SetClub club, SetBuild build) {
        Configuration built = configuration.withBuildUp(
                configuration.buildUp().withFullWraps(build.fullWraps()).withLowerWraps(build.lowerWraps()));
        List<gripwright.model.Diameter> diameters =
                club.shaftDiameters().isEmpty() ? test.club().shaftDiameters() : club.shaftDiameters();
        return GripEnd.of(built, new ShaftProfile(diameters), settings);
    }

    /** Grip, wraps, ballast and the layer that holds them. */
    private List<Body> gripBodies(GripEnd end) {
        List<Body> bodies = new ArrayList<>(end.bodies());
        double layer = test.club().parts().stream().filter(part -> part.kind() == ClubPart.Kind.TAPE)
                .mapToDouble(ClubPart::massGrams).sum();
        bodies.add(Body.rod(Body.Role.TAPE, "", layer > 0 ? layer : HOLDING_LAYER_GRAMS,
                end.capMm() + end.lengthMm() / 2, end.lengthMm()));
        return bodies;
    }

    private Estimate regripped(SetClub club, Estimate bare, GripEnd end) {
        Estimate mass = bareGrams(club);
        double point = scale().pointGramMm();
        double points = gripBodies(end).stream()
                .mapToDouble(body -> scale().points(body.massGrams(), body.positionMm())).sum();
        double placeSd = end.balanceMeasured() ? BalanceDoubt.MEASURED_MM : settings.balance().gripBalanceSdMm();
        double massSd = scale().points(BalanceDoubt.gripMassSd(end), end.grip().positionMm());
        return bare.plus(points + mass.value() * end.capMm() / point, Math.hypot(massSd,
                Math.hypot(end.grip().massGrams() * placeSd, mass.standardDeviation() * end.capMm()) / point));
    }

    private Double headPlaceMm(SetClub club) {
        if (club.lengthMm() == null) {
            return null;
        }
        Double length = test.club().lengthMm();
        Double place = testBalance.configuration(configuration.id()).map(ConfigurationBalance::headPlaceMm).orElse(null);
        boolean measured = length != null && place != null
                && test.club().parts().stream().anyMatch(part -> part.kind() == ClubPart.Kind.HEAD);
        return club.lengthMm() - (measured ? length - place : settings.balance().headCentreOffsetMm());
    }

    private LeverFigures figures(SetClub club, Estimate bare, Estimate regripped, GripEnd end, Double head) {
        Swingweight swingweight = regripped == null ? null : new Swingweight(regripped.value());
        if (swingweight == null || club.totalMassGrams() == null || club.gripOffGrams() == null) {
            return new LeverFigures(null, null, null, swingweight, null);
        }
        List<Body> bodies = new ArrayList<>(gripBodies(end));
        Double inertia = null;
        Optional<List<Body>> rebuilt = head == null ? Optional.empty() : rebuilt(club, bare, end, head);
        if (rebuilt.isPresent()) {
            bodies.addAll(rebuilt.get());
            inertia = bodies.stream().mapToDouble(Body::inertiaAboutButtKgCm2).sum();
        }
        double mass = bareGrams(club).value() + gripBodies(end).stream().mapToDouble(Body::massGrams).sum();
        double moment = scale().momentGramMm(swingweight.plus(-offsetPoints()));
        return new LeverFigures(mass, scale().fulcrumMm() + moment / mass, Unit.INCH.fromInternal(moment), swingweight,
                inertia);
    }

    /** How much higher the shop's scale reads than the letters from memory; 0 where nobody could tell. */
    private double offsetPoints() {
        return testBalance.scaleOffsetPoints() == null ? 0 : testBalance.scaleOffsetPoints();
    }

    private Optional<List<Body>> rebuilt(SetClub club, Estimate bare, GripEnd end, double head) {
        double grams = bareGrams(club).value();
        double moment = scale().momentGramMm(new Swingweight(bare.value() - offsetPoints()));
        double headPlace = head - end.capMm();
        Double testHead = testBalance.configuration(configuration.id()).map(ConfigurationBalance::headPlaceMm)
                .orElse(null);
        Double testShaft = PartsCheck.shaftLength(test.club());
        double shaft = testHead == null || testShaft == null ? headPlace : headPlace - (testHead - end.capMm() - testShaft);
        return EstimatedClub.of(grams, moment + scale().fulcrumMm() * grams, headPlace, shaft, shaftShare(), end.capMm());
    }

    private double shaftShare() {
        return test.club().parts().stream()
                .filter(part -> part.kind() == ClubPart.Kind.SHAFT && part.lengthMm() > 0)
                .mapToDouble(part -> part.balancePointMm() / part.lengthMm()).findFirst().orElse(USUAL_SHAFT_SHARE);
    }

    private Wanted wanted(SetClub club, List<String> sentences) {
        switch (club.target()) {
            case VALUE:
                return new Wanted.AtSwingweight(club.targetSwingweight());
            case AS_NOW:
                if (club.presentSwingweight() != null) {
                    return new Wanted.AtSwingweight(club.presentSwingweight());
                }
                sentences.add("It shall come back as it was, but what it was is not written down: read it first.");
                return null;
            default:
                Double inertia = club.targetInertiaKgCm2() != null ? club.targetInertiaKgCm2()
                        : testBalance.configuration(configuration.id()).map(ConfigurationBalance::inertiaKgCm2)
                                .orElse(null);
                if (inertia == null) {
                    sentences.add("Give the common inertia, or weigh the parts of the test club.");
                }
                return inertia == null ? null : new Wanted.AtInertia(inertia);
        }
    }

    private HeadMass headMass(LeverFigures now, Wanted wanted, Double head, List<String> sentences) {
        if (wanted == null || wanted instanceof Wanted.AtSwingweight && now.swingweight() == null) {
            return null;
        }
        if (head == null) {
            sentences.add("Measure its length: the lever of head mass is not known.");
            return null;
        }
        Double grams = wanted.grams(now, head, scale());
        if (grams == null) {
            sentences.add("Its inertia needs length, total mass, grip mass and swingweight: something is missing, or they"
                    + " don't go together.");
            return null;
        }
        return HeadMass.of(grams, 0, settings);
    }
}
