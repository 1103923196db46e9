package gripwright.balance;

import gripwright.model.ClubReading;
import gripwright.model.Configuration;
import gripwright.model.Stint;
import gripwright.units.Swingweight;
import java.util.ArrayList;
import java.util.List;

/** Collects what was read of a test's club: swingweights, and what the weighed ones say of the bare club. */
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
            ScaleReading.Load load = load(reading);
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

    private ScaleReading.Load load(ClubReading reading) {
        if (reading.gripMassGrams() == 0) {
            return ScaleReading.Load.bare();
        }
        Configuration configuration = reading.configurationId() == null ? null
                : bench.test().configuration(reading.configurationId()).orElse(null);
        if (configuration != null) {
            return bench.load(configuration, reading.gripMassGrams());
        }
        double sd = bench.scale().points(BalanceDoubt.WEIGHED_GRAMS, bench.settings().gripBalancePointMm());
        return new ScaleReading.Load(reading.gripMassGrams(), 0, USUAL_CAP_MM, Math.abs(sd));
    }

    /** Mass of the club without grip, tape, ballast and added head mass, from whole clubs weighed; null for none. */
    Estimate bareMassGrams() {
        List<Double> masses = new ArrayList<>();
        for (ClubReading reading : bench.test().club().readings()) {
            if (reading.totalMassGrams() != null) {
                masses.add(reading.totalMassGrams() - reading.gripMassGrams() - further(reading));
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
        return bench.test().configuration(reading.configurationId())
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
            double bare = reading.totalMassGrams() - reading.gripMassGrams() - further(reading);
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
