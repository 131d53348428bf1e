package org.moultwright.device.link;

import java.util.LinkedHashMap;
import java.util.Map;
import org.moultwright.device.profile.Origin;

/** Knows whether a numbered record came before: a wire that stalls may bring one twice. Bounded. */
final class Repeats {
    private static final int MOST_SENSORS = 64;

    private final Map<String, String> lastSequence = new LinkedHashMap<>() {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, String> eldest) {
            return size() > MOST_SENSORS;
        }
    };

    boolean isRepeat(Origin origin) {
        return !origin.sequence().isEmpty()
                && origin.sequence().equals(lastSequence.put(origin.mark(), origin.sequence()));
    }
}
