package org.moultwright.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.charset.CharacterCodingException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Check;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Look;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Reconciliation;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Stay;

/** Reads one open folder into a brood without its readings, gathering all problems on the way. */
final class FolderReader {
    private final FolderFiles files;
    private final Problems problems;
    private final TableReader tables;

    FolderReader(FolderFiles files, Problems problems) {
        this.files = files;
        this.problems = problems;
        this.tables = new TableReader(files, problems);
    }

    /** The brood, empty where there is any problem. */
    Optional<BroodRecord> read() throws IOException {
        Optional<Brood> brood = brood();
        RowIds ids = new RowIds(brood.map(Brood::code).orElse(""));
        List<Check> checks = checks(ids, brood);
        List<LedgerEntry> moves = tables.all(AnimalTables.moves(ids));
        List<Stay> stays = tables.all(PlaceTables.CONTAINERS);
        List<ProbeStay> probeStays = tables.all(PlaceTables.PROBES);
        BroodRows rows = new BroodRows(
                checks,
                moves,
                stays,
                probeStays,
                tables.all(PlaceTables.SET_POINTS),
                tables.all(NoteTables.mould(ids)),
                tables.all(NoteTables.care(ids)),
                tables.all(AnimalTables.POTS),
                tables.all(NoteTables.runUp(ids)));
        new PlaceChecks(problems).check(rows);
        checkReadings(probeStays);
        return brood.filter(known -> problems.isEmpty()).map(known -> rows.of(known, reconciled(rows)));
    }

    private Optional<Brood> brood() throws IOException {
        Optional<InputStream> content = files.open(BroodJson.FILE);
        if (content.isEmpty()) {
            problems.add(BroodJson.FILE, 0, "", "", "this file; without it there is no brood folder");
            return Optional.empty();
        }
        try (Reader reader = PlainText.open(content.get())) {
            StringWriter text = new StringWriter();
            reader.transferTo(text);
            return BroodJson.read(text.toString(), problems);
        } catch (CharacterCodingException noUtf8) {
            problems.add(BroodJson.FILE, 0, "", "", "text in UTF-8");
            return Optional.empty();
        }
    }

    private List<Check> checks(RowIds ids, Optional<Brood> brood) throws IOException {
        Map<CheckKey, Map<Stage, Look>> looks = new LinkedHashMap<>();
        tables.each(AnimalTables.CHECKS, row -> {
            Map<Stage, Look> check =
                    looks.computeIfAbsent(new CheckKey(row.at(), row.tray()), key -> new LinkedHashMap<>());
            Look before = check.putIfAbsent(row.stage(), row.look());
            if (before != null && !before.equals(row.look())) {
                throw new IllegalArgumentException("one look at stage '%s' of tray '%s' at %s, but there are two"
                        .formatted(row.stage().key(), row.tray(), row.at()));
            }
            if (brood.isPresent() && !brood.get().stages().contains(row.stage())) {
                problems.notice("checks.csv: the stage '%s' is not among the brood's stages; its looks are kept"
                        .formatted(row.stage().key()));
            }
        });
        List<Check> checks = new ArrayList<>();
        looks.forEach((key, stages) -> checks.add(AnimalTables.check(key.at(), key.tray(), stages, ids)));
        checks.sort(Comparator.comparing(Check::at).thenComparing(Check::tray));
        return checks;
    }

    private Reconciliation reconciled(BroodRows rows) {
        Reconciliation reconciliation = Reconciliation.of(rows.moves(), rows.checks());
        reconciliation
                .added()
                .forEach(entry -> problems.notice(
                        "tray '%s' holds %d more than were put in, first seen at %s; an entry from 'sac' says so"
                                .formatted(entry.to().code(), entry.count(), entry.at())));
        reconciliation
                .questions()
                .forEach(question ->
                        problems.notice("open question: tray '%s' at %s: %d counted, %d expected by the ledger"
                                .formatted(question.tray(), question.at(), question.counted(), question.expected())));
        return reconciliation;
    }

    /** Looks at every reading without keeping any; the probe of each must be known. */
    private void checkReadings(List<ProbeStay> probeStays) throws IOException {
        Set<String> known = new HashSet<>();
        probeStays.forEach(stay -> known.add(stay.probe()));
        Set<String> unknown = new HashSet<>();
        tables.each(ReadingRows.READINGS, row -> {
            if (!known.contains(row.probe()) && unknown.add(row.probe())) {
                problems.notice(
                        "readings.csv: the probe '%s' is not in probes.csv; its readings are kept but measure no container"
                                .formatted(row.probe()));
            }
        });
    }

    private record CheckKey(Instant at, String tray) {}
}
