package gripwright.balance;

import gripwright.model.ShopSettings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/**
 * Plans ballast for tests: {@code BallastPlanner.with(settings).of(testBalance)} gives one plan for each goal.
 *
 * <p>Equal grip mass: each lighter grip gets the difference Δ to the heaviest, at the place x = f + (S_heaviest − S) p / Δ
 * where the swingweight comes out equal too, if that place lies under the grip; else where the heaviest grip balances.
 * Equal swingweight: Δ = (S_lowest − S) p / (x − f) at that same place. Equal inertia: Δ = (I_highest − I) / x² at the
 * grip's lower end, where it takes least. More than 100 g is called infeasible, never clipped.
 */
public final class BallastPlanner {

    private static final double MOST_GRAMS = 100;
    private static final double NOTHING = 0.05;

    private final SwingweightScale scale;
    private final Wording wording;

    private BallastPlanner(ShopSettings settings) {
        this.scale = SwingweightScale.of(settings.balance());
        this.wording = Wording.of(settings);
    }

    public static BallastPlanner with(ShopSettings settings) {
        return new BallastPlanner(settings);
    }

    /** The plans that can be computed, in the order of the goals; none with fewer than two weighed grips. */
    public List<BallastPlan> of(TestBalance test) {
        List<ConfigurationBalance> weighed =
                test.configurations().stream().filter(c -> c.gripEnd().weighed()).toList();
        if (weighed.size() < 2) {
            return List.of();
        }
        List<BallastPlan> plans = new ArrayList<>();
        plans.add(plan(BallastPlan.Goal.GRIP_MASS, weighed, equalMass(weighed)));
        if (weighed.stream().allMatch(c -> c.swingweight() != null)) {
            plans.add(plan(BallastPlan.Goal.SWINGWEIGHT, weighed, equalSwingweight(weighed)));
        }
        if (weighed.stream().allMatch(c -> c.inertiaKgCm2() != null)) {
            plans.add(plan(BallastPlan.Goal.INERTIA, weighed, equalInertia(weighed)));
        }
        return plans;
    }

    /** A mass at a place from the butt end, cap included. */
    private record Ballast(double grams, double placeMm) {
    }

    private Function<ConfigurationBalance, Ballast> equalMass(List<ConfigurationBalance> weighed) {
        ConfigurationBalance heaviest = heaviest(weighed);
        return balance -> {
            double grams = heaviest.gripEnd().massGrams() - balance.gripEnd().massGrams();
            double place = heaviest.gripEnd().grip().positionMm();
            if (grams > NOTHING && balance.swingweight() != null && heaviest.swingweight() != null) {
                double points = heaviest.swingweight().points() - balance.swingweight().points();
                double both = scale.fulcrumMm() + points * scale.pointGramMm() / grams;
                double cap = balance.gripEnd().capMm();
                place = both >= cap && both <= cap + balance.gripEnd().lengthMm() ? both : place;
            }
            return new Ballast(grams, place);
        };
    }

    private Function<ConfigurationBalance, Ballast> equalSwingweight(List<ConfigurationBalance> weighed) {
        double lowest = weighed.stream().mapToDouble(c -> c.swingweight().points()).min().orElseThrow();
        double place = heaviest(weighed).gripEnd().grip().positionMm();
        return balance -> new Ballast((lowest - balance.swingweight().points()) / scale.points(1, place), place);
    }

    private Function<ConfigurationBalance, Ballast> equalInertia(List<ConfigurationBalance> weighed) {
        double highest = weighed.stream().mapToDouble(ConfigurationBalance::inertiaKgCm2).max().orElseThrow();
        return balance -> {
            double place = balance.gripEnd().capMm() + balance.gripEnd().lengthMm();
            double missing = highest - balance.inertiaKgCm2();
            return new Ballast(missing * Body.GRAM_MM2_PER_KG_CM2 / (place * place), place);
        };
    }

    private static ConfigurationBalance heaviest(List<ConfigurationBalance> weighed) {
        return weighed.stream().max(Comparator.comparingDouble(c -> c.gripEnd().massGrams())).orElseThrow();
    }

    private BallastPlan plan(BallastPlan.Goal goal, List<ConfigurationBalance> weighed,
            Function<ConfigurationBalance, Ballast> ballast) {
        List<BallastPlan.Row> rows = new ArrayList<>();
        for (ConfigurationBalance balance : weighed) {
            Ballast added = ballast.apply(balance);
            double grams = Math.abs(added.grams) < NOTHING ? 0 : added.grams;
            rows.add(new BallastPlan.Row(balance.configurationId(), balance.label(), grams,
                    added.placeMm - balance.gripEnd().capMm(), grams >= 0 && grams <= MOST_GRAMS,
                    balance.gripEnd().massGrams() + grams,
                    balance.figures().plus(grams, added.placeMm, scale)));
        }
        double mass = spread(rows, BallastPlan.Row::gripMassAfterGrams);
        Double points = spread(rows, row -> row.after().swingweight() == null ? null
                : Double.valueOf(row.after().swingweight().points()));
        Double inertia = spread(rows, row -> row.after().inertiaKgCm2());
        boolean feasible = rows.stream().allMatch(BallastPlan.Row::feasible);
        return new BallastPlan(goal, rows, mass, points, inertia, feasible,
                sentence(goal, rows, feasible, mass, points, inertia));
    }

    private static Double spread(List<BallastPlan.Row> rows, Function<BallastPlan.Row, Double> figure) {
        List<Double> figures = rows.stream().map(figure).filter(Objects::nonNull).sorted().toList();
        return figures.size() < rows.size() ? null : Double.valueOf(figures.get(figures.size() - 1) - figures.get(0));
    }

    private String sentence(BallastPlan.Goal goal, List<BallastPlan.Row> rows, boolean feasible, double mass,
            Double points, Double inertia) {
        double most = rows.stream().mapToDouble(BallastPlan.Row::grams).max().orElse(0);
        StringBuilder text = new StringBuilder();
        if (!feasible) {
            text.append(wording.format("Can't be done: it would take %.0f g in one butt. ", most));
        } else if (most == 0) {
            text.append("Nothing to add. ");
        }
        text.append("Left apart by");
        String join = " ";
        if (goal != BallastPlan.Goal.GRIP_MASS) {
            text.append(join).append(wording.format("%.1f g of grip mass", mass));
            join = ", ";
        }
        if (goal != BallastPlan.Goal.SWINGWEIGHT && points != null) {
            text.append(join).append(wording.format("%.1f points of swingweight", points));
            join = ", ";
        }
        if (goal != BallastPlan.Goal.INERTIA && inertia != null) {
            text.append(join).append(wording.format("%.1f kg·cm² of inertia", inertia));
        }
        return text.toString().endsWith("by") ? text.append(" nothing known.").toString() : text.append('.').toString();
    }
}
