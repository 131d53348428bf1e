package org.moultwright.store.spool;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.moultwright.language.Texts;
import org.moultwright.store.reading.Arrivals;
import org.moultwright.store.reading.ProbeSensors;
import org.moultwright.store.sql.Transactions;
import org.moultwright.workflow.ReadingLog.Logged;
import org.moultwright.workflow.TakenBeside;

/**
 * Takes what loggers left beside a store into it, each reading once: how far a spool is taken in is written in the
 * same transaction as its readings. A spool that nobody writes any more is removed once all of it is on disk in
 * the store.
 */
public final class SpoolIntake {
    private final SpoolFolder folder;
    private final Transactions transactions;
    private final Arrivals arrivals;

    public SpoolIntake(SpoolFolder folder, Transactions transactions, Arrivals arrivals) {
        this.folder = folder;
        this.transactions = transactions;
        this.arrivals = arrivals;
    }

    /** Takes in what is there now, and says what that was. */
    public List<TakenBeside> takeIn() {
        List<TakenBeside> taken = new ArrayList<>();
        try {
            for (Path file : folder.files()) {
                takeIn(file, taken);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(Texts.say("What a logger left in '{0}' cannot be read.", folder.path()), e);
        }
        return taken;
    }

    private void takeIn(Path file, List<TakenBeside> taken) throws IOException {
        UUID spool = SpoolFolder.id(file);
        // Asked first: what a writer wrote before it let go is then read below.
        boolean isWritten = isWritten(file);
        long from = transactions.read(handle -> SpoolTable.takenBytes(handle, spool));
        SpoolPart part = SpoolPart.read(file, from);
        while (part.untilBytes() > from) {
            taken.addAll(keep(spool, part));
            from = part.untilBytes();
            part = SpoolPart.read(file, from);
        }
        if (!isWritten) {
            remove(file);
            transactions.write(handle -> SpoolTable.forget(handle, spool));
        }
    }

    private List<TakenBeside> keep(UUID spool, SpoolPart part) {
        Map<String, List<Logged>> byProbe = new LinkedHashMap<>();
        part.lines().forEach(line -> {
            if (line instanceof SpoolLine.Heard heard) {
                byProbe.computeIfAbsent(heard.probe(), probe -> new ArrayList<>())
                        .add(heard.logged());
            }
        });
        try (Arrivals.Batch batch = arrivals.begin()) {
            return transactions.write(handle -> {
                List<TakenBeside> kept = new ArrayList<>();
                byProbe.forEach(
                        (probe, readings) -> kept.add(new TakenBeside(probe, batch.append(handle, probe, readings))));
                part.lines().forEach(line -> {
                    if (line instanceof SpoolLine.Identified sensor) {
                        ProbeSensors.write(handle, sensor.probe(), sensor.identity(), sensor.at());
                    }
                });
                SpoolTable.take(handle, spool, part.untilBytes());
                return kept;
            });
        }
    }

    /** Whether some program still writes it: it holds a lock, which ends with the program however that ends. */
    private static boolean isWritten(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
                FileLock lock = channel.tryLock()) {
            return lock == null;
        } catch (OverlappingFileLockException byThisProgram) {
            return true;
        }
    }

    /** Lines that nobody can read are kept for somebody who may. */
    private static void remove(Path file) throws IOException {
        if (isDamaged(file)) {
            Files.move(file, file.resolveSibling(file.getFileName() + ".damaged"));
        } else {
            Files.deleteIfExists(file);
        }
    }

    private static boolean isDamaged(Path file) throws IOException {
        SpoolPart part = SpoolPart.read(file, 0);
        while (!part.isDamaged() && !part.lines().isEmpty()) {
            part = SpoolPart.read(file, part.untilBytes());
        }
        return part.isDamaged();
    }
}
