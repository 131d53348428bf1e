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
        String opened = Texts.say("{0} opened", brood.record().ledger().opened());
        String laid = brood.record()
                .brood()
                .laid()
                .map(InstantRange::middle)
                .map(at -> Texts.say(", laid {0}", days.day(at)))
                .orElse(Texts.say(", laying unknown"));
        return new TeacherLine(brood.code(), opened + laid, note.map(LessonNote::reason));
    }
}
