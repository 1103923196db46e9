/** The test matrix, what is confounded in it, the order of stints, what it can detect, and what to hit next. */
package gripwright.planning;
