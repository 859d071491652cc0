/* What the electrical calculators share with each other and with those about the service. Amperes,
 * volts, watts, °C and feet throughout. Each function returns false with working->stop set. */
#ifndef CALC_ELECTRICAL_H
#define CALC_ELECTRICAL_H
#include "ampacity.h"
#include "ocpd.h"
#include "parameter.h"

/* PV source circuits: 125 % for irradiance above 1000 W/m² (NEC 690.8(A)(1)); conductors and
 * devices of continuous current: 125 % again (690.8(B)(1), 690.9(B), 705.28, 705.30). */
#define IRRADIANCE_FACTOR 1.25
#define CONTINUOUS_FACTOR 1.25

/* "circuit breaker", "fuse"; "raceway", "free air"; ends in NULL. */
extern const char *const device_words[];
extern const char *const environment_words[];

/* An edition input; absent: 0. */
bool edition_read(int *edition, struct amount input, struct working *working);

/* Rounding that has a direction: how many of `each` stay within a limit, or reach it. */
double count_within(double limit, double each);
double count_reaching(double limit, double each);

/* Next standard size up. Edition 0: not told, asked for where the editions differ. */
bool find_ocpd_up(double *rating, double amperes, enum ocpd_device device, int edition,
                  struct working *working);
enum ocpd_device device_of(struct amount word);

struct ampacity_case {
    const char *size, *material;
    double insulation; /* °C: rating */
    double ambient;    /* °C, without the rooftop adder */
    double conductors; /* current-carrying */
    enum ampacity_environment environment;
    double height;               /* in above a roof; below 0: not on a roof */
    int edition;                 /* 0: not told */
    const char *insulation_type; /* a word of insulation, or NULL */
    double sets;                 /* conductors in parallel per pole */
    double terminal;             /* °C: lower rating of its terminals; 0: not told */
};

struct ampacity_found {
    int column;         /* 60, 75, 90 */
    double base;        /* A: the column's figure */
    double temperature; /* °C: ambient with the adder */
    double ambient_factor, count_factor;
    double corrected; /* A, all sets */
    double terminal;  /* A: the column of the terminals, all sets; 0: not told */
    double usable;    /* A: the smaller of the two */
};

bool find_ampacity(struct ampacity_found *found, const struct ampacity_case *given,
                   struct working *working);
/* The uncorrected column of Table 310.16 at the terminals' rating, not above the insulation's. */
bool find_terminal_ampacity(double *amperes, const struct ampacity_case *given,
                            struct working *working);
/* The largest standard device that protects conductors of this usable ampacity: 240.4(B) next size
 * up to 800 A, (C) none up above, (D) caps on small conductors. */
bool find_largest_ocpd(double *rating, const char *size, const char *material, double usable,
                       enum ocpd_device device, int edition, struct working *working);
/* The smallest size that carries 125 % of the current at its terminals and the current after
 * corrections, and is protected by the device (`ocpd` 0: the next size up of 125 %). */
bool find_smallest_conductor(const char **size, struct ampacity_case *given, double amperes,
                             double ocpd, enum ocpd_device device, struct working *working);

/* How open-circuit voltage rises in the cold: by a coefficient, else by Table 690.7(A). */
struct cold_case {
    double voltage;            /* V at standard test conditions */
    double low;                /* °C */
    bool has_share, has_volts; /* which coefficients are told; the share is preferred */
    double share;              /* 1/°C, negative */
    double volts;              /* V/°C, negative */
    const char *technology;    /* a word of technology, or NULL */
};
bool find_cold_voltage(double *volts, const struct cold_case *given, struct working *working);

/* Things of a design. A string's current on its conductors: 125 % of Isc, or the continuous output
 * of its converters; Isc alone; current at maximum power; its power. */
bool find_string_current(double *amperes, const struct object *string, struct working *working);
bool find_string_short_circuit(double *amperes, const struct object *string,
                               struct working *working);
bool find_string_operating_current(double *amperes, const struct object *string,
                                   struct working *working);
bool find_string_power(double *watts, const struct object *string, struct working *working);
bool find_string_converter(const struct object **model, const struct object *string,
                           struct working *working);
/* Marked continuous output current of an inverter, branch or source; of a string or combiner its
 * current as above. A panel: beyond, its loads tell. */
bool find_output_current(double *amperes, const struct object *thing, struct working *working);
/* Maximum current of a circuit by its role: NEC 690.8(A), 705.28(A). */
bool find_circuit_current(double *amperes, const struct object *circuit, struct working *working);

#endif
