package gripwright.app;

import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The entry point: the window, or one of the commands that do the same work without a display. */
@Command(name = "gripwright", mixinStandardHelpOptions = true, version = "Gripwright 0.1",
        description = {"Compares golf grips for one player, shot by shot, and says what a handful of shots can prove.",
            "Without a command it opens the window."},
        subcommands = {IntakeCommand.class, CompareCommand.class, BalanceCommand.class, SummaryCommand.class,
            WindowCommand.class, DemoDataCommand.class},
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:done", "1:the work could not be done; a sentence says why", "2:the command was used wrongly"})
public final class Gripwright implements Runnable {

    /** The work could not be done. */
    static final int NOT_DONE = 1;

    private final Output output;
    private int status;

    Gripwright(Output output) {
        this.output = output;
    }

    public static void main(String[] arguments) {
        System.exit(run(arguments, Output.ofProcess()));
    }

    /** Runs a command and gives back its exit code; for tests without a process of their own. */
    static int run(String[] arguments, Output output) {
        Gripwright program = new Gripwright(output);
        CommandLine commands = new CommandLine(program, new OutputFactory(output));
        commands.setOut(output.out());
        commands.setErr(output.err());
        commands.setExecutionExceptionHandler((failure, command, parsed) -> report(failure, output));
        int code = commands.execute(arguments);
        output.out().flush();
        output.err().flush();
        return code == CommandLine.ExitCode.OK ? program.status : code;
    }

    @Override
    public void run() {
        status = new WindowCommand(output).call();
    }

    private static int report(Exception failure, Output output) {
        output.err().println(Failures.sentence(failure));
        return NOT_DONE;
    }

    /** Hands the output to every command. */
    private record OutputFactory(Output output) implements CommandLine.IFactory {

        @Override
        public <K> K create(Class<K> type) throws Exception {
            try {
                return type.cast(type.getDeclaredConstructor(Output.class).newInstance(output));
            } catch (NoSuchMethodException plain) {
                return CommandLine.defaultFactory().create(type);
            }
        }
    }

    /**
     * Where a command writes: text and results to one, sentences about failures to the other.
     *
     * @param out standard output, in UTF-8 or what the terminal says it reads
     * @param err standard error
     */
    record Output(PrintWriter out, PrintWriter err) {

        static Output ofProcess() {
            Charset charset = System.getProperty("stdout.encoding") == null && System.console() == null
                    ? StandardCharsets.UTF_8
                    : Charset.forName(System.getProperty("stdout.encoding", "UTF-8"));
            return new Output(new PrintWriter(System.out, true, charset), new PrintWriter(System.err, true, charset));
        }
    }
}
