package org.moultwright.workflow;

/** Is told, besides what comes over a probe's wire, how the keeping of it is doing. */
public interface LogListener extends ProbeListener {

    /**
     * Readings cannot be kept now. Those that come wait, and none is told as heard before it is kept. Told
     * once, until {@link #keptAgain}.
     */
    void notKept(AdvisedException fault);

    /**
     * Readings are kept again, those that waited first; they are told as heard next.
     *
     * @param waited how many had to wait
     */
    void keptAgain(int waited);

    /** Readings never told as heard are lost: too many waited, or it came to an end before they could be kept. */
    void lost(int readings);
}
