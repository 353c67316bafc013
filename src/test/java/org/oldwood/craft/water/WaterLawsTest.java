package org.oldwood.craft.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.oldwood.craft.water.evapotranspiration.DayWeather;
import org.oldwood.craft.water.evapotranspiration.EvapotranspirationDay;
import org.oldwood.craft.water.evapotranspiration.Humidity;
import org.oldwood.craft.water.evapotranspiration.Sunshine;
import org.oldwood.craft.water.evapotranspiration.Temperatures;

/** Laws that hold for every bed in every weather; random years from a seed that jqwik reports. */
class WaterLawsTest {
    private static final LocalDate FIRST = LocalDate.of(2024, 2, 1);
    private static final int DAYS = 400;

    /** A bed, its weather and what the grower did, all from one seed. */
    private static final class Case {
        final Random random;
        final BedWater bed;
        final double[] et0 = new double[DAYS];
        final double[] rain = new double[DAYS];
        final double[] kc = new double[DAYS];
        final BedEvents events = new BedEvents();
        final double start;

        Case(long seed) {
            random = new Random(seed);
            double total = 4 + 150 * random.nextDouble();
            RoofWater roof = random.nextBoolean() ? RoofWater.NONE
                    : new RoofWater(30 * random.nextDouble(), random.nextDouble(), 0.5);
            bed = new BedWater(total, 0.1 + 0.7 * random.nextDouble(), 1 + 20 * random.nextDouble(), roof,
                    random.nextBoolean() ? 0 : 0.9 * random.nextDouble(), 1);
            start = total * random.nextDouble();
            for (int i = 0; i < DAYS; i++) {
                et0[i] = 9 * random.nextDouble();
                rain[i] = random.nextInt(4) == 0 ? 40 * random.nextDouble() : 0;
                kc[i] = 1.2 * random.nextDouble();
                if (random.nextInt(30) == 0) { events.water(i, 30 * random.nextDouble()); }
                if (random.nextInt(40) == 0) {
                    double held = random.nextDouble();
                    events.note(i, new MoistureNote(held, held, random.nextDouble()));
                }
            }
        }

        WaterDays run(double[] withRain) {
            return new WaterAccount(bed).run(Days.measured(FIRST, et0, withRain), kc, events, start);
        }

        /** FAO-56 equations 81 and 84, and never more than there is. */
        double used(WaterDays days, int day, double morning) {
            double total = bed.totalAvailableMm();
            double easy = RootZone.fraction(bed.fraction(), days.demand(day)) * total;
            double stress = Math.min(1, (total - morning) / (total - easy));
            return Math.min(stress * days.demand(day) / (1 - bed.competing()), total - morning);
        }
    }

    @Property(tries = 400)
    void the_balance_closes_every_day(@ForAll long seed) {
        Case given = new Case(seed);
        WaterDays days = given.run(given.rain);

        double[] moved = new double[DAYS];
        days.corrections().forEach(one -> moved[one.day()] += one.movedMm());
        for (int i = 0; i < DAYS; i++) {
            double morning = Days.morning(days, given.start, i);
            double evening = morning - days.gain(i) + given.used(days, i, morning) + days.drained(i) + moved[i];
            assertThat(days.depletion(i)).isCloseTo(evening, within(1e-9));
        }
    }

    @Property(tries = 400)
    void depletion_stays_between_nothing_and_all(@ForAll long seed) {
        Case given = new Case(seed);
        WaterDays days = given.run(given.rain);

        for (int i = 0; i < DAYS; i++) {
            assertThat(days.depletion(i)).isBetween(0.0, given.bed.totalAvailableMm() + 1e-12);
            assertThat(days.drained(i)).isNotNegative();
        }
    }

    @Property(tries = 400)
    void more_rain_never_leaves_less_water(@ForAll long seed, @ForAll @IntRange(max = DAYS - 1) int day) {
        Case given = new Case(seed);
        double[] wetter = given.rain.clone();
        wetter[day] += 25 * new Random(seed + 1).nextDouble();

        WaterDays less = given.run(given.rain);
        WaterDays more = given.run(wetter);

        for (int i = 0; i < DAYS; i++) {
            assertThat(more.depletion(i)).isLessThanOrEqualTo(less.depletion(i) + 1e-9);
        }
    }

    @Property
    void a_litre_on_a_square_metre_is_a_millimetre_in_the_account(
            @ForAll @DoubleRange(min = 0.1, max = 500) double litres,
            @ForAll @DoubleRange(min = 0.2, max = 60) double ground) {
        BedWater bed = new BedWater(120, 0.5, ground, RoofWater.NONE, 0, 1);
        BedEvents events = new BedEvents();
        events.water(0, RootZone.millimetres(litres, ground));
        WeatherSeries still = Days.measured(FIRST, new double[1], new double[1]);

        WaterDays days = new WaterAccount(bed).run(still, new double[1], events, 120);

        double taken = RootZone.litres(120 - days.depletion(0) + days.drained(0), ground);
        assertThat(taken).isCloseTo(litres, within(1e-6));
        assertThat(Dose.toRefill(days.depletion(0), ground, 1).litres()).isCloseTo(Math.max(0, 120 * ground - litres),
                within(1e-6));
        assertThat(new RoofWater(ground, 1, 0).litres(1)).isCloseTo(ground, within(1e-12));
    }

