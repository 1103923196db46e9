/** The place Balance: the club as a lever, the readings beside it, ways back to a target, ballast, shapes, the set. */
package gripwright.desktop.balance;
