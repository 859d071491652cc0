/* The runs behind the rows of string.c. */
#ifndef CALC_STRING_RUNS_H
#define CALC_STRING_RUNS_H
#include "electrical.h"

/* string_voltage.c */
calculate run_cold_voltage, run_hot_voltage, run_longest_string, run_shortest_string;
/* string_current.c */
calculate run_source_current, run_parallel_fusing, run_converter_string, run_microinverter_branch;
/* string_methods_voltage.c */
calculate run_string_cold_voltage, run_string_maximum_voltage, run_string_hot_voltage,
    run_string_converter_voltage, run_module_model_cold_voltage;
/* string_methods.c */
calculate run_string_module_count, run_string_power, run_string_short_circuit_current,
    run_string_source_current, run_string_operating_current, run_string_converter_count,
    run_string_converter_power, run_string_backfeed_current, run_string_held_voltage;
/* inverter.c */
calculate run_branch_count, run_branch_output_current, run_inverter_output_current,
    run_inverter_input_current, run_inverter_short_circuit_current, run_inverter_string_count,
    run_inverter_array_power;

/* How voltage at maximum power falls in the heat. */
struct hot_case {
    double voltage;            /* V at standard test conditions */
    double high;               /* °C of the cells */
    bool has_share, has_volts; /* which coefficients are told; the share is preferred */
    double share;              /* 1/°C */
    double volts;              /* V/°C */
};
bool find_hot_voltage(double *volts, const struct hot_case *given, struct working *working);

/* string_modules.c */
/* Modules of one model in a string or elsewhere. */
struct module_group {
    const struct object *model;
    double count;
};
/* The modules of a thing, by model, in order; `slot` holds them. */
bool find_module_groups(struct module_group **groups, size_t *count, const struct object *thing,
                        unsigned slot, struct working *working);
/* What a reference of an object leads to; none is a missing fact. */
bool need_model(const struct object **model, const struct object *object, unsigned slot,
                struct working *working);
/* What one model gives. */
typedef bool of_model(double *out, const struct object *model, const void *how,
                      struct working *working);
/* Sums what each model gives, over all modules of a string; and the largest of it. */
bool find_over_modules(double *sum, double *largest, const struct object *string, of_model *find,
                       const void *how, struct working *working);
/* An of_model: each counts 1. */
bool count_one(double *out, const struct object *model, const void *how, struct working *working);
/* An of_model: the struct model_fact at `how`. */
struct model_fact {
    unsigned slot;
    const char *unit;
};
bool read_model_fact(double *out, const struct object *model, const void *how,
                     struct working *working);
bool need_in(double *out, const struct object *model, unsigned slot, const char *unit,
             struct working *working);
/* The model of the string's converters; a string without is a mistake of the rule. */
bool need_converter(const struct object **model, const struct object *string,
                    struct working *working);
bool find_converter_count(double *converters, const struct object *string, struct working *working);
/* string_methods.c: the voltage at which converters hold the string. */
bool need_string_voltage(double *volts, const struct object *string, const struct object *converter,
                         struct working *working);

#endif
