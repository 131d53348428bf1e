package org.moultwright.compute.climate;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.moultwright.compute.mould.MouldExposure;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Correction;
import org.moultwright.domain.ReadingSeries;

/**
 * The climate a brood's animals lived, day by day of its zone: that of the tray most of them came into, and of the sac
 * before. Days of which nothing was measured are left out.
 *
 * @param days in order
 * @param weeks how far the air favoured mould, week by week from the first reading of humidity on
 */
public record ClimateDays(List<Day> days, List<Week> weeks) {
    private static final Correction NONE = Correction.constant(0, 0);
    private static final int DAYS_IN_A_WEEK = 7;
    private static final double ENOUGH_MEASURED = 0.5;

    public ClimateDays {
        days = List.copyOf(days);
        weeks = List.copyOf(weeks);
    }

    /** The climate lived in a tray, or in the sac, up to an instant. */
    public static ClimateDays of(BroodRecord record, LivedTemperature lived) {
        ReadingSeries air = ClimateSummary.air(record, lived);
        ZoneId zone = record.brood().zone();
        List<Day> days = new ArrayList<>();
        int start = 0;
        while (start < air.size()) {
            LocalDate date = date(air, start, zone);
            int end = start;
            DoubleSummaryStatistics celsius = new DoubleSummaryStatistics();
            DoubleSummaryStatistics percent = new DoubleSummaryStatistics();
            while (end < air.size() && date(air, end, zone).equals(date)) {
                celsius.accept(air.temperatureCelsius(end));
                if (air.humidityPercent(end) > 0) {
                    percent.accept(air.humidityPercent(end));
                }
                end++;
            }
            days.add(new Day(
                    date.atStartOfDay(zone).toInstant(),
                    date.plusDays(1).atStartOfDay(zone).toInstant(),
                    celsius.getMin(),
                    celsius.getAverage(),
                    celsius.getMax(),
                    percent.getCount() == 0 ? Double.NaN : percent.getAverage()));
            start = end;
        }
        return new ClimateDays(days, weeks(air, days, zone));
    }

    private static List<Week> weeks(ReadingSeries air, List<Day> days, ZoneId zone) {
        List<Week> weeks = new ArrayList<>();
        List<Day> humid =
                days.stream().filter(day -> !Double.isNaN(day.percent())).toList();
        if (humid.isEmpty()) {
            return weeks;
        }
        LocalDate first = humid.get(0).from().atZone(zone).toLocalDate();
        Instant last = days.get(days.size() - 1).to();
        for (LocalDate week = first; ; week = week.plusDays(DAYS_IN_A_WEEK)) {
            Instant from = week.atStartOfDay(zone).toInstant();
            Instant to = week.plusDays(DAYS_IN_A_WEEK).atStartOfDay(zone).toInstant();
            if (to.isAfter(last)) {
                return weeks;
            }
            MouldExposure exposure = MouldExposure.over(air, from, to, NONE, NONE, 0);
            if (exposure.measuredShare() >= ENOUGH_MEASURED) {
                weeks.add(new Week(from, to, exposure.likely().value()));
            }
        }
    }

    private static LocalDate date(ReadingSeries air, int i, ZoneId zone) {
        return Instant.ofEpochMilli(air.epochMillis(i)).atZone(zone).toLocalDate();
    }

    /** One day's air; the humidity is NaN where none was measured. */
    public record Day(
            Instant from, Instant to, double lowCelsius, double meanCelsius, double highCelsius, double percent) {}

    /** How far one week's air favoured mould, from a clean surface: an index from 0 to 6 and never a date. */
    public record Week(Instant from, Instant to, double mouldIndex) {}
}
