package org.moultwright.boot.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.moultwright.compute.forecast.Forecaster;
import org.moultwright.compute.forecast.Milestone;
import org.moultwright.compute.scoring.Accuracy;
import org.moultwright.compute.scoring.Outcome;
import org.moultwright.store.H2Store;
import org.moultwright.workflow.CalibratedBook;
import org.moultwright.workflow.ScoreForecasts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code accuracy}: how good the forecasts made of completed broods were. */
@Command(name = "accuracy", description = "Scores the forecasts made of completed broods against what happened.")
final class AccuracyCommand implements Runnable {
    @Option(names = "--store", paramLabel = "FILE", required = true, description = "the store")
    Path store = Path.of("");

    @Mixin
    OwnTimings own = new OwnTimings();

    @Mixin
    Answer answer = new Answer();

    @Override
    public void run() {
        Map<Milestone, List<Outcome>> outcomes;
        try (H2Store open = Stores.existing(store)) {
            outcomes = new ScoreForecasts(
                            new CalibratedBook(open.book(), open.climate()),
                            open.readings(),
                            open.forecasts(),
                            new Forecaster(own.timings(answer.err()))::forecast)
                    .outcomes();
        }
        if (!answer.json && outcomes.isEmpty()) {
            answer.out().println("No forecast can be scored yet: none was made before its event in a completed brood.");
        }
        outcomes.forEach((milestone, scored) -> tell(milestone, Accuracy.of(scored)));
        answer.out().flush();
    }

    private void tell(Milestone milestone, Accuracy accuracy) {
        if (answer.json) {
            answer.document(json(milestone, accuracy));
        } else {
            answer.out()
                    .printf(
                            "%-6s %4d forecasts: %.1f days off, %+.1f late on average, CRPS %.1f days; %.0f %% within the 80 %% interval; by tenths of their probability: %s%n",
                            milestone.key(),
                            accuracy.count(),
                            accuracy.meanAbsoluteErrorDays(),
                            accuracy.biasDays(),
                            accuracy.crpsDays(),
                            100 * accuracy.coverage(),
                            tenths(accuracy));
        }
    }

    /** How many truths fell in each tenth of the probability integral transform, the earliest first. */
    private static String tenths(Accuracy accuracy) {
        return accuracy.pitCounts().stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    private static ObjectNode json(Milestone milestone, Accuracy accuracy) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("milestone", milestone.key());
        json.put("count", accuracy.count());
        json.put("biasDays", Rounded.to(accuracy.biasDays(), 1000));
        json.put("meanAbsoluteErrorDays", Rounded.to(accuracy.meanAbsoluteErrorDays(), 1000));
        json.put("crpsDays", Rounded.to(accuracy.crpsDays(), 1000));
        json.put("coverage80", Rounded.to(accuracy.coverage(), 1000));
        ArrayNode tenths = json.putArray("pit");
        accuracy.pitCounts().forEach(tenths::add);
        return json;
    }
}
