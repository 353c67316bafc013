package org.oldwood.craft.water.evapotranspiration;

import java.time.LocalDate;
import org.oldwood.season.Climate;
import org.oldwood.season.MeanCurve;

/** The lowest and highest temperature of a climate's mean day, day by day, °C. */
public final class MeanTemperatures {
    private static final int FEBRUARY_29 = 60;

    private final MeanCurve lowest;
    private final MeanCurve highest;

    public MeanTemperatures(Climate climate) {
        lowest = MeanCurve.through(climate.meanMinC());
        highest = MeanCurve.through(climate.meanMaxC());
    }

    public double lowest(LocalDate date) {
        return lowest.on(dayOfMeanYear(date));
    }

    public double highest(LocalDate date) {
        return highest.on(dayOfMeanYear(date));
    }

    /** 0 for 1 January of a year of 365; 29 February shares the day before. */
    private static int dayOfMeanYear(LocalDate date) {
        int day = date.getDayOfYear();
        return date.isLeapYear() && day >= FEBRUARY_29 ? day - 2 : day - 1;
    }
}
