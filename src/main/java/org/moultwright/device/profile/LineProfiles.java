package org.moultwright.device.profile;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.moultwright.workflow.LineForms;

/** The profiles that may be used: each reads all of its own test lines rightly. Safe for several threads. */
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

    /** The program's own, each read and tried when it is first asked for: all at once would delay the start. */
    private final Map<String, Optional<LineProfile>> bundled = new ConcurrentHashMap<>();

    private final Optional<Path> folder;
    private volatile List<ProfileFolder.Found> keepers;

    private LineProfiles(Optional<Path> folder) {
        this.folder = folder;
        this.keepers = found(folder);
    }

    /** The profiles that come with the program. */
    public static LineProfiles bundled() {
        return new LineProfiles(Optional.empty());
    }

    /**
     * The profiles that come with the program, and those the keeper wrote.
     *
     * @param folder where the keeper's are; it need not be there. One that has the code of another is not usable
     */
    public static LineProfiles withKeepers(Path folder) {
        return new LineProfiles(Optional.of(folder));
    }

    /** The codes of those that may be used, in order. */
    public List<String> codes() {
        return Stream.concat(BUNDLED.stream(), usableOfKeepers().map(LineProfile::code))
                .toList();
    }

    /**
     * The profile of a code, or of a code with settings such as {@code modbus-int16 address=17}.
     *
     * @throws IllegalArgumentException if the profile has no such settings
     */
    public Optional<LineProfile> find(String words) {
        ProfileChoice choice = ProfileChoice.of(words);
        return usable(choice.code()).map(profile -> profile.with(choice.settings()));
    }

    private Optional<LineProfile> usable(String code) {
        return BUNDLED.contains(code)
                ? bundled.computeIfAbsent(
                        code,
                        any -> Optional.of(load(code))
                                .filter(profile -> profile.failures().isEmpty()))
                : usableOfKeepers()
                        .filter(profile -> profile.code().equals(code))
                        .findFirst();
    }

    private Stream<LineProfile> usableOfKeepers() {
        return keepers.stream().flatMap(found -> found.check().profile().stream());
    }

    /** All that may be used, in order. */
    List<LineProfile> all() {
        return codes().stream().flatMap(code -> usable(code).stream()).toList();
    }

    @Override
    public List<Form> forms() {
        Stream<Form> own = BUNDLED.stream()
                .map(LineProfiles::load)
                .map(profile -> new Form(profile.code(), profile.title(), Optional.empty(), profile.failures()));
        Stream<Form> written = keepers.stream()
                .map(found -> new Form(
                        found.check().code().orElse(""),
                        found.check().title(),
                        Optional.of(found.name()),
                        found.check().problems()));
        return Stream.concat(own, written).toList();
    }

    @Override
    public Checked check(List<String> text) {
        ProfileCheck check = ProfileCheck.of(text).withCodeNotIn(Set.copyOf(BUNDLED));
        return new Checked(check.code(), check.problems());
    }

    @Override
    public List<String> text(String code) {
        if (BUNDLED.contains(code)) {
            return bundledText(code);
        }
        return ofKeeper(code)
                .flatMap(found -> folder.map(inside -> new ProfileFolder(inside, Set.of()).text(found.name())))
                .orElse(List.of());
    }

    @Override
    public synchronized Checked save(List<String> text) {
        Checked checked = check(text);
        if (checked.problems().isEmpty()) {
            Path inside = folder.orElseThrow(() -> new IllegalStateException("there is no folder of profiles"));
            String code = checked.code().orElseThrow();
            String name = ofKeeper(code).map(ProfileFolder.Found::name).orElse(ProfileFolder.nameFor(code));
            new ProfileFolder(inside, Set.of()).write(name, text);
            keepers = found(folder);
        }
        return checked;
    }

    private Optional<ProfileFolder.Found> ofKeeper(String code) {
        return keepers.stream()
                .filter(found -> found.check().code().filter(code::equals).isPresent())
                .findFirst();
    }

    private static List<ProfileFolder.Found> found(Optional<Path> folder) {
        return folder.map(inside -> new ProfileFolder(inside, Set.copyOf(BUNDLED)).read())
                .orElse(List.of());
    }

    @Override
    public List<Proposal> propose(byte[] heard) {
        return new ProfileFinder(all()).propose(heard);
    }

    static LineProfile load(String code) {
        return ProfileReader.read(bundledText(code), Map.of()).orThrow();
    }

    private static List<String> bundledText(String code) {
        try (InputStream file =
                Objects.requireNonNull(LineProfiles.class.getResourceAsStream(code + ".profile"), code)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
