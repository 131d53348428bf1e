package org.moultwright.exchange;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.moultwright.workflow.ColumnMeaning;
import org.moultwright.workflow.DateOrder;

/** What the columns of some rows look like: by what stands in them, and by the words over them. */
final class ColumnGuess {
    private static final double MOST = 0.6;

    /** Air of an animal room is never that warm in °C, nor that cold in °F (our own rule). */
    private static final double SURELY_FAHRENHEIT = 50;

    private static final Pattern TEMPERATURE =
            Pattern.compile("(?i).*(temp|celsius|fahrenheit|[°º˚]\\s*[cf]|\\([cf]\\)).*");
    private static final Pattern FAHRENHEIT = Pattern.compile("(?i).*(fahrenheit|[°º˚]\\s*f|\\(f\\)|deg\\s*f|_f$).*");
    private static final Pattern CELSIUS = Pattern.compile("(?i).*(celsius|[°º˚]\\s*c|\\(c\\)|deg\\s*c|_c$).*");
    private static final Pattern HUMIDITY = Pattern.compile("(?i).*(hum|feucht|umid|\\brh\\b|\\brf\\b|%).*");
    private static final Pattern OTHER =
            Pattern.compile("(?i).*(dew|taupunkt|batter|volt|signal|index|\\bno\\b|\\bnr\\b|#|pressure|light|lux).*");

    private final List<List<String>> rows;
    private final List<String> header;
    private final int width;
    private final int headerRows;

    ColumnGuess(List<List<String>> rows) {
        this.width = usualWidth(rows);
        this.headerRows = headerRows(rows);
        this.header = headerRows == 0 ? List.of() : rows.get(headerRows - 1);
        this.rows = rows.subList(Math.min(headerRows, rows.size()), rows.size());
    }

    /** How many rows stand before the first that holds any number or time. */
    int headerRows() {
        return headerRows;
    }

    List<ColumnMeaning> meanings() {
        List<ColumnMeaning> meanings = new ArrayList<>(Collections.nCopies(width, ColumnMeaning.NOTHING));
        markTime(meanings);
        Optional<Integer> temperature = measured(meanings, TEMPERATURE, number -> number > -60 && number < 190);
        temperature.ifPresent(column ->
                meanings.set(column, isFahrenheit(column) ? ColumnMeaning.FAHRENHEIT : ColumnMeaning.CELSIUS));
        measured(meanings, HUMIDITY, number -> number >= 0 && number <= 100)
                .ifPresent(column -> meanings.set(column, ColumnMeaning.HUMIDITY));
        return meanings;
    }

    DateOrder dateOrder() {
        return columnWhere(this::isDateOrTime)
                .map(column -> DateOrderGuess.of(cells(column)))
                .orElse(DateOrder.DAY_FIRST);
    }

    private void markTime(List<ColumnMeaning> meanings) {
        Optional<Integer> both = columnWhere(cell -> isTime(cell));
        Optional<Integer> date = columnWhere(ColumnGuess::isDate);
        Optional<Integer> time = columnWhere(WrittenTime::isClock);
        Optional<Integer> millis = columnOfNumbers(number -> number > 3e11 && number < 4e12);
        Optional<Integer> seconds = columnOfNumbers(number -> number > 3e8 && number < 4e9);
        if (both.isPresent()) {
            meanings.set(both.get(), ColumnMeaning.DATE_AND_TIME);
        } else if (date.isPresent() && time.isPresent()) {
            meanings.set(date.get(), ColumnMeaning.DATE);
            meanings.set(time.get(), ColumnMeaning.TIME);
        } else if (millis.isPresent()) {
            meanings.set(millis.get(), ColumnMeaning.EPOCH_MILLIS);
        } else {
            seconds.ifPresent(column -> meanings.set(column, ColumnMeaning.EPOCH_SECONDS));
        }
    }

