package org.moultwright.device.profile;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the lines of one form. Immutable; takes bounded time whatever the line and the patterns are: each
 * pattern may look at so many characters of a line and no more.
 */
final class LineDecoder {
    private static final int STEPS_A_PATTERN = 10_000;
    private static final Told UNREADABLE = Told.by(new Decoded.Unreadable());

    private final Decoding decoding;
    private final ProfileFile.Patterns patterns;
    private final ProfileFile.Values values;

    LineDecoder(ProfileFile file) {
        this.decoding = file.decoding();
        this.patterns = file.patterns();
        this.values = file.values();
    }

    Told decode(String raw) {
        try {
            return decoding.plain(raw).map(this::told).orElse(UNREADABLE);
        } catch (StepLimitedText.OutOfStepsException | StackOverflowError e) {
            // The search calls itself for every character a group of choices takes; the stack is whole again here.
            return UNREADABLE;
        }
    }

    private Told told(String plain) {
        if (first(patterns.ignore(), plain).isPresent()) {
            return Told.by(new Decoded.Ignored());
        }
        return fault(patterns.rejects(), plain)
                .or(() -> first(patterns.records(), plain).map(this::read))
                .or(() -> fault(patterns.faults(), plain))
                .orElse(UNREADABLE);
    }

    private static Optional<Told> fault(List<ProfileFile.Sign> signs, String plain) {
        return signs.stream()
                .flatMap(sign ->
                        found(sign.pattern(), plain).stream().map(match -> Told.fault(sign.cause(), Origin.of(match))))
                .findFirst();
    }

    private static Optional<Matcher> first(List<Pattern> patterns, String plain) {
        return patterns.stream()
                .flatMap(pattern -> found(pattern, plain).stream())
                .findFirst();
    }

    private static Optional<Matcher> found(Pattern pattern, String plain) {
        Matcher matcher = pattern.matcher(new StepLimitedText(plain, STEPS_A_PATTERN));
        return matcher.find() ? Optional.of(matcher) : Optional.empty();
    }

    private Told read(Matcher found) {
        // A record whose check fails may tell a wrong address too, so it is nobody's.
        return values.checks().stream().allMatch(check -> check.holds(found))
                ? new Told(measured(found), Origin.of(found))
                : Told.fault(FaultCause.CHECKSUM, Origin.NONE);
    }

    private Decoded measured(Matcher found) {
        double temperatureCelsius = values.temperature().value(found).orElse(Double.POSITIVE_INFINITY);
        return fault(temperatureCelsius)
                .<Decoded>map(Decoded.Fault::new)
                .orElseGet(() -> new Decoded.Measured(temperatureCelsius, humidityPercent(found)));
    }

    private Optional<FaultCause> fault(double temperatureCelsius) {
        if (Double.isInfinite(temperatureCelsius)) {
            return Optional.of(FaultCause.INSTRUMENT);
        }
        if (values.limits().isDisconnected(temperatureCelsius)) {
            return Optional.of(FaultCause.DISCONNECTED);
        }
        return values.limits().allow(temperatureCelsius) ? Optional.empty() : Optional.of(FaultCause.OUT_OF_RANGE);
    }

    private double humidityPercent(Matcher found) {
        return values.humidity()
                .map(channel -> humidityPercent(channel, channel.value(found)))
                .orElse(Double.NaN);
    }

    private static double humidityPercent(Channel channel, OptionalDouble told) {
        double percent = told.orElse(Double.NaN);
        return told.isEmpty() || channel.allows(percent) ? percent : Double.POSITIVE_INFINITY;
    }
}
