package org.moultwright.device.serial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.device.link.LinkClock;
import org.moultwright.device.link.LinkTiming;
import org.moultwright.device.profile.LineProfiles;
import org.moultwright.workflow.LinkState;
import org.moultwright.workflow.ProbeLine;
import org.moultwright.workflow.ProbeLinks;

/** The whole way from a port to readings, over pseudo-terminals of the system. */
@EnabledOnOs(OS.LINUX)
class SerialProbeLinksTest {
    private static final Duration PATIENT = Duration.ofMinutes(1);
    private static final Duration IMPATIENT = Duration.ofMillis(500);
    private static final String PLAIN = "plain-number";

    @TempDir
    Path folder;

    private ProbeLinks links;
    private final Hearing hearing = new Hearing();
    private final List<ProbeLinks.Link> opened = new ArrayList<>();

    @BeforeEach
    void needsSocat() {
        VirtualWire.assumeAvailable();
        links = links(PATIENT);
    }

    @AfterEach
    void closeLinks() {
        opened.forEach(ProbeLinks.Link::close);
    }

    @Test
    void hearsAProbeFromAmidALineAndThroughNuls() throws Exception {
        try (VirtualWire wire = VirtualWire.plugIn(folder)) {
            open(wire.port(), "key-value", hearing);
            hearing.awaitState(LinkState.Connecting.class);
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
        open(first.port(), PLAIN, hearing);
        hearing.awaitState(LinkState.Connecting.class);
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
        assertThat(hearing.temperaturesCelsius()).containsExactly(26.1, 26.2);
    }

    @Test
    void aSecondListenerIsToldThatThePortIsInUse() throws Exception {
        Hearing second = new Hearing();
        try (VirtualWire wire = VirtualWire.plugIn(folder)) {
            open(wire.port(), PLAIN, hearing);
            hearing.awaitState(LinkState.Connecting.class);
            wire.say("\r\n26.1\r\n");
            hearing.awaitLines(1);
            open(wire.port(), PLAIN, second);
            second.awaitState(LinkState.Connecting.class);
            second.awaitState(LinkState.Refused.class);
            wire.say("26.2\r\n");
            hearing.awaitLines(2);
        }
        assertThat(second.refusal().code()).isEqualTo("DE-1");
        assertThat(hearing.temperaturesCelsius()).containsExactly(26.1, 26.2);
    }

    @Test
    void aProbeThatFallsSilentIsToldAndHeardAgain() throws Exception {
        links = links(IMPATIENT);
        try (VirtualWire wire = VirtualWire.plugIn(folder)) {
            open(wire.port(), PLAIN, hearing);
            hearing.awaitState(LinkState.Connecting.class);
            wire.say("\r\n26.1\r\n");
            hearing.awaitState(LinkState.Live.class);
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
        assertThat(links.profiles()).contains("plain-number", "modbus-int16");
    }

    private ProbeLinks links(Duration silentAfter) {
        LinkTiming timing = new LinkTiming(silentAfter, Duration.ofMillis(20), Duration.ofMillis(100));
        return new SerialProbeLinks(LineProfiles.bundled(), folder.resolve("native"), timing, LinkClock.SYSTEM);
    }

    private void open(String port, String profile, Hearing listener) {
        opened.add(links.open(new ProbeLine(port, profile), listener));
    }

    private LinkState.Refused refusalOf(Path port) {
        Hearing refused = new Hearing();
        open(port.toString(), PLAIN, refused);
        refused.awaitState(LinkState.Refused.class);
        return refused.refusal();
    }
}
