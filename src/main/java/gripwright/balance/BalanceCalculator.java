package gripwright.balance;

import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.ShopSettings;
import gripwright.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The balance of every configuration of a test, from parts where they are known and from readings where they are not:
 * {@code BalanceCalculator.with(settings).of(test)}.
 *
 * <p>The letter follows the shop's own scale wherever a reading is there; mass, balance point, moment and inertia follow
 * the parts. What can't be known is null with a sentence; parts that can't be are refused in a sentence of the result,
 * never with an exception.
 */
public final class BalanceCalculator {

    private static final double[] USUAL_TOTAL_GRAMS = {250, 620};
    private static final double[] USUAL_POINTS = {10, 50};
    private static final double SURPRISING_GRAMS = 2;
    private static final double SURPRISING_SDS = 3;

    private final ShopSettings settings;

    private BalanceCalculator(ShopSettings settings) {
        this.settings = settings;
    }

    public static BalanceCalculator with(ShopSettings settings) {
        return new BalanceCalculator(settings);
    }

    /** The balance of all configurations of this test. */
    public TestBalance of(ClubTest test) {
        Bench bench;
        try {
            bench = Bench.of(test, settings);
        } catch (IllegalArgumentException refused) {
            return new TestBalance(test.id(), test.club().name(), List.of(), SwingweightScale.of(settings.balance()),
                    null, null, List.of(refused.getMessage()), List.of());
        }
        List<String> sentences = new ArrayList<>();
        Optional<String> refusal = PartsCheck.refusal(test.club());
        refusal.ifPresent(sentences::add);
        boolean parts = bench.hasParts() && refusal.isEmpty();
        ReadingsOnRecord record = new ReadingsOnRecord(bench);
        ReadingFit fit = fit(bench, record);
        if (!parts && refusal.isEmpty()) {
            sentences.add(missingParts(bench, fit != null));
        }
        List<ConfigurationBalance> configurations = new ArrayList<>();
        for (Configuration configuration : test.configurations()) {
            configurations.add(new Composition(bench, record, fit, parts).of(configuration));
        }
        if (fit != null) {
            fit.residuals().stream().map(ReadingFit.Residual::sentence).filter(text -> !text.isEmpty())
                    .forEach(sentences::add);
        }
        return new TestBalance(test.id(), test.club().name(), configurations, bench.scale(), fit,
                offset(bench, fit, parts, sentences), sentences, PartsCheck.warnings(test.club()));
    }

    private ReadingFit fit(Bench bench, ReadingsOnRecord record) {
        List<ScaleReading> readings = record.swingweights();
        if (readings.isEmpty()) {
            return null;
        }
        Estimate prior = new Estimate(settings.gripBalancePointMm(), settings.balance().gripBalanceSdMm());
        return new ReadingFitter(bench.scale(), settings.scaleNoisePoints(), prior, record.leverMassGrams())
                .fit(readings);
    }

    private static String missingParts(Bench bench, boolean read) {
        String club = bench.club().name();
        if (read) {
            return "Inertia, and what else is blank, needs the parts of the " + club
                    + ": weigh head and shaft and measure their balance points from the shaft's butt end.";
        }
        return "Nothing is known of the balance of the " + club
                + " yet: read its swingweight with one weighed grip on, or enter the masses and balance points of its"
                + " parts.";
    }

    /** How far the readings lie above the letters that the parts give; with a sentence when that is more than a point. */
    private static Double offset(Bench bench, ReadingFit fit, boolean parts, List<String> sentences) {
        if (fit == null || !parts) {
            return null;
        }
        double fromParts = bench.scale().of(bench.parts(0).stream()
                .mapToDouble(body -> bench.scale().momentGramMm(body.massGrams(), body.positionMm())).sum()).points();
        double offset = fit.bareSwingweight().value() - fromParts;
        if (Math.abs(offset) >= 1) {
            sentences.add(Wording.of(bench.settings()).format("The shop's scale reads %.1f points %s than the parts would have it;"
                    + " the swingweights follow the scale. Either a part is off, or the letters' zero is.",
                    Math.abs(offset), offset > 0 ? "higher" : "lower"));
        }
        return offset;
    }

    /** Puts together the figures of one configuration after another from all that is known. */
    private record Composition(Bench bench, ReadingsOnRecord record, ReadingFit fit, boolean parts) {

        ConfigurationBalance of(Configuration configuration) {
            GripEnd end = bench.gripEnds().get(configuration.id());
            List<String> sentences = new ArrayList<>(end.sentences());
            List<String> warnings = new ArrayList<>(end.warnings());
            Optional<String> refusal = PartsCheck.refusal(bench.club(), end);
            refusal.ifPresent(sentences::add);
            boolean known = end.weighed() && refusal.isEmpty();
            ClubBalance club = known && parts ? fromParts(configuration, sentences) : null;
            Figures figures = Figures.NONE;
            if (club != null) {
                figures = Figures.of(club, new BalanceDoubt(end, bench.settings().balance().gripBalanceSdMm()));
            } else if (known && fit != null) {
                figures = fromReadings(configuration, sentences);
            }
            if (known && fit != null) {
                ScaleReading.Load load = bench.load(configuration);
                figures = figures.with(load == null ? null : fit.predict(load));
            }
            figures.warn(warnings);
            compareMass(configuration, figures.mass, warnings);
            GripShape shape = shape(configuration, sentences);
            RulesCheck rules = shape == null ? null : RulesCheck.of(bench.club().kind(), configuration, shape);
            return new ConfigurationBalance(configuration.id(), configuration.label(), configuration.gamer(), end,
                    shape, rules, bench.headPlaceMm(end.capMm()), club, figures.mass, figures.balancePoint, figures.moment, figures.points, figures.inertia,
                    configuration.swingweightRead(), misfit(configuration, figures.points),
                    configuration.totalMassReadGrams(), sentences, warnings);
        }

