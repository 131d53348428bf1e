package org.moultwright.device.serial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.moultwright.device.check.Checksum;
import org.moultwright.device.check.Hex;
import org.moultwright.device.link.FuzzedBytes;
import org.moultwright.device.link.LinkClock;
import org.moultwright.device.link.LinkTiming;
import org.moultwright.device.link.ProfileStreams;
import org.moultwright.device.profile.LineProfiles;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.workflow.LinkState;
import org.moultwright.workflow.ProbeLine;
import org.moultwright.workflow.ProbeLinks;
import org.moultwright.workflow.ReadingLog.Logged;

/**
 * Ten thousand streams of fuzzed bytes over pseudo-terminals, shared among the bundled forms: each link lives on and
 * reads what is said properly afterwards, and no value was taken whose check does not fit.
 */
@EnabledOnOs(OS.LINUX)
class FuzzedWireTest {
    private static final int STREAMS = 10_000;
    private static final LinkTiming QUICK =
            new LinkTiming(Duration.ofMinutes(1), Duration.ofMillis(10), Duration.ofMillis(20));

    /** Of the forms that have a check: where it stands in a raw line, and which it is. */
    private static final Map<String, Checked> CHECKED = Map.of(
            "one-wire-scratchpad",
                    new Checked(
                            Pattern.compile("([0-9A-Fa-f]{18})(?![0-9A-Fa-f]|.*[0-9A-Fa-f]{18})"), Checksum.CRC8_1WIRE),
            "hex-words", new Checked(Pattern.compile("^\\s*([0-9A-Fa-f]{6})\\b"), Checksum.CRC8_31_FF),
            "modbus-int16", new Checked(Pattern.compile("^([0-9A-F]+)$"), Checksum.CRC16_MODBUS),
            "modbus-float32", new Checked(Pattern.compile("^([0-9A-F]+)$"), Checksum.CRC16_MODBUS));

    @TempDir
    Path folder;

    @BeforeEach
    void needsSocat() {
        VirtualWire.assumeAvailable();
    }

    static Stream<String> codes() {
        return LineProfiles.bundled().codes().stream();
    }

    @ParameterizedTest
    @MethodSource("codes")
    @SuppressWarnings("try")
    void anyBytesAreSurvivedAndNoBadCheckIsBelieved(String code, TestReporter reporter) throws Exception {
        Hearing hearing = new Hearing();
        int streams = STREAMS / LineProfiles.bundled().codes().size() + 1;
        ProbeLinks links =
                new SerialProbeLinks(LineProfiles.bundled(), folder.resolve("native"), QUICK, LinkClock.SYSTEM);
        try (VirtualWire wire = VirtualWire.plugIn(folder);
                ProbeLinks.Link unused = links.open(new ProbeLine(wire.port(), code), hearing)) {
            hearing.awaitState(LinkState.Connecting.class);
            for (int seed = 0; seed < streams; seed++) {
                Random random = new Random(seed);
                wire.say(seed % 3 == 0 ? FuzzedBytes.noisy(code, random) : FuzzedBytes.of(random));
            }
            long before = good(hearing);
            Await.until("it reads again what is said properly", () -> {
                sayProperly(wire, code);
                return good(hearing) > before + 5;
            });
        }
        hearing.logged().forEach(logged -> assertSound(code, logged));
        reporter.publishEntry(code, streams + " streams, " + hearing.logged().size() + " lines told");
    }

    private static long good(Hearing hearing) {
        return hearing.logged().stream()
                .filter(logged -> logged.reading().quality() == Quality.GOOD)
                .count();
    }

    private static void sayProperly(VirtualWire wire, String code) {
        try {
            wire.say("\r\n\r\n");
            wire.say(ProfileStreams.of(code));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void assertSound(String code, Logged logged) {
        Reading reading = logged.reading();
        if (reading.quality() != Quality.GOOD) {
            return;
        }
        assertThat(reading.temperatureCelsius())
                .as("%s", logged)
                .isBetween(Reading.LOWEST_CELSIUS, Reading.HIGHEST_CELSIUS);
        Checked checked = CHECKED.get(code);
        if (checked != null) {
            Matcher found = checked.place().matcher(logged.rawLine());
            assertThat(found.find()).as("%s", logged).isTrue();
            byte[] bytes = Hex.bytes(found.group(1).toUpperCase(Locale.ROOT));
            assertThat(checked.checksum().endsRightly(bytes)).as("%s", logged).isTrue();
        }
    }

    private record Checked(Pattern place, Checksum checksum) {}
}
