package org.moultwright.device.link;

import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.Set;
import org.moultwright.device.DeviceException;
import org.moultwright.device.profile.Decoded;
import org.moultwright.device.profile.LineProfile;
import org.moultwright.device.profile.Origin;
import org.moultwright.device.quality.ReadingJudge;
import org.moultwright.domain.Reading;
import org.moultwright.language.Texts;
import org.moultwright.workflow.LinkState;
import org.moultwright.workflow.ProbeIdentity;
import org.moultwright.workflow.ProbeListener;
import org.moultwright.workflow.ReadingLog.Logged;

/**
 * Hears one probe on a wire that others may speak on too, and tells its readings.
 *
 * <p>If it is not known which probe is wanted, the first that tells who it is becomes the one. What nobody says,
 * such as a line that cannot be read, is told as a fault of the probe, so that its raw line is kept. Not safe for
 * several threads.
 */
public final class Ear implements WireListener {
    private static final int MOST_OTHERS = 64;

    private final ProbeListener listener;
    private final ReadingJudge judge;
    private final Set<String> others = new HashSet<>();
    private final Set<String> othersSinceOpened = new HashSet<>();
    private ProbeIdentity identity;
    private String adapter = "";
    private boolean heardOwn;

    public Ear(LineProfile profile, ProbeListener listener, ProbeIdentity wanted) {
        this.listener = listener;
        this.judge = new ReadingJudge(profile.limits(), profile.stuckAfter());
        this.identity = wanted;
    }

    /** Which probe this hears, as far as it is known. */
    ProbeIdentity identity() {
        return identity;
    }

    /** Whether the wanted probe was heard since the wire was last opened. */
    boolean hasHeardOwn() {
        return heardOwn;
    }

    /**
     * The wire is opened anew.
     *
     * @param adapterNow what it hangs on now, empty if that has no number of its own
     */
    void opened(String adapterNow) {
        adapter = adapterNow;
        heardOwn = false;
        othersSinceOpened.clear();
    }

    /**
     * Takes what came.
     *
     * @throws DeviceException if another sensor has spoken twice since the wire was opened and the wanted one not
     *     at all
     */
    @Override
    public void heard(Heard heard) {
        Origin origin = heard.told().origin();
        if (isOther(origin)) {
            heardOther(origin);
            return;
        }
        if (heard.told().decoded() instanceof Decoded.Measured) {
            heardOwn = true;
            identify(origin);
        }
        listener.heard(new Logged(reading(heard), heard.rawLine()));
    }

    @Override
    public void changed(LinkState state) {
        listener.changed(state);
    }

    @Override
    public void clockStepped(Instant seenAt, Duration by) {
        listener.clockStepped(seenAt, by);
    }

    private Reading reading(Heard heard) {
        Decoded decoded = heard.told().decoded();
        return heard.heldUp() ? judge.judgeHeldUp(decoded, heard.at()) : judge.judge(decoded, heard.at());
    }

    private boolean isOther(Origin origin) {
        String wanted = identity.sensor().isEmpty() ? identity.address() : identity.sensor();
        String told = identity.sensor().isEmpty() ? origin.address() : origin.serial();
        return !wanted.isEmpty() && !origin.mark().isEmpty() && !told.equals(wanted);
    }

    private void heardOther(Origin origin) {
        if (others.size() < MOST_OTHERS && others.add(origin.mark())) {
            listener.alsoHeard(identityOf(origin));
        }
        if (heardOwn) {
            return;
        }
        boolean isSecond = othersSinceOpened.contains(origin.mark());
        othersSinceOpened.add(origin.mark());
        if (isSecond) {
            throw new DeviceException(
                    DeviceException.Reason.STRANGER,
                    Texts.say("Another sensor speaks there: {0}; wanted is {1}.", origin.mark(), identity.words()));
        }
    }

    private void identify(Origin origin) {
        ProbeIdentity known = identityOf(origin);
        boolean saysMore = identity.sensor().isEmpty() && identity.address().isEmpty();
        if (known.isKnown() && saysMore && !known.equals(identity)) {
            identity = known;
            listener.identified(known);
        }
    }

    private ProbeIdentity identityOf(Origin origin) {
        return origin.serial().isEmpty()
                ? ProbeIdentity.ofAdapter(adapter, origin.address())
                : ProbeIdentity.ofSensor(origin.serial());
    }
}
