package org.moultwright.workflow;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Shelf;
import org.moultwright.domain.Stay;
import org.moultwright.domain.TrayContents;
import org.moultwright.workflow.Standing.Occupants;

/** Puts a shelf together from stays, ledgers and readings. Of one container in two places, the later one holds. */
final class ShelfBuilding {
    /** By kind from the room down, then by code as people count: A2 before A10. */
    private static final Comparator<Standing> IN_ORDER =
            Comparator.comparing(Standing::kind).thenComparing(Standing::code, new CountingOrder());

    private final Instant at;
    private final ShelfAir air;
    private final Map<String, Stay> stays = new LinkedHashMap<>();
    private final Map<String, List<Occupants>> occupants = new TreeMap<>();
    private final Set<String> sacs = new HashSet<>();
    private final Map<String, Set<String>> contents = new LinkedHashMap<>();
    private final Set<String> placed = new HashSet<>();

    ShelfBuilding(Shelf shelf, List<BroodRecord> records, ShelfAir air, Instant at) {
        this.at = at;
        this.air = air;
        shelf.stays().stream()
                .filter(stay -> stay.span().contains(at))
                .sorted(Comparator.comparing(stay -> stay.span().from()))
                .forEach(stay -> stays.put(stay.container(), stay));
        stays.values()
                .forEach(stay -> stay.inside()
                        .ifPresent(around -> contents.computeIfAbsent(around, code -> new LinkedHashSet<>())
                                .add(stay.container())));
        records.forEach(this::settle);
    }

    ShelfAt build() {
        Set<String> codes = new LinkedHashSet<>(stays.keySet());
        codes.addAll(contents.keySet());
        codes.addAll(occupants.keySet());
        List<Standing> outermost = new ArrayList<>();
        codes.stream().filter(code -> inside(code).isEmpty()).forEach(code -> outermost.add(standing(code, List.of())));
        // What stands in a circle by two folders' word has no outermost; it is shown all the same.
        codes.stream().filter(code -> !placed.contains(code)).forEach(code -> outermost.add(standing(code, List.of())));
        outermost.sort(IN_ORDER);
        return new ShelfAt(at, outermost);
    }

    private void settle(BroodRecord record) {
        List<LedgerEntry> standing = record.ledger().standing();
        Ledger then = record.ledger().at(at);
        boolean isLaid = record.brood()
                .laid()
                .filter(laid -> laid.earliest().isAfter(at))
                .isEmpty();
        if (isLaid && then.opened() == 0) {
            sacs.add(record.brood().code());
        }
        then.balances().forEach((account, alive) -> {
            if (account.isTray() && alive > 0) {
                occupants
                        .computeIfAbsent(account.code(), code -> new ArrayList<>())
                        .add(occupants(record, standing, account, alive));
            }
        });
    }

    private Occupants occupants(BroodRecord record, List<LedgerEntry> standing, Account tray, int alive) {
        return new Occupants(
                record.brood().code(),
                record.brood().taxon(),
                alive,
                TrayContents.at(at, TrayContents.course(tray.code(), standing, record.checks()))
                        .byStage());
    }

    private Optional<String> inside(String code) {
        return Optional.ofNullable(stays.get(code)).flatMap(Stay::inside);
    }

    private Standing standing(String code, List<String> around) {
        placed.add(code);
        List<String> path = new ArrayList<>(List.of(code));
        path.addAll(around);
        List<Standing> inner = contents.getOrDefault(code, Set.of()).stream()
                .filter(child -> !placed.contains(child))
                .map(child -> standing(child, path))
                .sorted(IN_ORDER)
                .toList();
        Optional<Stay> stay = Optional.ofNullable(stays.get(code));
        return new Standing(
                code,
                stay.map(Stay::kind).orElseGet(() -> guess(code)),
                stay.flatMap(Stay::inside),
                stay.map(written -> written.span().from()),
                occupants.getOrDefault(code, List.of()),
                stay.isPresent() && sacs.contains(code),
                air.in(path),
                inner);
    }

    /** Nobody wrote what it is: what animals live in is a tray, what boxes stand in an incubator, else a box. */
    private ContainerKind guess(String code) {
        if (occupants.containsKey(code)) {
            return ContainerKind.TRAY;
        }
        boolean holdsBoxes = contents.getOrDefault(code, Set.of()).stream()
                .map(stays::get)
                .anyMatch(stay -> stay != null && stay.kind() == ContainerKind.BOX);
        return holdsBoxes ? ContainerKind.INCUBATOR : ContainerKind.BOX;
    }
}
