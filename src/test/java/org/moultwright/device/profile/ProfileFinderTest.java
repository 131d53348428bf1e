package org.moultwright.device.profile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.moultwright.device.check.Hex;
import org.moultwright.workflow.LineForms.Proposal;

class ProfileFinderTest {
    private static final LineProfiles BUNDLED = LineProfiles.bundled();

    @ParameterizedTest
    @CsvSource(
            delimiter = '~',
            value = {
                "plain-number ~ 26.4|26.5|26.4",
                "plain-number ~ +22.2500C|+22.3000C",
                "plain-number ~ 26,4|26,5|26,4",
                "plain-fahrenheit ~ 79.1|79.3|79.2",
                "key-value ~ T=25.7C H=74.2%|T=25.8C H=74.1%",
                "bracketed-units ~ 25.74 [C]74.20 [%RH]|25.75 [C]74.21 [%RH]",
                "semicolon-record ~ A01;25.7;C;004711;1E|A01;25.7;C;74.2;%RH;004711;3E",
                "semicolon-record check=sum8 ~ A01;25.7;C;004711;CA",
                "scpi-poll ~ MEAS:TEMP?|+2.57450000E+01|MEAS:TEMP?|+2.57460000E+01",
                "json ~ {\"t\":25.7,\"h\":74.2}|{\"t\":25.7,\"h\":74.3}",
                "comma-separated skip=1 ~ time,temperature,humidity|12:00:05,25.7,74.2|12:00:15,25.8,74.2",
                "decimal-comma ~ 26,4;70,1|26,5;70,0",
                "decimal-comma skip=2 ~ 01.03.2026;12:00:05;26,4;70,1",
                "one-wire-scratchpad ~ 72014B467FFF0E1057|4D014B467FFF0310D8",
                "hex-words ~ 666693 666693|8000A2 8000A2",
            })
    void theFormOfLinesIsFound(String expected, String lines) {
        byte[] heard = (lines.replace("|", "\r\n") + "\r\n").getBytes(StandardCharsets.ISO_8859_1);
        assertThat(BUNDLED.propose(heard)).first().extracting(Proposal::profile).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "modbus-int16, 010404013102222ACE",
        "modbus-int16 address=17, 110404013102223B0F",
        "modbus-float32, 01040841CD999A4294666646F6",
        "modbus-float32 order=CDAB, 010408999A41CD666642943A5B",
        "modbus-float32 order=BADC, 010408CD419A99944266669E88",
        "modbus-float32 order=DCBA, 0104089A99CD41666694429863",
        "modbus-float32 function=3, 01030841CD999A42946666F72C",
    })
    void theFormOfBytesIsFound(String expected, String frame) {
        byte[] heard = Hex.bytes(frame + frame + frame);
        assertThat(BUNDLED.propose(heard)).first().extracting(Proposal::profile).isEqualTo(expected);
    }

    @Test
    void framedRecordsAreFound() {
        byte[] heard = "\u0002S 0257,0248\r\n\u0002S 0258,0248\r\n".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(BUNDLED.propose(heard)).first().satisfies(best -> {
            assertThat(best.profile()).isEqualTo("stx-integers");
            assertThat(best.reads())
                    .extracting(read -> read.temperatureCelsius())
                    .containsExactly(25.7, 25.8);
        });
    }

    @Test
    void eachProposalTellsWhatItWouldHaveRead() {
        List<Proposal> proposals =
                BUNDLED.propose("id=3 T=25.7C H=74.2%\nT=nan\nhello\n".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(proposals).first().satisfies(best -> {
            assertThat(best.title()).isEqualTo("Named values on a line");
            assertThat(best.understoodFraction()).isEqualTo(2 / 3.0);
            assertThat(best.reads()).hasSize(3);
            assertThat(best.reads().get(0).humidityPercent()).isEqualTo(74.2);
            assertThat(best.reads().get(0).sensor()).isEqualTo("3");
            assertThat(best.reads().get(1).fault()).isEqualTo("instrument");
            assertThat(best.reads().get(2).fault()).isEqualTo("unreadable");
        });
    }

    @Test
    void whatNobodyCanReadGetsNoProposal() {
        assertThat(BUNDLED.propose("hello\r\nworld\r\n".getBytes(StandardCharsets.ISO_8859_1)))
                .isEmpty();
        assertThat(BUNDLED.propose(new byte[0])).isEmpty();
    }

    @Test
    void anyBytesAreSurvivedAndOrderedByHowWellTheyAreExplained() {
        for (int seed = 0; seed < 40; seed++) {
            byte[] heard = new byte[500];
            new Random(seed).nextBytes(heard);
            assertThat(BUNDLED.propose(heard))
                    .as("seed %d", seed)
                    .isSortedAccordingTo(
                            (one, other) -> Double.compare(other.understoodFraction(), one.understoodFraction()));
        }
    }
}
