package org.moultwright.compute.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.Account;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.InventedBrood;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.SetPoint;
import org.moultwright.domain.Span;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Stay;

/** Where animals lived before they came into a tray that had stood there, empty, for long. */
class WhereaboutsTest {
    private static final Instant LAID = Instant.parse("2026-03-01T00:00:00Z");
    private static final Instant OPENED = LAID.plus(Duration.ofDays(20));
    private static final Span ALWAYS = new Span(LAID.minus(Duration.ofDays(30)), Optional.empty());

    @Test
    void animalsLivedWhereTheSacWasUntilTheyCameIntoTheirTray() {
        BroodRecord record = record(new Stay("IB-1", ContainerKind.BOX, Optional.of("cool"), ALWAYS));
        assertThat(spansOf(record, OPENED)).containsExactly("cool");
        LivedTemperature lived = LivedTemperature.of(record, "A1", OPENED.plus(Duration.ofDays(10)));
        assertThat(lived.nominalCelsius()).isCloseTo(28, within(1e-9));
        assertThat(lived.ramps()[0].startCelsius()).isCloseTo(22, within(1e-9));
    }

    @Test
    void withoutAWordOfTheSacTheTraysPlaceHolds() {
        assertThat(spansOf(record(), OPENED)).containsExactly("warm");
    }

    private static List<String> spansOf(BroodRecord record, Instant until) {
        return LivedTemperature.of(record, "A1", until).spans().stream()
                .map(span -> span.source() instanceof TemperatureSource.SetPointAlone set ? set.container() : "")
                .distinct()
                .toList();
    }

    private static BroodRecord record(Stay... sac) {
        Brood invented = InventedBrood.brood("IB-1");
        Brood brood = new Brood(
                invented.code(),
                invented.taxon(),
                invented.zone(),
                Optional.of(new InstantRange(LAID, LAID)),
                Optional.empty(),
                invented.stages(),
                27,
                Optional.empty());
        LedgerEntry opened =
                LedgerEntry.of(UUID.randomUUID(), OPENED, Account.SAC, Account.tray("A1"), Stage.EGG, 40, Cause.OPENED);
        List<Stay> stays = new ArrayList<>(List.of(sac));
        stays.add(new Stay("A1", ContainerKind.TRAY, Optional.of("warm"), ALWAYS));
        return BroodRecord.of(brood)
                .with(Ledger.of(List.of(opened)))
                .withPlaces(
                        stays,
                        List.of(),
                        List.of(
                                new SetPoint("warm", ALWAYS, 28, Double.NaN),
                                new SetPoint("cool", ALWAYS, 22, Double.NaN)));
    }
}
