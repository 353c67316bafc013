package org.oldwood.season.weather;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.store.Problems;

/** The quick way through a plain weather file reads what the long one reads, or leaves it. */
class PlainDaysTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @Test
    void reads_the_same_days_as_the_long_way() {
        StringBuilder text = new StringBuilder("date,tmin,tmax,rain\n");
        Random random = new Random(3);
        LocalDate day = LocalDate.of(2023, 12, 1);
        for (int i = 0; i < 500; i++, day = day.plusDays(1 + random.nextInt(3))) {
            int least = (int) (random.nextGaussian() * 1000);
            text.append(day).append(',').append(cell(random, least));
            text.append(',').append(cell(random, least + 800));
            text.append(',').append(cell(random, random.nextInt(3000)));
            text.append(i % 7 == 0 ? "\r\n" : "\n");
        }

        assertThat(PlainDays.read(bytes(text.toString()), TODAY).orElseThrow())
                .isEqualTo(theLongWay(text.toString()).days());
    }

    private static String cell(Random random, int hundredths) {
        return random.nextInt(9) == 0 ? "" : Double.toString(hundredths / 100.0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "date;tmin;tmax;rain\n2026-01-01;1;2;3\n",
                "date,tmax,tmin,rain\n2026-01-01,1,2,3\n",
                "date,tmin,tmax,rain\n",
                "date,tmin,tmax,rain\n2026-02-30,1,2,3\n",
                "date,tmin,tmax,rain\n20260101,1,2,3\n",
                "date,tmin,tmax,rain\n2026-01-02,1,2,3\n2026-01-01,1,2,3\n",
                "date,tmin,tmax,rain\n2026-01-01,1,2,3\n2026-01-01,1,2,3\n",
                "date,tmin,tmax,rain\n2026-01-01,9,2,3\n",
                "date,tmin,tmax,rain\n2026-01-01,1,2,-3\n",
                "date,tmin,tmax,rain\n2026-01-01,1,99.9,3\n",
                "date,tmin,tmax,rain\n2026-01-01,-999,2,3\n",
                "date,tmin,tmax,rain\n2026-01-01,1,2\n",
                "date,tmin,tmax,rain\n2026-01-01,1,2,3,4\n",
                "date,tmin,tmax,rain\n2026-01-01,1.2.3,2,3\n",
                "date,tmin,tmax,rain\n2026-01-01,1e1,20,3\n",
                "date,tmin,tmax,rain\n2026-01-01,NA,20,3\n",
                "date,tmin,tmax,rain\n2026-01-01,-,20,3\n",
                "date,tmin,tmax,rain\n2026-01-01,1,20.123456789,3\n",
                "date,tmin,tmax,rain\n# from the station\n2026-01-01,1,20,3\n",
                "date,tmin,tmax,rain\n\n2026-01-01,1,20,3\n",
                "date,tmin,tmax,rain\n2026-11-26,1,20,3\n",
                "date,tmin,tmax,rain\n2026-01-01,41,56,3\n",
                "\uFEFFdate,tmin,tmax,rain\n2026-01-01,1,20,3\n",
                ""
            })
    void leaves_all_that_is_not_plain_to_the_long_way(String text) {
        assertThat(PlainDays.read(bytes(text), TODAY)).isEmpty();
    }

    @Test
    void a_file_may_end_without_a_line_end() {
        String text = "date,tmin,tmax,rain\n2026-01-01,-1.5,20,0";

        assertThat(PlainDays.read(bytes(text), TODAY).orElseThrow())
                .isEqualTo(theLongWay(text).days());
    }

    private static Weather theLongWay(String text) {
        Problems problems = new Problems();
        Weather weather = WeatherReader.readAnyFormat(bytes(text), "weather.csv", TODAY, problems)
                .orElseThrow()
                .weather();
        assertThat(problems.list()).isEmpty();
        return weather;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
