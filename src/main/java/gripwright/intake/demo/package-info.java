/** The demo sessions: invented players, clubs and grips, made by the simulated player from a seed. */
package gripwright.intake.demo;
