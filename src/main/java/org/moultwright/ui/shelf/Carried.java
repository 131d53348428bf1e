package org.moultwright.ui.shelf;

import java.util.Optional;
import java.util.stream.Stream;
import org.moultwright.language.Texts;
import org.moultwright.workflow.ShelfAt;
import org.moultwright.workflow.ShelfRules;
import org.moultwright.workflow.Standing;

/** A container carried by hand, and where it would come to stand. */
record Carried(ShelfAt shelf, Standing standing) {
    /** What it would come into where it is let go over this: the nearest around that may hold it, or none. */
    Optional<String> into(String over) {
        return nearest(over).filter(place -> !isIn(place));
    }

    /** Why it cannot be let go over this; empty where it can. */
    Optional<String> against(String over) {
        return nearest(over)
                .map(place -> isIn(place)
                        ? Optional.of(
                                Texts.say("{0} stands in {1} already. Choose another place.", standing.code(), place))
                        : Optional.<String>empty())
                .orElseGet(() -> againstPlace(over));
    }

    /** Where it stands already is found too: whoever lets it go there wants it nowhere further out. */
    private Optional<String> nearest(String over) {
        return Stream.iterate(
                        shelf.find(over),
                        Optional::isPresent,
                        place -> place.flatMap(Standing::inside).flatMap(shelf::find))
                // Two folders may tell of a circle.
                .limit(shelf.all().size())
                .flatMap(Optional::stream)
                .map(Standing::code)
                .filter(place -> isIn(place) || againstPlace(place).isEmpty())
                .findFirst();
    }

    private boolean isIn(String place) {
        return standing.inside().equals(Optional.of(place));
    }

    private Optional<String> againstPlace(String place) {
        return ShelfRules.againstPlace(shelf, standing.code(), standing.kind(), Optional.of(place));
    }
}
