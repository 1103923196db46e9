/** The window; one package for each place of the workbench, and what they share in {@code support}. */
package gripwright.desktop;
