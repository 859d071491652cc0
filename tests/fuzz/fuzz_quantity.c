/* Quantities, dates and numbers: what is read is finite, of the dimension wanted, and reads again
 * as it prints. */
#include "date.h"
#include "entry.h"
#include "quantity.h"
#include "text.h"

static void check_same(struct quantity a, struct quantity b)
{
    double larger = a.value < 0 ? -a.value : a.value, apart = a.value - b.value;
    MUST(dimension_is_same(a.dimension, b.dimension));
    MUST((apart < 0 ? -apart : apart) <= 1e-9 * larger + 1e-300);
}

static void check_quantity(struct quantity one, struct dimension want)
{
    struct quantity again;
    struct quantity_fault fault;
    char text[160], short_text[160];
    MUST(one.value - one.value == 0 && dimension_is_same(one.dimension, want));
    quantity_write(text, sizeof text, one, NULL, 12);
    quantity_write(short_text, sizeof short_text, one, NULL, 3);
    if (!quantity_read(&again, text, strlen(text), want, &fault)) {
        fprintf(stderr, "prints as '%s': %s\n", text, fault.message);
        MUST(strcmp(fault.code, "range") == 0);
        return;
    }
    check_same(one, again);
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length)
{
    struct quantity one;
    struct quantity_fault fault;
    struct date date;
    double number;
    if (length < 1)
        return 0;
    const char *text = (const char *)bytes + 1;
    struct dimension want = measure_dimension((enum measure)(bytes[0] % MEASURE_COUNT));
    length--;
    if (quantity_read(&one, text, length, want, &fault))
        check_quantity(one, want);
    else
        MUST(fault.code != NULL && fault.message[0] != '\0' && fault.offset <= length &&
             memchr(fault.message, '\0', sizeof fault.message) != NULL);
    if (quantity_read_any(&one, text, length, &fault))
        MUST(one.value - one.value == 0);
    if (date_read(&date, text, length)) {
        char written[16];
        date_write(written, sizeof written, date);
        MUST(length == strlen(written) && memcmp(written, text, length) == 0);
    }
    if (number_read(&number, text, length))
        MUST(number - number == 0);
    return 0;
}
