package gripwright.desktop.balance;

import gripwright.balance.ConfigurationBalance;
import gripwright.balance.SessionBalance;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.ShopSettings;
import java.util.List;

/** One configuration's line in the table of all, as it is read. */
record BalanceRow(String label, String grip, String gripMass, String mass, String balancePoint, String moment,
        String swingweight, String doubt, String inertia, String rules) {

    static List<BalanceRow> of(ClubTest test, SessionBalance.Tested tested, ShopSettings settings) {
        Figures figures = new Figures(settings);
        return tested.balance().configurations().stream().map(balance -> of(test, balance, figures)).toList();
    }

    private static BalanceRow of(ClubTest test, ConfigurationBalance balance, Figures figures) {
        String grip = test.configuration(balance.configurationId()).map(Configuration::grip).map(g -> g.name())
                .orElse("");
        return new BalanceRow(balance.label() + (balance.gamer() ? ", gamer" : ""), grip,
                figures.smallMass(balance.gripEnd().massGrams()), figures.mass(balance.totalMassGrams()),
                figures.place(balance.balancePointMm()), figures.number(balance.momentGramInches(), 0),
                Figures.swingweight(balance.swingweight()), figures.number(balance.swingweightSdPoints(), 1),
                figures.number(balance.inertiaKgCm2(), 0),
                balance.rules() == null ? Figures.NONE : balance.rules().outcome().text());
    }
}
