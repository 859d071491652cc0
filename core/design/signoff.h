/* Sign-offs: a person with a license has judged what a rule hands to a person, for one thing of one
 * design as it then was. They stand beside the design. */
#ifndef DESIGN_SIGNOFF_H
#define DESIGN_SIGNOFF_H
#include "date.h"
#include "place.h"

struct signoff {
    const char *rule;         /* "nec/supply-side" */
    const char *about;        /* "service:service" */
    const char *by, *license; /* who signed, and by what right */
    const char *why;
    const char *digest; /* SHA-256 of the design's file as it was signed, 64 hexadecimal digits */
    const char *equipment; /* of the entries of catalogues that it used then, or NULL: not said */
    struct date on;        /* the day it was signed */
    struct date until;     /* year 0: it ends only when the design or its equipment changes */
    struct place place;
};

#endif
