/** The place Compare: the statistics, for the fitter. */
package gripwright.desktop.compare;
