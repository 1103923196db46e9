package gripwright.model;

import gripwright.units.Swingweight;
import gripwright.units.Unit;
import gripwright.units.UnitChoice;
import gripwright.units.Dimension;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;

/**
 * Makes any session that can be, for property tests: every field filled or missing, odd texts, several tests.
 *
 * <p>A session is made from one seed, so a failing seed says everything.
 */
public final class SessionArbitraries {

    private static final List<String> ODD_TEXTS = List.of("", " ", "Käte Ödön", "日本語", "\uD83C\uDFCC\uFE0F", "a\"b\\c/d",
            "line\nbreak\r\n\ttab", "\u0000\u001f\u007f", "\u2028\u2029", "−1,5", "null", "{}", "\uD800 alone",
            "alone \uDC00", "\uFEFF", "e\u0301");

    private final Random random;
    private int lastId;

    private SessionArbitraries(long seed) {
        this.random = new Random(seed);
    }

    /** Any session. */
    public static Arbitrary<Session> sessions() {
        return Arbitraries.longs().map(SessionArbitraries::session);
    }

    /** Any shop settings. */
    public static Arbitrary<ShopSettings> settings() {
        return Arbitraries.longs().map(seed -> new SessionArbitraries(seed).anySettings());
    }

    /** Any stock list. */
    public static Arbitrary<Stock> stocks() {
        return Arbitraries.longs().map(seed -> {
            SessionArbitraries make = new SessionArbitraries(seed);
            return new Stock(make.list(5, i -> make.grip()), make.list(4, i -> make.tape()));
        });
    }

    /** The session of this seed. */
    public static Session session(long seed) {
        return new SessionArbitraries(seed).anySession();
    }

    private Session anySession() {
        List<ClubTest> tests = new ArrayList<>();
        int count = 1 + random.nextInt(Session.MOST_TESTS);
        for (int index = 0; index < count; index++) {
            tests.add(test("test-" + index));
        }
        return new Session(id("session"), date(), random.nextBoolean(), player(), goal(), text(), text(), text(),
                new ReadingSource(text(), any(ReadingSource.ClosureAxis.class), metrics()), differences(), tests,
                list(4, i -> shot()), list(5, i -> setClub()), maybe(() -> id("configuration")), text());
    }

    private Player player() {
        return new Player(text(), any(Handedness.class), maybe(this::above), maybe(this::above), text(), text(),
                maybe(() -> random.nextInt(9)), text(), text());
    }

    private Goal goal() {
        return new Goal(text(), list(Goal.MOST_PRIMARIES, i -> new PrimaryMetric(any(Metric.class),
                any(PrimaryMetric.Aspect.class), any(Direction.class), maybe(this::number), above())),
                list(3, i -> new Guardrail(any(Metric.class), any(PrimaryMetric.Aspect.class), any(Direction.class), maybe(this::number), size())),
                random.nextDouble(), random.nextBoolean());
    }

    private ClubTest test(String id) {
        List<Configuration> configurations = list(8, this::configuration);
        List<Stint> stints = configurations.isEmpty() ? List.of()
                : list(10, i -> stint(configurations.get(random.nextInt(configurations.size())).id()));
        String reference = configurations.isEmpty() ? null : maybe(() -> configurations.get(0).id());
        return new ClubTest(id, club(), list(3, i -> new PhysicalClub(id("club"), name(),
                any(PhysicalClub.Mounting.class))), configurations, reference, plan(), stints);
    }

    private TestClub club() {
        return new TestClub(any(ClubKind.class), name(), maybe(this::above), maybe(this::number), maybe(this::number),
                diameters(), list(5, i -> new ClubPart(any(ClubPart.Kind.class), text(), size(), number(), size(),
                maybe(this::size))), list(3, i -> new ClubReading(swingweight(), size(), maybe(this::above),
                maybe(this::above), maybe(() -> id("configuration")), text())), text());
    }

    private Configuration configuration(int index) {
        return new Configuration(id("configuration"), "L" + index + text(), grip(), buildUp(), size(),
                maybe(() -> id("club")), random.nextBoolean(), random.nextInt(Configuration.COLOURS),
                any(MarkerShape.class), diameters(), maybe(this::swingweight), maybe(this::above), text());
    }

    private Grip grip() {
        double length = 200 + 100 * random.nextDouble();
        return new Grip(id("grip"), name(), text(), maybe(this::above), maybe(this::size), maybe(this::size), length,
                size(), maybe(() -> length * random.nextDouble()), diameters(), maybe(random::nextDouble),
                random.nextBoolean(), maybe(() -> any(Firmness.class)), maybe(() -> any(Texture.class)),
                random.nextBoolean(), any(GripCondition.class), maybe(this::size), maybe(() -> random.nextInt(99)),
                text());
    }

    private Tape tape() {
        return new Tape(id("tape"), name(), size(), size(), random.nextBoolean(), text());
    }

    private BuildUp buildUp() {
        double from = 300 * random.nextDouble();
        return new BuildUp(random.nextInt(8), random.nextInt(5), maybe(() -> from), maybe(() -> from + 1 + 100 * random.nextDouble()),
                maybe(this::tape), size(), size(), size());
    }

    private Plan plan() {
        return new Plan(any(Plan.Order.class), 1 + random.nextInt(12), random.nextInt(3), random.nextInt(9),
                1 + random.nextInt(4), random.nextLong());
    }

