package org.moultwright.compute.climate;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Extremes;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.SetPoint;
import org.moultwright.domain.Stay;

/**
 * Where the animals of a tray stood, from the tray outwards to the room.
 *
 * <p>Before a tray has its first stay, or its first animal, they were in the tray the ledger says they came from, or in
 * the sac: a stay, probe or set-point of a container named {@code sac}, or after the brood, tells where that was. Where nothing tells, they are assumed in the place
 * the tray was last, or else first, known to be.
 */
final class Whereabouts {
    private final String tray;
    private final List<String> earlierHomes;
    private final Optional<Instant> arrival;
    private final Map<String, List<Stay>> staysByContainer;
    private final Set<String> climateKnownOf;

    Whereabouts(BroodRecord record, String tray) {
        this.tray = tray;
        this.earlierHomes = earlierHomes(record, tray);
        this.arrival = record.ledger().standing().stream()
                .filter(entry -> entry.to().code().equals(tray))
                .map(LedgerEntry::at)
                .findFirst();
        this.staysByContainer = record.stays().stream()
                .sorted(Comparator.comparing((Stay stay) -> stay.span().from()))
                .collect(Collectors.groupingBy(Stay::container));
        this.climateKnownOf = Stream.of(
                        record.probeStays().stream().map(ProbeStay::container),
                        record.extremes().stream().map(Extremes::container),
                        record.setPoints().stream().map(SetPoint::container))
                .flatMap(Function.identity())
                .collect(Collectors.toSet());
    }

    /** The places of the tray's animals, end to end over the whole span. */
    List<Residence> residences(long fromMillis, long toMillis) {
        return residences(fromMillis, toMillis, this::placeOfAnimals);
    }

    /** What stood around the tray's container in a place, over another span: where to learn its climate. */
    List<Residence> surroundings(Place place, long fromMillis, long toMillis) {
        List<String> around = place.containers().stream()
                .filter(container -> !container.equals(tray))
                .toList();
        return residences(
                fromMillis,
                toMillis,
                at -> around.isEmpty() ? place : new Place(with(tray, chain(around.get(0), at)), place.isAssumed()));
    }

    /** Residences as any other tray's would read that always stood beside this one, unless it has a climate of its own. */
    List<Residence> withoutTray(List<Residence> residences) {
        return climateKnownOf.contains(tray)
                ? residences
                : residences.stream().map(this::withoutTray).toList();
    }

    private Residence withoutTray(Residence residence) {
        List<String> others = residence.place().containers().stream()
                .filter(container -> !container.equals(tray))
                .toList();
        return new Residence(
                residence.fromMillis(),
                residence.toMillis(),
                new Place(others, residence.place().isAssumed()));
    }

    private List<Residence> residences(long fromMillis, long toMillis, Function<Instant, Place> placeAt) {
        List<Residence> residences = new ArrayList<>();
        long start = fromMillis;
        for (long end : changesBetween(fromMillis, toMillis)) {
            Place place = placeAt.apply(Instant.ofEpochMilli(start));
            int last = residences.size() - 1;
            if (last >= 0 && residences.get(last).place().equals(place)) {
                residences.set(last, new Residence(residences.get(last).fromMillis(), end, place));
            } else {
                residences.add(new Residence(start, end, place));
            }
            start = end;
        }
        return residences;
    }

    private Iterable<Long> changesBetween(long fromMillis, long toMillis) {
        TreeSet<Long> changes = new TreeSet<>();
        staysByContainer
                .values()
                .forEach(stays -> stays.forEach(stay -> {
                    changes.add(stay.span().from().toEpochMilli());
                    stay.span().to().ifPresent(to -> changes.add(to.toEpochMilli()));
                }));
        arrival.ifPresent(at -> changes.add(at.toEpochMilli()));
        TreeSet<Long> inside = new TreeSet<>(changes.subSet(fromMillis, false, Math.max(fromMillis, toMillis), false));
        if (toMillis > fromMillis) {
            inside.add(toMillis);
        }
        return inside;
    }

    private Place placeOfAnimals(Instant at) {
        List<Stay> stays = staysOf(tray);
        Optional<String> home = beforeTray(stays, at);
        if (home.isEmpty() && (stays.isEmpty() || stayAt(tray, at).isPresent())) {
            return new Place(chain(tray, at), false);
        }
        return home.map(container -> new Place(chain(container, at), false))
                .orElseGet(() -> new Place(chain(lastOrFirst(stays, at).orElse(tray), at), true));
    }

    /** The container the animals were in before they came into their tray or it came to stand, if any is known. */
    private Optional<String> beforeTray(List<Stay> stays, Instant at) {
        boolean isBeforeArrival = arrival.filter(at::isBefore).isPresent();
        boolean isBeforeStay =
                !stays.isEmpty() && at.isBefore(stays.get(0).span().from());
        return earlierHomes.stream()
                .filter(home -> isBeforeArrival || isBeforeStay)
                .filter(home ->
                        climateKnownOf.contains(home) || stayAt(home, at).isPresent())
                .findFirst();
    }

    /** The trays the first animals came through, latest first, and the names the sac's place goes by. */
    private static List<String> earlierHomes(BroodRecord record, String tray) {
        Set<String> homes = new LinkedHashSet<>();
        Optional<Account> home = originOf(Account.fromCode(tray), record);
        while (home.filter(Account::isTray).isPresent() && homes.add(home.get().code())) {
            home = originOf(home.get(), record);
        }
        homes.add(Account.SAC.code());
        homes.add(record.brood().code());
        homes.remove(tray);
        return List.copyOf(homes);
    }

    private static Optional<Account> originOf(Account account, BroodRecord record) {
        return record.ledger().standing().stream()
                .filter(entry -> entry.to().equals(account))
                .map(LedgerEntry::from)
                .findFirst();
    }

    private static Optional<String> lastOrFirst(List<Stay> stays, Instant at) {
        Stay nearest = stays.get(0);
        for (Stay stay : stays) {
            nearest = stay.span().from().isAfter(at) ? nearest : stay;
        }
        return nearest.inside();
    }

    private List<String> chain(String container, Instant at) {
        List<String> chain = new ArrayList<>();
        Optional<String> next = Optional.of(container);
        while (next.isPresent() && !chain.contains(next.get())) {
            chain.add(next.get());
            next = stayAt(next.get(), at).flatMap(Stay::inside);
        }
        return List.copyOf(chain);
    }

    private Optional<Stay> stayAt(String container, Instant at) {
        return staysOf(container).stream()
                .filter(stay -> stay.span().contains(at))
                .reduce((earlier, later) -> later);
    }

    private List<Stay> staysOf(String container) {
        return staysByContainer.getOrDefault(container, List.of());
    }

    private static List<String> with(String first, List<String> rest) {
        return Stream.concat(Stream.of(first), rest.stream()).toList();
    }
}
