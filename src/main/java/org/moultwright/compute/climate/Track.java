package org.moultwright.compute.climate;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.Function;

/** What one instrument told of one container: ramps in order of time, which may leave holes. */
abstract class Track {
    private final String container;
    private final List<Ramp> ramps;

    Track(String container, List<Ramp> ramps) {
        this.container = container;
        this.ramps = ramps;
    }

    /** Makes pieces of what animals lived of its ramps while they were in a place around or in its container. */
    abstract Function<Ramp, LivedPiece> piecesIn(Place place);

    final String container() {
        return container;
    }

    final OptionalLong firstMillis() {
        return ramps.isEmpty()
                ? OptionalLong.empty()
                : OptionalLong.of(ramps.get(0).fromMillis());
    }

    /** The known parts of a span, in order. */
    final List<Ramp> between(long fromMillis, long toMillis) {
        List<Ramp> parts = new ArrayList<>();
        for (int i = firstEndingAfter(fromMillis);
                i < ramps.size() && ramps.get(i).fromMillis() < toMillis;
                i++) {
            Ramp ramp = ramps.get(i);
            parts.add(ramp.between(Math.max(ramp.fromMillis(), fromMillis), Math.min(ramp.toMillis(), toMillis)));
        }
        return parts;
    }

    private int firstEndingAfter(long millis) {
        int low = 0;
        int high = ramps.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (ramps.get(middle).toMillis() > millis) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }
}
