/** Statistics on plain arrays: options in, immutable results out. Knows nothing of the trade. */
package gripwright.statistics;
