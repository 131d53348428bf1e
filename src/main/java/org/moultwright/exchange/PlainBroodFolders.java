package org.moultwright.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.BroodRecord;
import org.moultwright.workflow.BroodFolders;
import org.moultwright.workflow.ReadingSource;

/** Brood folders on disk, in directories or zip files. */
public final class PlainBroodFolders implements BroodFolders {

    @Override
    public FolderContent read(Path folder) {
        Problems problems = new Problems();
        Optional<BroodRecord> record = Optional.empty();
        try (FolderFiles files = FolderFiles.open(folder)) {
            record = new FolderReader(files, problems).read();
        } catch (IOException fault) {
            problems.add(folder.toString(), 0, "", "", "a folder that can be read; " + fault.getMessage());
        }
        return new FolderContent(
                record.filter(read -> problems.isEmpty()), readings(folder), problems.list(), problems.notices());
    }

    @Override
    public void write(BroodRecord record, ReadingSource readings, Path folder) {
        try {
            FolderWriter.write(record, readings, folder);
        } catch (IOException fault) {
            throw new UncheckedIOException("'" + folder + "' could not be written: " + fault.getMessage(), fault);
        }
    }

    /** Reads the readings again, one by one; they were checked when the folder was. */
    private static ReadingSource readings(Path folder) {
        return sink -> {
            Problems problems = new Problems();
            try (FolderFiles files = FolderFiles.open(folder)) {
                new TableReader(files, problems)
                        .each(
                                ReadingRows.READINGS,
                                row -> sink.accept(
                                        row.value().probe(), row.value().reading()));
            } catch (IOException fault) {
                throw new UncheckedIOException(fault);
            }
            if (!problems.isEmpty()) {
                throw new IllegalArgumentException(
                        "readings.csv changed while it was read: " + List.copyOf(problems.list()));
            }
        };
    }
}
