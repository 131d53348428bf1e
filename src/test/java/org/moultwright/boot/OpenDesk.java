package org.moultwright.boot;

import javafx.scene.Parent;
import org.moultwright.ui.ToolkitThread;
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

    @Override
    public void close() {
        workbench.close();
    }
}
