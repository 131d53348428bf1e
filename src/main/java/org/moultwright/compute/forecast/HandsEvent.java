package org.moultwright.compute.forecast;

import java.time.Duration;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import org.moultwright.domain.Stage;

/** What may happen in a tray that its keeper wants to be there for. */
public enum HandsEvent {
    /** The first shows the hair patch. */
    FIRST_DARK,
    /** The first moults, into whichever stage. */
    FIRST_MOULT,
    /** Half have moulted. */
    HALF,
    /** 95 % have moulted. */
    MOST,
    /** The first of the last stage have been together for {@link #TOGETHER}. */
    SEPARATION;

    /** Slings left together eat each other: separating within about a week is common practice, no source. */
    public static final Duration TOGETHER = Duration.ofDays(7);

    /** What a keeper would see, whether hands are needed at once or not. */
    public static final Set<HandsEvent> ALL = Collections.unmodifiableSet(EnumSet.allOf(HandsEvent.class));

    /** Whether it falls after one instant and by another in a draw, both in milliseconds of the epoch. */
    boolean isBetween(PossibleDates dates, Stage last, int draw, double from, double to) {
        double late = this == SEPARATION ? TOGETHER.toMillis() : 0;
        for (int stage = 0; stage < dates.stages().size(); stage++) {
            if (isAbout(dates.stages().get(stage), last)
                    && dates.isBetween(stage, milestone(), draw, from - late, to - late)) {
                return true;
            }
        }
        return false;
    }

    private boolean isAbout(Stage stage, Stage last) {
        return switch (this) {
            case FIRST_DARK -> stage == Stage.DARKENED;
            case SEPARATION -> stage == last;
            default -> stage != Stage.DARKENED;
        };
    }

    private Milestone milestone() {
        return switch (this) {
            case HALF -> Milestone.HALF;
            case MOST -> Milestone.MOST;
            default -> Milestone.FIRST;
        };
    }
}
