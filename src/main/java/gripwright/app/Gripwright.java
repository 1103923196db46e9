package gripwright.app;

/** The entry point: the command line, or the window when no command is given. */
public final class Gripwright {

    private Gripwright() {
    }

    public static void main(String[] arguments) {
        System.out.println("Gripwright");
    }
}
