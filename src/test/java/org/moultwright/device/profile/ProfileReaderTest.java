package org.moultwright.device.profile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.moultwright.workflow.ProfileProblem;

class ProfileReaderTest {
    private static final int NEXT_LINE = SoundText.LINES.size() + 1;

    @Test
    void aSoundTextHasNoProblem() {
        assertThat(SoundText.with().problems()).isEmpty();
        assertThat(SoundText.with("# a comment", "").profile()).isPresent();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '~',
            value = {
                "colour: red ~ does not start with one of",
                "code=sound ~ does not start with one of",
                "code: twice ~ may be there once",
                "port: 9600 ~ may be there once",
                "framing: words ~ must be 'line'",
                "framing: fixed 0 ~ must be 'line'",
                "longest: 100000 ~ must be within",
                "decode: morse ~ must be text, json or hex",
                "poll: READ? ~ write it like",
                "poll: \"READ?\" every 0 s ~ must be within",
                "poll: modbus 300 4 0 2 every 10 s ~ Modbus address",
                "poll: modbus 1 6 0 2 every 10 s ~ Modbus function",
                "setting: Address = 1 in 1..247 ~ write it like",
                "setting: address = 0 in 1..247 ~ must be a number from 1 to 247",
                "channel: pressure hPa ~ write it like",
                "channel: humidity %, as s16 ~ must name 2 bytes",
                "channel: humidity %, as s12 AB ~ must be decimal",
                "channel: humidity %, as f32 AB ~ must name 4 bytes",
                "channel: humidity %, scale ten ~ must be a number",
                "channel: humidity %, limits 0 200 ~ must be within",
                "channel: humidity %, limits 0 ~ write it like",
                "channel: humidity %, colour red ~ is not understood",
                "checksum: crc99 hex frame ~ must be one of",
                "checksum: crc16-modbus frame ~ write it like",
                "power-on: warm ~ must be a number",
                "stuck-after: 0 h ~ write it like",
                "let: Number = \\d ~ write it like",
                "reject: bored ^x ~ is no cause of a fault",
                "record: (?<temperature>\\d+ ~ the pattern is not understood",
                "record: {nonsense}(?<temperature>\\d+) ~ the pattern is not understood",
                "test: 26 -> 26 ~ write it like",
                "test: \"26\" -> fault boredom ~ is no cause of a fault",
            })
    void aProblemIsToldWithItsLine(String line, String words) {
        assertThat(SoundText.with(line).profile()).isEmpty();
        assertThat(SoundText.with(line).problems()).anySatisfy(problem -> {
            assertThat(problem.lineNumber()).isEqualTo(NEXT_LINE);
            assertThat(problem.sentence()).contains(words);
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '~',
            value = {
                "channel: humidity % ~ no 'record: ' pattern has a group (?<humidity>",
                "checksum: xor8 text body in check ~ (?<body>",
                "record: ^(?<humidity>\\d+)$ ~ has no group (?<temperature>",
            })
    void aValueThatNoPatternTellsIsAProblem(String line, String words) {
        assertThat(SoundText.with(line).problems())
                .anySatisfy(problem -> assertThat(problem.sentence()).contains(words));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '~',
            value = {
                "code ~ 'code: ' is missing",
                "title ~ 'title: ' is missing",
                "port ~ 'port: ' is missing",
                "channel ~ there is no 'channel: temperature",
                "record ~ there is no 'record: ' pattern",
                "test ~ there is no 'test: ' line",
            })
    void whatMustBeThereIsMissed(String key, String words) {
        List<String> lines =
                SoundText.LINES.stream().filter(line -> !line.startsWith(key)).toList();
        ProfileReader.Read read = ProfileReader.read(lines, Map.of());
        assertThat(read.profile()).isEmpty();
        assertThat(read.problems())
                .anySatisfy(problem -> assertThat(problem.sentence()).contains(words));
    }

    @Test
    void allProblemsAreToldAtOnceInOrder() {
        assertThat(SoundText.with("colour: red", "port: no", "test: no", "longest: no")
                        .problems())
                .extracting(ProfileProblem::lineNumber)
                .containsExactly(NEXT_LINE, NEXT_LINE + 1, NEXT_LINE + 2, NEXT_LINE + 3);
    }

    @Test
    void anOverlongPatternIsRefused() {
        assertThat(SoundText.with("record: (?<temperature>" + "1?".repeat(3000) + ")")
                        .problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.sentence()).contains("may be 4000"));
    }
}
