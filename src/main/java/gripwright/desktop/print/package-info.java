/** The place Print: the pages, exactly as they come out. */
package gripwright.desktop.print;
