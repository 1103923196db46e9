/** The place Review: for the player, few words and big pictures. */
package gripwright.desktop.review;
