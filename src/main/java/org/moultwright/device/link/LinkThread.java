package org.moultwright.device.link;

import org.moultwright.workflow.ProbeLinks;
import org.moultwright.workflow.ProbeListener;

/** A link on a thread of its own, which does not keep the program alive. */
public final class LinkThread implements ProbeLinks.Link {
    private final Ending.OnCall ending = new Ending.OnCall();
    private final Thread thread;

    private LinkThread(
            String name, ByteSource.Opening opening, Transcript transcript, ProbeListener listener, LinkTiming timing) {
        ProbeLink link = new ProbeLink(opening, transcript, listener, timing, LinkClock.SYSTEM, ending);
        this.thread = new Thread(link, name);
        thread.setDaemon(true);
    }

    /** Starts listening. */
    public static LinkThread start(
            String name, ByteSource.Opening opening, Transcript transcript, ProbeListener listener, LinkTiming timing) {
        LinkThread started = new LinkThread(name, opening, transcript, listener, timing);
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
