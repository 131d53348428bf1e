package org.moultwright.workflow;

import java.util.List;
import java.util.Optional;
import org.moultwright.domain.Brood;
import org.moultwright.domain.PullNote;
import org.moultwright.domain.RunUpEvent;

/**
 * What a deed writes of a sac before it is opened.
 *
 * @param begun the brood itself, where the deed is the first that is written of it
 * @param pulls that it was taken from its mother
 * @param runUp what led to it
 */
public record SacWriting(Optional<Brood> begun, List<PullNote> pulls, List<RunUpEvent> runUp) {
    public static final SacWriting NOTHING = new SacWriting(Optional.empty(), List.of(), List.of());

    public SacWriting {
        pulls = List.copyOf(pulls);
        runUp = List.copyOf(runUp);
    }

    boolean isNothing() {
        return begun.isEmpty() && pulls.isEmpty() && runUp.isEmpty();
    }
}
