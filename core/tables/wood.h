/* tables: what wood carries, as published figures. Units are the tables' own: inch, pound, psi. */
#ifndef TABLES_WOOD_H
#define TABLES_WOOD_H
#include <stdbool.h>
#include <stddef.h>

/* A species combination as lumber is graded and sold. */
struct wood_species {
    const char *name;
    double gravity;             /* specific gravity for connections, oven dry */
    double shear;               /* Fv, psi, dimension lumber; from memory */
    const char *gravity_source; /* of the gravity */
};

/* By name; NULL: not in the table. */
const struct wood_species *wood_species_find(const char *name);

/* Dressed size of a nominal 2-inch member: actual width and depth, in. */
struct wood_section {
    const char *size;
    double width, depth;
    double size_factor; /* CF in bending for species that take one */
};

const struct wood_section *wood_section_find(const char *size);
/* in², in³, in⁴ about the strong axis: bd, bd²/6, bd³/12. */
double wood_section_area(const struct wood_section *section);
double wood_section_modulus(const struct wood_section *section);
double wood_section_second_moment(const struct wood_section *section);

/* Reference design values of visually graded dimension lumber, psi. */
struct wood_value {
    const char *species, *grade;
    const char *size;       /* NULL: any size, times its size factor */
    double bending;         /* Fb, current supplement */
    double bending_in_code; /* Fb from which the span tables of the codes are made */
    double elasticity;      /* E */
    const char *source;
};

/* NULL: no sourced value for that species, grade and size. */
const struct wood_value *wood_value_find(const char *species, const char *grade, const char *size);

/* How much longer-lasting strength may be raised for a load that does not last. */
struct wood_duration {
    const char *load;
    double factor; /* CD */
    const char *source;
};

const struct wood_duration *wood_duration_find(const char *load);
/* The loads, ending in NULL. */
extern const char *const wood_duration_loads[];

/* A hex lag screw with a reduced body: root diameter and length of the tapered tip, in. */
struct wood_lag {
    double diameter, root, tip;
    const char *source;
};

/* NULL: not in the table. */
const struct wood_lag *wood_lag_find(double diameter);

/* Root diameter of a rolled-thread wood screw, in, by its number's diameter: NDS Table L3 (from
 * memory). NAN: not in the table. */
double wood_screw_root(double diameter);

/* Bending yield strength of a lag or wood screw by its diameter in in, psi: notes of NDS Tables 12K
 * and 12M (from memory; the lag screws' reproduce Table 12K). */
double wood_bending_yield(double diameter);

/* Dowel bearing strength of a steel side plate by its thickness in in, psi: notes of NDS Table 12K.
 * Gage plates are ASTM A653 grade 33; from 1/4 in on, ASTM A36 (the latter from memory). */
double wood_steel_bearing(double plate);

#endif
