package org.oldwood.crop;

import org.oldwood.store.Fields;

/** A record that judges what was read for it by {@link RecordReader} beyond the range of each single value. */
public interface Checked {
    /** Says by {@link Fields#wrong} what is wrong; what it says nothing of may be used. */
    void check(Fields fields);
}
