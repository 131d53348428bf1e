package org.moultwright.device.link;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.moultwright.device.DeviceException;
import org.moultwright.device.profile.Poll;
import org.moultwright.workflow.LinkState;

/**
 * Keeps listening to one wire: opens it, asks if need be, tells what comes, closes it at once when it is gone, and
 * tries again, waiting longer each time. All on the thread that calls {@link #run}.
 */
final class ProbeLink implements Runnable {
    private final ByteSource.Opening opening;
    private final Transcript transcript;
    private final Asking asking;
    private final WireListener listener;
    private final LinkClock clock;
    private final Ending ending;
    private final Silence silence;
    private final BackOff backOff;
    private final ClockWatch clockWatch;
    private final byte[] buffer = new byte[1024];
    private @Nullable LinkState state;

    /** The wall clock jumped and no line has come since. */
    private boolean stepped;

    ProbeLink(
            ByteSource.Opening opening,
            Transcript transcript,
            Optional<Poll> poll,
            WireListener listener,
            LinkTiming timing,
            LinkClock clock,
            Ending ending) {
        this.opening = opening;
        this.transcript = transcript;
        this.asking = new Asking(poll, clock);
        this.listener = listener;
        this.clock = clock;
        this.ending = ending;
        this.silence = new Silence(clock, timing.silentAfter());
        this.backOff = new BackOff(timing);
        this.clockWatch = new ClockWatch(clock);
    }

    @Override
    public void run() {
        enter(new LinkState.Connecting());
        try {
            while (!ending.hasCome()) {
                listenOnce();
                ending.await(backOff.next());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void listenOnce() {
        try {
            if (listenUntilGone()) {
                enter(new LinkState.Lost());
            }
        } catch (DeviceException e) {
            enter(new LinkState.Refused(e.code(), e.advice()));
        }
    }

    private boolean listenUntilGone() {
        try (ByteSource source = opening.open()) {
            opened();
            asking.startOver();
            return listen(source);
        }
    }

    private void opened() {
        if (state instanceof LinkState.Silent) {
            silence.portOpenedForSilence();
            transcript.startAtLine();
        } else {
            silence.portOpened();
            transcript.startMidLine();
            enter(new LinkState.Connecting());
        }
    }

    /** Listens until the wire is gone, has been silent for too long, or the end has come; whether it is gone. */
    private boolean listen(ByteSource source) {
        while (!ending.hasCome()) {
            if (asking.isDue()) {
                tell(transcript.asked(asking.ask(source), clock.now()));
            }
            int count = source.read(buffer);
            if (count < 0) {
                return true;
            }
            lookAtClock();
            if (count > 0) {
                tell(transcript.take(buffer, count, clock.now(), clock.nanos(), stepped || silence.isTooLong()));
                continue;
            }
            tell(transcript.quiet(clock.now(), clock.nanos()));
            if (silence.isTooLong()) {
                enter(new LinkState.Silent(silence.since()));
                return false;
            }
        }
        return false;
    }

    private void tell(List<Heard> heard) {
        if (heard.isEmpty()) {
            return;
        }
        stepped = false;
        silence.heard();
        backOff.startOver();
        enter(new LinkState.Live());
        heard.forEach(listener::heard);
    }

    private void lookAtClock() {
        clockWatch.step().ifPresent(by -> {
            stepped = true;
            listener.clockStepped(clock.now(), by);
        });
    }

    private void enter(LinkState next) {
        if (!next.equals(state)) {
            state = next;
            listener.changed(next);
        }
    }
}
