package org.moultwright.device.link;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.moultwright.device.profile.LineProfile;
import org.moultwright.device.profile.LineProfiles;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.workflow.LinkState;
import org.moultwright.workflow.ProbeIdentity;
import org.moultwright.workflow.ProbeListener;
import org.moultwright.workflow.ReadingLog.Logged;

/** One probe of a bundled form, ten seconds from one line to the next, and a listener that writes down all. */
final class Desk implements ProbeListener {
    static final LineProfiles BUNDLED = LineProfiles.bundled();
    private static final Duration PERIOD = Duration.ofSeconds(10);

    final List<Logged> heard = new ArrayList<>();
    final List<ProbeIdentity> identities = new ArrayList<>();
    final List<ProbeIdentity> others = new ArrayList<>();
    final Ear ear;
    private final Transcript transcript;
    private Instant now = Instant.parse("2026-03-01T20:00:00Z");
    private long nanos;

    Desk(String profile) {
        this(profile, ProbeIdentity.UNKNOWN);
    }

    Desk(String profile, ProbeIdentity wanted) {
        LineProfile read = BUNDLED.find(profile).orElseThrow();
        transcript = new Transcript(read);
        transcript.startAtLine();
        ear = new Ear(read, this, wanted);
    }

    /** Bytes come, ten seconds after the last. */
    Desk says(String text) {
        return comes(text, false);
    }

    /** Bytes come that were held up. */
    Desk saysLate(String text) {
        return comes(text, true);
    }

    Desk passes(Duration duration) {
        now = now.plus(duration);
        nanos += duration.toNanos();
        return this;
    }

    private Desk comes(String text, boolean heldUp) {
        passes(PERIOD);
        byte[] bytes = text.getBytes(StandardCharsets.ISO_8859_1);
        transcript.take(bytes, bytes.length, now, nanos, heldUp).forEach(ear::heard);
        transcript.quiet(now, nanos + 500_000_000).forEach(ear::heard);
        return this;
    }

    List<Reading> readings() {
        return heard.stream().map(Logged::reading).toList();
    }

    List<Quality> qualities() {
        return readings().stream().map(Reading::quality).toList();
    }

    List<Double> temperaturesCelsius() {
        return readings().stream().map(Reading::temperatureCelsius).toList();
    }

    List<String> rawLines() {
        return heard.stream().map(Logged::rawLine).toList();
    }

    @Override
    public void heard(Logged logged) {
        heard.add(logged);
    }

    @Override
    public void changed(LinkState state) {}

    @Override
    public void clockStepped(Instant seenAt, Duration by) {}

    @Override
    public void identified(ProbeIdentity identity) {
        identities.add(identity);
    }

    @Override
    public void alsoHeard(ProbeIdentity identity) {
        others.add(identity);
    }
}
