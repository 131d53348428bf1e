package org.moultwright.device.profile;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.moultwright.workflow.LineForms;

/** The profiles that may be used: each reads all of its own test lines rightly. */
public final class LineProfiles implements LineForms {
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
    private final List<Form> forms = new ArrayList<>();

    private LineProfiles() {
        for (String code : BUNDLED) {
            LineProfile profile = load(code);
            add(new Form(code, profile.title(), Optional.empty(), profile.failures()), Optional.of(profile));
        }
    }

    /** The profiles that come with the program. */
    public static LineProfiles bundled() {
        return new LineProfiles();
    }

    /**
     * The profiles that come with the program, and those the keeper wrote.
     *
     * @param folder where the keeper's are; it need not be there. One that has the code of another is not usable
     */
    public static LineProfiles withKeepers(Path folder) {
        LineProfiles profiles = bundled();
        for (ProfileFolder.Found found : new ProfileFolder(folder, Set.copyOf(BUNDLED)).read()) {
            ProfileCheck check = found.check();
            profiles.add(
                    new Form(check.code().orElse(""), check.title(), Optional.of(found.name()), check.problems()),
                    check.profile());
        }
        return profiles;
    }

    private void add(Form form, Optional<LineProfile> profile) {
        forms.add(form);
        if (form.problems().isEmpty()) {
            profile.ifPresent(usable -> byCode.put(form.code(), usable));
        }
    }

    /** The codes of those that may be used, in order. */
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
        return byCode.values();
    }

    @Override
    public List<Form> forms() {
        return List.copyOf(forms);
    }

    @Override
    public Checked check(List<String> text) {
        ProfileCheck check = ProfileCheck.of(text).withCodeNotIn(Set.copyOf(BUNDLED));
        return new Checked(check.code(), check.problems());
    }

    @Override
    public List<Proposal> propose(byte[] heard) {
        return new ProfileFinder(byCode.values()).ofStream(heard);
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
