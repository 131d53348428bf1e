package org.moultwright.store.book;

import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;

/** Every container whose climate and place may matter to a brood. */
final class KnownContainers {
    private KnownContainers() {}

    static Set<String> of(BroodRecord record) {
        Set<String> known = new HashSet<>();
        record.stays().forEach(stay -> {
            known.add(stay.container());
            stay.inside().ifPresent(known::add);
        });
        record.probeStays().forEach(stay -> known.add(stay.container()));
        record.setPoints().forEach(point -> known.add(point.container()));
        record.extremes().forEach(one -> known.add(one.container()));
        record.checks().forEach(check -> known.add(check.tray()));
        record.ledger().entries().stream()
                .flatMap(entry -> Stream.of(entry.from(), entry.to()))
                .filter(Account::isTray)
                .forEach(tray -> known.add(tray.code()));
        known.add(record.brood().code());
        return known;
    }
}
