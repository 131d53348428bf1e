package org.moultwright.device.serial;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.workflow.ProbeIdentity;
import org.moultwright.workflow.ProbeLine;

class KnownLinesFileTest {
    private static final ProbeLine FIRST =
            new ProbeLine("/dev/ttyUSB0", "modbus-float32 address=17", ProbeIdentity.ofAdapter("1a86:7523:A1", "17"));
    private static final ProbeLine SECOND = new ProbeLine("/dev/ttyACM0", "plain-number");

    @TempDir
    Path folder;

    @Test
    void whatWasListenedToIsKnownAtTheNextStart() {
        assertThat(lines().all()).isEmpty();
        lines().remember("P-1", SECOND);
        lines().remember("P-1", FIRST);
        lines().remember("P-2", SECOND);
        assertThat(lines().all()).isEqualTo(Map.of("P-1", FIRST, "P-2", SECOND));
        lines().forget("P-1");
        lines().forget("P-9");
        assertThat(lines().all()).isEqualTo(Map.of("P-2", SECOND));
    }

    @Test
    void aLineNobodyCanReadCostsOnlyItself() throws Exception {
        lines().remember("P-2", SECOND);
        Files.write(folder.resolve("deep/probes.txt"), List.of("gibberish", ""), StandardOpenOption.APPEND);
        assertThat(lines().all()).isEqualTo(Map.of("P-2", SECOND));
    }

    private KnownLinesFile lines() {
        return new KnownLinesFile(folder.resolve("deep/probes.txt"));
    }
}
