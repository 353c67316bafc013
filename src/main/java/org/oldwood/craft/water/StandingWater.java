package org.oldwood.craft.water;

/**
 * Whether water stands in a bed: what runs beyond field capacity must sink away, and a slow soil under a big roof lets
 * it stand.
 */
public final class StandingWater {
    private static final int HOURS = 24;

    private StandingWater() {}

    /**
     * Days until the water is gone that stood in the bed on the last of some days.
     *
     * @param account the account
     * @param lastDay the last day to look at
     * @param back how many days to look back
     * @param intakeMmPerHour what the soil takes in, mm an hour, more than 0
     */
    public static double days(WaterDays account, int lastDay, int back, double intakeMmPerHour) {
        double sinks = intakeMmPerHour * HOURS;
        double stands = 0;
        for (int day = Math.max(0, lastDay - back + 1); day <= lastDay; day++) {
            stands = Math.max(0, stands + account.drained(day) - (day == lastDay ? 0 : sinks));
        }
        return stands / sinks;
    }
}
