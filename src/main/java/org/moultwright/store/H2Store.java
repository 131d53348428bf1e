package org.moultwright.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.moultwright.store.book.H2BroodBook;
import org.moultwright.store.book.H2ReadingFiles;
import org.moultwright.store.climate.H2AlarmJournal;
import org.moultwright.store.climate.H2ClimateBook;
import org.moultwright.store.file.DiskRoom;
import org.moultwright.store.file.OwnerNote;
import org.moultwright.store.forecast.H2ForecastArchive;
import org.moultwright.store.photo.PhotoCopies;
import org.moultwright.store.photo.PhotoFolder;
import org.moultwright.store.reading.Arrivals;
import org.moultwright.store.reading.H2ReadingLog;
import org.moultwright.store.reading.ProbeSensors;
import org.moultwright.store.spool.SpoolFolder;
import org.moultwright.store.spool.SpoolIntake;
import org.moultwright.workflow.AlarmJournal;
import org.moultwright.workflow.BroodBook;
import org.moultwright.workflow.BulkReadings;
import org.moultwright.workflow.ClimateBook;
import org.moultwright.workflow.ForecastArchive;
import org.moultwright.workflow.PhotoFiles;
import org.moultwright.workflow.ProbeIdentity;
import org.moultwright.workflow.ReadingLog;
import org.moultwright.workflow.TakenBeside;

/**
 * A keeper's store: one file, open in one program at a time; a logger that has it lets go of it when asked, and
 * leaves what it hears beside it meanwhile.
 *
 * <p>Promises: what a call has written is on disk when it returns; a file that is no store of ours, or
 * cannot be read, is left exactly as it was; every fault is a {@link StoreException} that says what to do.
 * Safe to share between threads.
 */
public final class H2Store implements AutoCloseable {
    /** The name of the store's file unless the keeper chooses another. */
    public static final String DEFAULT_FILE_NAME = "moultwright.store";

    private final Path file;
    private final AwaitedTransactions transactions = new AwaitedTransactions();
    private final OwnerNote owner;
    private final Arrivals arrivals = new Arrivals();

    /** @param file by its real name */
    H2Store(Path file) {
        this.file = file;
        this.owner = new OwnerNote(file);
    }

    /**
     * Opens the database of a file that may be opened.
     *
     * @param isLogging whether it is let go of when another program asks
     */
    void begin(boolean isLogging) throws IOException {
        H2Transactions opened = new H2Transactions(file, DiskRoom.of(file));
        try {
            if (isLogging) {
                owner.writeLogging();
            } else {
                owner.write();
            }
            new H2ReadingLog(opened, arrivals).rollUpMissing();
        } catch (IOException | RuntimeException e) {
            opened.close();
            throw e;
        }
        transactions.are(opened);
    }

    /**
     * Opens a store. It is made whole, with its folder, if there is no such file; one of an earlier version is
     * brought to this one whole or not at all, after a verified backup beside it.
     *
     * @throws StoreException if the file is in use, no store, damaged, of a later version, or its folder
     *     cannot be written to
     */
    public static H2Store open(Path file) {
        return open(file, Migrations.OURS);
    }

    static H2Store open(Path file, Migrations migrations) {
        Database.loadAside();
        H2Store store = new H2Store(StoreOpening.writable(file));
        store.openNow(migrations);
        return store;
    }

    /** Opens a store as a logger, which neither asks another for it nor refuses it to one that asks. */
    static H2Store openToLog(Path file) {
        H2Store store = new H2Store(StoreOpening.writable(file));
        StoreOpening.openToLog(store, Migrations.OURS);
        return store;
    }

    /**
     * A store that nothing is done with before {@link #openNow}: what is read or written until then waits for that.
     *
     * @param file that is there
     * @throws StoreException if nothing can be written to it
     */
    public static H2Store later(Path file) {
        return new H2Store(StoreOpening.writable(file));
    }

    /**
     * Opens it, as {@link #open} does, and returns once it is open, also if it was before.
     *
     * @throws StoreException if it cannot be opened, to whoever waits for it as well; again at each further call
     */
    public void openNow() {
        openNow(Migrations.OURS);
    }

    private synchronized void openNow(Migrations migrations) {
        if (!transactions.areDecided()) {
            try {
                StoreOpening.open(this, migrations);
                takeInWhatIsBeside();
            } catch (RuntimeException refusal) {
                transactions.areRefused(refusal);
            }
        }
        awaitOpen();
    }

