package org.moultwright.compute.history;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.moultwright.domain.Cause;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.MouldNote;
import org.moultwright.domain.RunUpEvent;
import org.moultwright.domain.Stage;

/** One thing worth telling of a brood. */
public sealed interface StoryEvent {
    Instant at();

    /** Something of the run-up, in the keeper's words. */
    record RunUp(RunUpEvent event) implements StoryEvent {
        @Override
        public Instant at() {
            return event.at();
        }
    }

    record Laid(InstantRange range) implements StoryEvent {
        @Override
        public Instant at() {
            return range.middle();
        }
    }

    record Pulled(Instant at) implements StoryEvent {}

    /**
     * The sac was opened, or more was found in it.
     *
     * @param isEstimate whether they were weighed and not counted
     */
    record Opened(Instant at, int count, List<String> trays, boolean isEstimate) implements StoryEvent {
        public Opened {
            trays = List.copyOf(trays);
        }
    }

    /** The first of a stage seen on one day; a count is absent from {@code counts} where nobody counted. */
    record FirstSeen(Instant at, Stage stage, List<String> trays, Map<String, Integer> counts) implements StoryEvent {
        public FirstSeen {
            trays = List.copyOf(trays);
            counts = Map.copyOf(counts);
        }
    }

    /** Animals lost in one tray, or in the sac, on one day for one cause. */
    record Lost(Instant at, String tray, int count, Cause cause) implements StoryEvent {}

    record Potted(Instant at, String tray, int count) implements StoryEvent {}

    /** Animals that left their pots on one day, dead or handed over, as the cause says. */
    record LeftPots(Instant at, int count, Cause cause) implements StoryEvent {}

    /** A correction of an earlier miscount; {@code change} is what it added to the tray. */
    record Recounted(Instant at, String tray, int change) implements StoryEvent {}

    record Mould(MouldNote note) implements StoryEvent {
        @Override
        public Instant at() {
            return note.at();
        }
    }

    /** Photos of one tray, attached at one go. */
    record Photographed(Instant at, String tray, int photos) implements StoryEvent {}

    record ProbeSilent(Instant at, String probe, Instant until) implements StoryEvent {
        public Duration length() {
            return Duration.between(at, until);
        }
    }

    /**
     * A probe of the brood was calibrated.
     *
     * @param since from when on its readings are corrected by that
     * @param tooHighCelsius how much too high it was found to read where broods live
     * @param sdCelsius standard uncertainty of that
     */
    record Calibrated(Instant at, String probe, Instant since, double tooHighCelsius, double sdCelsius)
            implements StoryEvent {}

    record SetPointChanged(Instant at, String container, double fromCelsius, double toCelsius) implements StoryEvent {}
}
