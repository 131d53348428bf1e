package org.moultwright.workflow;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.moultwright.workflow.Standing.Air;
import org.moultwright.workflow.Standing.Source;

/**
 * What probes on wires say now, laid over containers that were read before: each has the air of the nearest around it
 * that measures.
 */
record HeardAir(Map<String, Air> byContainer) {
    static HeardAir of(List<WatchView.Place> places) {
        Map<String, Air> heard = new HashMap<>();
        places.forEach(place -> place.heardAt()
                .map(at -> new Air(
                        place.celsius(),
                        place.humidityPercent(),
                        Optional.of(new Source(place.probe(), at)),
                        place.name()))
                .ifPresent(air -> heard.merge(place.name(), air, ShelfAir::better)));
        return new HeardAir(heard);
    }

    List<Standing> over(List<Standing> read, List<String> around) {
        return read.stream().map(standing -> over(standing, around)).toList();
    }

    private Standing over(Standing read, List<String> around) {
        List<String> path = new ArrayList<>(List.of(read.code()));
        path.addAll(around);
        return new Standing(
                read.code(),
                read.kind(),
                read.inside(),
                read.since(),
                read.occupants(),
                read.holdsSac(),
                in(path, read.air()),
                over(read.contents(), path));
    }

    private Optional<Air> in(List<String> path, Optional<Air> read) {
        Optional<Air> measured = read.filter(air -> air.reading().isPresent());
        for (String container : path) {
            Optional<Air> here = measured.filter(air -> air.container().equals(container));
            Optional<Air> heard = Optional.ofNullable(byContainer.get(container));
            if (here.isPresent() || heard.isPresent()) {
                return here.flatMap(one -> heard.map(other -> ShelfAir.better(one, other)))
                        .or(() -> here)
                        .or(() -> heard);
            }
        }
        return read;
    }
}
