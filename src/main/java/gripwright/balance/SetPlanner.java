package gripwright.balance;

import gripwright.model.ClubKind;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Session;
import gripwright.model.SetClub;
import gripwright.model.ShopSettings;
import gripwright.model.Stock;
import gripwright.model.Tape;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Plans the whole set in the two passes of the bench: {@code SetPlanner.with(settings).of(session)}.
 *
 * <p>Each club gets the configuration advised for its family; a family without a test gets the advice of the one that
 * was tested, and says so. Without any advice the gamer is planned. The putter is one row of stock.
 */
public final class SetPlanner {

    private final ShopSettings settings;
    private final Stock stock;
    private final Map<ClubKind, String> advised;

    private SetPlanner(ShopSettings settings, Stock stock, Map<ClubKind, String> advised) {
        this.settings = settings;
        this.stock = stock;
        this.advised = Map.copyOf(advised);
    }

    /** Plans with these settings, knowing no stock. */
    public static SetPlanner with(ShopSettings settings) {
        return new SetPlanner(settings, new Stock(List.of(), List.of()), Map.of());
    }

    /** The same, counting from this stock and taking its first tape where none was tested. */
    public SetPlanner fromStock(Stock stock) {
        return new SetPlanner(settings, stock, advised);
    }

    /** The same, with another configuration (by its identity) for one family. */
    public SetPlanner advising(ClubKind family, String configurationId) {
        Map<ClubKind, String> more = new LinkedHashMap<>(advised);
        more.put(family, configurationId);
        return new SetPlanner(settings, stock, more);
    }

    /** The plan of this session's set. */
    public SetPlan of(Session session) {
        List<String> sentences = new ArrayList<>();
        if (session.set().isEmpty()) {
            sentences.add("Write down the clubs of the set, one row each, to have them planned.");
        } else if (session.advisedConfigurationId() == null && advised.isEmpty()) {
            sentences.add("No grip is advised yet: the set is planned with the player's own.");
        }
        Map<ClubTest, TestBalance> balances = new LinkedHashMap<>();
        session.tests().forEach(test -> balances.put(test, BalanceCalculator.with(settings).of(test)));
        List<SetPlan.Row> rows = new ArrayList<>();
        for (SetClub club : session.set()) {
            rows.add(club.kind() == ClubKind.PUTTER ? putter(club) : row(session, club, balances));
        }
        StockTake take = new StockTake(stock);
        rows.forEach(row -> take.add(row, configuration(session, row).orElse(null), tape(session, row)));
        Double cost = rows.stream().map(SetPlan.Row::cost).filter(price -> price != null)
                .reduce(Double::sum).orElse(null);
        if (cost != null && rows.stream().anyMatch(row -> row.configurationId() != null && row.cost() == null)) {
            sentences.add("The cost leaves out grips that have no price.");
        }
        return new SetPlan(rows, take.lines(), cost, sentences);
    }

    private static SetPlan.Row putter(SetClub club) {
        return new SetPlan.Row(club, "", null, "", "", null, null, null,
                List.of("Out of the test: its grip follows rules of its own. One row of stock."));
    }

    /** The configuration that a family gets, with the test it was found in. */
    private record Choice(ClubTest test, Configuration configuration, boolean ownTest) {
    }

    private Optional<Choice> choice(Session session, ClubKind family) {
        Optional<ClubTest> own = session.tests().stream().filter(test -> test.club().kind() == family
                && !test.configurations().isEmpty()).findFirst();
        Optional<ClubTest> main = session.tests().stream().filter(test -> advisedIn(test, session, family).isPresent())
                .findFirst();
        ClubTest test = own.or(() -> main)
                .or(() -> session.tests().stream().filter(t -> !t.configurations().isEmpty()).findFirst()).orElse(null);
        if (test == null) {
            return Optional.empty();
        }
        Configuration configuration = advisedIn(test, session, family)
                .or(() -> main.flatMap(m -> advisedIn(m, session, family)).flatMap(c -> sameBuild(test, c)))
                .or(test::reference).orElseThrow();
        return Optional.of(new Choice(test, configuration, own.isPresent()));
    }

    private Optional<Configuration> advisedIn(ClubTest test, Session session, ClubKind family) {
        String id = advised.getOrDefault(family, session.advisedConfigurationId());
        return id == null ? Optional.empty() : test.configuration(id);
    }

    private static Optional<Configuration> sameBuild(ClubTest test, Configuration wanted) {
        return test.configurations().stream().filter(c -> c.grip().name().equals(wanted.grip().name())
                && c.buildUp().equals(wanted.buildUp())).findFirst();
    }

    private SetPlan.Row row(Session session, SetClub club, Map<ClubTest, TestBalance> balances) {
        Optional<Choice> choice = choice(session, club.kind());
        if (choice.isEmpty()) {
            return new SetPlan.Row(club, "", null, "", "", null, null, null,
                    List.of("Give the session a configuration first: the grip for this club is not known."));
        }
        Choice chosen = choice.get();
        List<String> sentences = new ArrayList<>();
        if (!chosen.ownTest) {
            sentences.add("Tested with the " + chosen.test.club().name() + " only.");
        }
        Configuration configuration = withTape(chosen.configuration, tape(chosen.configuration));
        SetBuild build;
        try {
            build = new WrapChoice(configuration, new ShaftProfile(chosen.test.club().shaftDiameters()),
                    new ShaftProfile(club.shaftDiameters()), settings).choose();
        } catch (IllegalArgumentException refused) {
            sentences.add(refused.getMessage());
            build = new SetBuild(configuration.buildUp().fullWraps(), configuration.buildUp().lowerWraps(), null, null,
                    null);
        }
        describeBuild(club, configuration, build, sentences);
        SetBalance balance = new SetClubBalancer(settings, chosen.test, balances.get(chosen.test), configuration)
                .balance(club, build, sentences);
        return new SetPlan.Row(club, chosen.test.club().name(), configuration.id(), configuration.label(),
                configuration.grip().name(), balance, build, configuration.grip().price(), sentences);
    }

    private static void describeBuild(SetClub club, Configuration configuration, SetBuild build,
            List<String> sentences) {
        if (configuration.grip().diameters().isEmpty()) {
            sentences.add("Measure the outside of the grip as moulded: wraps are taken as in the test.");
        } else if (club.shaftDiameters().isEmpty()) {
            sentences.add("Measure the butt of the shaft: wraps are taken as in the test.");
        } else if (configuration.buildUp().tape() == null && build.offMm() != null && Math.abs(build.offMm()) > 0.1) {
            sentences.add("Choose a tape: without one the size can't be brought nearer.");
        }
    }

    private Tape tape(Configuration configuration) {
        return configuration.buildUp().tape() != null ? configuration.buildUp().tape()
                : stock.tapes().stream().filter(tape -> !tape.doubleSided()).findFirst().orElse(null);
    }

    private static Configuration withTape(Configuration configuration, Tape tape) {
        return configuration.withBuildUp(configuration.buildUp().withTape(tape));
    }

    private Optional<Configuration> configuration(Session session, SetPlan.Row row) {
        return row.configurationId() == null ? Optional.empty()
                : choice(session, row.club().kind()).map(Choice::configuration);
    }

    private Tape tape(Session session, SetPlan.Row row) {
        return configuration(session, row).map(this::tape).orElse(null);
    }
}
