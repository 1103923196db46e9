/** Files: sessions, settings, stock, journal; versions, migrations and atomic writes. */
package gripwright.storage;
