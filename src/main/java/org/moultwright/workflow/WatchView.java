package org.moultwright.workflow;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.moultwright.compute.alarm.AlarmState;
import org.moultwright.domain.AlarmKind;

/**
 * The watch over all probes that are listened to, as it stands; every alarm in it is in the journal.
 *
 * @param places what is watched, by name
 * @param alarms those that stand, and those that are over and nobody has seen
 * @param unwritten why the journal cannot be written now, if so; what it would say comes once it can
 */
public record WatchView(List<Place> places, List<Alarm> alarms, Optional<RuntimeException> unwritten) {
    /** Nothing is watched. */
    public static final WatchView NOTHING = new WatchView(List.of(), List.of(), Optional.empty());

    public WatchView {
        places = List.copyOf(places);
        alarms = List.copyOf(alarms);
    }

    /**
     * A place that is watched.
     *
     * @param name the container, or the probe where nobody wrote down where it is
     * @param celsius the air's temperature at the last good reading, corrected; NaN before one came
     * @param humidityPercent the air's humidity at that reading, or NaN
     * @param heardAt when that was taken; empty before one came
     */
    public record Place(String name, String probe, double celsius, double humidityPercent, Optional<Instant> heardAt) {}

    /**
     * An alarm to be shown.
     *
     * @param place its name
     * @param since when it was raised
     * @param raisedAt the value it was raised at, in the unit of its kind; NaN where there is none
     * @param celsius the air's temperature at the last good reading, corrected; NaN before one came
     * @param quietUntil when its snooze ends, if it has one
     * @param isSounding whether it should be heard now
     * @param isEscalated whether nobody has seen it for too long
     */
    public record Alarm(
            String place,
            AlarmKind kind,
            AlarmState.Phase phase,
            Instant since,
            double raisedAt,
            double celsius,
            Optional<Instant> quietUntil,
            boolean isSounding,
            boolean isEscalated) {

        public boolean isOver() {
            return phase == AlarmState.Phase.OVER_UNSEEN;
        }

        /** Whether nobody has seen it yet and nobody asked for quiet. */
        public boolean wantsEyes() {
            return phase != AlarmState.Phase.ACTIVE_SEEN && quietUntil.isEmpty();
        }
    }

    public boolean isSounding() {
        return alarms.stream().anyMatch(Alarm::isSounding);
    }

    /** The last instant at which anything watched was heard. */
    public Optional<Instant> heardAt() {
        return places.stream().flatMap(place -> place.heardAt().stream()).max(Comparator.naturalOrder());
    }
}
