package org.moultwright.workflow;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProbeIdentityTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "sensor 28DC6674050000B9",
                "adapter 0403:6001:A1",
                "address 17",
                "adapter 0403:6001:A1 address 17",
                ""
            })
    void wordsAreReadAgain(String words) {
        assertThat(ProbeIdentity.fromWords(words)).map(ProbeIdentity::words).contains(words);
        assertThat(ProbeIdentity.fromWords(words).orElseThrow().isKnown()).isEqualTo(!words.isEmpty());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"/dev/ttyUSB0", "sensor", "sensor a b", "adapter", "adapter a address", " address 17", "port a"})
    void otherWordsAreNone(String words) {
        assertThat(ProbeIdentity.fromWords(words)).isEmpty();
    }

    @Test
    void partsAreTold() {
        assertThat(ProbeIdentity.fromWords("adapter a address 17")).contains(ProbeIdentity.ofAdapter("a", "17"));
        assertThat(ProbeIdentity.fromWords("address 17")).contains(ProbeIdentity.ofAdapter("", "17"));
        assertThat(ProbeIdentity.fromWords("sensor x")).contains(ProbeIdentity.ofSensor("x"));
    }
}
