/* Stirring: what a comparison would say if its limit stood one step elsewhere. */
#ifndef JUDGE_STIR_H
#define JUDGE_STIR_H
#include "amount.h"
#include "finding.h"

struct judge;

/* One step: 5 % of a number (1 where it is zero), 2 K of a temperature. */
#define STIR_STEP 0.05

/* A comparison in the text of a rule, as it was met. */
struct stir_site {
    unsigned line;  /* of the rule's file */
    bool is_number; /* its limit can go up and down; else it can only be turned round */
};

/* While it is set, every comparison is noted, and those of one line are moved. */
struct stir {
    unsigned line; /* 0: none is moved */
    bool is_up;
    struct stir_site *sites; /* each line once, in the order of meeting */
    size_t count, capacity;
    struct arena *arena; /* of the sites */
};

/* NULL: no more stirring. The stir must outlive the reviews it is set for. */
void judge_stir(struct judge *judge, struct stir *stir);
/* One step up or down; yes and no are turned round. Words and dates: false. */
bool amount_stir(struct amount *amount, bool is_up);

#endif
