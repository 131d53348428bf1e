package org.moultwright.exchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.moultwright.workflow.RecentPictures;

/**
 * A folder looked into again and again for pictures of the last day. One is told of once it has been the same for one
 * look, so that none is taken while it is still being written.
 */
public final class PictureFolder implements RecentPictures {
    private static final Duration LATELY = Duration.ofDays(1);
    private static final Pattern PICTURE = Pattern.compile(".*\\.(jpe?g|png|gif|bmp|tiff?)");

    private final Supplier<String> folder;
    private final InstantSource machineClock;
    private Set<Picture> lastSeen = Set.of();

    /**
     * @param folder its path now, empty for none
     * @param machineClock the clock files are dated by
     */
    public PictureFolder(Supplier<String> folder, InstantSource machineClock) {
        this.folder = folder;
        this.machineClock = machineClock;
    }

    @Override
    public synchronized List<Path> recent() {
        Instant since = machineClock.instant().minus(LATELY);
        List<Picture> seen = pictures().stream()
                .flatMap(file -> picture(file).stream())
                .filter(picture -> picture.changedAt().isAfter(since))
                .sorted(Comparator.comparing(Picture::changedAt).thenComparing(Picture::file))
                .toList();
        List<Path> whole =
                seen.stream().filter(lastSeen::contains).map(Picture::file).toList();
        lastSeen = Set.copyOf(seen);
        return whole;
    }

    private List<Path> pictures() {
        String place = folder.get();
        if (place.isBlank()) {
            return List.of();
        }
        try (Stream<Path> inside = Files.list(Path.of(place))) {
            return inside.filter(file -> PICTURE.matcher(
                                    String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT))
                            .matches())
                    .filter(Files::isRegularFile)
                    .toList();
        } catch (IOException | InvalidPathException notThere) {
            return List.of();
        }
    }

    private static Optional<Picture> picture(Path file) {
        try {
            return Optional.of(new Picture(
                    file, Files.size(file), Files.getLastModifiedTime(file).toInstant()));
        } catch (IOException goneMeanwhile) {
            return Optional.empty();
        }
    }

    private record Picture(Path file, long bytes, Instant changedAt) {}
}
