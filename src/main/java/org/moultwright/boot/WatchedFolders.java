package org.moultwright.boot;

import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicLong;
import org.moultwright.domain.BroodRecord;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
import org.moultwright.task.Progress;
import org.moultwright.workflow.BroodFolders;
import org.moultwright.workflow.ReadingSource;

/** Brood folders that say how far they are as they are read, and stop when nobody wants them any more. */
final class WatchedFolders implements BroodFolders {
    private static final long REPORT_EVERY = 5_000;

    private final BroodFolders folders;
    private final Progress progress;

    WatchedFolders(BroodFolders folders, Progress progress) {
        this.folders = folders;
        this.progress = progress;
    }

    @Override
    public FolderContent read(Path folder) {
        FolderContent content = folders.read(folder);
        progress.requireGoingOn();
        return new FolderContent(
                content.record(),
                watched(content.readings()),
                content.problems(),
                content.notices(),
                content.pictures());
    }

    @Override
    public void write(BroodRecord record, ReadingSource readings, Path folder) {
        folders.write(record, readings, folder);
    }

    private ReadingSource watched(ReadingSource readings) {
        AtomicLong count = new AtomicLong();
        return sink -> readings.handOver((probe, reading) -> {
            sink.accept(probe, reading);
            if (count.incrementAndGet() % REPORT_EVERY == 0) {
                progress.requireGoingOn();
                progress.report(
                        0,
                        Texts.say("{0} readings so far", Numbers.grouped(count.get()))
                                .replace(',', ' '));
            }
        });
    }
}
