package gripwright.app;

import java.io.PrintWriter;
import java.io.StringWriter;

/** One run of the command line in this process: its exit code and what it wrote. */
record CommandRun(int code, String out, String err) {

    static CommandRun of(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Gripwright.run(arguments, new Gripwright.Output(new PrintWriter(out), new PrintWriter(err)));
        return new CommandRun(code, out.toString(), err.toString());
    }
}
