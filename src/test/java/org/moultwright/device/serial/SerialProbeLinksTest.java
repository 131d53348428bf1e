package org.moultwright.device.serial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.device.link.LinkTiming;
import org.moultwright.device.profile.LineProfiles;
import org.moultwright.workflow.LinkState;
import org.moultwright.workflow.ProbeLine;
import org.moultwright.workflow.ProbeLinks;

/** The whole way from a port to readings, over pseudo-terminals of the system. */
@EnabledOnOs(OS.LINUX)
class SerialProbeLinksTest {
    private static final LinkTiming QUICK =
            new LinkTiming(Duration.ofMillis(1_500), Duration.ofMillis(20), Duration.ofMillis(100));
    private static final String PLAIN = "plain-number";

    @TempDir
    Path folder;

    private ProbeLinks links;
    private final Hearing hearing = new Hearing();

    @BeforeEach
    void needsSocat() {
        VirtualWire.assumeAvailable();
        links = new SerialProbeLinks(LineProfiles.bundled(), folder.resolve("native"), QUICK);
    }

    @Test
    void hearsAProbeFromAmidALineAndThroughNuls() throws Exception {
        try (VirtualWire wire = VirtualWire.plugIn(folder);
                ProbeLinks.Link link = open(wire, "key-value")) {
            hearing.awaitConnecting(link);
            wire.say("7C H=70%\r\n\0\0T=25.7C H=74.2%\r\n\0T=25.8\u00b0C\r\n");
            hearing.awaitLines(2);
            assertThat(hearing.lines()).containsExactly("T=25.7C H=74.2%", "T=25.8\u00b0C");
            assertThat(hearing.temperaturesCelsius()).containsExactly(25.7, 25.8);
        }
        assertThat(hearing.states()).startsWith(new LinkState.Connecting(), new LinkState.Live());
    }

    @Test
    void hearsAProbeAgainAfterTheWireWasPulledAndPluggedIn() throws Exception {
        VirtualWire first = VirtualWire.plugIn(folder);
        try (ProbeLinks.Link link = open(first, PLAIN)) {
            hearing.awaitConnecting(link);
            first.say("\r\n26.1\r\n26.");
            hearing.awaitLines(1);
            first.pull();
            hearing.awaitState(LinkState.Lost.class);
            hearing.awaitState(LinkState.Refused.class);
            try (VirtualWire second = VirtualWire.plugIn(folder)) {
                hearing.awaitState(LinkState.Connecting.class);
                second.say("9\r\n26.2\r\n");
                hearing.awaitLines(2);
            }
        }
        assertThat(hearing.temperaturesCelsius()).containsExactly(26.1, 26.2);
    }

    @Test
    void aSecondListenerIsToldThatThePortIsInUse() throws Exception {
        Hearing second = new Hearing();
        try (VirtualWire wire = VirtualWire.plugIn(folder);
                ProbeLinks.Link link = open(wire, PLAIN)) {
            hearing.awaitConnecting(link);
            wire.say("\r\n26.1\r\n");
            hearing.awaitLines(1);
            try (ProbeLinks.Link other = links.open(new ProbeLine(wire.port(), PLAIN), second)) {
                second.awaitConnecting(other);
                second.awaitState(LinkState.Refused.class);
            }
            wire.say("26.2\r\n");
            hearing.awaitLines(2);
        }
        assertThat(second.refusal().code()).isEqualTo("DE-1");
        assertThat(hearing.temperaturesCelsius()).containsExactly(26.1, 26.2);
    }

    @Test
    void aProbeThatFallsSilentIsToldAndHeardAgain() throws Exception {
        try (VirtualWire wire = VirtualWire.plugIn(folder);
                ProbeLinks.Link link = open(wire, PLAIN)) {
            hearing.awaitConnecting(link);
            wire.say("\r\n26.1\r\n");
            hearing.awaitState(LinkState.Silent.class);
            wire.say("26.2\r\n");
            hearing.awaitLines(2);
        }
        assertThat(hearing.states())
                .extracting(state -> state.getClass().getSimpleName())
                .containsSubsequence("Live", "Silent", "Live");
    }

    @Test
    void aMissingPortAndAFileThatIsNoPortAreToldApart() throws IOException {
        Path file = Files.createFile(folder.resolve("file"));
        assertThat(refusalOf(folder.resolve("nothing")).code()).isEqualTo("DE-3");
        assertThat(refusalOf(file).code()).isEqualTo("DE-4");
    }

    @Test
    void theNativePartIsUnpackedWhereOnlyTheUserCanWrite() throws IOException {
        refusalOf(folder.resolve("nothing"));
        assertThat(Files.getPosixFilePermissions(folder.resolve("native")))
                .isEqualTo(PosixFilePermissions.fromString("rwx------"));
        assertThat(System.getProperty("java.io.tmpdir"))
                .isNotEqualTo(folder.resolve("native").toString());
    }

    @Test
    void anUnknownProfileIsRefusedAtOnce() {
        assertThatThrownBy(() -> links.open(new ProbeLine("port", "morse"), hearing))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("plain-number, key-value");
        assertThat(links.profiles()).isEqualTo(List.of("plain-number", "key-value"));
    }

    private ProbeLinks.Link open(VirtualWire wire, String profile) {
        return links.open(new ProbeLine(wire.port(), profile), hearing);
    }

    private LinkState.Refused refusalOf(Path port) {
        Hearing refused = new Hearing();
        try (ProbeLinks.Link link = links.open(new ProbeLine(port.toString(), PLAIN), refused)) {
            refused.awaitConnecting(link);
            refused.awaitState(LinkState.Refused.class);
        }
        return refused.refusal();
    }
}
