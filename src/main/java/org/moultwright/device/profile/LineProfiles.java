package org.moultwright.device.profile;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The profiles that may be used: each reads all of its own test lines rightly. */
public final class LineProfiles {
    private static final List<String> BUNDLED = List.of("plain-number", "key-value");

    private final Map<String, LineProfile> byCode = new LinkedHashMap<>();

    /** Of these, the ones that pass their own tests. */
    public LineProfiles(List<LineProfile> profiles) {
        profiles.stream()
                .filter(profile -> profile.failures().isEmpty())
                .forEach(profile -> byCode.put(profile.code(), profile));
    }

    /** The profiles that come with the program. */
    public static LineProfiles bundled() {
        return new LineProfiles(BUNDLED.stream().map(LineProfiles::load).toList());
    }

    public List<String> codes() {
        return List.copyOf(byCode.keySet());
    }

    public Optional<LineProfile> find(String code) {
        return Optional.ofNullable(byCode.get(code));
    }

    static LineProfile load(String code) {
        try (InputStream file =
                Objects.requireNonNull(LineProfiles.class.getResourceAsStream(code + ".profile"), code)) {
            return ProfileReader.read(new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
