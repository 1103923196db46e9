package gripwright.balance;

import gripwright.model.BuildUp;
import gripwright.model.Configuration;
import gripwright.model.ShopSettings;
import java.util.List;
import java.util.function.IntFunction;

/**
 * Chooses whole wraps for another shaft so that the size there comes nearest to the size that was tested.
 *
 * <p>Where the tested grip was measured as fitted, what the measurement was off the prediction goes along to the other
 * shaft.
 *
 * @param tested the configuration as it was tested, with the tape the shop uses
 * @param testedOn the shaft it was tested on
 * @param shaft the shaft of this club
 * @param settings the shop's
 */
record WrapChoice(Configuration tested, ShaftProfile testedOn, ShaftProfile shaft, ShopSettings settings) {

    private static final int MOST_WRAPS = 12;
    private static final double SAME_MM = 1e-9;

    SetBuild choose() {
        BuildUp asTested = tested.buildUp();
        if (!shaft.measured() || tested.grip().diameters().isEmpty()) {
            return new SetBuild(asTested.fullWraps(), asTested.lowerWraps(), null, null, null);
        }
        double sizePlace = settings.balance().sizePositionMm();
        double lowerPlace = settings.rulerPositionsMm().stream().mapToDouble(Double::doubleValue).max()
                .orElse(sizePlace);
        int full = nearest(sizePlace, asTested::withFullWraps);
        BuildUp withFull = asTested.withFullWraps(full);
        int lower = asTested.lowerWraps() == 0 ? 0 : nearest(lowerPlace, withFull::withLowerWraps);
        BuildUp chosen = withFull.withLowerWraps(lower);
        double reached = reachedAt(sizePlace, chosen);
        return new SetBuild(full, lower, SizeReading.of(reached, settings.balance()), reached - wantedAt(sizePlace),
                reachedAt(lowerPlace, chosen) - wantedAt(lowerPlace));
    }

    private int nearest(double place, IntFunction<BuildUp> wrapped) {
        int most = tested.buildUp().tape() == null ? 0 : MOST_WRAPS;
        int best = 0;
        for (int wraps = 1; wraps <= most; wraps++) {
            if (offAt(place, wrapped.apply(wraps)) < offAt(place, wrapped.apply(best)) - SAME_MM) {
                best = wraps;
            }
        }
        return best;
    }

    private double offAt(double place, BuildUp buildUp) {
        return Math.abs(reachedAt(place, buildUp) - wantedAt(place));
    }

    private double wantedAt(double place) {
        return GripProfile.of(tested, testedOn, settings).at(place);
    }

    private double reachedAt(double place, BuildUp buildUp) {
        GripProfile there = GripProfile.of(tested, testedOn, settings);
        Configuration here = tested.withBuildUp(buildUp).withFittedDiameters(List.of());
        return GripProfile.of(here, shaft, settings).at(place) + there.at(place) - there.predicted(place);
    }
}
