package org.moultwright.ui.broods;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.moultwright.text.SacWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.chart.LedgerBars;
import org.moultwright.ui.chart.Ribbon;
import org.moultwright.workflow.BroodView;

/** What is told of the chosen brood below the ribbons: its story, its entries, where all its animals are. */
final class BroodAccount {
    private final BroodsDesk desk;
    private final ObservableList<BroodStory.StoryLine> story = FXCollections.observableArrayList();
    private final ObservableList<LedgerBars.Bar> bars = FXCollections.observableArrayList();
    private final ObservableList<BroodLedger.EntryLine> entries = FXCollections.observableArrayList();
    private final ReadOnlyStringWrapper title = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper note = new ReadOnlyStringWrapper("");

    BroodAccount(BroodsDesk desk) {
        this.desk = desk;
    }

    ObservableList<BroodStory.StoryLine> story() {
        return story;
    }

    ObservableList<BroodLedger.EntryLine> entries() {
        return entries;
    }

    ObservableList<LedgerBars.Bar> bars() {
        return bars;
    }

    /** Above the bars. */
    ReadOnlyStringProperty titleProperty() {
        return title.getReadOnlyProperty();
    }

    /** Below the bars. */
    ReadOnlyStringProperty noteProperty() {
        return note.getReadOnlyProperty();
    }

    /** Tells of this brood from now on; nothing where none is chosen. */
    void tell(Optional<BroodView> brood, Optional<BroodLine> line) {
        Vocabulary vocabulary = desk.vocabulary().get();
        story.setAll(brood.map(view -> BroodStory.of(view.record(), vocabulary, desk.days()))
                .orElse(List.of()));
        entries.setAll(brood.map(view -> BroodLedger.entries(view.record().ledger(), vocabulary, desk.days()))
                .orElse(List.of()));
        List<Ribbon.Point> past = line.map(one -> one.ribbon().past()).orElse(List.of());
        bars.setAll(brood.map(view -> bars(view, past)).orElse(List.of()));
        title.set(brood.map(BroodLedger::title).orElse(""));
        SacWords sac = new SacWords(vocabulary, desk.days());
        note.set(brood.map(view -> BroodLedger.note(view, sac)).orElse(""));
    }

    private static List<LedgerBars.Bar> bars(BroodView brood, List<Ribbon.Point> past) {
        return past.isEmpty()
                ? List.of()
                : BroodLedger.bars(
                        brood.record().ledger(),
                        BroodLedger.colour(past.get(past.size() - 1).living()));
    }
}
