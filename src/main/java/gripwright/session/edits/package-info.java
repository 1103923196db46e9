/**
 * Edits with names: what a fitter does to a session, each taking a session to the next.
 *
 * <p>An edit whose shot, stint or test is not there any more changes nothing; one that would make a session that can't be
 * throws an {@link java.lang.IllegalArgumentException} with a sentence for the person.
 */
package gripwright.session.edits;
