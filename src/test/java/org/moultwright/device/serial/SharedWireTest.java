package org.moultwright.device.serial;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.device.link.LinkClock;
import org.moultwright.device.link.LinkTiming;
import org.moultwright.device.profile.LineProfiles;
import org.moultwright.workflow.LinkState;
import org.moultwright.workflow.ProbeIdentity;
import org.moultwright.workflow.ProbeLine;
import org.moultwright.workflow.ProbeLinks;

/** Several sensors on one wire, each heard by a link of its own, over pseudo-terminals of the system. */
@EnabledOnOs(OS.LINUX)
class SharedWireTest {
    private static final LinkTiming QUICK =
            new LinkTiming(Duration.ofMinutes(1), Duration.ofMillis(20), Duration.ofMillis(100));
    private static final String BOTH = "id=a T=25.7\r\nid=b T=31.0\r\n";

    @TempDir
    Path folder;

    private final Hearing one = new Hearing();
    private final Hearing other = new Hearing();

    @BeforeEach
    void needsSocat() {
        VirtualWire.assumeAvailable();
    }

    @Test
    void eachProbeHearsItsOwnAndTheWireGoesOnUntilTheLastLeaves() throws Exception {
        ProbeLinks links = new SerialProbeLinks(
                LineProfiles.bundled(), folder.resolve("native"), QUICK, LinkClock.SYSTEM, List::of);
        try (VirtualWire wire = VirtualWire.plugIn(folder)) {
            ProbeLinks.Link first = links.open(new ProbeLine(wire.port(), "key-value"), one);
            one.awaitState(LinkState.Connecting.class);
            wire.say("\r\n" + BOTH);
            one.awaitLines(1);
            ProbeIdentity second = ProbeIdentity.ofAdapter("", "B");
            ProbeLinks.Link joined = links.open(new ProbeLine(wire.port(), "key-value", second), other);
            other.awaitState(LinkState.Live.class);
            wire.say(BOTH);
            other.awaitLines(1);
            one.awaitLines(2);
            first.close();
            wire.say(BOTH);
            other.awaitLines(2);
            joined.close();
            assertThat(one.temperaturesCelsius()).containsExactly(25.7, 25.7);
            assertThat(other.temperaturesCelsius()).containsExactly(31.0, 31.0);
            assertThat(other.states()).doesNotHaveAnyElementsOfTypes(LinkState.Refused.class);
            Hearing third = new Hearing();
            ProbeLinks.Link again = links.open(new ProbeLine(wire.port(), "key-value"), third);
            third.awaitState(LinkState.Connecting.class);
            wire.say("\r\n" + BOTH);
            third.awaitLines(1);
            again.close();
        }
    }
}
