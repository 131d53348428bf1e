package org.moultwright.ui.potting;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.RoomView;

/** Which broods are on the bench, and how many animals of each of their trays are taken. */
final class OnBench {
    private final ReadOnlyObjectWrapper<Optional<Bench>> bench = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<List<String>> choices = new ReadOnlyObjectWrapper<>(List.of());
    private final Runnable edited;
    private ReadyBroods ready = new ReadyBroods(List.of());
    private Optional<Set<String>> chosen = Optional.empty();
    private boolean laying;

    /** @param edited is told when the keeper takes other numbers */
    OnBench(Runnable edited) {
        this.edited = edited;
    }

    /** What is on the bench; nothing while no animal is ready. */
    ReadOnlyObjectProperty<Optional<Bench>> benchProperty() {
        return bench.getReadOnlyProperty();
    }

    Optional<Bench> bench() {
        return bench.get();
    }

    /** The codes of the broods that have animals ready. */
    ReadOnlyObjectProperty<List<String>> choicesProperty() {
        return choices.getReadOnlyProperty();
    }

    boolean holds(String broodCode) {
        return broods().contains(broodCode);
    }

    /** A bench with animals on it is left as it is while its trays are; any other tray is laid anew. */
    void read(RoomView room) {
        ready = ReadyBroods.of(room);
        choices.set(ready.codes());
        List<BroodView> next =
                chosen.map(ready::chosen).filter(broods -> !broods.isEmpty()).orElseGet(ready::unasked);
        if (next.isEmpty()) {
            clear();
        } else {
            lay(next);
        }
    }

    /** Lays a brood on the bench, or takes it off; the last one stays. */
    void lay(String broodCode, boolean isOn) {
        Set<String> broods = new HashSet<>(broods());
        if (isOn ? broods.add(broodCode) : broods.remove(broodCode)) {
            if (!broods.isEmpty()) {
                chosen = Optional.of(broods);
            }
            lay(ready.chosen(chosen.orElse(broods)));
        }
    }

    /** Begins a portion of this tray's animals for pots of another size. */
    void addSize(Taking taking) {
        taking.addPortion();
        bench.set(bench.get().map(open -> new Bench(open.takings())));
    }

    /** Takes all off the bench. */
    void clear() {
        bench.set(Optional.empty());
    }

    /** From now on the broods most animals of which are ready lie on it, unasked. */
    void forgetChoice() {
        chosen = Optional.empty();
    }

    private void lay(List<BroodView> broods) {
        laying = true;
        Bench before = bench.get().orElse(new Bench(List.of()));
        Bench laid = before.of(broods, this::taken);
        if (!laid.trays().equals(before.trays())) {
            bench.set(Optional.of(laid));
        }
        laying = false;
    }

    private void taken() {
        if (!laying) {
            edited.run();
        }
    }

    private Set<String> broods() {
        return bench.get().stream()
                .flatMap(open -> open.takings().stream())
                .map(taking -> taking.brood().code())
                .collect(Collectors.toSet());
    }
}
