package org.moultwright.ui.broods;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.moultwright.compute.history.Story;
import org.moultwright.compute.history.StoryEvent;
import org.moultwright.domain.BroodRecord;
import org.moultwright.text.DayWords;
import org.moultwright.text.StoryWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.theme.Token;

/** The story of a brood as lines, newest first. */
final class BroodStory {
    private BroodStory() {}

    static List<StoryLine> of(BroodRecord record, Vocabulary vocabulary, DayWords days) {
        StoryWords words = new StoryWords(vocabulary, days);
        List<StoryLine> lines = new ArrayList<>();
        Story.of(record)
                .forEach(event -> lines.add(new StoryLine(days.shortDay(event.at()), dot(event), words.line(event))));
        Collections.reverse(lines);
        return lines;
    }

    private static Token dot(StoryEvent event) {
        if (event instanceof StoryEvent.FirstSeen seen) {
            return Token.of(seen.stage());
        }
        if (event instanceof StoryEvent.Lost || event instanceof StoryEvent.Mould) {
            return Token.BAD;
        }
        if (event instanceof StoryEvent.SetPointChanged || event instanceof StoryEvent.Recounted) {
            return Token.WARN;
        }
        if (event instanceof StoryEvent.Laid || event instanceof StoryEvent.Opened) {
            return Token.EGG;
        }
        return event instanceof StoryEvent.Potted || event instanceof StoryEvent.LeftPots ? Token.POTTED : Token.MUTED;
    }

    /** One event: its day, the colour of its dot, and its words, which say all that the dot does. */
    record StoryLine(String day, Token dot, String words) {}
}
