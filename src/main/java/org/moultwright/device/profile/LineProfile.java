package org.moultwright.device.profile;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * How the lines of one kind of instrument are read. It is declared in a file ({@link ProfileFile}) together
 * with lines it must read rightly; one that fails any of them is not to be used.
 *
 * <p>Immutable. Reading a line takes bounded time whatever the line and the patterns are.
 */
public final class LineProfile {
    private static final int STEPS_A_PATTERN = 10_000;
    private static final Decoded UNREADABLE = new Decoded.Unreadable();

    private final ProfileFile file;

    LineProfile(ProfileFile file) {
        this.file = file;
    }

    public String code() {
        return file.code();
    }

    /** What the keeper calls it. */
    public String title() {
        return file.title();
    }

    public LineSettings lineSettings() {
        return file.lineSettings();
    }

    public Limits limits() {
        return file.limits();
    }

    /** What a line says; text is bytes as ISO-8859-1. */
    public Decoded decode(String line) {
        String plain = Signs.plain(line);
        try {
            return file.records().stream()
                    .flatMap(pattern -> found(pattern, plain).stream())
                    .findFirst()
                    .map(this::measured)
                    .orElseGet(() -> isFault(plain) ? new Decoded.Fault() : UNREADABLE);
        } catch (StepLimitedText.OutOfStepsException e) {
            return UNREADABLE;
        }
    }

    /** A sentence for every test line of its own that it reads wrongly. */
    public List<String> failures() {
        return file.tests().stream()
                .filter(test -> !test.holds(decode(test.line())))
                .map(test -> "%s reads \"%s\" as %s but must read %s"
                        .formatted(code(), test.line(), decode(test.line()), test.expected()))
                .toList();
    }

    private boolean isFault(String plain) {
        return file.faults().stream().anyMatch(pattern -> found(pattern, plain).isPresent());
    }

    private static Optional<Matcher> found(Pattern pattern, String plain) {
        Matcher matcher = pattern.matcher(new StepLimitedText(plain, STEPS_A_PATTERN));
        return matcher.find() ? Optional.of(matcher) : Optional.empty();
    }

    private Decoded measured(Matcher found) {
        double temperatureCelsius = unit(found).toCelsius(number(group(found, "temperature")));
        return limits().allow(temperatureCelsius)
                ? new Decoded.Measured(temperatureCelsius, humidityPercent(found))
                : new Decoded.Fault();
    }

    private TemperatureUnit unit(Matcher found) {
        String unit = group(found, "unit");
        return unit == null ? file.unit() : TemperatureUnit.valueOf(unit.toUpperCase(Locale.ROOT));
    }

    private static double humidityPercent(Matcher found) {
        return number(group(found, "humidity"));
    }

    private static @Nullable String group(Matcher found, String name) {
        return found.pattern().pattern().contains("(?<" + name + ">") ? found.group(name) : null;
    }

    private static double number(@Nullable String text) {
        return text == null ? Double.NaN : Double.parseDouble(text.replace(',', '.'));
    }
}
