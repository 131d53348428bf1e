package org.moultwright.device.link;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.moultwright.device.line.Framer;
import org.moultwright.device.line.Line;
import org.moultwright.device.profile.Decoded;
import org.moultwright.device.profile.LineProfile;
import org.moultwright.device.profile.Origin;
import org.moultwright.device.profile.Told;

/**
 * Turns the bytes of one wire into what they say, each with its raw line. A line nobody can read is given too, so
 * nothing that came is lost, but for lines that say nothing by their profile and records that came before. Not
 * safe for several threads.
 */
public final class Transcript {
    private static final Duration ONE_MILLI = Duration.ofMillis(1);
    private static final Told CUT = new Told(new Decoded.Unreadable(), Origin.NONE);

    private final LineProfile profile;
    private final Repeats repeats = new Repeats();
    private Framer framer;
    private Instant lastAt = Instant.EPOCH;

    public Transcript(LineProfile profile) {
        this.profile = profile;
        this.framer = profile.framer(true);
    }

    /** The wire was opened anew, perhaps amid a line. */
    void startMidLine() {
        // Nothing is amid a line where nobody speaks unless asked.
        framer = profile.framer(profile.poll().isEmpty());
    }

    /** The wire was opened anew while it was quiet. */
    void startAtLine() {
        framer = profile.framer(false);
    }

    /**
     * What these bytes complete.
     *
     * @param now when they came
     * @param nanos when they came, by the steady clock
     * @param heldUp whether they came after a stall: all lines but the last were then held up on their way
     */
    public List<Heard> take(byte[] bytes, int count, Instant now, long nanos, boolean heldUp) {
        return heard(framer.take(bytes, count, nanos), now, heldUp);
    }

    /** What is complete, or broken off, because nothing came for a moment. */
    List<Heard> quiet(Instant now, long nanos) {
        return heard(framer.quiet(nanos), now, false);
    }

    /** What is broken off because the instrument is asked anew. */
    List<Heard> asked(byte[] request, Instant now) {
        return heard(framer.asked(request), now, false);
    }

    private List<Heard> heard(List<Line> lines, Instant now, boolean heldUp) {
        List<Heard> heard = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String raw = profile.raw(lines.get(i));
            Told told = lines.get(i).whole() ? profile.decode(raw) : CUT;
            if (!(told.decoded() instanceof Decoded.Ignored) && !repeats.isRepeat(told.origin())) {
                heard.add(new Heard(told, raw, instantOfItsOwn(now), heldUp && i < lines.size() - 1));
            }
        }
        return heard;
    }

    /** Lines of one millisecond are told apart by a millisecond each, since a reading is known by its instant. */
    private Instant instantOfItsOwn(Instant now) {
        boolean sameBurst =
                !now.isAfter(lastAt) && Duration.between(now, lastAt).toSeconds() < 1;
        lastAt = sameBurst ? lastAt.plus(ONE_MILLI) : now;
        return lastAt;
    }
}
