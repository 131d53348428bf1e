package org.moultwright.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.BroodRecord;
import org.moultwright.language.Texts;
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
            problems.add(folder.toString(), 0, "", "", Texts.say("a folder that can be read; {0}", fault.getMessage()));
        }
        return new FolderContent(
                record.filter(read -> problems.isEmpty()), readings(folder), problems.list(), problems.notices());
    }

    @Override
    public void write(BroodRecord record, Path folder) {
        try {
            FolderWriter.write(record, folder);
        } catch (IOException fault) {
            throw new UncheckedIOException(
                    Texts.say("'{0}' could not be written: {1}", folder, fault.getMessage()), fault);
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
