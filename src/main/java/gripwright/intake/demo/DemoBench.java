package gripwright.intake.demo;

import gripwright.model.BuildUp;
import gripwright.model.ClubKind;
import gripwright.model.ClubPart;
import gripwright.model.ClubReading;
import gripwright.model.Configuration;
import gripwright.model.Diameter;
import gripwright.model.Firmness;
import gripwright.model.Grip;
import gripwright.model.GripCondition;
import gripwright.model.PhysicalClub;
import gripwright.model.SetClub;
import gripwright.model.Tape;
import gripwright.model.TestClub;
import gripwright.model.Texture;
import gripwright.units.Swingweight;
import java.util.ArrayList;
import java.util.List;

/** The invented bench: the 8-iron of the demo sessions, the five grips on it and the player's set. */
final class DemoBench {

    static final String CLUB_ID = "club-1";

    private static final double INCH = 25.4;
    private static final double CAP_MM = 4;
    private static final double GRIP_LENGTH_MM = 268;
    private static final double GRIP_BALANCE_MM = 107.95;
    /** The doubled-sided layer that holds every grip, g at mm from the butt. */
    private static final double LAYER_GRAMS = 2;
    private static final double LAYER_AT_MM = 110;
    private static final double[] RULER_MM = {50.8, 76.2, 101.6, 127.0, 152.4};
    /** How much thinner a grip is at each place of the ruler than at the first, mm (invented taper). */
    private static final double[] TAPER_MM = {0, 0.75, 1.45, 2.15, 2.8};
    /** A shop's scale is read to a quarter of a point. */
    private static final double SCALE_STEP = 0.25;

    private static final Tape TAPE = new Tape("tape-1", "Masking tape, one layer 0.19 mm (invented)", 0.38, 150, false,
            "measured on the bench: two wraps add 0.76 mm to the diameter");

    private DemoBench() {
    }

    static PhysicalClub physicalClub() {
        return new PhysicalClub(CLUB_ID, "8-iron, grips blown on", PhysicalClub.Mounting.BLOWN_ON);
    }

    static TestClub club(List<Configuration> configurations) {
        List<ClubPart> parts = new ArrayList<>();
        parts.add(new ClubPart(ClubPart.Kind.HEAD, "8-iron head", 275, 35.9 * INCH, 0, null));
        parts.add(new ClubPart(ClubPart.Kind.SHAFT, "steel, cut", 112, 17.4 * INCH, 35.4 * INCH, null));
        parts.add(new ClubPart(ClubPart.Kind.FERRULE, "ferrule and epoxy", 4, 34.4 * INCH, 0, null));
        parts.add(new ClubPart(ClubPart.Kind.TAPE, "double-sided layer", LAYER_GRAMS, LAYER_AT_MM, 254, null));
        Configuration gamer = configurations.get(0);
        ClubReading reading = new ClubReading(gamer.swingweightRead(), gamer.grip().massGrams() + LAYER_GRAMS,
                gamer.totalMassReadGrams(), null, gamer.id(), "as it came in");
        return new TestClub(ClubKind.IRON, "8-iron", 36.5 * INCH, 37.0, 63.5, shaft(), parts, List.of(reading),
                "invented");
    }

    private static List<Diameter> shaft() {
        return List.of(new Diameter(0, 15.24), new Diameter(76.2, 14.70), new Diameter(152.4, 14.15),
                new Diameter(228.6, 13.60));
    }

    /** Gamer, thinner, two of one size and different mass, thicker: sizes and masses as measured. */
    static List<Configuration> configurations() {
        List<Configuration> list = new ArrayList<>();
        list.add(configuration(list.size(), "A", grip("cord-worn", "Cord, standard, worn, 50 g", "standard", 50.0,
                22.75, Texture.CORD, Firmness.FIRM, true), BuildUp.none(), 22.75).withGamer(true)
                .withNote("the player's own, slick under the lower hand"));
        list.add(configuration(list.size(), "B", grip("cord-thin", "Cord, thin, 44 g", "-1/64", 44.2, 22.48,
                Texture.CORD, Firmness.FIRM, false), BuildUp.none(), 22.48));
        list.add(configuration(list.size(), "C", grip("cord-plus", "Cord, +1/32, 57 g", "+1/32", 56.8, 23.62,
                Texture.CORD, Firmness.FIRM, false), BuildUp.none(), 23.62));
        BuildUp twoWraps = new BuildUp(2, 0, null, null, TAPE, 0, 0, null);
        list.add(configuration(list.size(), "D", grip("light", "Light rubber, standard, 41 g", "standard", 41.0, 22.86,
                Texture.RUBBER, Firmness.MEDIUM, false), twoWraps, 23.62)
                .withNote("two wraps bring it to the size of C, fifteen grams lighter"));
        list.add(configuration(list.size(), "E", grip("cord-mid", "Cord, midsize, 63 g", "+1/16", 63.3, 24.38,
                Texture.CORD, Firmness.FIRM, false), BuildUp.none(), 24.38));
        return List.copyOf(list);
    }

