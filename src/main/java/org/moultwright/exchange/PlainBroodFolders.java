package org.moultwright.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.BroodRecord;
import org.moultwright.language.Texts;
import org.moultwright.workflow.BroodFolders;
import org.moultwright.workflow.PhotoFiles;
import org.moultwright.workflow.ReadingSource;

/** Brood folders on disk, in directories or zip files. */
public final class PlainBroodFolders implements BroodFolders {
    private final FolderWriter.Pictures pictures;

    /** Folders written without photos. */
    public PlainBroodFolders() {
        this.pictures = file -> Optional.empty();
    }

    /** Folders written with the photos whose pictures are among these. */
    public PlainBroodFolders(PhotoFiles photos) {
        this.pictures = photos::find;
    }

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
                record.filter(read -> problems.isEmpty()),
                readings(folder),
                problems.list(),
                problems.notices(),
                file -> picture(folder, file));
    }

    @Override
    public void write(BroodRecord record, ReadingSource readings, Path folder) {
        try {
            FolderWriter.write(record, readings, pictures, folder);
        } catch (IOException fault) {
            throw new UncheckedIOException(
                    Texts.say("'{0}' could not be written: {1}", folder, fault.getMessage()), fault);
        }
    }

    private static byte[] picture(Path folder, String file) {
        try (FolderFiles files = FolderFiles.open(folder);
                InputStream picture = files.open(PhotoRows.PICTURES + "/" + file)
                        .orElseThrow(() -> new IOException("the picture '" + file + "' is not there any more"))) {
            return picture.readAllBytes();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
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
