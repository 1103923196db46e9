/** Plan, the second place: the test matrix, what it can tell, the order of stints, and the shop's stock list. */
package gripwright.desktop.plan;
