package org.moultwright.device.serial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.device.check.Hex;
import org.moultwright.device.link.LinkClock;
import org.moultwright.device.link.LinkTiming;
import org.moultwright.device.profile.LineProfiles;
import org.moultwright.workflow.LinkState;
import org.moultwright.workflow.ProbeIdentity;
import org.moultwright.workflow.ProbeLine;
import org.moultwright.workflow.ProbeLinks;

/** A probe plugged in again under another name, over pseudo-terminals of the system. */
@EnabledOnOs(OS.LINUX)
class ReplugTest {
    private static final String ROM = "28DC6674050000B9";
    private static final String OTHER_ROM = "28FF000000000048";
    private static final String PAD_25 = " 91014B467FFF0F1025\r\n";
    private static final String PAD_26 = " A0014B461FFF1F10E6\r\n";
    private static final LinkTiming QUICK =
            new LinkTiming(Duration.ofMinutes(1), Duration.ofMillis(20), Duration.ofMillis(100));

    @TempDir
    Path folder;

    private final Map<String, String> adapters = new ConcurrentHashMap<>();
    private final Hearing hearing = new Hearing();
    private final List<AutoCloseable> toClose = new ArrayList<>();

    @BeforeEach
    void needsSocat() {
        VirtualWire.assumeAvailable();
    }

    @AfterEach
    void close() throws Exception {
        for (AutoCloseable open : toClose) {
            open.close();
        }
    }

    @Test
    void aSensorWithARomCodeIsFoundAtANewPort() throws Exception {
        sensorIsHeardAndPulled();
        VirtualWire second = plugIn("port-1", "");
        sayUntilHeard(second, ROM + PAD_26, 2);
        assertThat(hearing.temperaturesCelsius()).startsWith(25.0625, 26.0);
        assertThat(hearing.identities()).containsExactly(ProbeIdentity.ofSensor(ROM));
    }

    @Test
    void anotherSensorAtTheOldPortIsNotTakenForIt() throws Exception {
        sensorIsHeardAndPulled();
        VirtualWire other = plugIn("port-0", "");
        Await.until("the stranger is told", () -> {
            say(other, OTHER_ROM + PAD_26);
            return hearing.states().stream().anyMatch(ReplugTest::isStranger);
        });
        assertThat(hearing.temperaturesCelsius()).containsExactly(25.0625);
        VirtualWire own = plugIn("port-1", "");
        Await.until("the own sensor is heard", () -> {
            say(other, OTHER_ROM + PAD_26);
            say(own, ROM + PAD_25);
            return hearing.temperaturesCelsius().size() >= 2;
        });
        assertThat(hearing.temperaturesCelsius()).containsOnly(25.0625);
    }

    @Test
    void aProbeIsFoundByItsAdapterAndNeverByThePortsName() throws Exception {
        VirtualWire first = plugIn("port-0", "0403:6001:A1");
        listen("port-0", "plain-number", ProbeIdentity.UNKNOWN);
        first.say("\r\n26.1\r\n");
        hearing.awaitLines(1);
        assertThat(hearing.identities()).containsExactly(ProbeIdentity.ofAdapter("0403:6001:A1", ""));
        first.pull();
        adapters.clear();
        hearing.awaitState(LinkState.Lost.class);
        VirtualWire stranger = plugIn("port-0", "0403:6001:B2");
        Await.until("the stranger is told", () -> hearing.states().stream().anyMatch(ReplugTest::isStranger));
        stranger.say("\r\n31.0\r\n31.0\r\n");
        VirtualWire own = plugIn("port-1", "0403:6001:A1");
        sayUntilHeard(own, "\r\n26.2\r\n", 2);
        assertThat(hearing.temperaturesCelsius()).startsWith(26.1).doesNotContain(31.0);
    }

    @Test
    void aStrangerThatCameAfterThePortsWereLookedAtIsNotHeard() throws Exception {
        VirtualWire stranger = plugIn("port-0", "0403:6001:B2");
        Set<String> lookedForOnce = ConcurrentHashMap.newKeySet();
        PortListing late = () ->
                there().stream().filter(seen -> !lookedForOnce.add(seen.name())).toList();
        listen("port-0", "plain-number", ProbeIdentity.ofAdapter("0403:6001:A1", ""), late);
        Await.until("the stranger is told", () -> {
            say(stranger, "\r\n31.0\r\n");
            return hearing.states().stream().anyMatch(ReplugTest::isStranger);
        });
        assertThat(hearing.lines()).isEmpty();
    }

