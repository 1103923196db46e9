/** Readings from files and watched folders, turned into shots and problems. */
package gripwright.intake;
