package org.moultwright.device.link;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.domain.Reading;

/**
 * Sessions of bytes, cut and noisy. In a session file {@code <} is what came, {@code !} what happened, and
 * {@code =} the readings that must come of it.
 */
class SessionReplayTest {
    private static final Pattern BYTE = Pattern.compile("\\\\x([0-9a-fA-F]{2})");
    private static final DecimalFormatSymbols ENGLISH = DecimalFormatSymbols.getInstance(Locale.ROOT);
    private static final Pattern MANY = Pattern.compile("\\{(\\d+)\\}");

    @ParameterizedTest
    @ValueSource(strings = {"cut-and-noisy", "named-values"})
    void readsASession(String name) throws IOException {
        ScriptedWire wire = new ScriptedWire();
        List<String> expected = new ArrayList<>();
        String profile = "";
        for (String line : lines(name)) {
            switch (line.charAt(0)) {
                case '<' -> wire.says(bytes(line.substring(2)));
                case '!' -> wire.isPulled();
                case '=' -> expected.add(line.substring(2));
                default -> profile = line.replace("profile ", "");
            }
        }
        wire.run(profile);
        assertThat(wire.heard).extracting(logged -> words(logged.reading())).containsExactlyElementsOf(expected);
    }

    private static List<String> lines(String name) throws IOException {
        try (InputStream file =
                Objects.requireNonNull(SessionReplayTest.class.getResourceAsStream(name + ".session"), name)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .toList();
        }
    }

    private static String bytes(String written) {
        String many = MANY.matcher(written).replaceAll(found -> "7".repeat(Integer.parseInt(found.group(1))));
        return BYTE.matcher(many.replace("\\r", "\r").replace("\\n", "\n"))
                .replaceAll(
                        found -> Matcher.quoteReplacement(Character.toString(Integer.parseInt(found.group(1), 16))));
    }

    private static String words(Reading reading) {
        String humidity = Double.isNaN(reading.humidityPercent()) ? "" : " " + number(reading.humidityPercent());
        return number(reading.temperatureCelsius()) + humidity + " "
                + reading.quality().key();
    }

    private static String number(double value) {
        return Double.isNaN(value) ? "none" : new DecimalFormat("0.0###", ENGLISH).format(value);
    }
}
