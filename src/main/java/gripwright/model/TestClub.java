package gripwright.model;

import java.util.List;

/**
 * The club a test is hit with.
 *
 * @param kind its family
 * @param name '8-iron'
 * @param lengthMm playing length with the grip it came with, mm; null where not measured
 * @param loftDegrees null where not measured
 * @param lieDegrees null where not measured
 * @param shaftDiameters shaft diameters from the butt end down, tape off
 * @param parts its parts without the grip; empty where the club is only known from readings
 * @param readings swingweights read off the scale with weighed grips
 * @param note free text
 */
public record TestClub(ClubKind kind, String name, Double lengthMm, Double loftDegrees, Double lieDegrees,
        List<Diameter> shaftDiameters, List<ClubPart> parts, List<ClubReading> readings, String note) {

    /** A club of which only the kind and the name are known. */
    public static TestClub named(ClubKind kind, String name) {
        return new TestClub(kind, name, null, null, null, List.of(), List.of(), List.of(), "");
    }

    public TestClub {
        Check.present(kind, "kind of the test club");
        Check.text(name, "name of the test club");
        Check.optionalPositive(lengthMm, "length of the test club");
        Check.optionalFinite(loftDegrees, "loft of the test club");
        Check.optionalFinite(lieDegrees, "lie of the test club");
        shaftDiameters = Check.list(shaftDiameters);
        parts = Check.list(parts);
        readings = Check.list(readings);
        note = Check.orEmpty(note);
    }

    public TestClub withKind(ClubKind kind) {
        return new TestClub(kind, name, lengthMm, loftDegrees, lieDegrees, shaftDiameters, parts, readings, note);
    }

    public TestClub withName(String name) {
        return new TestClub(kind, name, lengthMm, loftDegrees, lieDegrees, shaftDiameters, parts, readings, note);
    }

    public TestClub withLengthMm(Double lengthMm) {
        return new TestClub(kind, name, lengthMm, loftDegrees, lieDegrees, shaftDiameters, parts, readings, note);
    }

    public TestClub withLoftDegrees(Double loftDegrees) {
        return new TestClub(kind, name, lengthMm, loftDegrees, lieDegrees, shaftDiameters, parts, readings, note);
    }

    public TestClub withLieDegrees(Double lieDegrees) {
        return new TestClub(kind, name, lengthMm, loftDegrees, lieDegrees, shaftDiameters, parts, readings, note);
    }

    public TestClub withShaftDiameters(List<Diameter> shaftDiameters) {
        return new TestClub(kind, name, lengthMm, loftDegrees, lieDegrees, shaftDiameters, parts, readings, note);
    }

    public TestClub withParts(List<ClubPart> parts) {
        return new TestClub(kind, name, lengthMm, loftDegrees, lieDegrees, shaftDiameters, parts, readings, note);
    }

    public TestClub withReadings(List<ClubReading> readings) {
        return new TestClub(kind, name, lengthMm, loftDegrees, lieDegrees, shaftDiameters, parts, readings, note);
    }

    public TestClub withNote(String note) {
        return new TestClub(kind, name, lengthMm, loftDegrees, lieDegrees, shaftDiameters, parts, readings, note);
    }
}
