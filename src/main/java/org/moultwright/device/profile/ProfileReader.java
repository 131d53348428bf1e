package org.moultwright.device.profile;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.moultwright.device.line.Framing;
import org.moultwright.domain.Require;
import org.moultwright.language.Texts;
import org.moultwright.workflow.ProfileProblem;

/**
 * Reads a profile's text: lines of {@code key: value}, {@code #} starts a comment line. Every key is described in
 * {@code docs/profiles.md}.
 */
final class ProfileReader {
    private static final Pattern CODE = Pattern.compile("[a-z0-9]+(?:-[a-z0-9]+)*");
    private static final Pattern PORT = Pattern.compile("(\\d{2,7}) ([5-8])([NOE])([12])( DTR)?");
    private static final Pattern HOURS = Pattern.compile("([1-9]\\d{0,2}) h");
    private static final int USUAL_LONGEST_BYTES = 200;
    private static final int LONGEST_BYTES = 600;

    private final ProfileText text;
    private final Map<String, String> chosen;
    private final Names names = new Names();

    private ProfileReader(ProfileText text, Map<String, String> chosen) {
        this.text = text;
        this.chosen = chosen;
    }

    /**
     * What a profile's text declares.
     *
     * @param profile the profile, if nothing is wrong
     * @param problems all that is wrong, in order of lines
     */
    record Read(Optional<LineProfile> profile, List<ProfileProblem> problems) {
        /**
         * The profile.
         *
         * @throws IllegalArgumentException if there is none
         */
        LineProfile orThrow() {
            return profile.orElseThrow(() -> new IllegalArgumentException(problems.toString()));
        }
    }

    /** Reads a text under these settings; its own test lines are not tried yet. */
    static Read read(List<String> lines, Map<String, String> settings) {
        ProfileText text = new ProfileText(lines);
        Optional<ProfileFile> file = new ProfileReader(text, settings).file();
        return new Read(
                text.problems().isEmpty()
                        ? file.map(found -> new LineProfile(found, settings, lines))
                        : Optional.empty(),
                text.problems());
    }

    private Optional<ProfileFile> file() {
        List<Setting> settings = text.all("setting", entry -> Setting.of(entry.value()));
        try {
            names.choose(settings, chosen);
        } catch (IllegalArgumentException e) {
            text.problem(0, String.valueOf(e.getMessage()));
        }
        text.each("let", names::let);
        Optional<String> code = text.one("code", ProfileReader::code);
        Optional<String> title = text.one("title", value -> value);
        Optional<ProfileFile.Wiring> wiring = wiring();
        Decoding decoding = text.atMostOne("decode", Decoding::named).orElse(Decoding.TEXT);
        ProfileFile.Patterns patterns = new PatternReader(text, names).read();
        Optional<ProfileFile.Values> values = values();
        List<ProfileTest> tests = text.all("test", ProfileTest::of);
        if (tests.isEmpty()) {
            text.problem(0, Texts.say("there is no 'test: ' line; write some with what they must be read as"));
        }
        if (code.isEmpty() || title.isEmpty() || wiring.isEmpty() || values.isEmpty()) {
            return Optional.empty();
        }
        new GroupCheck(text).check(patterns.records(), values.get());
        return Optional.of(new ProfileFile(
                code.get(), title.get(), wiring.get(), decoding, patterns, values.get(), settings, tests));
    }

    private Optional<ProfileFile.Wiring> wiring() {
        Framing framing = text.atMostOne("framing", Framing::of).orElse(Framing.of("line"));
        int longest = text.atMostOne("longest", ProfileReader::longest).orElse(USUAL_LONGEST_BYTES);
        Optional<Poll> poll = text.atMostOne("poll", value -> Poll.of(names.in(value)));
        return text.one("port", ProfileReader::port).map(port -> new ProfileFile.Wiring(port, framing, longest, poll));
    }

    private Optional<ProfileFile.Values> values() {
        List<Channel> channels = text.all("channel", entry -> ChannelReader.read(names.in(entry.value())));
        Optional<Channel> temperature = named(channels, Channel.TEMPERATURE);
        if (temperature.isEmpty()) {
            text.problem(0, Texts.say("there is no 'channel: temperature C' or 'channel: temperature F'"));
        }
        double disconnected = text.atMostOne("disconnected", Words::number).orElse(Double.NaN);
        double powerOn = text.atMostOne("power-on", Words::number).orElse(Double.NaN);
        return temperature.map(channel -> new ProfileFile.Values(
                channel,
                named(channels, Channel.HUMIDITY),
                text.all("checksum", entry -> CheckRule.of(names.in(entry.value()))),
                new Limits(channel.lowest(), channel.highest(), disconnected, powerOn),
                text.atMostOne("stuck-after", ProfileReader::hours)));
    }

    private static Optional<Channel> named(List<Channel> channels, String name) {
        return channels.stream().filter(channel -> channel.name().equals(name)).findFirst();
    }

    private static String code(String value) {
        return Words.matched(CODE, value, "plain-number").group();
    }

    private static int longest(String value) {
        return (int) Require.within("longest", Words.number(value), 1, LONGEST_BYTES);
    }

    private static Duration hours(String value) {
        return Duration.ofHours(
                Integer.parseInt(Words.matched(HOURS, value, "12 h").group(1)));
    }

    private static LineSettings port(String value) {
        Matcher port = Words.matched(PORT, value, "9600 8N1; or: 115200 8N1 DTR");
        return new LineSettings(
                Integer.parseInt(port.group(1)),
                Integer.parseInt(port.group(2)),
                LineSettings.Parity.valueOf(port.group(3)),
                Integer.parseInt(port.group(4)),
                port.group(5) != null);
    }
}
