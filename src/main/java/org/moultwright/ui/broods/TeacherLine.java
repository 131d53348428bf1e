package org.moultwright.ui.broods;

import java.util.Optional;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.LessonNote;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.workflow.BroodView;

/**
 * A completed brood that teaches others, or could.
 *
 * @param code its code
 * @param facts such as "118 opened, laid 27 February"
 * @param leftOut why nothing is learned from it, possibly without a word; empty where it teaches
 */
record TeacherLine(String code, String facts, Optional<String> leftOut) {

    static TeacherLine of(BroodView brood, Optional<LessonNote> note, DayWords days) {
        int opened = brood.record().ledger().opened();
        String facts = brood.record()
                .brood()
                .laid()
                .map(InstantRange::middle)
                .map(at -> Texts.say("{0} opened, laid {1}", opened, days.day(at)))
                .orElseGet(() -> Texts.say("{0} opened, laying unknown", opened));
        return new TeacherLine(brood.code(), facts, note.map(LessonNote::reason));
    }
}
