package org.moultwright.device.profile;

import java.util.List;
import java.util.regex.Pattern;
import org.moultwright.language.Texts;

/**
 * Sees that the groups a profile's values are taken from are in its patterns. A misspelt one would never be
 * looked at: a check that is never made, a channel that is never told.
 */
final class GroupCheck {
    private final ProfileText text;

    GroupCheck(ProfileText text) {
        this.text = text;
    }

    void check(List<Pattern> records, ProfileFile.Values values) {
        if (records.isEmpty()) {
            text.problem(0, Texts.say("there is no 'record: ' pattern"));
        }
        if (!records.stream().allMatch(record -> Groups.has(record, Channel.TEMPERATURE))) {
            text.problem(0, Texts.say("a 'record: ' pattern has no group (?<temperature>...)"));
        }
        values.humidity().ifPresent(channel -> mustHave(records, channel.name()));
        for (CheckRule rule : values.checks()) {
            mustHave(records, rule.over());
            rule.in().ifPresent(group -> mustHave(records, group));
        }
    }

    private void mustHave(List<Pattern> records, String group) {
        if (records.stream().noneMatch(record -> Groups.has(record, group))) {
            text.problem(0, Texts.say("no 'record: ' pattern has a group (?<{0}>...)", group));
        }
    }
}
