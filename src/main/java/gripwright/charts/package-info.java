/** Chart definitions, for screen and paper alike. */
package gripwright.charts;
