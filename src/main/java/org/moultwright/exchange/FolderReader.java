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
import java.util.function.Consumer;
import org.moultwright.domain.Account;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Check;
import org.moultwright.domain.Look;
import org.moultwright.domain.PhotoNote;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Reconciliation;
import org.moultwright.domain.Stage;
import org.moultwright.exchange.TableReader.Placed;
import org.moultwright.language.Texts;

/** Reads one open folder into a brood without its readings, gathering all problems on the way. */
final class FolderReader {
    private static final Set<String> FILES = Set.of(
            BroodJson.FILE,
            "containers.csv",
            "probes.csv",
            ReadingRows.FILE,
            "setpoints.csv",
            "checks.csv",
            "moves.csv",
            "mould.csv",
            "care.csv",
            "pots.csv",
            PotTables.EVENTS_FILE,
            "runup.csv",
            "extremes.csv",
            PhotoRows.FILE,
            PhotoRows.PICTURES);

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
        noticeUnknownFiles();
        Optional<Brood> brood = brood();
        RowIds ids = new RowIds(brood.map(Brood::code).orElse(""));
        PlaceChecks places = new PlaceChecks(problems);
        AccountChecks accounts = new AccountChecks(problems);
        PotChecks pots = new PotChecks(problems);
        BroodRows rows = new BroodRows(
                checks(ids, brood),
                values(AnimalTables.moves(ids), accounts::moves),
                values(PlaceTables.CONTAINERS, places::stays),
                values(PlaceTables.PROBES, places::probes),
                values(PlaceTables.SET_POINTS, places::setPoints),
                values(NoteTables.mould(ids), notes -> {}),
                values(NoteTables.care(ids), notes -> {}),
                values(PotTables.POTS, pots::codes),
                values(NoteTables.runUp(ids), events -> {}),
                values(PlaceTables.EXTREMES, places::extremes),
                values(PotTables.events(ids), pots::events),
                photos(ids));
        accounts.refuseUnknown(rows);
        places.noticeUnknown(rows);
        checkReadings(rows.probeStays());
        return brood.filter(known -> problems.isEmpty()).map(known -> rows.of(known, reconciled(rows, ids)));
    }

    private <T> List<T> values(Table<T> table, Consumer<List<Placed<T>>> check) {
        List<Placed<T>> rows = tables.all(table);
        check.accept(rows);
        return table.sorted(rows.stream().map(Placed::value).toList());
    }

    private List<PhotoNote> photos(RowIds ids) {
        Table<PhotoNote> table = PhotoRows.table(ids);
        return table.sorted(PhotoRows.withPictures(tables.all(table), files, problems));
    }

    private void noticeUnknownFiles() throws IOException {
        for (String name : files.names()) {
            if (!FILES.contains(name) && !name.startsWith(".")) {
                problems.notice("the file '%s' is not part of the format and was passed over".formatted(name));
            }
        }
    }

    private Optional<Brood> brood() throws IOException {
        Optional<InputStream> content = files.open(BroodJson.FILE);
        if (content.isEmpty()) {
            problems.add(BroodJson.FILE, 0, "", "", Texts.say("this file; without it there is no brood folder"));
            return Optional.empty();
        }
        try (Reader reader = PlainText.open(content.get())) {
            StringWriter text = new StringWriter();
            reader.transferTo(text);
            return BroodJson.read(text.toString(), problems);
        } catch (CharacterCodingException noUtf8) {
            problems.add(
                    BroodJson.FILE,
                    Utf8Lines.firstMalformed(files, BroodJson.FILE),
                    "",
                    "",
                    Texts.say("text in UTF-8"));
            return Optional.empty();
        }
    }

    private List<Check> checks(RowIds ids, Optional<Brood> brood) {
        Map<CheckKey, Map<Stage, Look>> looks = new LinkedHashMap<>();
        tables.each(AnimalTables.CHECKS, placed -> {
            AnimalTables.LookRow row = placed.value();
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

    private Reconciliation reconciled(BroodRows rows, RowIds ids) {
        Reconciliation reconciliation = Reconciliation.of(
                rows.moves(),
                rows.checks(),
                (at, in, stage, count) ->
                        AnimalTables.entry(at, Account.SAC, in, stage, count, Cause.EARLIER_MISCOUNT, ids));
        reconciliation
                .added()
                .forEach(entry -> problems.notice(
                        "'%s' holds %d more than were put in, first seen at %s; an entry from 'sac' says so"
                                .formatted(entry.to().code(), entry.count(), entry.at())));
        reconciliation
                .questions()
                .forEach(question ->
                        problems.notice("open question: tray '%s' at %s: %d counted, %d expected by the ledger"
                                .formatted(question.tray(), question.at(), question.counted(), question.expected())));
        return reconciliation;
    }

    /** Looks at every reading without keeping any; the probe of each must be known. */
    private void checkReadings(List<ProbeStay> probeStays) {
        Set<String> known = new HashSet<>();
        probeStays.forEach(stay -> known.add(stay.probe()));
        Set<String> unknown = new HashSet<>();
        RepeatedReadings repeated = new RepeatedReadings(files);
        tables.each(ReadingRows.READINGS, placed -> {
            ReadingRows.ProbeReading row = placed.value();
            repeated.see(row);
            if (!known.contains(row.probe()) && unknown.add(row.probe())) {
                problems.notice(
                        "readings.csv: the probe '%s' is not in probes.csv; its readings are kept but measure no container"
                                .formatted(row.probe()));
            }
        });
        if (problems.isEmpty()) {
            repeated.notices().forEach(problems::notice);
        }
    }

    private record CheckKey(Instant at, String tray) {}
}
