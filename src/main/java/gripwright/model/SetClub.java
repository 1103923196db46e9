package gripwright.model;

import gripwright.units.Swingweight;
import java.util.List;

/**
 * One club of the player's set on its way over the bench.
 *
 * @param id unique in its session
 * @param name '8-iron'
 * @param kind its family
 * @param lengthMm null where not measured
 * @param shaftDiameters from the butt end down; empty where not measured
 * @param presentSwingweight before anything comes off; null where not read
 * @param gripOffGrams mass of the grip and tape that come off; null where not weighed
 * @param bareSwingweight read once stripped; null before
 * @param finalSwingweight read when done; null before
 * @param totalMassGrams mass of the club as it came; null where not weighed
 * @param target what the swingweight shall be
 * @param targetSwingweight for {@link Target#VALUE}; else null
 * @param targetInertiaKgCm2 for {@link Target#COMMON_INERTIA}; null to take the test club's
 * @param note free text
 */
public record SetClub(String id, String name, ClubKind kind, Double lengthMm, List<Diameter> shaftDiameters,
        Swingweight presentSwingweight, Double gripOffGrams, Swingweight bareSwingweight, Swingweight finalSwingweight,
        Double totalMassGrams, Target target, Swingweight targetSwingweight, Double targetInertiaKgCm2, String note) {

    /** What a club is brought to. */
    public enum Target {
        AS_NOW,
        VALUE,
        COMMON_INERTIA
    }

    /** A club of which only the name and the family are known, to come back as it was. */
    public static SetClub named(String id, String name, ClubKind kind) {
        return new SetClub(id, name, kind, null, List.of(), null, null, null, null, null, Target.AS_NOW, null, null,
                "");
    }

    public SetClub {
        Check.text(id, "identity of a club of the set");
        Check.text(name, "name of a club of the set");
        Check.present(kind, "family of the " + name);
        Check.optionalPositive(lengthMm, "length of the " + name);
        shaftDiameters = Check.list(shaftDiameters);
        Check.optionalNotNegative(gripOffGrams, "mass of the grip off the " + name);
        Check.optionalPositive(totalMassGrams, "mass of the " + name);
        Check.present(target, "target of the " + name);
        if (target == Target.VALUE && targetSwingweight == null) {
            throw new IllegalArgumentException("Give the swingweight that the " + name + " shall have, such as D2.");
        }
        Check.optionalPositive(targetInertiaKgCm2, "target inertia of the " + name);
        note = Check.orEmpty(note);
    }

    public SetClub withId(String id) {
        return new SetClub(id, name, kind, lengthMm, shaftDiameters, presentSwingweight, gripOffGrams,
                bareSwingweight, finalSwingweight, totalMassGrams, target, targetSwingweight, targetInertiaKgCm2,
                note);
    }

    public SetClub withName(String name) {
        return new SetClub(id, name, kind, lengthMm, shaftDiameters, presentSwingweight, gripOffGrams,
                bareSwingweight, finalSwingweight, totalMassGrams, target, targetSwingweight, targetInertiaKgCm2,
                note);
    }

    public SetClub withKind(ClubKind kind) {
        return new SetClub(id, name, kind, lengthMm, shaftDiameters, presentSwingweight, gripOffGrams,
                bareSwingweight, finalSwingweight, totalMassGrams, target, targetSwingweight, targetInertiaKgCm2,
                note);
    }

    public SetClub withLengthMm(Double lengthMm) {
        return new SetClub(id, name, kind, lengthMm, shaftDiameters, presentSwingweight, gripOffGrams,
                bareSwingweight, finalSwingweight, totalMassGrams, target, targetSwingweight, targetInertiaKgCm2,
                note);
    }

    public SetClub withShaftDiameters(List<Diameter> shaftDiameters) {
        return new SetClub(id, name, kind, lengthMm, shaftDiameters, presentSwingweight, gripOffGrams,
                bareSwingweight, finalSwingweight, totalMassGrams, target, targetSwingweight, targetInertiaKgCm2,
                note);
    }

    public SetClub withPresentSwingweight(Swingweight presentSwingweight) {
        return new SetClub(id, name, kind, lengthMm, shaftDiameters, presentSwingweight, gripOffGrams,
                bareSwingweight, finalSwingweight, totalMassGrams, target, targetSwingweight, targetInertiaKgCm2,
                note);
    }

    public SetClub withGripOffGrams(Double gripOffGrams) {
        return new SetClub(id, name, kind, lengthMm, shaftDiameters, presentSwingweight, gripOffGrams,
                bareSwingweight, finalSwingweight, totalMassGrams, target, targetSwingweight, targetInertiaKgCm2,
                note);
    }

    public SetClub withBareSwingweight(Swingweight bareSwingweight) {
        return new SetClub(id, name, kind, lengthMm, shaftDiameters, presentSwingweight, gripOffGrams,
                bareSwingweight, finalSwingweight, totalMassGrams, target, targetSwingweight, targetInertiaKgCm2,
                note);
    }

    public SetClub withFinalSwingweight(Swingweight finalSwingweight) {
        return new SetClub(id, name, kind, lengthMm, shaftDiameters, presentSwingweight, gripOffGrams,
                bareSwingweight, finalSwingweight, totalMassGrams, target, targetSwingweight, targetInertiaKgCm2,
                note);
    }

    public SetClub withTotalMassGrams(Double totalMassGrams) {
        return new SetClub(id, name, kind, lengthMm, shaftDiameters, presentSwingweight, gripOffGrams,
                bareSwingweight, finalSwingweight, totalMassGrams, target, targetSwingweight, targetInertiaKgCm2,
                note);
    }

    public SetClub withTarget(Target target) {
        return new SetClub(id, name, kind, lengthMm, shaftDiameters, presentSwingweight, gripOffGrams,
                bareSwingweight, finalSwingweight, totalMassGrams, target, targetSwingweight, targetInertiaKgCm2,
                note);
    }

    public SetClub withTargetSwingweight(Swingweight targetSwingweight) {
        return new SetClub(id, name, kind, lengthMm, shaftDiameters, presentSwingweight, gripOffGrams,
                bareSwingweight, finalSwingweight, totalMassGrams, target, targetSwingweight, targetInertiaKgCm2,
                note);
    }

    public SetClub withTargetInertiaKgCm2(Double targetInertiaKgCm2) {
        return new SetClub(id, name, kind, lengthMm, shaftDiameters, presentSwingweight, gripOffGrams,
                bareSwingweight, finalSwingweight, totalMassGrams, target, targetSwingweight, targetInertiaKgCm2,
                note);
    }

    public SetClub withNote(String note) {
        return new SetClub(id, name, kind, lengthMm, shaftDiameters, presentSwingweight, gripOffGrams,
                bareSwingweight, finalSwingweight, totalMassGrams, target, targetSwingweight, targetInertiaKgCm2,
                note);
    }
}
