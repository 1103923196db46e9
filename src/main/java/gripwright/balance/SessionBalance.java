package gripwright.balance;

import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.model.Stock;
import java.util.ArrayList;
import java.util.List;

/**
 * Everything the balance of a session's clubs comes to: each test with its backward solutions and ballast, and the set.
 *
 * @param tests in the order of the session
 * @param set the set over the bench
 */
public record SessionBalance(List<Tested> tests, SetPlan set) {

    public SessionBalance {
        tests = List.copyOf(tests);
    }

    /**
     * One test.
     *
     * @param balance its configurations
     * @param referenceLabel the configuration the others are brought back to; empty where there is none
     * @param wanted its swingweight; null where that is not known
     * @param backwards for each other configuration the ways back to it
     * @param ballast plans that make all equal in one figure
     */
    public record Tested(TestBalance balance, String referenceLabel, Wanted wanted, List<Backwards> backwards,
            List<BallastPlan> ballast) {

        public Tested {
            backwards = List.copyOf(backwards);
            ballast = List.copyOf(ballast);
        }
    }

    /**
     * The ways of one configuration to a wanted figure.
     *
     * @param label the configuration
     * @param remedies head mass, butt weight, length
     */
    public record Backwards(String label, List<Remedy> remedies) {

        public Backwards {
            remedies = List.copyOf(remedies);
        }
    }

    /** The balance of a session without a stock list. */
    public static SessionBalance of(Session session, ShopSettings settings) {
        return of(session, settings, new Stock(List.of(), List.of()));
    }

    /** The balance of a session, its set counted against this stock. */
    public static SessionBalance of(Session session, ShopSettings settings, Stock stock) {
        List<Tested> tests = session.tests().stream().map(test -> tested(test, settings)).toList();
        return new SessionBalance(tests, SetPlanner.with(settings).fromStock(stock).of(session));
    }

    /** The balance of one test. */
    public static Tested tested(ClubTest test, ShopSettings settings) {
        TestBalance balance = BalanceCalculator.with(settings).of(test);
        String reference = test.reference().map(Configuration::label).orElse("");
        ConfigurationBalance against = balance.labelled(reference).orElse(null);
        Wanted wanted = against == null || against.swingweight() == null ? null
                : new Wanted.AtSwingweight(against.swingweight());
        List<Backwards> backwards = new ArrayList<>();
        if (wanted != null) {
            BackwardSolver solver = BackwardSolver.with(settings);
            balance.configurations().stream().filter(c -> c != against && c.swingweight() != null)
                    .forEach(c -> backwards.add(new Backwards(c.label(), solver.solve(c, wanted))));
        }
        return new Tested(balance, reference, wanted, backwards, BallastPlanner.with(settings).of(balance));
    }
}
