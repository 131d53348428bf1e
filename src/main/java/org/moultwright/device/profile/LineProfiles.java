package org.moultwright.device.profile;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The profiles that may be used: each reads all of its own test lines rightly. */
public final class LineProfiles {
    static final List<String> BUNDLED = List.of(
            "plain-number",
            "key-value",
            "plain-fahrenheit",
            "bracketed-units",
            "stx-integers",
            "semicolon-record",
            "letter-poll",
            "letter-poll-humidity",
            "scpi-poll",
            "json",
            "comma-separated",
            "decimal-comma",
            "one-wire-scratchpad",
            "hex-words",
            "modbus-int16",
            "modbus-float32");

    private final Map<String, LineProfile> byCode = new LinkedHashMap<>();

    /** Of these, the ones that pass their own tests; of several with one code, the first. */
    public LineProfiles(List<LineProfile> profiles) {
        profiles.stream()
                .filter(profile -> profile.failures().isEmpty())
                .forEach(profile -> byCode.putIfAbsent(profile.code(), profile));
    }

    /** The profiles that come with the program. */
    public static LineProfiles bundled() {
        return new LineProfiles(BUNDLED.stream().map(LineProfiles::load).toList());
    }

    public List<String> codes() {
        return List.copyOf(byCode.keySet());
    }

    /**
     * The profile of a code, or of a code with settings such as {@code modbus-int16 address=17}.
     *
     * @throws IllegalArgumentException if the profile has no such settings
     */
    public Optional<LineProfile> find(String words) {
        ProfileChoice choice = ProfileChoice.of(words);
        return Optional.ofNullable(byCode.get(choice.code())).map(profile -> profile.with(choice.settings()));
    }

    Collection<LineProfile> all() {
        return Collections.unmodifiableCollection(byCode.values());
    }

    static LineProfile load(String code) {
        try (InputStream file =
                Objects.requireNonNull(LineProfiles.class.getResourceAsStream(code + ".profile"), code)) {
            String text = new String(file.readAllBytes(), StandardCharsets.UTF_8);
            return ProfileReader.read(text.lines().toList(), Map.of()).orThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