    /** Whether it was opened, or refused, or closed. */
    public boolean isDecided() {
        return transactions.areDecided();
    }

    /**
     * Returns once it is open.
     *
     * @throws StoreException if it cannot be opened
     */
    public void awaitOpen() {
        transactions.opened();
    }

    /** How a file that no program has open was left; empty for any other. Changes nothing. */
    public static Optional<StoreStamp> atRest(Path file) {
        return StoreOpening.atRest(file);
    }

    /** On a full disk a store must open all the same; what is beside it is safe there. */
    private void takeInWhatIsBeside() {
        try {
            takeInSpools();
        } catch (StoreException stillBeside) {
            // Whoever looks again, later, is told.
        }
    }

    Path file() {
        return file;
    }

    /** The file of the store's name with more at its end, for what waits to be in the store. */
    public Path beside(String ending) {
        return file.resolveSibling(file.getFileName() + ending);
    }

    public BroodBook book() {
        return new H2BroodBook(transactions, arrivals);
    }

    public ReadingLog readings() {
        return new H2ReadingLog(transactions, arrivals);
    }

    /** Takes in files of readings. */
    public BulkReadings bulkReadings() {
        return new H2ReadingFiles(transactions, arrivals);
    }

    public ClimateBook climate() {
        return new H2ClimateBook(transactions);
    }

    public AlarmJournal alarms() {
        return new H2AlarmJournal(transactions);
    }

    public ForecastArchive forecasts() {
        return new H2ForecastArchive(transactions);
    }

    /** The pictures of photos, in a folder beside the store. */
    public PhotoFiles photos() {
        return new PhotoFolder(photosOf(file));
    }

    /** Where the pictures of a store, or of a backup, are. */
    static Path photosOf(Path store) {
        return store.resolveSibling(store.getFileName() + ".photos");
    }

    /** Takes in what loggers have left beside this store, each reading once, and says what that was. */
    public List<TakenBeside> takeInSpools() {
        try {
            return new SpoolIntake(SpoolFolder.of(file), transactions, arrivals).takeIn();
        } catch (UncheckedIOException e) {
            throw new StoreException(StoreException.Reason.FAILED, String.valueOf(e.getMessage()), e);
        }
    }

    /** The sensor that spoke as a probe at an instant, if it told who it is. */
    public Optional<ProbeIdentity> sensor(String probe, Instant at) {
        return transactions.read(handle -> ProbeSensors.at(handle, probe, at));
    }

    /** Reads the whole store and says what in it does not hold. */
    public StoreReport check() {
        return transactions.read(handle -> StoreCheck.of(handle, photosOf(file)));
    }

    /**
     * Copies this store, while it is in use, to a file that is not there yet, with the pictures of its photos, and makes
     * sure the copy can be opened. A backup is itself a store.
     */
    public void backup(Path target) {
        Path copy = target.toAbsolutePath().normalize();
        Backup.of(transactions.opened(), copy, () -> PhotoCopies.copy(photosOf(file), photosOf(copy)));
    }

    /** Copies a backup, with its pictures, to a file that is not there yet, and makes sure the copy can be opened. */
    public static void restore(Path backup, Path target) {
        Path source = backup.toAbsolutePath().normalize();
        StoreGuard.version(source, Migrations.OURS);
        Path store = target.toAbsolutePath().normalize();
        Backup.ofClosed(source, store, () -> PhotoCopies.copy(photosOf(source), photosOf(store)));
    }

    /** Ends what was begun and lets go of the file. A second time does nothing. */
    @Override
    public void close() {
        closeAtRest();
    }

    /**
     * Closes it, and says how it was left; empty if it was closed before, or another program may have written to it since.
     */
    public Optional<StoreStamp> closeAtRest() {
        if (!transactions.close()) {
            return Optional.empty();
        }
        Optional<StoreStamp> left = StoreStamp.of(file);
        // Another program writes its own note before it writes anything else.
        boolean isStillOurs = owner.isOfThisProgram();
        StoreOpening.closed(file);
        try {
            owner.remove();
        } catch (IOException e) {
            throw Faults.ofWriting(file, e);
        }
        return left.filter(stamp -> isStillOurs);
    }
}
