package gripwright.desktop.support;

import gripwright.model.Session;

/** Workbenches without a window, on which everything happens at once, for tests of view-models. */
public final class Workbenches {

    private Workbenches() {
    }

    /** On a blank session. */
    public static Workbench blank() {
        return on(InMemoryServices.blank());
    }

    /** On this session in the demo's shop. */
    public static Workbench on(Session session) {
        return on(new InMemoryServices(session, DemoSessions.shop()));
    }

    private static Workbench on(WorkbenchServices services) {
        return new Workbench(services, Runnable::run, Runnable::run);
    }
}
