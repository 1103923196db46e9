package gripwright.desktop;

import gripwright.desktop.balance.BalancePlace;
import gripwright.desktop.bay.BayPlace;
import gripwright.desktop.compare.ComparePlace;
import gripwright.desktop.plan.PlanView;
import gripwright.desktop.print.PrintPlace;
import gripwright.desktop.review.ReviewPlace;
import gripwright.desktop.setup.SetupView;
import gripwright.desktop.support.Place;
import gripwright.desktop.support.PlaceKey;
import gripwright.desktop.support.Workbench;
import java.util.EnumMap;
import java.util.Map;

/** The seven places, each made when it is first entered, so that the window stands soon. */
final class Places {

    private final Map<PlaceKey, Place> made = new EnumMap<>(PlaceKey.class);
    private final Workbench workbench;

    Places(Workbench workbench) {
        this.workbench = workbench;
    }

    Place at(PlaceKey key) {
        return made.computeIfAbsent(key, this::make);
    }

    private Place make(PlaceKey key) {
        return switch (key) {
            case COMPARE -> new ComparePlace(workbench);
            case REVIEW -> new ReviewPlace(workbench);
            case PRINT -> new PrintPlace(workbench);
            case SETUP -> new SetupView(workbench);
            case BAY -> new BayPlace(workbench);
            case PLAN -> new PlanView(workbench);
            case BALANCE -> new BalancePlace(workbench);
        };
    }
}
