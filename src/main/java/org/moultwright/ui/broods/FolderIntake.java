package org.moultwright.ui.broods;

import java.nio.file.Path;
import org.moultwright.task.Progress;
import org.moultwright.workflow.TakeInFolders;

/** Takes in one brood folder, all or nothing, and says how far it is. */
@FunctionalInterface
public interface FolderIntake {
    TakeInFolders.Result takeIn(Path folder, Progress progress);
}
