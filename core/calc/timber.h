/* calc: what the calculators of connections and of framing share. Inches, pounds and psi inside. */
#ifndef CALC_TIMBER_H
#define CALC_TIMBER_H
#include "beam.h"
#include "parameter.h"
#include "wood.h"

/* Rows that many of them share. */
#define GIVEN_DURATION                                                                             \
    GIVEN_WORD("load_duration", wood_duration_loads,                                               \
               "Shortest-lasting load of the combination: its CD counts.")
#define MAYBE_WET                                                                                  \
    MAYBE_YESNO("wet_service", "Is the wood above 19 % moisture in service? Absent: dry.")
#define MAYBE_TEMPERATURE                                                                          \
    MAYBE_QUANTITY("temperature", TEMPERATURE, "°F", -60, 200,                                     \
                   "Sustained temperature of the wood under full load. Absent: at most 100 °F.")
#define MAYBE_SPECIES                                                                              \
    MAYBE_WORD("species", words_for_species, "Wood species combination; or give specific_gravity.")
#define MAYBE_GRAVITY                                                                              \
    MAYBE_NUMBER("specific_gravity", 0.31, 0.73, "Specific gravity; or give species.")

/* In SI: inch and pound-force, exact by definition (see the table of units). */
#define TIMBER_INCH        0.0254
#define TIMBER_POUND_FORCE (0.45359237 * 9.80665)

/* A length fact that is needed, in inches. */
bool timber_need_inches(double *out, const struct object *object, unsigned slot,
                        struct working *working);
/* How the wood is used. A wet member is above 19 % moisture. */
struct timber_service {
    const struct wood_duration *duration;
    bool is_wet;
    double temperature; /* °F, sustained; NAN: not given, taken as at most 100 °F */
};

/* Takes load_duration, wet_service and temperature from inputs; says what it takes where one of the
 * last two is not given. False: sustained temperature above 150 °F, which is beyond the tables. */
bool timber_service_take(struct timber_service *out, struct amount duration, struct amount wet,
                         struct amount temperature, struct working *working);

/* The species' or the stated specific gravity: exactly one of the inputs is to be given. */
bool timber_gravity(double *out, struct amount species, struct amount gravity,
                    struct working *working);

/* CM and Ct of connections with lag and wood screws. */
double timber_wet_factor(const struct timber_service *service);
double timber_temperature_factor(const struct timber_service *service);

enum timber_fastener { TIMBER_LAG, TIMBER_WOOD_SCREW };

/* Withdrawal of one fastener from side grain or end grain. */
struct timber_withdrawal {
    enum timber_fastener fastener;
    double gravity, diameter, penetration; /* of the thread, tip left out; in */
    bool is_end_grain;
    struct timber_service service;
    /* Results */
    double reference, adjusted; /* lbf per in of thread */
    double least;               /* least penetration that counts, in */
    double capacity;            /* lbf; 0 below the least penetration */
};

bool timber_withdraw(struct timber_withdrawal *withdrawal, struct working *working);

/* How much thread stands in the member. */
struct timber_thread {
    enum timber_fastener fastener;
    bool is_other; /* neither lag nor wood screw: thread and tip must be given */
    double diameter, length;
    double above;       /* between head and member: fixture, covering, sheathing */
    double thread;      /* length of thread with its tip; NAN: by the fastener's proportions */
    double tip;         /* NAN: by the table */
    double member;      /* depth of the member; NAN: deeper than the point */
    double penetration; /* result: thread in the member, tip left out */
};

bool timber_thread_take(struct timber_thread *thread, struct working *working);

/* Lateral value of one lag or wood screw through a metal plate, single shear. */
struct timber_lateral {
    enum timber_fastener fastener;
    double gravity, diameter;
    double plate;   /* its thickness, in */
    double bearing; /* its dowel bearing strength, psi; NAN: steel, by its thickness */
    double penetration;
    bool is_parallel; /* load along the grain of the member */
    struct timber_service service;
    /* Results */
    const char *mode;           /* the yield mode that governs */
    double reference, capacity; /* lbf */
};

bool timber_lateral_take(struct timber_lateral *lateral, struct working *working);

/* A member: design values adjusted for its use. */
struct timber_member {
    const char *species, *grade, *size;
    double spacing; /* in */
    bool is_wet;
    bool by_code_tables;                  /* the older Fb that the codes' span tables rest on */
    const struct wood_duration *duration; /* NULL: only the stiffness is asked for */
    /* Results */
    const struct wood_section *section;
    double bending, shear, elasticity; /* F'b, F'v, E', psi */
};

/* False: beyond (no sourced values), or wrong. Writes the steps. */
bool timber_member_take(struct timber_member *member, struct working *working);
/* 3V/2bd, psi. */
double timber_shear_stress(const struct wood_section *section, double shear);

#endif
