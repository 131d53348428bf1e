package org.moultwright.workflow;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Says which pictures lately came to the keeper's folder and belong to no tray yet. Safe to share between threads. */
public final class OfferPictures {
    private final RecentPictures folder;
    private final PhotoFiles files;
    private final Set<Path> declined = new HashSet<>();
    private final Set<Path> offeredAgain = new HashSet<>();

    public OfferPictures(RecentPictures folder, PhotoFiles files) {
        this.folder = folder;
        this.files = files;
    }

    /** Those there are now; a picture that is kept already, for whatever tray, is none. */
    public synchronized List<Path> offered() {
        return folder.recent().stream()
                .filter(picture -> !declined.contains(picture))
                .filter(picture -> offeredAgain.contains(picture) || !files.holds(picture))
                .toList();
    }

    /** Offers these no more while the desk is open. */
    public synchronized void decline(List<Path> pictures) {
        declined.addAll(pictures);
        offeredAgain.removeAll(pictures);
    }

    /** Offers these once more, kept or not: where they were attached, that was taken back. */
    public synchronized void offerAgain(List<Path> pictures) {
        declined.removeAll(pictures);
        offeredAgain.addAll(pictures);
    }
}
