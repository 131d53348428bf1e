package org.moultwright.workflow;

import java.nio.file.Path;
import java.util.List;

/** The folder the keeper's pictures come to. */
@FunctionalInterface
public interface RecentPictures {
    /** The pictures that came lately and are whole, the oldest first; none where there is no such folder. */
    List<Path> recent();
}
