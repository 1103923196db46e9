package gripwright.intake.rehearsal;

import gripwright.model.Readings;

/**
 * A shot of a simulated player.
 *
 * @param readings what an ideal source would read
 * @param mishit whether it was meant to be a mishit
 */
public record SimulatedShot(Readings readings, boolean mishit) {
}
