package gripwright.app;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/**
 * Where the program keeps what is its own on this computer: settings, stock, journals.
 *
 * <p>{@code GRIPWRIGHT_HOME} wins; else the system's usual folder for application data.
 *
 * @param home the folder
 */
record ApplicationFolders(Path home) {

    static ApplicationFolders ofProcess() {
        return of(System.getenv(), System.getProperty("os.name", ""), Path.of(System.getProperty("user.home", ".")));
    }

    static ApplicationFolders of(Map<String, String> environment, String system, Path userHome) {
        String own = environment.getOrDefault("GRIPWRIGHT_HOME", "");
        if (!own.isBlank()) {
            return new ApplicationFolders(Path.of(own));
        }
        String name = system.toLowerCase(Locale.ROOT);
        if (name.contains("win")) {
            String roaming = environment.getOrDefault("APPDATA", "");
            Path base = roaming.isBlank() ? userHome.resolve("AppData").resolve("Roaming") : Path.of(roaming);
            return new ApplicationFolders(base.resolve("Gripwright"));
        }
        if (name.contains("mac")) {
            return new ApplicationFolders(userHome.resolve("Library").resolve("Application Support").resolve("Gripwright"));
        }
        String data = environment.getOrDefault("XDG_DATA_HOME", "");
        Path base = data.isBlank() ? userHome.resolve(".local").resolve("share") : Path.of(data);
        return new ApplicationFolders(base.resolve("gripwright"));
    }

    /** The shop's settings. */
    Path settings() {
        return home.resolve("settings.json");
    }

    /** The shop's stock list. */
    Path stock() {
        return home.resolve("stock.json");
    }

    /** The shop's column mappings for CSV files. */
    Path mappings() {
        return home.resolve("mappings.json");
    }

    /** Earlier versions of session files. */
    Path versions() {
        return home.resolve("versions");
    }

    /** Sessions that were not saved anywhere else, the copy of the demo among them. */
    Path sessions() {
        return home.resolve("sessions");
    }
}
