/** Setup, the first place: player, goal, test clubs, where readings come from, units and smallest differences. */
package gripwright.desktop.setup;
