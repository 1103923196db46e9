package gripwright.model;

/** Says that something could not be done at all, and carries the {@link Problem} to tell the person. */
public final class ProblemException extends Exception {

    private static final long serialVersionUID = 1;

    private final transient Problem problem;

    /** A refusal without a technical cause. */
    public ProblemException(Problem problem) {
        this(problem, null);
    }

    /** A refusal with the technical cause for the log. */
    public ProblemException(Problem problem, Throwable cause) {
        super(Check.present(problem, "problem of a refusal").text(), cause);
        this.problem = problem;
    }

    /** What happened, where, and what to do. */
    public Problem problem() {
        return problem;
    }
}