    @Test
    void aKnownAdapterIsFoundFromTheStart() throws Exception {
        plugIn("port-0", "0403:6001:B2");
        VirtualWire own = plugIn("port-1", "0403:6001:A1");
        listen("port-0", "plain-number", ProbeIdentity.ofAdapter("0403:6001:A1", ""));
        sayUntilHeard(own, "\r\n26.2\r\n", 1);
        assertThat(hearing.temperaturesCelsius()).containsOnly(26.2);
    }

    @Test
    void portsThatWereThereAllTheTimeAreNotOpenedToLook() throws Exception {
        VirtualWire bystander = plugIn("port-9", "");
        sensorIsHeardAndPulled();
        bystander.say("\r\n" + ROM + PAD_26);
        VirtualWire again = plugIn("port-0", "");
        sayUntilHeard(again, ROM + PAD_25, 2);
        assertThat(hearing.temperaturesCelsius()).containsOnly(25.0625);
    }

    @Test
    void anInstrumentIsAskedAndItsAnswerRead() throws Exception {
        VirtualWire wire = plugIn("port-0", "");
        listen("port-0", "modbus-int16 address=17 register=1 every=1", ProbeIdentity.UNKNOWN);
        for (int i = 0; i < 2; i++) {
            assertThat(Hex.of(wire.awaitQuestion(8))).isEqualTo("110400010002229B");
            wire.say(Hex.bytes("110404013102223B0F"));
            hearing.awaitLines(i + 1);
        }
        assertThat(hearing.temperaturesCelsius()).containsExactly(30.5, 30.5);
        assertThat(hearing.lines()).containsOnly("110404013102223B0F");
        assertThat(hearing.identities()).containsExactly(ProbeIdentity.ofAdapter("", "11"));
    }

    private void sensorIsHeardAndPulled() throws Exception {
        VirtualWire first = plugIn("port-0", "");
        listen("port-0", "one-wire-scratchpad", ProbeIdentity.UNKNOWN);
        first.say("\r\n" + ROM + PAD_25);
        hearing.awaitLines(1);
        first.pull();
        hearing.awaitState(LinkState.Lost.class);
    }

    private VirtualWire plugIn(String name, String adapter) throws Exception {
        // Told before the port is there, as a machine does: a port is not first seen without its adapter.
        adapters.put(folder.resolve(name).toString(), adapter);
        VirtualWire wire = VirtualWire.plugIn(folder, name);
        toClose.add(wire);
        return wire;
    }

    private List<PortListing.PortSeen> there() {
        return adapters.entrySet().stream()
                .filter(entry -> Files.exists(Path.of(entry.getKey())))
                .map(entry -> new PortListing.PortSeen(entry.getKey(), entry.getValue()))
                .toList();
    }

    private void listen(String port, String profile, ProbeIdentity wanted) {
        listen(port, profile, wanted, this::there);
    }

    private void listen(String port, String profile, ProbeIdentity wanted, PortListing listing) {
        ProbeLinks links = new SerialProbeLinks(
                LineProfiles.bundled(), folder.resolve("native"), QUICK, LinkClock.SYSTEM, listing);
        toClose.add(0, links.open(new ProbeLine(folder.resolve(port).toString(), profile, wanted), hearing));
        hearing.awaitState(LinkState.Connecting.class);
    }

    /** What is said before the port is open is lost, as on a real wire, so it is said again. */
    private void sayUntilHeard(VirtualWire wire, String text, int lines) {
        Await.until(lines + " lines are heard", () -> {
            say(wire, text);
            return hearing.lines().size() >= lines;
        });
    }

    private static void say(VirtualWire wire, String text) {
        try {
            wire.say(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isStranger(LinkState state) {
        return state instanceof LinkState.Refused refused && refused.code().equals("DE-6");
    }
}
