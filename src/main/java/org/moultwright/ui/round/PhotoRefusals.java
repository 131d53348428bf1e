package org.moultwright.ui.round;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.moultwright.language.Texts;
import org.moultwright.workflow.AttachPhotos.Refusal;

/**
 * What is said of pictures that could not be attached. Those of one sort stand together, the first of them by name, and
 * what to do is said once, so that a whole folder dropped by mistake does not push the sheet out of sight.
 */
final class PhotoRefusals {
    private static final int MOST_NAMED = 2;

    private PhotoRefusals() {}

    /** @param attached how many others were attached */
    static String words(List<Refusal> refused, int attached) {
        return refused.isEmpty() ? "" : why(refused) + " " + whatBecame(attached);
    }

    private static String whatBecame(int attached) {
        return attached == 0
                ? Texts.say("No photo was attached.")
                : Texts.count(attached, "1 other photo was attached.", "{0} other photos were attached.", attached);
    }

    private static String why(List<Refusal> refused) {
        return refused.stream()
                .collect(Collectors.groupingBy(
                        refusal -> refusal.why().reason(), LinkedHashMap::new, Collectors.toList()))
                .values()
                .stream()
                .flatMap(PhotoRefusals::ofOneSort)
                .collect(Collectors.joining(" "));
    }

    private static Stream<String> ofOneSort(List<Refusal> refused) {
        int others = refused.size() - MOST_NAMED;
        Stream<String> more = others > 0
                ? Stream.of(Texts.count(others, "So it is with 1 more.", "So it is with {0} more.", others))
                : Stream.empty();
        return Stream.of(
                        refused.stream()
                                .limit(MOST_NAMED)
                                .map(refusal -> refusal.why().sentence()),
                        more,
                        Stream.of(refused.get(0).why().reason().remedy()))
                .flatMap(sentences -> sentences);
    }
}
