package org.moultwright.device.link;

import java.time.Duration;
import java.time.Instant;
import org.moultwright.workflow.LinkState;

/** Is told what comes over a wire, whoever says it, and how the wire is doing. */
public interface WireListener {

    /**
     * A record came.
     *
     * @throws org.moultwright.device.DeviceException if it shows that this is the wrong wire
     */
    void heard(Heard heard);

    void changed(LinkState state);

    void clockStepped(Instant seenAt, Duration by);
}
