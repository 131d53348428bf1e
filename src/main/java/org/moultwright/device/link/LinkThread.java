package org.moultwright.device.link;

import org.moultwright.device.profile.LineProfile;
import org.moultwright.workflow.ProbeLinks;

/** A link on a thread of its own, which does not keep the program alive. */
public final class LinkThread implements ProbeLinks.Link {
    private final Ending.OnCall ending = new Ending.OnCall();
    private final Thread thread;

    private LinkThread(
            String name,
            ByteSource.Opening opening,
            LineProfile profile,
            WireListener listener,
            LinkTiming timing,
            LinkClock clock) {
        LinkTiming patient =
                profile.poll().map(poll -> timing.forAsking(poll.every())).orElse(timing);
        ProbeLink link =
                new ProbeLink(opening, new Transcript(profile), profile.poll(), listener, patient, clock, ending);
        this.thread = new Thread(link, name);
        thread.setDaemon(true);
    }

    /** Starts listening. */
    public static LinkThread start(
            String name,
            ByteSource.Opening opening,
            LineProfile profile,
            WireListener listener,
            LinkTiming timing,
            LinkClock clock) {
        LinkThread started = new LinkThread(name, opening, profile, listener, timing, clock);
        started.thread.start();
        return started;
    }

    @Override
    public void close() {
        ending.call();
        if (Thread.currentThread() == thread) {
            return;
        }
        try {
            thread.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
