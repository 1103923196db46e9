/** The club as a lever, the swingweight scale, inertia, the grip as a shape, build-up, and the check against the rules. */
package gripwright.balance;
