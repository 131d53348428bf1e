package org.moultwright.workflow;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.moultwright.domain.Reading;

/**
 * What loggers beside the desk have left for its store, as far as it is taken in.
 *
 * @param latest the last reading of each of their probes, by code
 * @param waits why what is beside the store cannot be taken in now, if so; it is safe there
 */
public record LeftBeside(Map<String, Reading> latest, Optional<AdvisedException> waits) {
    public static final LeftBeside NOTHING = new LeftBeside(Map.of(), Optional.empty());

    public LeftBeside {
        latest = Map.copyOf(latest);
    }

    /** This and what was just taken in. */
    public LeftBeside and(List<TakenBeside> taken) {
        Map<String, Reading> all = new HashMap<>(latest);
        taken.forEach(part -> part.readings().forEach(logged -> all.put(part.probe(), logged.reading())));
        return new LeftBeside(all, Optional.empty());
    }

    /** The same, but nothing more can be taken in now. */
    public LeftBeside waiting(AdvisedException fault) {
        return new LeftBeside(latest, Optional.of(fault));
    }
}