        /** A weighed club whose parts add up to something else has a wrong part. */
        private void compareMass(Configuration configuration, Estimate mass, List<String> warnings) {
            Double read = configuration.totalMassReadGrams();
            if (read == null || mass == null) {
                return;
            }
            double off = read - mass.value();
            if (Math.abs(off) > Math.max(SURPRISING_GRAMS, SURPRISING_SDS * mass.standardDeviation())) {
                warnings.add(Wording.of(bench.settings()).format("%s weighs %.0f g on the scale, %.0f g %s than its parts: weigh the"
                        + " parts again.", configuration.label(), read, Math.abs(off), off > 0 ? "more" : "less"));
            }
        }

        private GripShape shape(Configuration configuration, List<String> sentences) {
            try {
                GripShape shape = GripShape.of(configuration, bench.shaft(), bench.settings());
                sentences.addAll(shape.sentences());
                return shape;
            } catch (IllegalArgumentException refused) {
                sentences.add(refused.getMessage());
                return null;
            }
        }

        private ClubBalance fromParts(Configuration configuration, List<String> sentences) {
            try {
                return ClubBalance.of(bench.assembled(configuration), bench.scale());
            } catch (IllegalArgumentException refused) {
                sentences.add(refused.getMessage());
                return null;
            }
        }

        private Figures fromReadings(Configuration configuration, List<String> sentences) {
            ScaleReading.Load load = bench.load(configuration);
            if (load == null) {
                sentences.add("Measure the length of the club: head mass was added, and its lever is not known.");
                return Figures.NONE;
            }
            Estimate bareMass = record.bareMassGrams();
            if (bareMass == null) {
                sentences.add("Weigh the whole club once: total mass and balance point of " + configuration.label()
                        + " are blank without it.");
                return Figures.NONE;
            }
            double mass = bareMass.value() + configuration.headMassAddedGrams()
                    + bench.gripEnds().get(configuration.id()).massGrams();
            return Figures.of(new Estimate(mass, bareMass.standardDeviation()), moment(load, bareMass),
                    bench.scale().fulcrumMm());
        }

        /** From a measured balance point where there is one, else from the swingweight and the scale's own zero. */
        private Estimate moment(ScaleReading.Load load, Estimate bareMass) {
            double place = fit.gripBalancePointMm().value();
            Estimate bare = record.bareMomentGramMm(place);
            double point = bench.scale().pointGramMm();
            if (bare != null) {
                double more = load.knownMomentGramMm() + bareMass.value() * load.capMm()
                        + bench.scale().momentGramMm(load.gripGrams(), place);
                return bare.plus(more, load.pointsSd() * point);
            }
            Estimate points = fit.predict(load);
            return new Estimate(bench.scale().momentGramMm(new gripwright.units.Swingweight(points.value())),
                    points.standardDeviation() * point);
        }

        private static Double misfit(Configuration configuration, Estimate points) {
            return configuration.swingweightRead() == null || points == null ? null
                    : Double.valueOf(configuration.swingweightRead().points() - points.value());
        }
    }

    /** The five figures while they are being put together; null for unknown. */
    private record Figures(Estimate mass, Estimate balancePoint, Estimate moment, Estimate points, Estimate inertia) {

        static final Figures NONE = new Figures(null, null, null, null, null);

        static Figures of(ClubBalance club, BalanceDoubt doubt) {
            double momentSd = doubt.momentGramMm(club);
            return new Figures(new Estimate(club.massGrams(), doubt.massGrams(club)),
                    new Estimate(club.balancePointMm(), doubt.balancePointMm(club)),
                    new Estimate(club.momentGramInches(), Unit.INCH.fromInternal(momentSd)),
                    new Estimate(club.swingweight().points(), momentSd / club.scale().pointGramMm()),
                    new Estimate(club.inertiaAboutButtKgCm2(), doubt.inertiaKgCm2(club)));
        }

        static Figures of(Estimate mass, Estimate momentGramMm, double fulcrumMm) {
            double arm = momentGramMm.value() / mass.value();
            double armSd = Math.hypot(momentGramMm.standardDeviation() / mass.value(),
                    arm * mass.standardDeviation() / mass.value());
            return new Figures(mass, new Estimate(fulcrumMm + arm, armSd),
                    new Estimate(Unit.INCH.fromInternal(momentGramMm.value()),
                            Unit.INCH.fromInternal(momentGramMm.standardDeviation())), null, null);
        }

        Figures with(Estimate better) {
            return better == null ? this : new Figures(mass, balancePoint, moment, better, inertia);
        }

        void warn(List<String> warnings) {
            if (mass != null && (mass.value() < USUAL_TOTAL_GRAMS[0] || mass.value() > USUAL_TOTAL_GRAMS[1])) {
                warnings.add(String.format(Locale.ROOT, "A club of %.0f g is unusual; weigh its parts again.",
                        mass.value()));
            }
            if (points != null && (points.value() < USUAL_POINTS[0] || points.value() > USUAL_POINTS[1])) {
                warnings.add("A swingweight of " + new gripwright.units.Swingweight(points.value()).text()
                        + " is unusual; check the places of the parts.");
            }
        }
    }
}
