package org.moultwright.workflow;

/**
 * Something read out of a room. Of one room it is worked out once, whichever thread asks first: so that it can be done
 * aside before a screen shows it. Two that are equal read the same.
 */
@FunctionalInterface
public interface RoomReading<T> {
    /** Works it out. */
    T read(RoomView room);

    /** It, worked out if it was not before. */
    default T of(RoomView room) {
        return room.worked().out(this, room);
    }
}
