package org.moultwright.device.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.moultwright.domain.Quality.FAULT;
import static org.moultwright.domain.Quality.GOOD;
import static org.moultwright.domain.Quality.SUSPECT;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.moultwright.device.check.Hex;

/**
 * Every fault of the wire and of the sensor with its treatment, all the way from bytes to a reading. The source of
 * each is beside it.
 */
class FaultTreatmentTest {

    /** Common practice of serial logging, no source. */
    @Test
    void zerosAndAPartOfALineAtTheStart() {
        Desk desk = new Desk("plain-number").says("\0\0\0" + "26.1\r\n").says("26.");
        assertThat(desk.temperaturesCelsius()).containsExactly(26.1);
    }

    @Test
    void aLineWithoutEndIsCutAndKept() {
        Desk desk = new Desk("plain-number").says("7".repeat(5000) + "\r\n26.1\r\n");
        assertThat(desk.qualities()).containsExactly(FAULT, GOOD);
        assertThat(desk.rawLines().get(0)).hasSize(200);
    }

    /** DS18B20 data sheet: 85 °C stands in the scratchpad until the first conversion, with 0C in its seventh byte. */
    @Test
    void thePowerOnScratchpadIsAFaultAndAMeasuredEightyFiveIsNot() {
        Desk desk =
                new Desk("one-wire-scratchpad").says("50054B467FFF0C101C\r\n").says("91014B467FFF0F1025\r\n");
        assertThat(desk.qualities()).containsExactly(FAULT, GOOD);
        assertThat(desk.temperaturesCelsius()).containsExactly(Double.NaN, 25.0625);
        // With 10 there it was measured; 60 K away from the last value it is the power-on value all the same.
        desk.says("50054B467FFF1010BD\r\n");
        assertThat(desk.qualities().get(2)).isEqualTo(FAULT);
    }

    /** The same value where only a number is told: legal, but not when it is a jump of more than 5 K. */
    @Test
    void eightyFiveDegreesAsANumber() {
        assertThat(new Desk("plain-number").says("26.1\r\n").says("85.0\r\n").qualities())
                .containsExactly(GOOD, FAULT);
        assertThat(new Desk("plain-number").says("82.0\r\n").says("85.0\r\n").qualities())
                .containsExactly(GOOD, GOOD);
    }

    /** A public driver of one-wire sensors tells -127 °C, -196.6 °F or a raw -7040 for a sensor gone. */
    @ParameterizedTest
    @CsvSource({"plain-number, -127.00", "plain-fahrenheit, -196.6", "plain-number, -7040", "key-value, T=-127.00C"})
    void aSensorGone(String profile, String line) {
        Desk desk = new Desk(profile).says(line + "\r\n");
        assertThat(desk.qualities()).containsExactly(FAULT);
        assertThat(desk.temperaturesCelsius()).containsExactly(Double.NaN);
        assertThat(desk.rawLines()).containsExactly(line);
    }

    /** All zeros pass the check of the one-wire bus (computed); FFFF would read as -0.0625 °C. */
    @ParameterizedTest
    @CsvSource({"000000000000000000", "FFFFFFFFFFFFFFFFFF", "FFFF", "0000"})
    void aBusNobodyAnswersOn(String line) {
        assertThat(new Desk("one-wire-scratchpad").says(line + "\r\n").qualities())
                .containsExactly(FAULT);
    }

    /** Public issue trackers report sound-looking values of sensors short of power. */
    @Test
    void aFalseValueWithAGoodCheckIsSuspectUntilConfirmed() {
        Desk desk = new Desk("one-wire-scratchpad").says("91014B467FFF0F1025\r\n");
        desk.says("5EFF4B467FFF0210B6\r\n").says("91014B467FFF0F1025\r\n");
        assertThat(desk.qualities()).containsExactly(GOOD, SUSPECT, GOOD);
    }

    /** Words of makers' manuals; 9.9E37 and 9.91E37 by the SCPI standard. */
    @ParameterizedTest
    @CsvSource({
        "plain-number, Err.1",
        "plain-number, OL",
        "plain-number, -H-",
        "plain-number, 9.9E37",
        "scpi-poll, 9.91E37",
        "scpi-poll, -9.90000000E+37",
        "bracketed-units, 'Err [C]70.0 [%RH]'",
        "letter-poll, -E-",
        "json, '{\"t\":null}'",
        "comma-separated, 'nan,70'",
        "decimal-comma, OL;70",
        "key-value, T=OL"
    })
    void theInstrumentsWordForAFaultIsNeverANumber(String profile, String line) {
        Desk desk = new Desk(profile).says(line + "\r\n");
        assertThat(desk.qualities()).containsExactly(FAULT);
        assertThat(desk.temperaturesCelsius()).containsExactly(Double.NaN);
    }

