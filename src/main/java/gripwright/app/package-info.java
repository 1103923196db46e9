/** The entry point, the command line, and the wiring of everything else. */
package gripwright.app;
