package org.moultwright.ui.broods;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.workflow.OpenSac.SacTray;
import org.moultwright.workflow.ShareTrays;
import org.moultwright.workflow.ShelfAt;

/**
 * The good ones of a sac spread over trays: in equal shares, as far as the keeper does not choose otherwise. What is
 * written into a tray stays; the others share the rest.
 */
final class TrayShares {
    private static final int MOST_TRAYS = 40;

    private final SacForm form;
    private final FormField number;
    private final List<Row> made = new ArrayList<>();
    private final ObservableList<Row> rows = FXCollections.observableArrayList();
    private final Map<FormField, String> usual = new HashMap<>();
    private Map<Stage, Integer> good = Map.of();
    private boolean sharing;

    TrayShares(SacForm form) {
        this.form = form;
        this.number = form.field("trays", Texts.say("how many trays"));
        number.textProperty().addListener((observed, before, now) -> lay());
        lay();
    }

    /** How many trays; empty for one. */
    FormField number() {
        return number;
    }

    ObservableList<Row> rows() {
        return rows;
    }

    /** The stages there is something of to spread. */
    List<Stage> stages() {
        return SacContents.STAGES.stream().filter(good::containsKey).toList();
    }

    /** What stands in a field unless the keeper chooses otherwise. */
    String usual(FormField field) {
        return Optional.ofNullable(usual.get(field)).orElse("");
    }

    /** What is spread: how many of each stage. */
    Map<Stage, Integer> good() {
        return good;
    }

    /** Spreads these, what the keeper chose left as it is. */
    void spread(Map<Stage, Integer> goodOnes) {
        good = Map.copyOf(goodOnes);
        share();
    }

    /** Forgets what was chosen. */
    void shareEqually() {
        rows.forEach(row -> row.counts().values().forEach(field -> usual.put(field, field.written())));
        share();
    }

    /** Puts what is in no tray into the last one. */
    void placeRest() {
        Row last = rows.get(rows.size() - 1);
        stages().forEach(stage -> {
            int rest = left().getOrDefault(stage, 0);
            last.count(stage).ifPresent(field -> field.set(Integer.toString(field.count() + rest)));
        });
    }

    /** How many of each stage are in no tray; below 0 where trays hold more than there are. */
    Map<Stage, Integer> left() {
        Map<Stage, Integer> left = new EnumMap<>(Stage.class);
        placed().forEach((stage, count) -> left.put(stage, good.getOrDefault(stage, 0) - count));
        left.values().removeIf(count -> count == 0);
        return left;
    }

    /** How many of each stage are in trays. */
    Map<Stage, Integer> placed() {
        Map<Stage, Integer> placed = new EnumMap<>(Stage.class);
        stages().forEach(stage -> placed.put(
                stage,
                rows.stream()
                        .flatMap(row -> row.count(stage).stream())
                        .mapToInt(FormField::count)
                        .sum()));
        return placed;
    }

    /** "112 good = 56 in E1 + 56 in E2", or what is left to place. */
    String sum() {
        int all = good.values().stream().mapToInt(Integer::intValue).sum();
        int left = left().values().stream().mapToInt(Integer::intValue).sum();
        if (all == 0) {
            return Texts.say("Count the good ones first; they are spread here.");
        }
        if (!left().isEmpty()) {
            return left >= 0
                    ? Texts.say("{0} of {1} in no tray yet", left, all)
                    : Texts.say("{0} more in trays than good ones", -left);
        }
        String parts = used().stream()
                .map(row ->
                        Texts.say("{0} in {1}", row.total(stages()), row.code().written()))
                .collect(Collectors.joining(" + "));
        return used().size() > 6
                ? Texts.say("all {0} are in {1} trays", all, used().size())
                : Texts.say("{0} good = {1}", all, parts);
    }

