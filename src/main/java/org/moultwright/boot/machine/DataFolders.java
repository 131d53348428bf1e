package org.moultwright.boot.machine;

import dev.dirs.ProjectDirectories;
import java.nio.file.Path;
import org.moultwright.store.H2Store;

/** Where the program keeps things, by each platform's own convention. */
public final class DataFolders {
    private static final ProjectDirectories FOLDERS = ProjectDirectories.from("org", "moultwright", "Moultwright");

    private DataFolders() {}

    /** The keeper's own store, unless another is named. */
    public static Path store() {
        return Path.of(FOLDERS.dataDir, H2Store.DEFAULT_FILE_NAME);
    }

    /** The demo room's store for one evening. */
    public static Path demoStore(String evening) {
        return Path.of(FOLDERS.dataDir, "demo-" + evening + ".store");
    }

    /** Line profiles the keeper wrote, beside the settings. */
    public static Path profiles() {
        return Path.of(FOLDERS.configDir, "profiles");
    }

    /** What can be made again. */
    public static Path cache() {
        return Path.of(FOLDERS.cacheDir);
    }
}
