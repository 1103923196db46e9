/** Quantities and units, and numbers as people read and write them. Knows nothing of the rest of the program. */
package gripwright.units;
