package org.moultwright.ui.photo;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.image.Image;
import org.moultwright.task.Outcome;
import org.moultwright.task.Runner;
import org.moultwright.ui.print.Pixels;
import org.moultwright.workflow.PagePicture;

/**
 * Reads pictures aside and hands them to the screen. Small ones are remembered, the latest looked at of them; a large one
 * is held only by who shows it. Lives on the toolkit's thread.
 */
public final class Pictures {
    /** The longer side of a small picture. */
    static final int SMALL_PIXELS = 160;

    /** Of a large one: as much as most screens show. */
    static final int LARGE_PIXELS = 1920;

    /** At 160 by 120 pixels of four bytes, 10 MB. */
    private static final int MOST_SMALL = 128;

    private static final int FIRST_ROOM = 16;
    private static final float LOAD = 0.75f;

    private final Map<String, Image> small = new LinkedHashMap<>(FIRST_ROOM, LOAD, true);
    private final Source source;
    private final Runner runner;

    /** @param runner reads them aside */
    public Pictures(Source source, Runner runner) {
        this.source = source;
        this.runner = runner;
    }

    /** Hands over a small picture, at once where it is remembered; or the sentence that says why it cannot. */
    void small(String file, Consumer<Image> shown, Consumer<String> problem) {
        Image known = small.get(file);
        if (known != null) {
            shown.accept(known);
            return;
        }
        read(
                file,
                SMALL_PIXELS,
                image -> {
                    remember(file, image);
                    shown.accept(image);
                },
                problem);
    }

    void large(String file, Consumer<Image> shown, Consumer<String> problem) {
        read(file, LARGE_PIXELS, shown, problem);
    }

    private void remember(String file, Image image) {
        small.put(file, image);
        if (small.size() > MOST_SMALL) {
            small.remove(small.keySet().iterator().next());
        }
    }

    private void read(String file, int longestPixels, Consumer<Image> shown, Consumer<String> problem) {
        runner.<Image>run(progress -> Pixels.image(source.look(file, longestPixels)), outcome -> {
            if (outcome instanceof Outcome.Done<Image> done) {
                shown.accept(done.value());
            } else if (outcome instanceof Outcome.Failed<Image> failed) {
                problem.accept(String.valueOf(failed.fault().getMessage()));
            }
        });
    }

    /** Where pictures come from. */
    @FunctionalInterface
    public interface Source {
        PagePicture look(String file, int longestPixels);
    }
}
