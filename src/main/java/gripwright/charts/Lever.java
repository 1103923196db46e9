package gripwright.charts;

import gripwright.balance.Body;
import gripwright.balance.ConfigurationBalance;
import gripwright.balance.GripShape;
import gripwright.balance.ShaftProfile;
import gripwright.balance.SwingweightScale;
import gripwright.model.Configuration;
import gripwright.model.Diameter;
import gripwright.model.TestClub;
import gripwright.units.Swingweight;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One club as it is drawn as a lever, to scale along its length and across it.
 *
 * @param mark of its configuration
 * @param weights its parts as weights; empty where they are not known
 * @param lengthMm length of the club, mm
 * @param fulcrumMm where the scale carries it, mm from the butt end
 * @param outline outside diameters from the butt end to the tip of the shaft, always as many
 * @param gripEndMm where the grip ends, mm from the butt end
 * @param balancePointMm null where it can't be known
 * @param swingweight null where it can't be known
 */
public record Lever(Mark mark, List<Weight> weights, double lengthMm, double fulcrumMm, List<Diameter> outline,
        double gripEndMm, Double balancePointMm, Swingweight swingweight) {

    private static final int GRIP_SAMPLES = 40;
    private static final double UNMEASURED_BUTT_MM = 23;
    private static final double UNMEASURED_MOUTH_MM = 17;
    /** Tip of an iron shaft, about 0.37 in: common practice, no source; only for the drawing. */
    private static final double TIP_MM = 9.4;
    private static final double USUAL_LENGTH_MM = 940;

    /**
     * A part as a weight.
     *
     * @param key the same for the same part of another configuration
     * @param name for people
     * @param grams mass
     * @param positionMm mm from the butt end
     * @param points what it makes on the swingweight scale; negative on the butt's side
     */
    public record Weight(String key, String name, double grams, double positionMm, double points) {
    }

    public Lever {
        weights = List.copyOf(weights);
        outline = List.copyOf(outline);
    }

    /** The lever of a configuration on its club. */
    public static Lever of(ConfigurationBalance balance, Configuration configuration, TestClub club,
            SwingweightScale scale) {
        double cap = balance.gripEnd().capMm();
        Double head = balance.headPlaceMm();
        double length = club.lengthMm() != null ? club.lengthMm()
                : head != null ? head + scale.fulcrumMm() / 28 : USUAL_LENGTH_MM;
        double tip = Math.max(length * 0.9, head == null ? length : head);
        return new Lever(Mark.of(configuration), weights(balance, scale), length, scale.fulcrumMm(),
                outline(balance, new ShaftProfile(club.shaftDiameters()), cap, tip), cap + balance.gripEnd().lengthMm(),
                balance.balancePointMm(), balance.swingweight());
    }

    private static List<Weight> weights(ConfigurationBalance balance, SwingweightScale scale) {
        List<Weight> weights = new ArrayList<>();
        Map<Body.Role, Integer> counts = new LinkedHashMap<>();
        List<Body> bodies = balance.club() == null ? balance.gripEnd().bodies() : balance.club().bodies();
        for (Body body : bodies) {
            int count = counts.merge(body.role(), 1, Integer::sum);
            String name = body.role() == Body.Role.GRIP ? "grip" : body.name();
            weights.add(new Weight(body.role() + " " + count, name, body.massGrams(), body.positionMm(),
                    scale.points(body.massGrams(), body.positionMm())));
        }
        return weights;
    }

    private static List<Diameter> outline(ConfigurationBalance balance, ShaftProfile shaft, double capMm, double tipMm) {
        List<Diameter> outline = new ArrayList<>();
        GripShape shape = balance.shape();
        boolean known = shape != null && shape.profile().known();
        double length = balance.gripEnd().lengthMm();
        for (int sample = 0; sample <= GRIP_SAMPLES; sample++) {
            double place = length * sample / GRIP_SAMPLES;
            double unmeasured = UNMEASURED_BUTT_MM + (UNMEASURED_MOUTH_MM - UNMEASURED_BUTT_MM) * sample / GRIP_SAMPLES;
            outline.add(new Diameter(sample == 0 ? 0 : place + capMm, known ? shape.profile().at(place) : unmeasured));
        }
        outline.add(new Diameter(length + capMm, shaft.at(length)));
        outline.add(new Diameter(Math.max(length + capMm + 1, tipMm), TIP_MM));
        return outline;
    }

    /** How many points of the outline belong to the grip. */
    static int gripPoints() {
        return GRIP_SAMPLES + 1;
    }

    /**
     * The lever on the way from this one to another.
     *
     * @param share 0 for this one, 1 for the other
     */
    public Lever towards(Lever other, double share) {
        if (share <= 0) {
            return this;
        }
        if (share >= 1) {
            return other;
        }
        List<Diameter> blended = new ArrayList<>();
        for (int at = 0; at < outline.size(); at++) {
            blended.add(new Diameter(mix(outline.get(at).positionMm(), other.outline.get(at).positionMm(), share),
                    mix(outline.get(at).diameterMm(), other.outline.get(at).diameterMm(), share)));
        }
        return new Lever(other.mark, blendedWeights(other, share), mix(lengthMm, other.lengthMm, share),
                mix(fulcrumMm, other.fulcrumMm, share), blended, mix(gripEndMm, other.gripEndMm, share),
                balancePointMm == null || other.balancePointMm == null ? other.balancePointMm
                        : Double.valueOf(mix(balancePointMm, other.balancePointMm, share)),
                swingweight == null || other.swingweight == null ? other.swingweight
                        : new Swingweight(mix(swingweight.points(), other.swingweight.points(), share)));
    }

    private List<Weight> blendedWeights(Lever other, double share) {
        Map<String, Weight> all = new LinkedHashMap<>();
        weights.forEach(weight -> all.put(weight.key(), other.weight(weight.key()) == null
                ? new Weight(weight.key(), weight.name(), weight.grams() * (1 - share), weight.positionMm(),
                        weight.points() * (1 - share))
                : blend(weight, other.weight(weight.key()), share)));
        other.weights.stream().filter(weight -> weight(weight.key()) == null)
                .forEach(weight -> all.put(weight.key(), new Weight(weight.key(), weight.name(), weight.grams() * share,
                        weight.positionMm(), weight.points() * share)));
        return List.copyOf(all.values());
    }

    private Weight weight(String key) {
        return weights.stream().filter(weight -> weight.key().equals(key)).findFirst().orElse(null);
    }

    private static Weight blend(Weight from, Weight to, double share) {
        return new Weight(to.key(), to.name(), mix(from.grams(), to.grams(), share),
                mix(from.positionMm(), to.positionMm(), share), mix(from.points(), to.points(), share));
    }

    /**
     * This lever with one weight more and what becomes of its figures.
     *
     * @param label what its mark is called then
     */
    public Lever with(Weight more, Double balancePointMm, Swingweight swingweight, String label) {
        List<Weight> all = new ArrayList<>(weights);
        all.add(more);
        return new Lever(new Mark(mark.colourIndex(), mark.shape(), label), all, lengthMm, fulcrumMm, outline, gripEndMm,
                balancePointMm, swingweight);
    }

    private static double mix(double from, double to, double share) {
        return from + (to - from) * share;
    }
}
