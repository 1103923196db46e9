package gripwright.intake.rehearsal;

/**
 * How a simulated player delivers the club, or by how much a grip changes that; in the words of the player's own hand,
 * so that one player can be mirrored.
 *
 * @param clubSpeed m/s
 * @param path degrees, in to out positive
 * @param face degrees, open positive
 * @param attack degrees, up positive
 * @param dynamicLoft degrees
 * @param dynamicLie degrees, toe up positive
 * @param closureRate deg/s, closing positive
 * @param strikeSideways mm, towards the toe positive
 * @param strikeUp mm, up positive
 */
public record Swing(double clubSpeed, double path, double face, double attack, double dynamicLoft, double dynamicLie,
        double closureRate, double strikeSideways, double strikeUp) {

    /** No change in anything. */
    public static Swing none() {
        return new Swing(0, 0, 0, 0, 0, 0, 0, 0, 0);
    }

    Swing plus(Swing other) {
        return combined(other, 1);
    }

    /** This swing and another one as often as {@code times}. */
    Swing combined(Swing other, double times) {
        return new Swing(clubSpeed + times * other.clubSpeed, path + times * other.path, face + times * other.face,
                attack + times * other.attack, dynamicLoft + times * other.dynamicLoft,
                dynamicLie + times * other.dynamicLie, closureRate + times * other.closureRate,
                strikeSideways + times * other.strikeSideways, strikeUp + times * other.strikeUp);
    }

    /** Each part times the same part of another: standard deviations times standard normal draws. */
    Swing timesEach(Swing other) {
        return new Swing(clubSpeed * other.clubSpeed, path * other.path, face * other.face, attack * other.attack,
                dynamicLoft * other.dynamicLoft, dynamicLie * other.dynamicLie, closureRate * other.closureRate,
                strikeSideways * other.strikeSideways, strikeUp * other.strikeUp);
    }
}
