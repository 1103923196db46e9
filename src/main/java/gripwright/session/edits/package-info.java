/** Edits with names: what a fitter does to a session, each taking a session to the next. */
package gripwright.session.edits;
