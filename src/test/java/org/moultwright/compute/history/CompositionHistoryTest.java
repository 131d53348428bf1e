package org.moultwright.compute.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Stage;
import org.moultwright.ui.RoomFixture;

class CompositionHistoryTest {
    private final BroodRecord record = RoomFixture.broodA().record();

    @Test
    void everyDayWrittenHasAPointInOrder() {
        List<BroodDay> days = CompositionHistory.of(record);
        assertThat(days).extracting(BroodDay::at).isSorted().doesNotHaveDuplicates();
        assertThat(days.get(0).living()).containsEntry(Stage.EGG, 91).containsEntry(Stage.POSTEMBRYO, 27);
    }

    @Test
    void livingPottedAndLostAlwaysAddUpToTheOpened() {
        assertThat(CompositionHistory.of(record))
                .allSatisfy(day -> assertThat(day.alive() + day.potted() + day.lost())
                        .isEqualTo(record.ledger().opened()));
    }

    @Test
    void aTrayNotLookedAtKeepsItsLastCount() {
        BroodDay day = CompositionHistory.at(record, RoomFixture.evening("2026-04-10"));
        assertThat(day.living()).containsEntry(Stage.POSTEMBRYO, 108).containsEntry(Stage.INSTAR1, 1);
    }

    @Test
    void theOutlookAddsTheTrays() {
        List<OutlookDay> outlook = Outlook.of(RoomFixture.broodA().forecast().orElseThrow());
        assertThat(outlook).hasSize(41);
        assertThat(outlook.get(0).alive().p50()).isEqualTo(106);
        assertThat(outlook.get(40).living().get(Stage.INSTAR2)).isGreaterThan(100);
    }

    @Test
    void theStoryIsInOrderAndNamesEveryLossOnce() {
        List<StoryEvent> story = Story.of(record);
        assertThat(story).extracting(StoryEvent::at).isSorted();
        int lost = story.stream()
                .filter(StoryEvent.Lost.class::isInstance)
                .mapToInt(event -> ((StoryEvent.Lost) event).count())
                .sum();
        assertThat(lost).isEqualTo(record.ledger().lost());
    }
}
