/** From a session to differences, spread, patterns, verdicts and advice; no algebra of its own. */
package gripwright.comparison;
