/**
 * Immutable records of the trade: session, player, club, grip, configuration, stint, shot, metric.
 *
 * <p>A {@code Double} component may be null and then means 'not measured' (or 'not chosen'); a {@code double} is always
 * there. Every record checks itself at construction and refuses with an {@link IllegalArgumentException} whose message
 * is a sentence for people. Records that are edited carry one {@code with…} method a component.
 */
package gripwright.model;
