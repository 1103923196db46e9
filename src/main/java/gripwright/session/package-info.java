/**
 * The session as it is edited: edits with names, undo history, journal and saving policy, and the ports to storage.
 */
package gripwright.session;
