package gripwright.comparison;

import gripwright.balance.SessionBalance;
import gripwright.balance.SetPlan;
import gripwright.balance.SetPlanner;
import gripwright.model.ClubKind;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.model.Stock;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Plans the set with what the fitter advises or, as long as the fitter has advised nothing, with what the numbers of each
 * family's own test choose; a family without a test follows the first test that chose.
 */
public final class AdvisedSet {

    private final Session session;
    private final ShopSettings shop;
    private final Stock stock;

    private AdvisedSet(Session session, ShopSettings shop, Stock stock) {
        this.session = session;
        this.shop = shop;
        this.stock = stock;
    }

    /** The set of this session with these settings, counted against this stock. */
    public static AdvisedSet of(Session session, ShopSettings shop, Stock stock) {
        return new AdvisedSet(session, shop, stock);
    }

    /**
     * The plan of the set.
     *
     * @param comparisons one for each test of the session, in its order
     * @throws IllegalArgumentException if there are not as many comparisons as tests
     */
    public SetPlan plan(List<Comparison> comparisons) {
        if (comparisons.size() != session.tests().size()) {
            throw new IllegalArgumentException("A session of " + session.tests().size() + " tests needs as many comparisons, "
                    + "not " + comparisons.size() + ".");
        }
        SetPlanner planner = SetPlanner.with(shop).fromStock(stock);
        if (session.advisedConfigurationId() != null) {
            return planner.of(session);
        }
        Set<ClubKind> families = EnumSet.noneOf(ClubKind.class);
        for (int at = 0; at < comparisons.size(); at++) {
            ClubTest test = session.tests().get(at);
            String chosen = comparisons.get(at).advice().configurationId();
            if (chosen != null && families.add(test.club().kind())) {
                planner = planner.advising(test.club().kind(), chosen);
            }
        }
        return planner.of(session.withAdvisedConfigurationId(chosen(comparisons)));
    }

    private static String chosen(List<Comparison> comparisons) {
        return comparisons.stream().map(c -> c.advice().configurationId()).filter(id -> id != null).findFirst()
                .orElse(null);
    }

    /** The whole balance of the session, its set planned by {@link #plan}, and a sentence where the numbers chose. */
    public SessionBalance balance() {
        SessionBalance balance = SessionBalance.of(session, shop, stock);
        if (session.advisedConfigurationId() != null || session.set().isEmpty()) {
            return balance;
        }
        List<Comparison> comparisons = Comparer.withSettings(shop).compareAll(session);
        String chosen = chosen(comparisons);
        if (chosen == null) {
            return balance;
        }
        SetPlan plan = plan(comparisons);
        List<String> sentences = new ArrayList<>(plan.sentences());
        sentences.add(0, "No grip is advised yet: the set is planned with " + label(chosen)
                + ", as the numbers choose it; the fitter has not confirmed it.");
        return new SessionBalance(balance.tests(), new SetPlan(plan.rows(), plan.stock(), plan.cost(), sentences));
    }

    private String label(String configurationId) {
        return session.tests().stream().flatMap(test -> test.configuration(configurationId).stream()).findFirst()
                .map(Configuration::label).orElse("?");
    }
}
