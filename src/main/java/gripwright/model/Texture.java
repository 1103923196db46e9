package gripwright.model;

/** The surface of a grip. */
public enum Texture {
    SMOOTH,
    RUBBER,
    HALF_CORD,
    CORD
}
