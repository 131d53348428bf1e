package org.moultwright.device.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers on the wire against published ones; the source stands beside each. */
class ChannelReferenceTest {

    /** DS18B20 data sheet, table of temperature and data: 16 bits in sixteenths of a degree. */
    @ParameterizedTest
    @CsvSource({
        "07D0, 125",
        "0550, 85",
        "0191, 25.0625",
        "00A2, 10.125",
        "0008, 0.5",
        "0000, 0",
        "FFF8, -0.5",
        "FF5E, -10.125",
        "FE6F, -25.0625",
        "FC90, -55"
    })
    void sixteenthsOfADegree(String digits, double celsius) {
        assertThat(value("temperature C, as s16 AB, scale 0.0625", digits)).isEqualTo(celsius);
        String lowByteFirst = digits.substring(2) + digits.substring(0, 2);
        assertThat(value("temperature C, as s16 BA, scale 0.0625", lowByteFirst))
                .isEqualTo(celsius);
    }

    /** SHT3x-DIS data sheet, version 5: T = -45 + 175 S / 65535. Values computed from the formula. */
    @ParameterizedTest
    @CsvSource({"6666, 25.0000", "8000, 42.5013", "BEEF, 85.5230", "FFFF, 130"})
    void temperatureOfASensorsWord(String digits, double celsius) {
        assertThat(value("temperature C, as u16 AB, scale 175/65535, offset -45", digits))
                .isCloseTo(celsius, within(5e-5));
    }

    /** The same: RH = 100 S / 65535; and -6 + 125 S / 65535 clipped to 0 to 100 (SHT4x, from memory). */
    @ParameterizedTest
    @CsvSource({
        "6666, 40.0000, 44.0000",
        "8000, 50.0008, 56.5010",
        "BEEF, 74.5846, 87.2307",
        "FFFF, 100, 100",
        "0000, 0, 0"
    })
    void humidityOfASensorsWord(String digits, double percent, double clippedPercent) {
        assertThat(value("humidity %, as u16 AB, scale 100/65535", digits)).isCloseTo(percent, within(5e-5));
        assertThat(value("humidity %, as u16 AB, scale 125/65535, offset -6, clip", digits))
                .isCloseTo(clippedPercent, within(5e-5));
    }

    /** Modbus registers in tenths, two's complement. */
    @ParameterizedTest
    @CsvSource({"0131, 30.5", "FF33, -20.5", "0222, 54.6"})
    void tenthsInARegister(String digits, double value) {
        assertThat(value("temperature C, as s16 AB, scale 0.1", digits)).isEqualTo(value);
    }

    /** By definition of the scales; -196.6 °F is what a sensor gone reads in that unit. */
    @ParameterizedTest
    @CsvSource({"-40, -40", "32, 0", "98.6, 37", "212, 100", "-196.6, -127"})
    void fahrenheit(String text, double celsius) {
        assertThat(value("temperature F", text)).isCloseTo(celsius, within(1e-9));
    }

    /** 25.7 as IEEE 754 binary32 is 41CD999A. */
    @ParameterizedTest
    @CsvSource({"ABCD, 41CD999A", "CDAB, 999A41CD", "BADC, CD419A99", "DCBA, 9A99CD41"})
    void floatsInFourOrders(String order, String digits) {
        assertThat(value("temperature C, as f32 " + order, digits)).isEqualTo(25.7);
    }

    @ParameterizedTest
    @CsvSource({
        "u8, FF, 255",
        "s8, FF, -1",
        "u16 AB, FFFE, 65534",
        "s32 ABCD, FFFFFFFE, -2",
        "u32 ABCD, FFFFFFFE, 4294967294",
        "u32 CDAB, 00020001, 65538",
        "s16 AB, 80 00, -32768"
    })
    void otherKindsOfNumber(String encoding, String digits, double value) {
        assertThat(value("temperature C, as " + encoding, digits)).isEqualTo(value);
    }

    @ParameterizedTest
    @CsvSource({
        "'temperature C', OL",
        "'temperature C', 26.4.1",
        "'temperature C', 0x1A",
        "'temperature C', NaN",
        "'temperature C, none 9.91E37 -999', 9.91E37",
        "'temperature C, none 9.91E37 -999', -999",
        "'temperature C, as f32 ABCD', 7FC00000",
        "'temperature C, as f32 ABCD', 7F800000",
        "'temperature C, as f32 ABCD', 00000001",
        "'temperature C, as s16 AB', 0131FF"
    })
    void whatIsNoNumberIsInfinite(String channel, String text) {
        assertThat(value(channel, text)).isInfinite();
    }

    /** IEC 60751:2008, ohms to two decimals. */
    @ParameterizedTest
    @CsvSource({
        "18.52, -200",
        "60.26, -100",
        "80.31, -50",
        "100, 0",
        "103.90, 10",
        "107.79, 20",
        "109.73, 25",
        "111.67, 30",
        "114.38, 37",
        "115.54, 40",
        "138.51, 100",
        "175.86, 200"
    })
    void ohmsOfAPlatinumResistor(String ohm, double celsius) {
        assertThat(value("temperature pt100", ohm)).isCloseTo(celsius, within(0.015));
    }

    /** A table of a thermistor of 10 kOhm in an instrument's manual; from 25 °C on computed from its coefficients. */
    @ParameterizedTest
    @CsvSource({"336103.2, -40", "97006.9, -20", "32650.9, 0", "31030.8, 1", "10000, 25", "8056.1, 30", "6014.3, 37"})
    void ohmsOfAThermistor(String ohm, double celsius) {
        assertThat(value("temperature ntc10k", ohm)).isCloseTo(celsius, within(0.002));
    }

    /** NIST ITS-90 table of type K, millivolts to three decimals. */
    @ParameterizedTest
    @CsvSource({"0.397, 10", "0.798, 20", "1.000, 25", "1.203, 30", "1.489, 37", "1.612, 40", "2.023, 50", "4.096, 100"
    })
    void millivoltsOfAThermocouple(String millivolt, double celsius) {
        assertThat(value("temperature type-k", millivolt)).isCloseTo(celsius, within(0.015));
    }

    /** A broken wire or a short one. */
    @ParameterizedTest
    @CsvSource({"temperature pt100, 0", "temperature pt100, 390", "temperature ntc10k, 0", "temperature type-k, 99"})
    void whatNoSensorCanHaveIsInfinite(String channel, String measured) {
        assertThat(value(channel, measured)).isInfinite();
    }

    @Test
    void whatARecordDoesNotTellIsEmpty() {
        Matcher found = Pattern.compile("(?<temperature>\\d+)?x").matcher("x");
        assertThat(found.find()).isTrue();
        assertThat(ChannelReader.read("temperature C").value(found)).isEmpty();
        assertThat(ChannelReader.read("humidity %").value(found)).isEmpty();
    }

    private static double value(String channel, String text) {
        Channel read = ChannelReader.read(channel);
        Matcher found = Pattern.compile("(?<" + read.name() + ">.*)").matcher(text);
        assertThat(found.find()).isTrue();
        return read.value(found).orElseThrow();
    }
}
