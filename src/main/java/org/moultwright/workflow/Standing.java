package org.moultwright.workflow;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.Stage;

/**
 * A container as it stood at an instant.
 *
 * @param code its code
 * @param kind what sort of container it is; guessed where it is only known to hold others
 * @param inside the container around it
 * @param since from when on it stood there, empty where nobody wrote it down
 * @param occupants the animals in it, brood by brood; those of containers inside it are theirs
 * @param holdsSac whether the sac of the brood of its code was in it, not opened yet
 * @param air what its air was like, as far as it is known
 * @param contents what stood in it
 */
public record Standing(
        String code,
        ContainerKind kind,
        Optional<String> inside,
        Optional<Instant> since,
        List<Occupants> occupants,
        boolean holdsSac,
        Optional<Air> air,
        List<Standing> contents) {
    public Standing {
        occupants = List.copyOf(occupants);
        contents = List.copyOf(contents);
    }

    /** Animals in it, those of containers inside it not counted. */
    public int alive() {
        return occupants.stream().mapToInt(Occupants::alive).sum();
    }

    /** The animals of one brood in it. */
    public Optional<Occupants> occupantsOf(String brood) {
        return occupants.stream().filter(one -> one.brood().equals(brood)).findFirst();
    }

    /** Animals in it and in all that stands in it. */
    public int aliveWithin() {
        return alive() + contents.stream().mapToInt(Standing::aliveWithin).sum();
    }

    /** Sacs not opened yet in it and in all that stands in it. */
    public int sacsWithin() {
        return (holdsSac ? 1 : 0)
                + contents.stream().mapToInt(Standing::sacsWithin).sum();
    }

    /** What each container is that animals live in: it and all that stands in it, at any depth. */
    public List<ContainerKind> homesWithin() {
        return Stream.concat(
                        Stream.of(kind).filter(own -> alive() > 0),
                        contents.stream().flatMap(inner -> inner.homesWithin().stream()))
                .toList();
    }

    /**
     * Animals of one brood in one container.
     *
     * @param alive how many, by the ledger
     * @param byStage the stages last seen, less what was taken out since
     */
    public record Occupants(String brood, String taxon, int alive, Map<Stage, Integer> byStage) {
        public Occupants {
            byStage = Map.copyOf(byStage);
        }
    }

    /**
     * The air of a container.
     *
     * @param celsius its temperature
     * @param percent its humidity, or NaN
     * @param reading what told so; empty where it is only what the container was set to
     * @param container where it was measured or set: the container itself or one around it
     */
    public record Air(double celsius, double percent, Optional<Source> reading, String container) {}

    /** A probe and when it read. */
    public record Source(String probe, Instant takenAt) {}
}