    private Stint stint(String configurationId) {
        return new Stint(id("stint"), configurationId, any(Stint.Kind.class), any(Stint.State.class),
                random.nextInt(12), random.nextInt(3), maybe(() -> id("club")), random.nextBoolean(),
                list(6, i -> shot()), feel(), maybe(this::swingweight), maybe(() -> 100 * random.nextDouble()),
                maybe(this::size), maybe(this::moment), maybe(this::moment),
                list(3, i -> new Note(maybe(this::moment), any(Note.Kind.class), text(), maybe(() -> id("shot")))));
    }

    private Feel feel() {
        return new Feel(maybe(this::seven), maybe(this::seven), maybe(this::seven), maybe(() -> seven() - 4),
                maybe(() -> seven() - 4), maybe(() -> any(Feel.WouldPlay.class)), text());
    }

    private Shot shot() {
        Map<Metric, Double> values = new EnumMap<>(Metric.class);
        metrics().forEach(metric -> values.put(metric, Math.max(-Readings.MOST, Math.min(Readings.MOST, number()))));
        return new Shot(id("shot"), maybe(this::moment), new Readings(values),
                new ShotSource(any(ShotSource.Kind.class), text(), text(), text(), text(), random.nextInt(4)),
                maybe(this::name), random.nextBoolean(), random.nextBoolean(), text());
    }

    private SetClub setClub() {
        return new SetClub(id("set"), name(), any(ClubKind.class), maybe(this::above), diameters(),
                maybe(this::swingweight), maybe(this::size), maybe(this::swingweight), maybe(this::swingweight),
                maybe(this::above), any(SetClub.Target.class), swingweight(), maybe(this::above), text());
    }

    private ShopSettings anySettings() {
        UnitChoice units = UnitChoice.metric().with(oneOf(List.of(Unit.METRES_PER_SECOND, Unit.MILES_PER_HOUR)))
                .with(oneOf(List.of(Unit.METRE, Unit.YARD))).with(oneOf(List.of(Unit.INCH, Unit.CENTIMETRE)))
                .with(oneOf(List.of(Dimension.MASS.internalUnit(), Unit.OUNCE)));
        return ShopSettings.usual().withShopName(text()).withShopNote(text()).withCurrency(text()).withUnits(units)
                .withDecimalMark(random.nextBoolean() ? '.' : ',').withPaper(random.nextBoolean() ? "A4" : "Letter")
                .withDark(random.nextBoolean()).withSmallestDifferences(differences())
                .withVerdicts(VerdictSettings.usual().withClaim(0.6 + 0.3 * random.nextDouble())
                        .withDriftPriorSd(above()))
                .withEntryColumns(List.copyOf(metrics())).withRulerPositionsMm(list(5, i -> size()))
                .withTransferFactor(random.nextDouble()).withGripBalancePointMm(above())
                .withScaleNoisePoints(above()).withHeadTapeLimitGrams(size());
    }

    private List<Diameter> diameters() {
        return list(4, i -> new Diameter(size(), above()));
    }

    private Map<Metric, Double> differences() {
        Map<Metric, Double> differences = new EnumMap<>(Metric.class);
        metrics().forEach(metric -> differences.put(metric, size()));
        return differences;
    }

    private Set<Metric> metrics() {
        Set<Metric> chosen = EnumSet.noneOf(Metric.class);
        for (Metric metric : Metric.values()) {
            if (random.nextInt(3) == 0) {
                chosen.add(metric);
            }
        }
        return chosen;
    }

    private Swingweight swingweight() {
        return new Swingweight(random.nextInt(5) == 0 ? number() : 70 * random.nextDouble());
    }

    private LocalDate date() {
        return LocalDate.ofEpochDay(random.nextInt(40_000));
    }

    private Instant moment() {
        return Instant.ofEpochSecond(random.nextInt(), random.nextBoolean() ? 0 : random.nextInt(1_000_000_000));
    }

    private int seven() {
        return 1 + random.nextInt(7);
    }

    /** Any finite number, the awkward ones often. */
    private double number() {
        return switch (random.nextInt(6)) {
            case 0 -> random.nextInt(100);
            case 1 -> -random.nextInt(100);
            case 2 -> oneOf(List.of(0.0, -0.0, Double.MIN_VALUE, Double.MAX_VALUE, 1e-7, 0.1 + 0.2, 2.0E-3, 1e21));
            default -> random.nextGaussian() * Math.pow(10, random.nextInt(5));
        };
    }

    private double size() {
        return Math.abs(number());
    }

    private double above() {
        double size = size();
        return size > 0 ? Math.min(size, 1e9) : 1;
    }

    private String id(String what) {
        lastId++;
        return what + "-" + lastId;
    }

    private String name() {
        return "n" + text();
    }

    private String text() {
        if (random.nextInt(3) > 0) {
            return oneOf(ODD_TEXTS);
        }
        StringBuilder text = new StringBuilder();
        for (int letters = random.nextInt(12); letters > 0; letters--) {
            text.append((char) random.nextInt(random.nextBoolean() ? 128 : 65_536));
        }
        return text.toString();
    }

    private <T> T maybe(Supplier<T> value) {
        return random.nextInt(3) == 0 ? null : value.get();
    }

    private <T> List<T> list(int most, IntFunction<T> element) {
        List<T> list = new ArrayList<>();
        int count = random.nextInt(most + 1);
        for (int index = 0; index < count; index++) {
            list.add(element.apply(index));
        }
        return list;
    }

    private <E extends Enum<E>> E any(Class<E> type) {
        return oneOf(List.of(type.getEnumConstants()));
    }

    private <T> T oneOf(List<T> values) {
        return values.get(random.nextInt(values.size()));
    }
}
