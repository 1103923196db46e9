/** Taking the shots of a CSV file into the session by hand: what was understood, what is asked, what was rejected. */
package gripwright.desktop.take;
