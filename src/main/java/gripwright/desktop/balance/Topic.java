package gripwright.desktop.balance;

/** What one sheet of Balance is about. */
public enum Topic {
    LEVER("The lever"),
    READINGS("Read and predicted"),
    BACKWARDS("Backwards"),
    BALLAST("Ballast for tests"),
    SHAPE("The grip as a shape"),
    SET("The set");

    private final String title;

    Topic(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }
}
