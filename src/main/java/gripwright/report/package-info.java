/** Pages: the player's, the numbers, the work order. */
package gripwright.report;
