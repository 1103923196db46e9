package gripwright.model;

/** The mark a configuration is drawn with, always together with its colour and label. */
public enum MarkerShape {
    CIRCLE,
    SQUARE,
    TRIANGLE,
    DIAMOND,
    TRIANGLE_DOWN,
    PLUS,
    CROSS,
    HEXAGON
}
