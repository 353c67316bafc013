package org.oldwood.crop;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** What {@link RecordReader} must know of a component beside its name and type. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Key {
    /** The key, where it is not the component's name; {@link #HERE} for a record whose keys stand among the others. */
    String value() default "";

    /** The least number that is allowed. */
    double least() default -1e9;

    /** The greatest number that is allowed. */
    double most() default 1e9;

    /** The number where the key is absent; without it the key must be there. */
    double otherwise() default Double.NaN;

    /** The words of which a text must be one. */
    String[] words() default {};

    /** True of a text that is empty where the key is absent. */
    boolean maybe() default false;

    String HERE = ".";
}
