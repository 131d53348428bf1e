package org.moultwright.ui.shelf;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Words;
import org.moultwright.workflow.Standing;

/** A container in which nothing else stands: its code, who lives in it, and the air where it has its own. */
final class ContainerCard extends VBox {
    static final PseudoClass CURRENT = PseudoClass.getPseudoClass("current");

    private final Label code = Words.strong("");
    private final Label who = Words.caption("");
    private final Label alive = Words.strong("");
    private final StageStrip strip = new StageStrip();
    private final Label foot = Words.plain("");
    private Optional<Standing> shown = Optional.empty();

    ContainerCard() {
        getStyleClass().addAll("card", "shelf-card");
        Flow head = new Flow(code, who, gap(), alive);
        head.getStyleClass().add("shelf-line");
        getChildren().addAll(head, strip, foot);
    }

    /** A card is shown another container rather than made anew, for styling a new one costs far more. */
    void show(Standing standing, Vocabulary names, boolean isCurrent) {
        shown = Optional.of(standing);
        pseudoClassStateChanged(CURRENT, isCurrent);
        boolean isLivedIn = standing.alive() > 0;
        code.setText(standing.code());
        who.setText(standing.occupants().isEmpty() ? standing.kind().word() : ShelfWords.broods(standing));
        alive.setText(isLivedIn ? Integer.toString(standing.alive()) : "");
        strip.setVisible(isLivedIn);
        strip.setManaged(isLivedIn);
        strip.show(byStage(standing));
        foot.setText(isLivedIn ? stages(standing, names) : unlived(standing));
        String size = isLivedIn ? "small" : "caption";
        if (!foot.getStyleClass().contains(size)) {
            Words.restyle(foot, size);
        }
    }

    /** It keeps its column only: no row is as high as a card that is not seen. */
    void showNothing() {
        shown = Optional.empty();
        strip.setManaged(false);
    }

    /** The code of the container shown; empty while there is none. */
    String code() {
        return shown.map(Standing::code).orElse("");
    }

    private static String stages(Standing standing, Vocabulary names) {
        String stages = ShelfWords.stages(byStage(standing), names);
        return stages.isEmpty() ? Texts.say("not yet counted by stage") : stages;
    }

    private static String unlived(Standing standing) {
        return standing.air()
                .filter(air -> air.container().equals(standing.code()))
                .map(own -> ShelfWords.unlived(standing) + " · " + ShelfWords.temperature(own))
                .orElse(ShelfWords.unlived(standing));
    }

    private static Map<Stage, Integer> byStage(Standing standing) {
        Map<Stage, Integer> all = new HashMap<>();
        standing.occupants()
                .forEach(one -> one.byStage().forEach((stage, count) -> all.merge(stage, count, Integer::sum)));
        return all;
    }

    static Region gap() {
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        return gap;
    }
}
