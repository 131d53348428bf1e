package org.moultwright.ui.round;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.moultwright.workflow.AttachPhotos.Refusal;
import org.moultwright.workflow.PhotoException;
import org.moultwright.workflow.PhotoException.Reason;

class PhotoRefusalsTest {
    @Test
    void whatToDoIsSaidOnceForThoseOfOneSort() {
        assertThat(PhotoRefusals.words(
                        List.of(
                                refusal(Reason.UNREADABLE, "'a' is no picture."),
                                refusal(Reason.TOO_LARGE, "'b' is too large."),
                                refusal(Reason.UNREADABLE, "'c' is cut off.")),
                        0))
                .isEqualTo("'a' is no picture. 'c' is cut off. Save it as JPEG or PNG and attach that."
                        + " 'b' is too large. Make it smaller and attach that. No photo was attached.");
    }

    @Test
    void ofManyTheFirstAreNamed() {
        List<Refusal> many = Stream.of("a", "b", "c", "d", "e")
                .map(name -> refusal(Reason.UNREADABLE, name + "."))
                .toList();
        assertThat(PhotoRefusals.words(many, 1))
                .isEqualTo("a. b. So it is with 3 more. Save it as JPEG or PNG and attach that."
                        + " 1 other photo was attached.");
        assertThat(PhotoRefusals.words(many, 2)).endsWith(" 2 other photos were attached.");
        assertThat(PhotoRefusals.words(many.subList(0, 3), 0)).startsWith("a. b. So it is with 1 more.");
        assertThat(PhotoRefusals.words(List.of(), 3)).isEmpty();
    }

    private static Refusal refusal(Reason reason, String sentence) {
        return new Refusal("a file", new PhotoException(reason, sentence));
    }
}