    @Test
    void theFramedWordForAFaultIsNeverANumber() {
        assertThat(new Desk("stx-integers").says("\u0002S -H-,0248\r\n").qualities())
                .containsExactly(FAULT);
    }

    /** The frame is a published one with its last byte changed. */
    @Test
    void aWrongCheck() {
        Desk desk = new Desk("modbus-int16").says(bytes("010404013102222ACF")).says(bytes("010404013102222ACE"));
        assertThat(desk.qualities()).containsExactly(FAULT, GOOD);
        assertThat(desk.rawLines()).containsExactly("010404013102222ACF", "010404013102222ACE");
        // One public document prints this scratchpad with 57; its check is 3C, computed.
        assertThat(new Desk("one-wire-scratchpad")
                        .says("7D014B467FFF0C1057\r\n")
                        .qualities())
                .containsExactly(FAULT);
        assertThat(new Desk("semicolon-record").says("A01;25.7;C;004711;1F\r\n").qualities())
                .containsExactly(FAULT);
    }

    /** Modbus application protocol: the function with its highest bit set, and a reason. */
    @Test
    void anExceptionOfTheInstrument() {
        assertThat(new Desk("modbus-int16 function=3").says(bytes("018302C0F1")).qualities())
                .containsExactly(FAULT);
    }

    @Test
    void aPartOfAFrame() {
        Desk desk = new Desk("modbus-int16").says(bytes("0104040131")).says(bytes("010404013102222ACE"));
        assertThat(desk.qualities()).containsExactly(FAULT, GOOD);
        Desk framed = new Desk("stx-integers").says("\u0002S 02").says("\u0002S 0257,0248\r\n");
        assertThat(framed.qualities()).containsExactly(FAULT, GOOD);
    }

    @ParameterizedTest
    @CsvSource({"plain-number, 121.1", "plain-number, -40.2", "key-value, T=121.1C", "comma-separated, '121.1,70'"})
    void aValueNoSuchProbeMeasures(String profile, String line) {
        assertThat(new Desk(profile).says(line + "\r\n").qualities()).containsExactly(FAULT);
    }

    /** Humidity that cannot be makes no good reading, whatever the temperature. */
    @Test
    void humidityThatCannotBe() {
        Desk desk = new Desk("key-value").says("T=25.7C H=250%\r\n").says("T=25.7C H=nan\r\n");
        assertThat(desk.qualities()).containsExactly(SUSPECT, SUSPECT);
        assertThat(desk.readings()).allMatch(reading -> Double.isNaN(reading.humidityPercent()));
    }

    /** Common practice, no source: sixteenths of a degree do not stand still in air for twelve hours. */
    @Test
    void aStuckSensor() {
        Desk desk = new Desk("one-wire-scratchpad");
        String line = "91014B467FFF0F1025\r\n";
        desk.says(line).passes(Duration.ofHours(12)).says(line).says("A0014B461FFF1F10E6\r\n");
        assertThat(desk.qualities()).containsExactly(GOOD, SUSPECT, GOOD);
        assertThat(new Desk("plain-number")
                        .says("27\r\n")
                        .passes(Duration.ofHours(100))
                        .says("27\r\n")
                        .qualities())
                .as("whole degrees may stand still")
                .containsExactly(GOOD, GOOD);
    }

    /** Boards say what they are when they start; common practice, no source. */
    @Test
    void aBannerOfARestartIsAFaultAndThePowerOnValueAfterItToo() {
        Desk desk = new Desk("plain-number")
                .says("climate board, firmware 1.4\r\n")
                .says("85.0\r\n")
                .says("26.1\r\n");
        assertThat(desk.qualities()).containsExactly(FAULT, FAULT, GOOD);
        assertThat(desk.rawLines().get(0)).isEqualTo("climate board, firmware 1.4");
    }

    /** A stall may bring a record twice; nothing is invented about when the others were taken. */
    @Test
    void aRecordThatComesTwiceIsDroppedAndABurstIsSuspect() {
        Desk desk = new Desk("key-value")
                .says("seq=1 T=25.7\r\n")
                .says("seq=1 T=25.7\r\n")
                .says("seq=2 T=25.8\r\n");
        assertThat(desk.qualities()).containsExactly(GOOD, GOOD);
        desk.saysLate("seq=3 T=25.8\r\nseq=4 T=25.9\r\nseq=5 T=25.9\r\n");
        assertThat(desk.qualities()).containsExactly(GOOD, GOOD, SUSPECT, SUSPECT, GOOD);
    }

    /** What belongs to the form and says nothing is no reading and no fault. */
    @Test
    void headingsAreIgnored() {
        Desk desk = new Desk("comma-separated").says("temperature,humidity\r\n# started\r\n25.7,74.2\r\n");
        assertThat(desk.rawLines()).containsExactly("25.7,74.2");
    }

    private static String bytes(String digits) {
        return new String(Hex.bytes(digits), StandardCharsets.ISO_8859_1);
    }
}
