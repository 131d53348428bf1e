package org.moultwright.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.moultwright.language.Texts;
import org.moultwright.workflow.SitterSheet.Tray;

/** The trays of a sheet that has too little room for a row each. */
final class SitterRows {
    private SitterRows() {}

    /** One row for all trays of a box in which the same may happen, in the order of the first of them. */
    static List<Tray> byBox(List<Tray> trays) {
        Map<List<String>, List<Tray>> alike = new LinkedHashMap<>();
        trays.forEach(tray -> alike.computeIfAbsent(List.of(tray.place(), tray.expected()), none -> new ArrayList<>())
                .add(tray));
        return alike.values().stream().map(SitterRows::together).toList();
    }

    /** The first rows, and at their end a row that says how many trays more there are. */
    static List<Tray> cut(List<Tray> trays, List<Tray> rows, int count) {
        List<Tray> kept = new ArrayList<>(rows.subList(0, count));
        List<Tray> left = rows.subList(count, rows.size());
        int more = trays.size() - kept.stream().mapToInt(SitterRows::size).sum();
        Map<String, Integer> byPlace = new LinkedHashMap<>();
        left.forEach(row -> byPlace.merge(row.place(), size(row), Integer::sum));
        String places = byPlace.entrySet().stream()
                .filter(place -> !place.getKey().isEmpty())
                .map(place -> Texts.say("{0} in {1}", place.getValue(), place.getKey()))
                .collect(Collectors.joining(", "));
        kept.add(
                new Tray(
                        Texts.say("and {0} more", more),
                        places,
                        Texts.say(
                                "There is no room for them on this page. Look at them just as well, and ask the keeper about them.")));
        return kept;
    }

    private static Tray together(List<Tray> alike) {
        Tray first = alike.get(0);
        return alike.size() == 1
                ? first
                : new Tray(
                        alike.stream().map(Tray::code).collect(Collectors.joining(", ")),
                        first.place(),
                        first.expected());
    }

    private static int size(Tray row) {
        return row.code().split(", ", -1).length;
    }
}
