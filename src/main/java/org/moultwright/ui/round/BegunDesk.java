package org.moultwright.ui.round;

import java.util.List;
import org.moultwright.task.Runner;
import org.moultwright.workflow.SheetDraft;
import org.moultwright.workflow.SheetDrafts;

/**
 * Where sheets wait that are begun and not saved.
 *
 * @param found those of the last time
 * @param drafts keeps them
 * @param runner keeps them aside, and of its own, so that nothing keeps them from the disk
 */
public record BegunDesk(List<SheetDraft> found, SheetDrafts drafts, Runner runner) {
    public BegunDesk {
        found = List.copyOf(found);
    }
}
