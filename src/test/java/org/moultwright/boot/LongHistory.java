package org.moultwright.boot;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.moultwright.boot.command.Commands;
import org.moultwright.compute.calibration.Redressing;
import org.moultwright.domain.CalibrationMethod;
import org.moultwright.domain.CalibrationPoint;
import org.moultwright.domain.Correction;
import org.moultwright.store.H2Store;
import org.moultwright.workflow.RecordCalibration;

/** Everything that reads the whole of a long history: run in a machine of little memory. Prints a line for each. */
final class LongHistory {
    static final String BROOD = "LL-26-A";
    static final String PROBE = "P-0";

    private LongHistory() {}

    /** Arguments: a store, a folder that is not there yet, and which brood and probe. */
    public static void main(String[] arguments) {
        String store = arguments[0];
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        String brood = arguments.length > 2 ? arguments[2] : BROOD;
        System.out.println("readings "
                + Commands.run(
                        new OpenWorkbench(Desktop::refuse),
                        nowhere,
                        err,
                        "readings",
                        "--store",
                        store,
                        "--probe",
                        PROBE));
        System.out.println(
                "check " + Commands.run(new OpenWorkbench(Desktop::refuse), nowhere, err, "check-store", store));
        System.out.println("changed " + redressed(Path.of(store)).readings());
        System.out.println("export "
                + Commands.run(
                        new OpenWorkbench(Desktop::refuse),
                        nowhere,
                        err,
                        "export",
                        brood,
                        "--store",
                        store,
                        "--to",
                        arguments[1]));
    }

    private static Redressing redressed(Path file) {
        try (H2Store store = H2Store.open(file)) {
            RecordCalibration record = new RecordCalibration(
                    store.book(), store.climate(), store.readings(), Instant::now, UUID::randomUUID);
            Instant now = Instant.now();
            return record.changes(
                    record.draft(new RecordCalibration.Sheet(
                            PROBE,
                            CalibrationMethod.ICE_POINT,
                            now,
                            Instant.EPOCH,
                            Duration.ofDays(365),
                            List.of(new CalibrationPoint(0, 0.1, 0.45, 0.05, "ice")),
                            "")),
                    Correction.constant(0, 0.5));
        }
    }
}