    private static Grip grip(String id, String name, String size, double grams, double diameterMm, Texture texture,
            Firmness firmness, boolean own) {
        return new Grip(id, name, size, 15.24, (double) Math.round(grams), grams, GRIP_LENGTH_MM, CAP_MM,
                GRIP_BALANCE_MM, tapered(diameterMm), null, false, firmness, texture, own,
                own ? GripCondition.WORN : GripCondition.FRESH, own ? null : (Double) 9.5, own ? null : (Integer) 12,
                "invented");
    }

    private static List<Diameter> tapered(double atFirst) {
        List<Diameter> diameters = new ArrayList<>();
        for (int i = 0; i < RULER_MM.length; i++) {
            diameters.add(new Diameter(RULER_MM[i], Math.round((atFirst - TAPER_MM[i]) * 100) / 100.0));
        }
        return diameters;
    }

    private static Configuration configuration(int index, String label, Grip grip, BuildUp buildUp, double fittedMm) {
        double wraps = buildUp.fullWraps() * 1.9;
        Configuration plain = Configuration.ofIndex(index, "configuration-" + label.toLowerCase(java.util.Locale.ROOT),
                label, grip, buildUp);
        return plain.withPhysicalClubId(CLUB_ID).withFittedDiameters(tapered(fittedMm))
                .withSwingweightRead(offTheScale(grip.massGrams(), wraps))
                .withTotalMassReadGrams(Math.round((275 + 112 + 4 + LAYER_GRAMS + grip.massGrams() + wraps) * 2) / 2.0);
    }

    /**
     * What the scale shows for the 8-iron with this grip, to a quarter of a point: moment about 14 in from the butt, cap
     * included, in points of 1.75 in·oz above A0 = 161 in·oz.
     */
    private static Swingweight offTheScale(double gripGrams, double wrapGrams) {
        double fulcrum = 355.6 - CAP_MM;
        double moment = 275 * (35.9 * INCH - fulcrum) + 112 * (17.4 * INCH - fulcrum) + 4 * (34.4 * INCH - fulcrum)
                + (LAYER_GRAMS + wrapGrams) * (LAYER_AT_MM - fulcrum) + gripGrams * (GRIP_BALANCE_MM - CAP_MM - fulcrum);
        double inchOunces = moment / INCH / 28.349523125;
        return new Swingweight(Math.round((inchOunces - 161) / 1.75 / SCALE_STEP) * SCALE_STEP);
    }

    /** The set that would be regripped. */
    static List<SetClub> set() {
        return List.of(
                club("set-5", "5-iron", ClubKind.IRON, 38.0, 30.5, 52.0), club("set-6", "6-iron", ClubKind.IRON, 37.5,
                        31.0, 51.5), club("set-7", "7-iron", ClubKind.IRON, 37.0, 30.75, 52.5),
                club("set-8", "8-iron", ClubKind.IRON, 36.5, 31.0, 52.0), club("set-9", "9-iron", ClubKind.IRON, 36.0,
                        31.25, 51.0), club("set-pw", "pitching wedge", ClubKind.WEDGE, 35.75, 33.0, 52.0),
                club("set-56", "56\u00B0 wedge", ClubKind.WEDGE, 35.25, 35.5, 53.0)
                        .withTargetSwingweight(new Swingweight(34)).withTarget(SetClub.Target.VALUE));
    }

    private static SetClub club(String id, String name, ClubKind kind, double inches, double points, double gripOff) {
        return SetClub.named(id, name, kind).withLengthMm(Math.round(inches * INCH * 10) / 10.0)
                .withShaftDiameters(shaft()).withPresentSwingweight(new Swingweight(points)).withGripOffGrams(gripOff);
    }
}
