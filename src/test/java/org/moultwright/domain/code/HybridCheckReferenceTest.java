package org.moultwright.domain.code;

// Source: ISO 7064 MOD 37,36 as used by published global release identifiers, whose issuers print these
// four examples with their check characters.

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HybridCheckReferenceTest {
    private static final HybridCheck MOD_37_36 = new HybridCheck("0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ");

    @ParameterizedTest
    @CsvSource({"A12425GABC1234002, M", "A12425GXYZ9876008, 6", "A12425G1234567890, L", "A12589KCCC2586482, V"})
    void givesThePublishedCheckCharacter(String body, char published) {
        assertThat(MOD_37_36.checkCharacter(body)).isEqualTo(published);
        assertThat(MOD_37_36.holds(body + published)).isTrue();
    }
}