    /** The first free column of such numbers whose title says so; without one the first, rather none of
     * running numbers. */
    private Optional<Integer> measured(List<ColumnMeaning> meanings, Pattern title, Predicate<Double> plausible) {
        List<Integer> free = IntStream.range(0, width)
                .filter(column -> meanings.get(column) == ColumnMeaning.NOTHING)
                .filter(column -> isMostly(column, cell -> isNumber(cell, plausible)))
                .filter(column -> !OTHER.matcher(title(column)).matches())
                .boxed()
                .toList();
        return free.stream()
                .filter(column -> title.matcher(title(column)).matches())
                .findFirst()
                .or(() -> free.stream()
                        .filter(column -> !isTitledAsAnother(column, title))
                        .min(Comparator.comparing(this::isRunningNumber)));
    }

    private boolean isTitledAsAnother(int column, Pattern own) {
        Pattern other = own.equals(HUMIDITY) ? TEMPERATURE : HUMIDITY;
        return other.matcher(title(column)).matches();
    }

    private boolean isFahrenheit(int column) {
        if (isSaid(column, FAHRENHEIT, "f")) {
            return true;
        }
        double[] numbers = numbers(column);
        boolean isUnsaid = !isSaid(column, CELSIUS, "c");
        return isUnsaid && numbers.length > 0 && numbers[numbers.length / 2] > SURELY_FAHRENHEIT;
    }

    /** Whether its title or most of its cells say the unit. */
    private boolean isSaid(int column, Pattern title, String ending) {
        return title.matcher(title(column)).matches()
                || isMostly(
                        column, cell -> cell.strip().toLowerCase(Locale.ROOT).endsWith(ending));
    }

    private boolean isRunningNumber(int column) {
        double[] numbers = numbers(column);
        return numbers.length > 2 && IntStream.range(1, numbers.length).allMatch(i -> numbers[i] - numbers[i - 1] == 1);
    }

    private boolean isDateOrTime(String cell) {
        return isTime(cell) || isDate(cell);
    }

    private static boolean isTime(String cell) {
        return Stream.of(DateOrder.values())
                .anyMatch(order -> WrittenTime.of(cell, order).isPresent());
    }

    private static boolean isDate(String cell) {
        return Stream.of(DateOrder.values())
                .anyMatch(order -> WrittenTime.date(cell, order).isPresent());
    }

    private static boolean isNumber(String cell, Predicate<Double> plausible) {
        OptionalDouble number = MeasuredText.number(cell);
        return number.isPresent() && plausible.test(number.getAsDouble());
    }

    private Optional<Integer> columnOfNumbers(Predicate<Double> plausible) {
        return columnWhere(cell -> isNumber(cell, plausible));
    }

    private Optional<Integer> columnWhere(Predicate<String> holds) {
        return IntStream.range(0, width)
                .filter(column -> isMostly(column, holds))
                .boxed()
                .findFirst();
    }

    private boolean isMostly(int column, Predicate<String> holds) {
        List<String> filled =
                cells(column).stream().filter(cell -> !cell.isBlank()).toList();
        return !filled.isEmpty() && filled.stream().filter(holds).count() >= MOST * filled.size();
    }

    private double[] numbers(int column) {
        return cells(column).stream()
                .flatMap(cell -> MeasuredText.number(cell).stream().boxed())
                .mapToDouble(Double::doubleValue)
                .toArray();
    }

    private List<String> cells(int column) {
        return rows.stream()
                .filter(row -> row.size() == width)
                .map(row -> row.get(column))
                .toList();
    }

    private String title(int column) {
        return column < header.size() ? header.get(column) : "";
    }

    private int headerRows(List<List<String>> all) {
        int before = 0;
        while (before < all.size() && (all.get(before).size() != width || !holdsAnyValue(all.get(before)))) {
            before++;
        }
        return before;
    }

    private boolean holdsAnyValue(List<String> row) {
        return row.stream()
                .anyMatch(
                        cell -> isDateOrTime(cell) || MeasuredText.number(cell).isPresent());
    }

    private static int usualWidth(List<List<String>> rows) {
        Map<Integer, Integer> counts = new HashMap<>();
        rows.forEach(row -> counts.merge(row.size(), 1, Integer::sum));
        return counts.entrySet().stream()
                .max(Map.Entry.<Integer, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .orElse(0);
    }
}
