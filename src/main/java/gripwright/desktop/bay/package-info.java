/**
 * The place Bay: shots as they are hit, read from two metres, driven by single keys.
 *
 * <p>Everything that is decided stands in classes without the toolkit; the view holds controls and no logic.
 */
package gripwright.desktop.bay;
