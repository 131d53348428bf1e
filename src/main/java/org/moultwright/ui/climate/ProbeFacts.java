package org.moultwright.ui.climate;

import java.time.Duration;
import java.time.Instant;
import org.moultwright.compute.mould.MouldExposure;
import org.moultwright.domain.Correction;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;

/**
 * How a probe did over the last week, and what its air did for mould.
 *
 * @param health readings, bad ones and silences, in words
 * @param mould the index of exposure, in words; empty where humidity is not measured
 */
record ProbeFacts(String health, String mould) {
    static final ProbeFacts NOTHING = new ProbeFacts("", "");

    private static final Duration WEEK = Duration.ofDays(7);
    private static final double COVERAGE = 2;

    /**
     * Of a probe's raw readings of the last two weeks.
     *
     * @param temperature what its indications need now
     * @param humidity the same of humidity
     */
    static ProbeFacts of(ReadingSeries raw, Correction temperature, Correction humidity, Instant now) {
        Instant weekAgo = now.minus(WEEK);
        return new ProbeFacts(
                health(raw.between(weekAgo, now.plusMillis(1)), now), mould(raw, temperature, humidity, now));
    }

    /** From when on readings are needed. */
    static Instant since(Instant now) {
        return now.minus(WEEK).minus(WEEK);
    }

    private static String health(ReadingSeries week, Instant now) {
        if (week.isEmpty()) {
            return Texts.say("No reading in the last 7 days.");
        }
        int bad = 0;
        int gaps = 0;
        long longestMillis = 0;
        long lastMillis = week.epochMillis(0);
        for (int i = 0; i <= week.size(); i++) {
            boolean isEnd = i == week.size();
            if (!isEnd && week.quality(i) != Quality.GOOD) {
                bad++;
                continue;
            }
            long millis = isEnd ? now.toEpochMilli() : week.epochMillis(i);
            if (millis - lastMillis > TraceSource.LONGEST_BRIDGED.toMillis()) {
                gaps++;
                longestMillis = Math.max(longestMillis, millis - lastMillis);
            }
            lastMillis = millis;
        }
        String silences = gaps == 0
                ? Texts.say("never silent for more than half an hour")
                : Texts.say(
                        "{0} {1}, the longest {2}",
                        gaps, Texts.count(gaps, "silence", "silences"), DayWords.age(Duration.ofMillis(longestMillis)));
        return Texts.say(
                "Last 7 days: {0} readings, {1} % of them bad; {2}.",
                Numbers.grouped(week.size()), Numbers.fixed(100.0 * bad / week.size(), 1), silences);
    }

    private static String mould(ReadingSeries raw, Correction temperature, Correction humidity, Instant now) {
        MouldExposure last = MouldExposure.over(raw, now.minus(WEEK), now, temperature, humidity, COVERAGE);
        if (last.measuredShare() == 0) {
            return "";
        }
        MouldExposure before = MouldExposure.over(raw, since(now), now.minus(WEEK), temperature, humidity, COVERAGE);
        String compared =
                switch (last.against(before)) {
                    case WETTER -> Texts.say("more than the week before");
                    case DRIER -> Texts.say("less than the week before");
                    case ALIKE -> Texts.say("like the week before");
                    case CANNOT_TELL -> Texts.say("the week before was measured too little to compare");
                };
        return Texts.say(
                "Mould index of 7 days {0} ({1} to {2}), {3}. It compares weeks on clean pine and foretells no date.",
                Numbers.fixed(last.likely().value(), 2),
                Numbers.fixed(last.least().value(), 2),
                Numbers.fixed(last.most().value(), 2),
                compared);
    }
}
