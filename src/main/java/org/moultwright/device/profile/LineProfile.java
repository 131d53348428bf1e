package org.moultwright.device.profile;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.moultwright.device.line.Framer;
import org.moultwright.device.line.Line;
import org.moultwright.language.Texts;
import org.moultwright.workflow.ProfileProblem;

/**
 * How one form of instrument is read: how its bytes come, how they fall into records, what each says. It is
 * declared in a text ({@link ProfileReader}) together with lines it must read rightly; one that fails any of
 * them is not to be used.
 *
 * <p>Immutable. Reading a line takes bounded time whatever the line and the patterns are.
 */
public final class LineProfile {
    private final ProfileFile file;
    private final ProfileChoice choice;
    private final List<String> text;
    private final LineDecoder decoder;

    LineProfile(ProfileFile file, Map<String, String> settings, List<String> text) {
        this.file = file;
        this.choice = new ProfileChoice(file.code(), settings);
        this.text = text;
        this.decoder = new LineDecoder(file);
    }

    /** By which it is chosen, without its settings. */
    public String code() {
        return file.code();
    }

    /** The words by which it is chosen as it is, settings included. */
    public String choice() {
        return choice.words();
    }

    /** What the keeper calls it. */
    public String title() {
        return file.title();
    }

    public LineSettings lineSettings() {
        return file.wiring().port();
    }

    /** What is asked, of an instrument that speaks only when asked. */
    public Optional<Poll> poll() {
        return file.wiring().poll();
    }

    public Limits limits() {
        return file.values().limits();
    }

    /** How long the very same value may be told before it is suspect; empty if for ever. */
    public Optional<Duration> stuckAfter() {
        return file.values().stuckAfter();
    }

    /** Whether its records carry a check value. */
    boolean isChecked() {
        return !file.values().checks().isEmpty();
    }

    List<String> testLines() {
        return file.tests().stream().map(ProfileTest::line).toList();
    }

    List<Setting> settings() {
        return file.settings();
    }

    /** Cuts a stream into records; the stream may start amid one. */
    public Framer framer(boolean amidARecord) {
        return file.wiring().framing().start(amidARecord, file.wiring().longestBytes());
    }

    /** The records of a stream, as they are kept. */
    List<String> records(byte[] stream) {
        return file.wiring().framing().cut(stream, file.wiring().longestBytes()).stream()
                .map(this::raw)
                .toList();
    }

    /** A record as it is kept: its text, or its bytes in hexadecimal digits. */
    public String raw(Line record) {
        return file.decoding().raw(record.text());
    }

    /** What a kept record says. */
    public Told decode(String raw) {
        return decoder.decode(raw);
    }

    /**
     * The same with other settings.
     *
     * @throws IllegalArgumentException if it has no such settings
     */
    LineProfile with(Map<String, String> settings) {
        new Names().choose(file.settings(), settings);
        return settings.equals(choice.settings())
                ? this
                : ProfileReader.read(text, settings).orThrow();
    }

    /** Every test line of its own that it reads wrongly. */
    public List<ProfileProblem> failures() {
        return file.tests().stream()
                .flatMap(test -> failure(test, with(test.settings())).stream())
                .toList();
    }

    private static Optional<ProfileProblem> failure(ProfileTest test, LineProfile profile) {
        Told told = profile.decode(test.line());
        return test.holds(told)
                ? Optional.empty()
                : Optional.of(new ProfileProblem(
                        test.lineNumber(),
                        Texts.say("\"{0}\" is read as {1} but must be {2}", test.line(), told.words(), test.wanted())));
    }
}
