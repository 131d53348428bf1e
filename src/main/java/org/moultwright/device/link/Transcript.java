package org.moultwright.device.link;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.moultwright.device.line.Line;
import org.moultwright.device.line.LineFramer;
import org.moultwright.device.profile.Decoded;
import org.moultwright.device.profile.LineProfile;
import org.moultwright.device.quality.ReadingJudge;
import org.moultwright.domain.Reading;
import org.moultwright.workflow.ReadingLog.Logged;

/**
 * Turns the bytes of one probe into readings, each with its raw line. A line nobody can read is a fault with
 * its raw line, so nothing that came is lost. Not safe for several threads.
 */
public final class Transcript {
    private static final int LONGEST_LINE_BYTES = 200;
    private static final Duration ONE_MILLI = Duration.ofMillis(1);

    private final LineProfile profile;
    private final ReadingJudge judge;
    private LineFramer framer = LineFramer.midLine(LONGEST_LINE_BYTES);
    private Instant lastAt = Instant.EPOCH;

    public Transcript(LineProfile profile) {
        this.profile = profile;
        this.judge = new ReadingJudge(profile.limits());
    }

    /** The wire was opened anew, perhaps amid a line. */
    void startMidLine() {
        framer = LineFramer.midLine(LONGEST_LINE_BYTES);
    }

    /** The wire was opened anew while it was quiet. */
    void startAtLine() {
        framer = LineFramer.atLineStart(LONGEST_LINE_BYTES);
    }

    /**
     * The readings these bytes complete.
     *
     * @param now when they came
     * @param heldUp whether they came after a stall: all lines but the last were then held up on their way
     */
    public List<Logged> take(byte[] bytes, int count, Instant now, boolean heldUp) {
        List<Line> lines = framer.take(bytes, count);
        List<Logged> readings = new ArrayList<>();
        for (Line line : lines) {
            boolean isLast = readings.size() == lines.size() - 1;
            readings.add(new Logged(reading(line, now, heldUp && !isLast), line.text()));
        }
        return readings;
    }

    private Reading reading(Line line, Instant now, boolean heldUp) {
        Decoded decoded = line.whole() ? profile.decode(line.text()) : new Decoded.Unreadable();
        Instant at = instantOfItsOwn(now);
        return heldUp ? judge.judgeHeldUp(decoded, at) : judge.judge(decoded, at);
    }

    /** Lines of one millisecond are told apart by a millisecond each, since a reading is known by its instant. */
    private Instant instantOfItsOwn(Instant now) {
        boolean sameBurst =
                !now.isAfter(lastAt) && Duration.between(now, lastAt).toSeconds() < 1;
        lastAt = sameBurst ? lastAt.plus(ONE_MILLI) : now;
        return lastAt;
    }
}
