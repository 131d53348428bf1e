package org.moultwright.device.link;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import org.moultwright.device.DeviceException;
import org.moultwright.device.profile.LineProfile;
import org.moultwright.device.profile.LineProfiles;
import org.moultwright.workflow.LinkState;
import org.moultwright.workflow.ProbeIdentity;
import org.moultwright.workflow.ProbeListener;
import org.moultwright.workflow.ReadingLog.Logged;

/**
 * A wire that does what it is told, with clocks that go on only by reading and waiting, and a listener that
 * writes down what it hears. The link ends when the script does.
 */
final class ScriptedWire implements ByteSource.Opening, Ending, ProbeListener {
    private static final LineProfiles BUNDLED = LineProfiles.bundled();
    static final Duration READ = Duration.ofMillis(200);
    private static final LinkTiming TIMING =
            new LinkTiming(Duration.ofSeconds(60), Duration.ofMillis(500), Duration.ofSeconds(5));

    final List<LinkState> states = new ArrayList<>();
    final List<Logged> heard = new ArrayList<>();
    final List<Duration> steps = new ArrayList<>();
    final List<Duration> waits = new ArrayList<>();
    final List<String> asked = new ArrayList<>();
    int opened;
    int closed;
    private final Deque<Runnable> script = new ArrayDeque<>();
    private final Deque<DeviceException.Reason> refusals = new ArrayDeque<>();
    private byte[] next = {};
    private boolean gone;
    private Ear ear = new Ear(BUNDLED.find("plain-number").orElseThrow(), this, ProbeIdentity.UNKNOWN);
    private Instant wall = Instant.parse("2026-03-01T20:00:00Z");
    private long steadyNanos;

    ScriptedWire says(String text) {
        return then(() -> next = text.getBytes(StandardCharsets.ISO_8859_1));
    }

    ScriptedWire isQuiet(Duration duration) {
        for (long reads = duration.dividedBy(READ); reads > 0; reads--) {
            then(() -> {});
        }
        return this;
    }

    ScriptedWire isPulled() {
        return then(() -> gone = true);
    }

    /** The wire is pulled, and this many tries to open it again fail. */
    ScriptedWire isPulledAndRefuses(DeviceException.Reason reason, int times) {
        return then(() -> {
            gone = true;
            refusals.addAll(Collections.nCopies(times, reason));
        });
    }

    ScriptedWire clockIsSet(Duration by) {
        return then(() -> wall = wall.plus(by));
    }

    private ScriptedWire then(Runnable deed) {
        script.add(deed);
        return this;
    }

    ScriptedWire run(String profile) {
        LineProfile read = BUNDLED.find(profile).orElseThrow();
        ear = new Ear(read, this, ProbeIdentity.UNKNOWN);
        LinkClock clock = new LinkClock(() -> wall, () -> steadyNanos);
        new ProbeLink(this, new Transcript(read), read.poll(), ear, TIMING, clock, this).run();
        return this;
    }

    List<Double> temperaturesCelsius() {
        return heard.stream()
                .map(logged -> logged.reading().temperatureCelsius())
                .toList();
    }

    List<String> stateNames() {
        return states.stream().map(state -> state.getClass().getSimpleName()).toList();
    }

    @Override
    public ByteSource open() {
        if (!refusals.isEmpty()) {
            throw new DeviceException(refusals.remove(), "The port cannot be opened.");
        }
        opened++;
        ear.opened("");
        gone = false;
        return new Source();
    }

    @Override
    public boolean hasCome() {
        return script.isEmpty();
    }

    @Override
    public void await(Duration longest) {
        waits.add(longest);
        pass(longest);
    }

    @Override
    public void heard(Logged logged) {
        heard.add(logged);
    }

    @Override
    public void changed(LinkState state) {
        states.add(state);
    }

    @Override
    public void clockStepped(Instant seenAt, Duration by) {
        steps.add(by);
    }

    private void pass(Duration duration) {
        wall = wall.plus(duration);
        steadyNanos += duration.toNanos();
    }

    private final class Source implements ByteSource {
        @Override
        public int read(byte[] into) {
            pass(READ);
            next = new byte[0];
            script.remove().run();
            if (gone) {
                return -1;
            }
            System.arraycopy(next, 0, into, 0, next.length);
            return next.length;
        }

        @Override
        public void write(byte[] bytes) {
            asked.add(new String(bytes, StandardCharsets.ISO_8859_1));
        }

        @Override
        public void close() {
            closed++;
        }
    }
}