    @Property
    void litres_are_never_negative(@ForAll @DoubleRange(min = -50, max = 200) double depletion,
            @ForAll @DoubleRange(min = 0.1, max = 1000) double area, @ForAll @IntRange(min = 1, max = 300) int plants) {
        Dose dose = Dose.toRefill(depletion, area, plants);

        assertThat(dose.litres()).isNotNegative();
        assertThat(dose.litresEach() * plants).isCloseTo(dose.litres(), within(1e-6));
        assertThat(dose.litres()).isCloseTo(dose.mm() * area, within(1e-6));
    }

    @Property
    void rain_counts_whole_or_not_at_all(@ForAll @DoubleRange(max = 60) double rain,
            @ForAll @DoubleRange(max = 12) double et0) {
        assertThat(EffectiveRain.daily(rain, et0)).isIn(0.0, rain);
        assertThat(EffectiveRain.monthly(rain * 10)).isBetween(0.0, rain * 10);
    }

    @Property
    void a_note_moves_the_account_towards_it_and_never_past(@ForAll @DoubleRange(max = 1) double held,
            @ForAll @DoubleRange(min = 0.01, max = 0.5) double noteSpread,
            @ForAll @DoubleRange(min = 0.01, max = 0.5) double accountSpread,
            @ForAll @DoubleRange(max = 1) double start) {
        BedEvents events = new BedEvents();
        MoistureNote note = MoistureNote.weighed(held, held, noteSpread, accountSpread);
        events.note(0, note);
        BedWater bed = new BedWater(60, 0.5, 4, RoofWater.NONE, 0, 1);
        WeatherSeries still = Days.measured(FIRST, new double[1], new double[1]);

        double after = new WaterAccount(bed).run(still, new double[1], events, 60 * (1 - start)).heldShare(0);

        assertThat(note.weight()).isBetween(0.0, 1.0);
        assertThat(after).isBetween(Math.min(start, held) - 1e-9, Math.max(start, held) + 1e-9);
    }

    @Property
    void the_coefficient_stays_between_its_least_and_greatest(@ForAll @IntRange(max = 400) int day,
            @ForAll @IntRange(min = 1, max = 90) int rise, @ForAll @IntRange(min = 1, max = 90) int level,
            @ForAll @IntRange(min = 1, max = 90) int fall) {
        double kc = new CropCoefficient(0.3, 1.05, 0.5).on(day, 50, 50 + rise, 50 + rise + level,
                50 + rise + level + fall);

        assertThat(kc).isBetween(0.3, 1.05);
    }

    @Property
    void mulch_and_shade_never_raise_the_demand(@ForAll @DoubleRange(max = 1) double cover,
            @ForAll @DoubleRange(max = 1) double mulch, @ForAll @DoubleRange(max = 1) double shade) {
        double open = BedDemand.coefficient(cover, 1, 1.05, 1.0, 0.3);

        double covered = BedDemand.coefficient(cover, mulch, 1.05, 1.0, 0.3);

        assertThat(covered * BedDemand.shadeFactor(shade, 0.5)).isBetween(0.0, open + 1e-12);
    }

    @Property
    void every_latitude_and_day_has_a_finite_evapotranspiration(
            @ForAll @DoubleRange(min = -90, max = 90) double latitude, @ForAll @IntRange(min = 1, max = 366) int day,
            @ForAll @DoubleRange(min = -40, max = 34) double tmin, @ForAll @DoubleRange(max = 25) double range) {
        EvapotranspirationDay one = EvapotranspirationDay.of(latitude, 100, day, Temperatures.only(tmin, tmin + range),
                0);

        assertThat(one.penmanMonteith()).isFinite().isNotNegative();
        assertThat(one.hargreaves()).isFinite().isNotNegative();
    }

    @Property
    void more_sun_never_lowers_it(@ForAll @DoubleRange(max = 8) double wind, @ForAll @DoubleRange(max = 7) double sun) {
        assertThat(brussels(wind, sun + 1)).isGreaterThanOrEqualTo(brussels(wind, sun) - 1e-9);
    }

    private static double brussels(double wind, double sun) {
        DayWeather day = new DayWeather(12.3, 21.5, Humidity.of(OptionalDouble.of(63), OptionalDouble.of(84)),
                OptionalDouble.of(wind), new Sunshine(OptionalDouble.of(sun), OptionalDouble.empty(), false));
        return EvapotranspirationDay.of(50.8, 100, 187, day, 0).penmanMonteith();
    }
}
