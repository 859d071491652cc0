#include "parts.h"

#include <math.h>
#include <string.h>

#include "page.h"
#include "unit.h"

enum { DIGITS = 12 };

json_t *json_whole(json_t *value, bool is_whole)
{
    if (is_whole && value != NULL)
        return value;
    json_decref(value);
    return NULL;
}

static int add_dumped(const char *bytes, size_t length, void *out)
{
    text_add(out, bytes, length);
    return ((struct text *)out)->is_short ? -1 : 0;
}

/* Straight to where it stands; what finds no room is written again into as much as it needs. */
static bool write_piece(struct text *out, const json_t *value, size_t flags)
{
    enum { USUAL = 8 * 1024 };
    for (size_t wanted = USUAL;;) {
        char *to = text_room(out, wanted);
        if (to == NULL)
            return false;
        size_t room = out->capacity - out->length - 1, size = json_dumpb(value, to, room, flags);
        if (size <= room) {
            to[size] = '\0';
            out->length += size;
            return size > 0;
        }
        wanted = size;
    }
}

/* What is compact is one of many pieces of a line; else it is a whole report, which nobody wants to
 * write twice. */
bool json_write(struct text *out, json_t *value, size_t flags)
{
    bool is_piece = flags & JSON_COMPACT;
    flags |= JSON_REAL_PRECISION(DIGITS);
    bool is_written =
        value != NULL && (is_piece ? write_piece(out, value, flags)
                                   : json_dump_callback(value, add_dumped, out, flags) == 0);
    json_decref(value);
    return is_written && !out->is_short;
}

bool json_put(json_t *object, const char *key, json_t *value)
{
    return json_object_set_new_nocheck(object, key, value) == 0;
}

bool json_push(json_t *array, json_t *value)
{
    return json_array_append_new(array, value) == 0;
}

json_t *json_text(const char *text)
{
    if (text == NULL)
        return json_null();
    if (text_is_utf8(text, strlen(text), NULL))
        return json_string_nocheck(text);
    struct text clean = {0};
    text_add_printable(&clean, text, strlen(text));
    json_t *value = clean.is_short ? NULL : json_string(clean.bytes);
    text_free(&clean);
    return value;
}

json_t *json_number(double number)
{
    char digits[40];
    double rounded = 0;
    if (!isfinite(number))
        return json_null();
    number_write(digits, sizeof digits, number);
    if (!number_read(&rounded, digits, strlen(digits)))
        rounded = 0; /* too small to hold its digits */
    if (rounded == floor(rounded) && fabs(rounded) < 1e15)
        return json_integer((json_int_t)rounded);
    return json_real(rounded);
}

json_t *json_date(struct date date)
{
    char text[16];
    if (date.year == 0)
        return json_null();
    date_write(text, sizeof text, date);
    return json_string(text);
}

json_t *json_place(struct place place)
{
    if (place.file == NULL)
        return json_null();
    json_t *object = json_object();
    if (json_put(object, "file", json_text(place.file)) &&
        json_put(object, "line", json_integer(place.line)) &&
        json_put(object, "column", json_integer(place.column)))
        return object;
    json_decref(object);
    return NULL;
}

static bool put_quantity(json_t *object, struct quantity quantity, const struct unit *wanted)
{
    const struct unit *unit =
        wanted != NULL && dimension_is_same(wanted->dimension, quantity.dimension) ? wanted
        : quantity.unit != NULL                                                    ? quantity.unit
                                : unit_usual(quantity.dimension);
    char name[64];
    if (unit != NULL)
        return json_put(object, "value", json_number(quantity_in(quantity, unit))) &&
               json_put(object, "unit", json_text(unit->name));
    dimension_write(name, sizeof name, quantity.dimension);
    return json_put(object, "value", json_number(quantity.value)) &&
           json_put(object, "unit",
                    dimension_is_pure(quantity.dimension) ? json_null() : json_text(name));
}

static json_t *plain_value(struct amount amount)
{
    switch (amount.type) {
    case AMOUNT_NUMBER:
        return json_number(amount.quantity.value);
    case AMOUNT_YESNO:
        return json_boolean(amount.yes);
    case AMOUNT_WORD:
        return json_text(amount.word);
    case AMOUNT_DATE:
        return json_date(amount.date);
    default:
        return json_null();
    }
}

bool json_put_amount(json_t *object, struct amount amount, const struct unit *unit)
{
    if (amount.type == AMOUNT_QUANTITY)
        return put_quantity(object, amount.quantity, unit);
    return json_put(object, "value", plain_value(amount)) && json_put(object, "unit", json_null());
}

json_t *json_amount(struct amount amount, const struct unit *unit)
{
    json_t *object = json_object();
    if (json_put_amount(object, amount, unit))
        return object;
    json_decref(object);
    return NULL;
}
