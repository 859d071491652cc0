/* Dates: the calendar, and nothing that is not in it. */
#include "check.h"
#include "date.h"

static bool can_read(const char *text)
{
    struct date date;

    return date_read(&date, text, strlen(text));
}

static void check_refused(void)
{
    static const char *const texts[] = {
        "",           "2026",       "2026-7-1",    "2026-07-1",  "2026-07-01 ", " 2026-07-01",
        "2026/07/01", "20260701",   "01-07-2026",  "2026-00-01", "2026-13-01",  "2026-07-00",
        "2026-07-32", "2026-04-31", "2026-02-29",  "1900-02-29", "2100-02-29",  "1899-12-31",
        "3000-01-01", "+026-07-01", "2026-07-0\n", "2026--7-01", "2O26-07-01",  "-026-07-01",
    };

    for (size_t i = 0; i < sizeof texts / sizeof texts[0]; i++)
        CHECK(!can_read(texts[i]), texts[i]);
    CHECK(!can_read("2026-07-01x"), "nothing may stand behind a date");
    struct date date;
    CHECK(!date_read(&date, "2026-07-01", 9), "the length counts, not the NUL");
}

/* Every day from 1900 to 2999, one after the other: read, written, in order, and as many as there
 * are. */
static void check_every_day(void)
{
    struct date before = {0}, date;
    char text[40], again[16];
    int days = 0;
    bool is_right = true;

    for (int year = 1900; year <= 2999; year++)
        for (int month = 1; month <= 12; month++)
            for (int day = 1; day <= 31; day++) {
                snprintf(text, sizeof text, "%04d-%02d-%02d", year, month, day);
                if (!date_read(&date, text, 10))
                    continue;
                date_write(again, sizeof again, date);
                is_right = is_right && strcmp(text, again) == 0 &&
                           date_compare(before, date) == -1 && date_compare(date, before) == 1 &&
                           date_compare(date, date) == 0;
                before = date;
                days++;
            }
    CHECK(is_right, "every day is read, written the same and later than the one before");
    /* 1100 years: 365 days each, 275 divisible by 4, less 11 centuries, plus 2000, 2400, 2800. */
    CHECK(days == 1100 * 365 + 275 - 11 + 3, "no day is missing and none too many");
}

int main(void)
{
    struct date date;

    CHECK(date_read(&date, "2026-07-01", 10), "a day of the calendar");
    CHECK(date.year == 2026 && date.month == 7 && date.day == 1, "is year, month and day");
    CHECK(can_read("2024-02-29") && can_read("2000-02-29"), "leap days");
    check_refused();
    check_every_day();
    return checks_end();
}
