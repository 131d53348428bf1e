package org.moultwright.device.profile;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.moultwright.device.check.Hex;

class PollTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '~',
            value = {
                "\"READ?\\n\" every 10 s ~ 524541443F0A",
                "\"\\x02T\\\\\\r\" every 10 s ~ 02545C0D",
                "bytes 01 0D every 10 s ~ 010D",
                // Frames after the examples of the Modbus specification in public test suites.
                "modbus 17 3 107 3 every 10 s ~ 1103006B00037687",
                "modbus 17 4 8 1 every 10 s ~ 110400080001B298",
                "modbus 1 3 0 10 every 10 s ~ 01030000000AC5CD",
                "modbus 1 4 1 1 every 10 s ~ 010400010001600A",
            })
    void asksAsDeclared(String declared, String digits) {
        Poll poll = Poll.of(declared);
        assertThat(Hex.of(poll.request())).isEqualTo(digits);
        assertThat(poll.every()).isEqualTo(Duration.ofSeconds(10));
    }
}
