package org.moultwright.device.profile;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;

/**
 * One quantity a record tells, in the group of its name.
 *
 * @param name {@code temperature} or {@code humidity}
 * @param unit of a value that names none
 * @param encoding how the group's text stands for a number
 * @param scale and {@code offset} make the quantity of that number: number · scale + offset
 * @param none numbers by which the instrument says that it has no value
 * @param lowest the least it measures, in °C or %
 * @param highest the most it measures
 * @param clipped whether a value beyond is brought to the nearer limit, as some data sheets ask
 */
record Channel(
        String name,
        Unit unit,
        Encoding encoding,
        double scale,
        double offset,
        List<Double> none,
        double lowest,
        double highest,
        boolean clipped) {
    static final String TEMPERATURE = "temperature";
    static final String HUMIDITY = "humidity";

    /**
     * What a record tells in this channel, in °C or %; empty if it tells nothing, infinite if what it tells is
     * no value.
     */
    OptionalDouble value(Matcher found) {
        Optional<String> text = Groups.text(found, name);
        return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(value(text.get(), unitOf(found)));
    }

    boolean allows(double value) {
        return value >= lowest && value <= highest;
    }

    private double value(String text, Unit told) {
        double number = encoding.number(text);
        if (!Double.isFinite(number) || none.contains(number)) {
            return Double.POSITIVE_INFINITY;
        }
        double value = told.toOurs(scaled(number));
        if (!Double.isFinite(value)) {
            return Double.POSITIVE_INFINITY;
        }
        return clipped ? Math.max(lowest, Math.min(highest, value)) : value;
    }

    /** In decimal arithmetic: 257 tenths are 25.7, not 25.700000000000003. */
    private double scaled(double number) {
        return BigDecimal.valueOf(number)
                .multiply(BigDecimal.valueOf(scale))
                .add(BigDecimal.valueOf(offset))
                .doubleValue();
    }

    private Unit unitOf(Matcher found) {
        return unit == Unit.PERCENT
                ? unit
                : Groups.text(found, "unit").map(Unit::named).orElse(unit);
    }
}