    List<SacTray> trays() {
        return used().stream()
                .map(row -> {
                    Map<Stage, Integer> counts = new EnumMap<>(Stage.class);
                    stages().forEach(stage -> row.count(stage).ifPresent(field -> counts.put(stage, field.count())));
                    return new SacTray(row.code().written(), counts);
                })
                .toList();
    }

    /** Whether every tray used can be; what cannot is said at its field. */
    boolean arePossible() {
        ShelfAt shelf = form.shelf();
        Set<String> codes = new HashSet<>();
        boolean possible = true;
        for (Row row : used()) {
            String code = row.code().written();
            boolean isOwn = codes.add(code) || form.refuse(row.code(), Texts.say("Two trays have this code."));
            boolean fits = form.refuse(row.code(), ShareTrays.againstTarget(shelf, form.about(), "", code));
            possible &= isOwn && fits;
        }
        return possible;
    }

    private List<Row> used() {
        return rows.stream().filter(row -> row.total(stages()) > 0).toList();
    }

    private void lay() {
        int wanted = Math.max(1, Math.min(MOST_TRAYS, number.number().orElse(1)));
        while (made.size() < wanted) {
            made.add(row(made.size() + 1));
        }
        rows.setAll(made.subList(0, wanted));
        share();
    }

    private Row row(int position) {
        FormField code = form.field("tray-" + position, Texts.say("tray {0}, its code", position));
        usual.put(code, freeCode());
        code.set(usual(code));
        Map<Stage, FormField> counts = new EnumMap<>(Stage.class);
        SacContents.STAGES.forEach(stage -> {
            FormField count = form.field(
                    "tray-" + position + "-" + stage.key(),
                    Texts.say(
                            "tray {0}, {1}",
                            position, form.desk().vocabulary().get().label(stage)));
            usual.put(count, "");
            count.textProperty().addListener((observed, before, now) -> {
                if (!sharing) {
                    share();
                }
            });
            counts.put(stage, count);
        });
        return new Row(code, counts);
    }

    /** The brood's letter and a number, such as E1; in a store where that is taken, the next. */
    private String freeCode() {
        String brood = form.about();
        String last = brood.substring(brood.lastIndexOf('-') + 1);
        String prefix = last.chars().allMatch(Character::isLetter) ? last : brood + "-";
        ShelfAt shelf = form.shelf();
        Set<String> used = made.stream().map(row -> row.code().written()).collect(Collectors.toSet());
        for (int number = 1; ; number++) {
            String code = prefix + number;
            if (!used.contains(code)
                    && shelf.find(code)
                            .filter(there -> there.alive() > 0 || !there.kind().holdsBrood())
                            .isEmpty()) {
                return code;
            }
        }
    }

    private void share() {
        sharing = true;
        for (Stage stage : SacContents.STAGES) {
            List<FormField> fields =
                    rows.stream().flatMap(row -> row.count(stage).stream()).toList();
            List<FormField> others = fields.stream()
                    .filter(field -> field.written().equals(usual(field)))
                    .toList();
            int chosen = fields.stream()
                    .filter(field -> !others.contains(field))
                    .mapToInt(FormField::count)
                    .sum();
            int rest = Math.max(0, good.getOrDefault(stage, 0) - chosen);
            for (int i = 0; i < others.size(); i++) {
                int share = rest / others.size() + (i < rest % others.size() ? 1 : 0);
                FormField field = others.get(i);
                usual.put(field, good.containsKey(stage) ? Integer.toString(share) : "");
                field.set(usual(field));
            }
        }
        sharing = false;
    }

    /** One tray and what goes into it. */
    record Row(FormField code, Map<Stage, FormField> counts) {
        Optional<FormField> count(Stage stage) {
            return Optional.ofNullable(counts.get(stage));
        }

        int total(List<Stage> stages) {
            return stages.stream()
                    .flatMap(stage -> count(stage).stream())
                    .mapToInt(FormField::count)
                    .sum();
        }
    }
}
