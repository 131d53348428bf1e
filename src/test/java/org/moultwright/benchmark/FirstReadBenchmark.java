package org.moultwright.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.moultwright.boot.FullRoom;
import org.moultwright.compute.forecast.ForecastQuestion;
import org.moultwright.compute.forecast.Forecaster;
import org.moultwright.exchange.TimingsFile;
import org.moultwright.store.H2Store;
import org.moultwright.workflow.InventedPots;
import org.moultwright.workflow.PreparedForecasts;
import org.moultwright.workflow.Room;

/**
 * How long a desk that was just opened waits for the dates of 60 living broods in 400 trays. The baseline works the same
 * dates out one after another. Each reads the room as if for the first time. Argument: times (3).
 */
public final class FirstReadBenchmark {
    private FirstReadBenchmark() {}

    public static void main(String[] arguments) throws IOException {
        int times = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 3;
        Forecaster forecaster = new Forecaster(TimingsFile.shipped());
        Stopwatch room = new Stopwatch();
        Stopwatch oneByOne = new Stopwatch();
        try (H2Store store = FullRoom.store(Files.createTempDirectory("first-read"))) {
            for (int time = 0; time < times; time++) {
                List<ForecastQuestion> asked = Collections.synchronizedList(new ArrayList<>());
                PreparedForecasts prepared = new PreparedForecasts(forecaster);
                Room read = new Room(store.book(), store.readings(), question -> {
                    asked.add(question);
                    return prepared.apply(question);
                });
                room.time(() -> read.at(InventedPots.NOW));
                PreparedForecasts again = new PreparedForecasts(forecaster);
                oneByOne.time(() -> asked.forEach(again::apply));
            }
        }
        System.out.printf(
                "%d broods, %d trays, %d processors, %d times%n",
                FullRoom.BROODS, FullRoom.TRAYS, Runtime.getRuntime().availableProcessors(), times);
        System.out.printf("dates one brood after another (baseline)   median %5.1f s%n", oneByOne.median());
        System.out.printf("the whole room for the first time          median %5.1f s%n", room.median());
        System.out.printf("the room takes %.2f of the baseline%n", room.median() / oneByOne.median());
    }
}
