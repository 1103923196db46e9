/** Shots that nobody hit: a simulated player and a source that plays shots into the bay for training and tests. */
package gripwright.intake.rehearsal;
