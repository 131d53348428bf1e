package org.moultwright.exchange;

/** What may stand in a file of records, each led by its kind. Only the build that wrote one reads it. */
enum RecordKind {
    /** Something that stood in the file before. */
    AGAIN,
    TEXT,
    INTEGER,
    REAL,
    INSTANT,
    ID,
    ZONE,
    /** An optional value that is not there. */
    NOTHING,
    /** An optional value that is there. */
    SOMETHING,
    LIST,
    MAP,
    /** One of an enumeration. */
    CHOICE,
    LEDGER,
    RECORD
}
