package org.moultwright.boot;

import java.util.List;
import javafx.scene.Parent;
import org.moultwright.ui.ToolkitThread;
import org.moultwright.ui.shell.KeyHint;
import org.moultwright.ui.theme.Appearance;

/** A desk as the program puts it together, for tests that look at all of it. Called from any thread but the toolkit's. */
public final class OpenDesk implements AutoCloseable {
    private final Workbench workbench;

    OpenDesk(Workbench workbench) {
        this.workbench = workbench;
    }

    /** The frame with a screen open in it. */
    public Parent show(String screenId) {
        return ToolkitThread.ask(() -> {
            workbench.open(screenId);
            return workbench.view();
        });
    }

    public Appearance appearance() {
        return workbench.appearance();
    }

    /** The keys of a screen of the rail; the settings have none of their own. */
    List<KeyHint> keys(String screenId) {
        return workbench.screens().stream()
                .filter(screen -> screen.id().equals(screenId))
                .flatMap(screen -> screen.keys().stream())
                .toList();
    }

    @Override
    public void close() {
        workbench.close();
    }
}
