package gripwright.balance;

import gripwright.model.ClubReading;
import gripwright.model.Configuration;
import gripwright.model.Stint;
import gripwright.units.Swingweight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Collects what was read of a test's club: swingweights, and what the weighed ones say of the bare club.
 *
 * <p>The bare club keeps the layer that holds the grip where that is one of its parts. The mass that stands with a reading
 * is that of the grip with all its tape, so the layer is taken off it again; a stripped club lacks it.
 */
final class ReadingsOnRecord {

    /** Cap of a grip of which only the mass was written down, mm: common practice, no source. */
    private static final double USUAL_CAP_MM = 4;
    /** Mass of a bare iron where none was weighed, used only for the lever of different caps: from memory. */
    private static final Estimate USUAL_BARE_GRAMS = new Estimate(390, 60);

    private final Bench bench;

    ReadingsOnRecord(Bench bench) {
        this.bench = bench;
    }

    /** All swingweights read whose load is known, in the order of the record. */
    List<ScaleReading> swingweights() {
        List<ScaleReading> readings = new ArrayList<>();
        int number = 1;
        for (ClubReading reading : bench.test().club().readings()) {
            ScaleReading.Load load = isWrittenTwice(reading) ? null : load(reading);
            if (load != null) {
                readings.add(new ScaleReading("Reading " + number, reading.configurationId(), reading.swingweight(),
                        load));
            }
            number++;
        }
        for (Configuration configuration : bench.test().configurations()) {
            add(readings, "Configuration " + configuration.label(), configuration, configuration.swingweightRead());
        }
        int stintNumber = 1;
        for (Stint stint : bench.test().stints()) {
            Configuration configuration = bench.test().configuration(stint.configurationId()).orElseThrow();
            // The reading of a configuration is often one of its stints', written down twice: it counts once.
            if (stint.swingweightRead() != null && !stint.swingweightRead().equals(configuration.swingweightRead())) {
                add(readings, "Stint " + stintNumber + " (" + configuration.label() + ")", configuration,
                        stint.swingweightRead());
            }
            stintNumber++;
        }
        return readings;
    }

    private void add(List<ScaleReading> readings, String source, Configuration configuration, Swingweight read) {
        ScaleReading.Load load = read == null ? null : bench.load(configuration);
        if (load != null) {
            readings.add(new ScaleReading(source, configuration.id(), read, load));
        }
    }

    /** The reading of a configuration is often written down with the club as well: it counts once. */
    private boolean isWrittenTwice(ClubReading reading) {
        return configuration(reading).map(c -> reading.swingweight().equals(c.swingweightRead())
                && bench.load(c) != null).orElse(false);
    }

    private Optional<Configuration> configuration(ClubReading reading) {
        return Optional.ofNullable(reading.configurationId()).flatMap(bench.test()::configuration);
    }

    private List<Body> holdingLayer() {
        return bench.parts(0).stream().filter(body -> body.role() == Body.Role.TAPE).toList();
    }

    /** Mass of grip and wraps of a reading beyond the bare club with its layer, g; negative for a stripped club. */
    private double gripGrams(ClubReading reading) {
        return reading.gripMassGrams() - holdingLayer().stream().mapToDouble(Body::massGrams).sum();
    }

    private ScaleReading.Load load(ClubReading reading) {
        if (reading.gripMassGrams() == 0) {
            double layer = holdingLayer().stream()
                    .mapToDouble(body -> bench.scale().momentGramMm(body.massGrams(), body.positionMm())).sum();
            return new ScaleReading.Load(0, -layer, 0, 0);
        }
        double grams = Math.max(0, gripGrams(reading));
        Optional<Configuration> configuration = configuration(reading);
        if (configuration.isPresent()) {
            return bench.load(configuration.get(), grams);
        }
        double sd = bench.scale().points(BalanceDoubt.WEIGHED_GRAMS, bench.settings().gripBalancePointMm());
        return new ScaleReading.Load(grams, 0, USUAL_CAP_MM, Math.abs(sd));
    }

    /**
     * Mass of the club without grip, wraps, ballast and added head mass but with the layer among its parts, from whole
     * clubs weighed; null for none.
     */
    Estimate bareMassGrams() {
        List<Double> masses = new ArrayList<>();
        for (ClubReading reading : bench.test().club().readings()) {
            if (reading.totalMassGrams() != null) {
                masses.add(reading.totalMassGrams() - gripGrams(reading) - further(reading));
            }
        }
        for (Configuration configuration : bench.test().configurations()) {
            Double grip = bench.gripEnds().get(configuration.id()).massGrams();
            if (configuration.totalMassReadGrams() != null && grip != null) {
                masses.add(configuration.totalMassReadGrams() - grip - configuration.headMassAddedGrams());
            }
        }
        List<Double> sensible = masses.stream().filter(mass -> mass > 0).toList();
        if (sensible.isEmpty()) {
            return null;
        }
        double mean = sensible.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        return new Estimate(mean, Math.hypot(BalanceDoubt.WEIGHED_GRAMS, BalanceDoubt.WEIGHED_GRAMS));
    }

    /** Ballast and head mass that the configuration of a reading adds beside its grip and tape, g. */
    private double further(ClubReading reading) {
        return configuration(reading)
                .map(c -> c.buildUp().ballastGrams() + c.headMassAddedGrams()).orElse(0.0);
    }

    /**
     * Moment about the fulcrum of the bare club without a cap, g·mm, from balance points measured; null for none.
     *
     * @param gripPlaceMm where grips balance that have no balance point of their own, mm from the cap's face
     */
    Estimate bareMomentGramMm(double gripPlaceMm) {
        List<Double> moments = new ArrayList<>();
        double heaviest = 0;
        for (ClubReading reading : bench.test().club().readings()) {
            ScaleReading.Load load = load(reading);
            if (reading.totalMassGrams() == null || reading.balancePointMm() == null || load == null) {
                continue;
            }
            double whole = bench.scale().momentGramMm(reading.totalMassGrams(), reading.balancePointMm());
            double grip = bench.scale().momentGramMm(load.gripGrams(), gripPlaceMm);
            double bare = reading.totalMassGrams() - gripGrams(reading) - further(reading);
            moments.add(whole - grip - load.knownMomentGramMm() - bare * load.capMm());
            heaviest = Math.max(heaviest, reading.totalMassGrams());
        }
        if (moments.isEmpty()) {
            return null;
        }
        double mean = moments.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        return new Estimate(mean, heaviest * BalanceDoubt.MEASURED_MM / Math.sqrt(moments.size()));
    }

    /** The mass that the lever of different caps acts on: from the parts, else weighed, else the usual. */
    Estimate leverMassGrams() {
        if (bench.hasParts()) {
            double mass = bench.parts(0).stream().mapToDouble(Body::massGrams).sum();
            return new Estimate(mass, BalanceDoubt.WEIGHED_GRAMS);
        }
        Estimate weighed = bareMassGrams();
        return weighed != null ? weighed : USUAL_BARE_GRAMS;
    }
}
