#include "book.h"
#include <stdio.h>
#include <string.h>

/* "one-way, two-way" for an error. */
static void list_words(char *buffer, size_t size, const char *const *words)
{
    size_t used = 0;
    buffer[0] = '\0';
    for (size_t i = 0; words[i] && used < size; i++)
        used += (size_t)snprintf(buffer + used, size - used, "%s%s", i > 0 ? ", " : "", words[i]);
}

static bool refuse(struct quantity_fault *fault, const char *code, const char *before,
                   const char *list)
{
    *fault = (struct quantity_fault){.code = code};
    snprintf(fault->message, sizeof fault->message, "%s%s", before, list);
    return false;
}

static bool read_word(struct amount *out, const struct declaration *declaration, const char *text,
                      struct quantity_fault *fault)
{
    char list[160];
    for (size_t i = 0; declaration->words[i]; i++) {
        if (strcmp(declaration->words[i], text) == 0) {
            *out = amount_of_word(declaration->words[i]);
            return true;
        }
    }
    list_words(list, sizeof list, declaration->words);
    return refuse(fault, "word-unknown", "one of these words is needed: ", list);
}

static bool read_yesno(struct amount *out, const char *text, struct quantity_fault *fault)
{
    bool is_yes = strcmp(text, "yes") == 0;
    if (!is_yes && strcmp(text, "no") != 0)
        return refuse(fault, "yes-no-needed", "yes or no is needed", "");
    *out = amount_of_yesno(is_yes);
    return true;
}

bool declaration_read_amount(struct amount *out, const struct declaration *declaration,
                             const char *text, struct quantity_fault *fault)
{
    struct quantity quantity;
    struct dimension want = measure_dimension(PURE_NUMBER);
    *out = (struct amount){.type = AMOUNT_NONE};
    switch (declaration->type) {
    case AMOUNT_WORD:
        return read_word(out, declaration, text, fault);
    case AMOUNT_YESNO:
        return read_yesno(out, text, fault);
    case AMOUNT_QUANTITY:
        want = measure_dimension(declaration->measure);
        break;
    case AMOUNT_NUMBER:
        break;
    case AMOUNT_NONE:
    case AMOUNT_DATE:
        return true;
    }
    if (!quantity_read(&quantity, text, strlen(text), want, fault))
        return false;
    if (declaration->type == AMOUNT_NUMBER) {
        *out = amount_of_number(quantity.value);
        return true;
    }
    quantity.written = text;
    *out = amount_of_quantity(quantity);
    return true;
}

/* One right value of each dimension, as the trade writes it. */
static const char *quantity_example(enum measure measure)
{
    static const char *const examples[MEASURE_COUNT] = {[PURE_NUMBER] = "0.33",
                                                        [LENGTH] = "18 in",
                                                        [AREA] = "120 ft²",
                                                        [VOLUME] = "7.56 in³",
                                                        [SECOND_MOMENT] = "20.8 in⁴",
                                                        [MASS] = "40 lb",
                                                        [TIME] = "30 s",
                                                        [CURRENT] = "20 A",
                                                        [TEMPERATURE] = "-10 °C",
                                                        [TEMPERATURE_DIFFERENCE] = "30 °C",
                                                        [ANGLE] = "2/12",
                                                        [SPEED] = "115 mph",
                                                        [FORCE] = "500 lbf",
                                                        [LINE_LOAD] = "20 lbf/ft",
                                                        [PRESSURE] = "40 psf",
                                                        [WEIGHT_DENSITY] = "35 pcf",
                                                        [MOMENT] = "800 lbf·ft",
                                                        [VOLTAGE] = "600 V",
                                                        [POWER] = "10 kW",
                                                        [RESISTANCE] = "25 Ω",
                                                        [LINE_RESISTANCE] = "1.24 Ω/kft",
                                                        [ENERGY] = "20 kWh",
                                                        [CHARGE] = "100 Ah",
                                                        [FREQUENCY] = "60 Hz",
                                                        [PER_TEMPERATURE] = "-0.27 %/°C",
                                                        [VOLTAGE_PER_TEMPERATURE] = "-0.12 V/°C",
                                                        [CURRENT_PER_TEMPERATURE] = "0.005 A/°C"};
    return examples[measure] ? examples[measure] : "18 in";
}

const char *declaration_example(const struct declaration *declaration)
{
    switch (declaration->type) {
    case AMOUNT_QUANTITY:
        return quantity_example(declaration->measure);
    case AMOUNT_YESNO:
        return "yes";
    case AMOUNT_WORD:
        return declaration->words[0] ? declaration->words[0] : "a word";
    case AMOUNT_NUMBER:
    case AMOUNT_NONE:
    case AMOUNT_DATE:
        break;
    }
    return "0.33";
}

const struct amount *value_at_elevation(const struct value *value, struct quantity elevation)
{
    struct quantity_fault fault;
    if (value->state != VALUE_IN_FORCE)
        return NULL;
    if (!value->entry->bands)
        return &value->is;
    for (size_t i = 0; i < value->entry->band_count; i++) {
        const struct band *band = &value->entry->bands[i];
        int order = 0;
        if (quantity_compare(&order, elevation, band->up_to, &fault) && order <= 0)
            return band->said.is.type == AMOUNT_NONE ? NULL : &band->said.is;
    }
    return NULL;
}
