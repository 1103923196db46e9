package gripwright.model;

/**
 * One club one can hold: the test club itself, a twin of it, or a pre-gripped shaft on a quick connector.
 *
 * @param id unique in its test
 * @param name 'club 1', 'twin with the blue dot'
 * @param mounting how grips come onto it
 */
public record PhysicalClub(String id, String name, Mounting mounting) {

    /** How a configuration comes onto a physical club. */
    public enum Mounting {
        /** One club, grips blown on and off with air: look for twist at each stint. */
        BLOWN_ON,
        /** A club built like the test club, with its own grip glued on. */
        TWIN,
        /** A shaft with its grip on a quick connector. */
        CONNECTOR
    }

    public PhysicalClub {
        Check.text(id, "identity of a physical club");
        Check.text(name, "name of a physical club");
        Check.present(mounting, "mounting of a physical club");
    }

    public PhysicalClub withId(String id) {
        return new PhysicalClub(id, name, mounting);
    }

    public PhysicalClub withName(String name) {
        return new PhysicalClub(id, name, mounting);
    }

    public PhysicalClub withMounting(Mounting mounting) {
        return new PhysicalClub(id, name, mounting);
    }
}
