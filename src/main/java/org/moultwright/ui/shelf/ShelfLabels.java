package org.moultwright.ui.shelf;

import java.util.ArrayList;
import java.util.List;
import org.moultwright.language.Texts;
import org.moultwright.workflow.PotLabel;
import org.moultwright.workflow.Standing;

/** Labels for a container and all that stands in it. */
final class ShelfLabels {
    private ShelfLabels() {}

    static List<PotLabel> of(Standing standing) {
        List<PotLabel> labels = new ArrayList<>();
        collect(standing, labels);
        return labels;
    }

    private static void collect(Standing standing, List<PotLabel> labels) {
        String kind = standing.kind().word();
        labels.add(
                standing.occupants().isEmpty()
                        ? new PotLabel(
                                standing.code(),
                                kind,
                                standing.inside()
                                        .map(around -> Texts.say("in {0}", around))
                                        .orElse(""))
                        : new PotLabel(
                                standing.code(),
                                standing.occupants().get(0).taxon(),
                                kind + ", " + ShelfWords.broods(standing)));
        standing.contents().forEach(inside -> collect(inside, labels));
    }
}
