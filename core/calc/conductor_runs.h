/* The runs behind the rows of conductor.c, and where their inputs stand. */
#ifndef CALC_CONDUCTOR_RUNS_H
#define CALC_CONDUCTOR_RUNS_H
#include "electrical.h"

/* Inputs that the ampacity calculators have in common, in this order, then their own. */
enum {
    AMPACITY_SIZE, /* of all but smallest_conductor, which has the current here */
    AMPACITY_MATERIAL,
    AMPACITY_INSULATION,
    AMPACITY_AMBIENT,
    AMPACITY_CONDUCTORS,
    AMPACITY_TERMINAL,
    AMPACITY_ENVIRONMENT,
    AMPACITY_HEIGHT,
    AMPACITY_EDITION,
    AMPACITY_INSULATION_TYPE,
    AMPACITY_SETS,
    AMPACITY_OWN,
};

/* conductor_ampacity.c */
calculate run_ampacity, run_terminal_ampacity, run_corrected_ampacity, run_smallest_conductor;
/* conductor_ocpd.c */
calculate run_ocpd_up, run_ocpd_down, run_largest_ocpd_for;
/* conductor_drop.c */
calculate run_dc_voltage_drop, run_ac_voltage_drop;
/* conductor_place.c */
calculate run_conduit_fill, run_egc_size, run_gec_size, run_dwelling_conductor, run_conductor_area;
/* circuit.c */
calculate run_circuit_design_current, run_circuit_largest_voltage, run_circuit_corrected_ampacity,
    run_circuit_terminal_ampacity, run_circuit_usable_ampacity, run_circuit_needed_ocpd,
    run_circuit_largest_ocpd, run_circuit_smallest_size, run_circuit_needed_egc,
    run_circuit_voltage_drop;
/* circuit_raceway.c */
calculate run_circuit_carrying_conductors, run_circuit_fill, run_circuit_fill_limit;

/* Volts lost on a circuit; see the calculators of the same names. */
struct drop_case {
    double amperes, feet, sets;
    const char *size, *material;
    bool is_solid, is_coated;  /* dc */
    const char *wiring_method; /* ac */
    double power_factor;       /* ac */
    bool is_three_phase;       /* ac */
};
bool find_dc_drop(double *volts, const struct drop_case *given, struct working *working);
bool find_ac_drop(double *volts, const struct drop_case *given, struct working *working);

/* A fact in a unit. */
bool need_quantity_in(double *out, const struct object *circuit, unsigned slot, const char *unit,
                      struct working *working);
/* Is a circuit of this role one of direct current? */
bool is_dc_role(const char *role);
/* Current-carrying conductors in a circuit's raceway: the largest count told by a circuit in it, or
 * all that these bring. */
bool find_carrying_conductors(double *count, const struct object *circuit, struct working *working);

/* Cross-section in in² of conductors of one kind: by Table 5, or by a diameter in in (0: none). */
bool find_conductor_area(double *area, const char *size, const char *insulation, double diameter,
                         struct working *working);

#endif
