package org.moultwright.device.profile;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.moultwright.device.line.Framing;

/**
 * What a profile's text declares, under the settings chosen.
 *
 * @param code by which it is chosen
 * @param title what the keeper calls it
 * @param wiring how bytes come
 * @param decoding what is made of a record before patterns look at it
 * @param patterns what records look like
 * @param values what they hold
 * @param settings what may differ from one installation to the next
 * @param tests lines with what they must be read as, at least one
 */
record ProfileFile(
        String code,
        String title,
        Wiring wiring,
        Decoding decoding,
        Patterns patterns,
        Values values,
        List<Setting> settings,
        List<ProfileTest> tests) {

    /**
     * How bytes come.
     *
     * @param port how the port is set
     * @param framing how bytes fall into records
     * @param longestBytes of a record; a longer one is cut and not read
     * @param poll what is asked, of an instrument that must be
     */
    record Wiring(LineSettings port, Framing framing, int longestBytes, Optional<Poll> poll) {}

    /**
     * What records look like, tried in this order.
     *
     * @param ignore of what belongs to the form and says nothing
     * @param rejects of what is no measurement though it looks like one
     * @param records of a measurement, tried in order; each has a group {@code temperature}
     * @param faults of an instrument that says it cannot measure, or that it starts anew
     */
    record Patterns(List<Pattern> ignore, List<Sign> rejects, List<Pattern> records, List<Sign> faults) {}

    /**
     * A pattern by which a fault is known.
     *
     * @param cause of the fault
     * @param pattern of the line
     */
    record Sign(FaultCause cause, Pattern pattern) {}

    /**
     * What records hold.
     *
     * @param temperature the channel every record has
     * @param humidity the channel some have
     * @param checks that must fit
     * @param limits what the probe can tell
     * @param stuckAfter how long the very same value may be told before it is suspect
     */
    record Values(
            Channel temperature,
            Optional<Channel> humidity,
            List<CheckRule> checks,
            Limits limits,
            Optional<Duration> stuckAfter) {}
}
