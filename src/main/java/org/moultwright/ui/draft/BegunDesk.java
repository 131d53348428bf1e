package org.moultwright.ui.draft;

import java.util.List;
import org.moultwright.task.Runner;
import org.moultwright.workflow.Drafts;

/**
 * Where what is begun on a screen and not saved waits.
 *
 * @param <T> what is begun
 * @param found those of the last time
 * @param drafts keeps them
 * @param runner keeps them aside, and of its own, so that nothing keeps them from the disk
 */
public record BegunDesk<T>(List<T> found, Drafts<T> drafts, Runner runner) {
    public BegunDesk {
        found = List.copyOf(found);
    }
}
